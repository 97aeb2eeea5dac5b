package wall

import (
	"fmt"
	"image"
	"math"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// The height of capitals at a distance, in millimetres, worked out from
// h = 2 d tan(a/2) for the angles of ISO 9241 and NUREG-0700.
func TestLetterHeight(t *testing.T) {
	for metres, row := range map[float64][5]float64{ // at 16, 18, 20, 22, 24 minutes
		3:  {13.96, 15.71, 17.45, 19.20, 20.94},
		5:  {23.27, 26.18, 29.09, 32.00, 34.91},
		8:  {37.23, 41.89, 46.54, 51.20, 55.85},
		10: {46.54, 52.36, 58.18, 64.00, 69.81},
		15: {69.81, 78.54, 87.27, 95.99, 104.72},
	} {
		for i, want := range row {
			assert.InDelta(t, want, LetterHeight(metres, 16+2*float64(i)), 0.005, "%g m", metres)
		}
	}
	// The other form that NUREG-0700 gives: height = 6.283 D a / 21600.
	assert.InDelta(t, 6.283*8000*20/21600, LetterHeight(8, 20), 0.01)
}

func TestUsualHeightIsThatOf27Inches(t *testing.T) {
	assert.InDelta(t, 27*25.4*9/math.Hypot(16, 9), UsualHeight, 1e-6)
	assert.Equal(t, UsualHeight, Screen{Height: 0}.believed().Height, "a projector that reports nothing")
	assert.Equal(t, UsualHeight, Screen{Height: 9}.believed().Height, "one that reports its shape")
	assert.Equal(t, 809.4, Screen{Height: 809.4}.believed().Height)
}

var screens = []struct {
	name   string
	size   fyne.Size
	height float64
	viewer float64
}{
	{"65 inches at 8 m", fyne.NewSize(1920, 1080), inch65, 8},
	{"65 inches at 8 m", fyne.NewSize(3840, 2160), inch65, 8},
	{"27 inches at 4 m", fyne.NewSize(1920, 1080), inch27, 4},
}

// Every line that a lifter must read, on every page, spans the least angle at the
// farthest reader.
func TestEveryLineCanBeRead(t *testing.T) {
	for _, n := range []int{6, 18, 36} {
		h := newHall(t, n)
		for _, s := range screens {
			h.settings(func(to *gym.Settings) { to.Viewer = s.viewer })
			for _, at := range []time.Duration{90 * time.Second, 15 * time.Minute} {
				h.until(at)
				v, w := h.show(look.Dark(), s.size, s.height)
				name := fmt.Sprintf("%d lifters, %s, %.0f px, %s", n, s.name, s.size.Height, at)
				require.GreaterOrEqual(t, v.fit.arc, LeastArc, name)
				h.everyPageReads(v, w, s.height, s.viewer, name)
				h.look(w, strings.ReplaceAll(name, " ", "-"))
			}
		}
	}
}

// everyPageReads turns all pages, and finds everybody on them.
func (h *hall) everyPageReads(v *View, w *uitest.Window, height, viewer float64, name string) {
	h.t.Helper()
	assert.Empty(h.t, uitest.Overflows(w), name)
	seen := map[string]bool{}
	for range v.fit.pages {
		h.pageReads(v, height, viewer, name)
		for _, line := range v.sheet.lines.all {
			seen[line.Text] = seen[line.Text] || line.Visible()
		}
		h.now = h.now.Add(v.stands(v.drawn.scene)[v.drawn.turn])
		v.state.Board.Class.Clock.Anchor = v.state.Board.Class.Clock.Anchor.Add(v.fit.stands[v.drawn.turn])
		v.Tick(h.now)
	}
	for _, s := range v.drawn.scene.Climb.Stations {
		for _, r := range s.Rows {
			assert.True(h.t, seen[r.Name], "%s: %s is on no page", name, r.Name)
			assert.True(h.t, seen[r.Now.Text], "%s: the load of %s", name, r.Name)
		}
	}
}

func (h *hall) pageReads(v *View, height, viewer float64, name string) {
	h.t.Helper()
	small := 0
	for _, t := range v.sheet.lines.all {
		if !t.Visible() || t.Text == "" {
			continue
		}
		if arcOf(t.TextSize*capShare, v.size.Height, height, viewer) < LeastArc-1e-3 {
			small++
			assert.Contains(h.t, t.Text, "Loads in kg", name)
		}
	}
	assert.LessOrEqual(h.t, small, 1, "%s: one line of small text", name)
	assert.Greater(h.t, v.fit.band.clock, 1.8*v.fit.text, "%s: the clock is larger", name)
}

// arcOf is the angle, in minutes, that so many of the picture's units span: the
// inverse of the rule, worked out here on its own.
func arcOf(units, picture float32, height, viewer float64) float64 {
	return 2 * math.Atan(float64(units/picture)*height/2/(viewer*1000)) * 180 / math.Pi * 60
}

// What is drawn is measured too, in pixels: the figures of a page.
func TestDrawnFiguresSpanTheAngle(t *testing.T) {
	h := newHall(t, 18)
	h.until(90 * time.Second)
	for _, s := range screens {
		if s.size != full {
			continue // 4K draws four pixels for one: slow, and no other angle
		}
		h.settings(func(to *gym.Settings) { to.Viewer = s.viewer })
		v, w := h.show(look.Dark(), s.size, s.height)
		img, measured := w.Canvas().Capture(), 0
		for _, line := range v.sheet.lines.all {
			if !line.Visible() || line.Text == "" || strings.Trim(line.Text, "0123456789") != "" {
				continue
			}
			measured++
			high := inkHeight(img, w, line)
			// A row of pixels above and below may be lost to smoothing.
			arc := arcOf(float32(high+2), float32(img.Bounds().Dy()), s.height, s.viewer)
			assert.GreaterOrEqual(t, arc, LeastArc, "%q is %d px high", line.Text, high)
			// Round figures reach a little over the straight ones.
			want := capShare * line.TextSize * float32(img.Bounds().Dy()) / s.size.Height
			assert.InDelta(t, want, high, float64(0.04*want+1), "%q, to a whole pixel", line.Text)
		}
		assert.Greater(t, measured, 4)
	}
}

// inkHeight is how many rows of pixels a text really covers, near its middle: the
// edge of a disc is not its figure's.
func inkHeight(img image.Image, w *uitest.Window, t *canvas.Text) int {
	scale := float32(img.Bounds().Dx()) / w.Canvas().Size().Width
	width := widthOf(t.Text, t.TextSize, t.TextStyle.Bold)
	x := t.Position().X
	switch t.Alignment {
	case fyne.TextAlignCenter:
		x += (t.Size().Width - width) / 2
	case fyne.TextAlignTrailing:
		x += t.Size().Width - width
	}
	middle, reach := (t.Position().Y+t.Size().Height/2)*scale, 0.44*t.TextSize*scale
	ground := img.At(int(x*scale)+1, int(middle))
	rows := 0
	for y := int(middle - reach); y < int(middle+reach); y++ {
		for at := int(x*scale) + 1; at < int((x+width)*scale)-1; at++ {
			if far(img.At(at, y).RGBA())(ground.RGBA()) {
				rows++
				break
			}
		}
	}
	return rows
}

// far reports whether two colours are clearly different.
func far(r, g, b, _ uint32) func(r, g, b, _ uint32) bool {
	return func(r2, g2, b2, _ uint32) bool {
		gap := func(x, y uint32) int { return max(int(x), int(y)) - min(int(x), int(y)) }
		return gap(r, r2)+gap(g, g2)+gap(b, b2) > 3*0x3000
	}
}

// Athletes are told nothing about a screen that is too small: that is the coach's.
func TestASmallScreenIsNotTheAthletesBusiness(t *testing.T) {
	h := newHall(t, 6)
	h.until(90 * time.Second)
	v, _ := h.show(look.Dark(), fyne.NewSize(640, 360), 90)
	require.Less(t, v.fit.arc, LeastArc)
	assert.NotContains(t, v.drawn.scene.Climb.foot(v.fit, 0, ""), "small")
	assert.Contains(t, v.drawn.scene.Climb.foot(v.fit, 0, ""), "Loads in kg, plates on each side of the bar, then the next load")
}
