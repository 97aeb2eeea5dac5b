package look

import (
	"image/color"
	"math"
)

// The least contrasts of WCAG 2.2, level AA: success criterion 1.4.3 for text,
// for large text (18 pt, or 14 pt bold), and 1.4.11 for shapes and outlines.
const (
	MinText      = 4.5
	MinLargeText = 3.0
	MinShape     = 3.0
)

// Contrast is the contrast ratio of two opaque colours, 1 … 21, as WCAG 2.2
// defines it. The order does not matter; opacity is ignored.
func Contrast(a, b color.NRGBA) float64 {
	la, lb := luminance(a), luminance(b)
	return (max(la, lb) + 0.05) / (min(la, lb) + 0.05)
}

// InkOn returns whichever of the dark ink and the white chalk is easier to read
// on the given colour, for grounds that are not ours to choose, such as discs.
func InkOn(ground color.NRGBA) color.NRGBA {
	ink, chalk := rgb(0x0B1014), rgb(0xFFFFFF)
	if Contrast(ink, ground) >= Contrast(chalk, ground) {
		return ink
	}
	return chalk
}

// luminance is the relative luminance of WCAG 2.2, for sRGB.
func luminance(c color.NRGBA) float64 {
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}

func linear(channel uint8) float64 {
	c := float64(channel) / 255
	if c <= 0.04045 {
		return c / 12.92
	}
	return math.Pow((c+0.055)/1.055, 2.4)
}
