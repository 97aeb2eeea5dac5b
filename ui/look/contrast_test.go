package look_test

import (
	"fmt"
	"image/color"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/ui/look"
)

// Worked by hand from the definition of contrast ratio in WCAG 2.2 (W3C
// Recommendation, 2023; w3c/wcag, guidelines/terms/20/contrast-ratio.html).
// The 4.4781 of #777777 is the well-known one that must not be rounded up.
func TestContrastMatchesTheDefinition(t *testing.T) {
	for _, c := range []struct {
		fg, bg string
		ratio  float64
	}{
		{"#000000", "#FFFFFF", 21},
		{"#777777", "#FFFFFF", 4.4781},
		{"#767676", "#FFFFFF", 4.5422},
		{"#595959", "#FFFFFF", 7.0047},
		{"#949494", "#FFFFFF", 3.0335},
		{"#FF0000", "#FFFFFF", 3.9985},
		{"#0000FF", "#FFFFFF", 8.5925},
		{"#FFFF00", "#000000", 19.5560},
		{"#FF0000", "#000000", 5.2520},
	} {
		assert.InDelta(t, c.ratio, look.Contrast(hex(t, c.fg), hex(t, c.bg)), 5e-5, "%s on %s", c.fg, c.bg)
		assert.InDelta(t, c.ratio, look.Contrast(hex(t, c.bg), hex(t, c.fg)), 5e-5, "%s on %s", c.bg, c.fg)
	}
}

// WCAG 2.2 success criteria 1.4.3 and 1.4.11, level AA, for every pair that a
// widget may put on the screen.
func TestEveryPairMeetsAA(t *testing.T) {
	grounds := []look.Meaning{look.Ground, look.Surface, look.Raised, look.Hover, look.Selection}
	texts := []look.Meaning{look.Text, look.Muted, look.Accent, look.Good, look.Warn, look.Bad}
	shapes := []look.Meaning{look.ZoneLight, look.ZoneWorking, look.ZoneTop, look.Edge, look.Focus}
	zones := []look.Meaning{look.ZoneLight, look.ZoneWorking, look.ZoneTop}

	for name, p := range palettes() {
		for _, g := range grounds {
			for _, m := range texts {
				assert.GreaterOrEqual(t, look.Contrast(p[m], p[g]), look.MinText, "%s: text %d on ground %d", name, m, g)
			}
			for _, m := range shapes {
				assert.GreaterOrEqual(t, look.Contrast(p[m], p[g]), look.MinShape, "%s: shape %d on ground %d", name, m, g)
			}
		}
		for _, z := range zones {
			assert.GreaterOrEqual(t, look.Contrast(p[look.OnZone], p[z]), look.MinText, "%s: text on zone %d", name, z)
		}
		assert.GreaterOrEqual(t, look.Contrast(p[look.OnAccent], p[look.Accent]), look.MinText, name)
		assert.GreaterOrEqual(t, look.Contrast(p[look.OnBad], p[look.Bad]), look.MinText, name)
	}
}

// The zones of the dark cut are Okabe and Ito's own shades, as R 4.2 gives them
// in grDevices::palette.colors(9, "Okabe-Ito").
func TestZonesAreOkabeAndIto(t *testing.T) {
	p := look.Dark()
	assert.Equal(t, hex(t, "#56B4E9"), p[look.ZoneLight])
	assert.Equal(t, hex(t, "#F0E442"), p[look.ZoneWorking])
	assert.Equal(t, hex(t, "#D55E00"), p[look.ZoneTop])
}

func TestEveryMeaningHasAShade(t *testing.T) {
	for name, p := range palettes() {
		for m, c := range p {
			assert.NotZero(t, c.A, "%s: meaning %d", name, m)
			if look.Meaning(m) != look.Veil {
				assert.EqualValues(t, 0xFF, c.A, "%s: meaning %d is see-through", name, m)
			}
		}
	}
}

func TestInkOnIsTheBetterOfTwo(t *testing.T) {
	assert.Equal(t, hex(t, "#FFFFFF"), look.InkOn(hex(t, "#0072B2")))
	assert.NotEqual(t, hex(t, "#FFFFFF"), look.InkOn(hex(t, "#F0E442")))
	for grey := range 256 {
		ground := color.NRGBA{R: uint8(grey), G: uint8(grey), B: uint8(grey), A: 0xFF}
		assert.GreaterOrEqual(t, look.Contrast(look.InkOn(ground), ground), look.MinLargeText, "grey %d", grey)
	}
}

func palettes() map[string]look.Palette {
	return map[string]look.Palette{"dark": look.Dark(), "light": look.Light()}
}

func hex(t *testing.T, text string) color.NRGBA {
	t.Helper()
	c := color.NRGBA{A: 0xFF}
	_, err := fmt.Sscanf(text, "#%02X%02X%02X", &c.R, &c.G, &c.B)
	require.NoError(t, err)
	return c
}
