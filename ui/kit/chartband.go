package kit

import (
	"image"
	"image/color"
	"math"

	"fyne.io/fyne/v2"

	"windlass/ui/look"
)

// paintBand paints the band around the trend on a picture of the values' frame,
// column by column, with the edges as sharp as the screen allows.
func (f *chartFace) paintBand(w, h int) image.Image {
	img := image.NewNRGBA(image.Rect(0, 0, w, h))
	p, ink := f.of.plot, look.Color(look.Accent)
	if len(p.Trend) < 2 {
		return img
	}
	for x := range w {
		t, ok := p.trendAt(f.x.from + (f.x.to-f.x.from)*(float64(x)+0.5)/float64(w))
		if !ok || t.High <= t.Low {
			continue
		}
		top, bottom := f.pixel(t.High, h), f.pixel(t.Low, h)
		for y := max(0, int(top)); y < min(h, int(math.Ceil(bottom))); y++ {
			img.SetNRGBA(x, y, thinned(ink, cover(y, top, bottom)*0.22))
		}
	}
	return img
}

// pixel is the height of a value on a picture of a height, from its top.
func (f *chartFace) pixel(v float64, height int) float64 {
	return float64(height) * (1 - (v-f.y.from)/(f.y.to-f.y.from))
}

// cover is how much of a pixel's height lies between two heights.
func cover(y int, top, bottom float64) float64 {
	return max(0, min(float64(y+1), bottom)-max(float64(y), top))
}

func thinned(c color.NRGBA, opacity float64) color.NRGBA {
	c.A = uint8(255*opacity + 0.5)
	return c
}

// dash cuts a line of many parts into strokes, going on from part to part.
type dash struct{ walked float64 }

// Lengths of a stroke and of a stroke with its gap, in units.
const (
	strokeLength = 6
	dashLength   = 11
)

// along hands every stroke between two places to a function.
func (d *dash) along(a, b fyne.Position, draw func(from, to fyne.Position)) {
	length := math.Hypot(float64(b.X-a.X), float64(b.Y-a.Y))
	point := func(at float64) fyne.Position {
		s := float32(at / length)
		return fyne.NewPos(a.X+(b.X-a.X)*s, a.Y+(b.Y-a.Y)*s)
	}
	for at := 0.0; at < length; {
		in := math.Mod(d.walked, dashLength)
		end := dashLength - in
		if in < strokeLength {
			end = strokeLength - in
		}
		end = min(end, length-at)
		if in < strokeLength {
			draw(point(at), point(at+end))
		}
		at, d.walked = at+end, d.walked+end
	}
}
