package main

import (
	"image"
	"image/color"
	"math"
)

// The mark's colours, those of the dark theme.
var (
	ink   = color.NRGBA{0x10, 0x16, 0x1c, 0xff}
	chalk = color.NRGBA{0xf3, 0xef, 0xe6, 0xff}
	teal  = color.NRGBA{0x3f, 0xc1, 0xb0, 0xff}
)

// samples is the side of the grid of samples in every pixel.
const samples = 4

// draw paints the mark on a square of side pixels.
func draw(side int) image.Image {
	img := image.NewNRGBA(image.Rect(0, 0, side, side))
	for y := range side {
		for x := range side {
			img.SetNRGBA(x, y, average(x, y, side))
		}
	}
	return img
}

// average is the mean colour over one pixel's samples, weighted by opacity.
func average(x, y, side int) color.NRGBA {
	var r, g, b, a int
	for sy := range samples {
		for sx := range samples {
			c := at(place(x, sx, side), place(y, sy, side))
			r, g, b, a = r+int(c.R)*int(c.A), g+int(c.G)*int(c.A), b+int(c.B)*int(c.A), a+int(c.A)
		}
	}
	if a == 0 {
		return color.NRGBA{}
	}
	return color.NRGBA{uint8(r / a), uint8(g / a), uint8(b / a), uint8(a / samples / samples)}
}

// place maps a sample to the mark's own square, −1 … 1.
func place(pixel, sample, side int) float64 {
	return (float64(pixel)+(float64(sample)+0.5)/samples)/float64(side)*2 - 1
}

// at is the mark itself: what lies at one point, the topmost part first.
func at(x, y float64) color.NRGBA {
	const drumY = -0.17
	switch {
	case !box(x, y, 0, 0, 1, 1, 0.44):
		return color.NRGBA{}
	case paidOut(x, y, drumY):
		return teal
	case discs(x, y-drumY), sleeves(x, y-drumY):
		return chalk
	case box(x, y, 0, drumY, 0.36, 0.27, 0.05):
		return turns(x, y-drumY)
	}
	return ink
}

// discs are the drum's flanges, drawn as a large and a small plate on each side.
func discs(x, y float64) bool {
	x = math.Abs(x)
	return box(x, y, 0.45, 0, 0.065, 0.50, 0.05) || box(x, y, 0.605, 0, 0.055, 0.33, 0.05)
}

func sleeves(x, y float64) bool { return box(math.Abs(x), y, 0.75, 0, 0.10, 0.06, 0.04) }

// turns are the turns of rope on the drum: slanted chalk with gaps of ink.
func turns(x, y float64) color.NRGBA {
	const pitch, gap, slant = 0.18, 0.045, 0.17
	along := math.Mod(x+slant*y+0.36+10*pitch+0.0225, pitch)
	if along < gap {
		return ink
	}
	return chalk
}

// paidOut is the last turn of rope, which runs over the drum and down to a plate.
func paidOut(x, y, drumY float64) bool {
	const hang, plateY = 0.245, 0.63
	top, bottom := drumY-0.27, plateY-0.12
	if box(x, y, hang, (top+bottom)/2, 0.06, (bottom-top)/2, 0.03) {
		return true
	}
	d := math.Hypot(x-hang, y-plateY)
	return d <= 0.185 && d >= 0.07
}

// box reports whether a point lies in a rectangle of the given centre, half
// sides and corner radius.
func box(x, y, cx, cy, w, h, r float64) bool {
	dx := math.Max(math.Abs(x-cx)-(w-r), 0)
	dy := math.Max(math.Abs(y-cy)-(h-r), 0)
	return math.Hypot(dx, dy) <= r
}
