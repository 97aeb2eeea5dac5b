package wall

import (
	"image/color"

	"fyne.io/fyne/v2"

	"windlass/ui/look"
)

// idle draws what comes next on black, in dim letters that keep a screen dark.
func (p painter) idle(i Idle, s Screen, size fyne.Size, notice string) {
	dark := look.Dark()
	quiet, ink := dim(dark[look.Muted]), dim(dark[look.Text])
	text := min(max(s.textSize(ReadArc, size.Height), 0.06*size.Height), 0.13*size.Height)
	hour := 2.4 * text
	y := (size.Height - 1.3*(hour+2*text)) / 2
	centre := func(line string, size float32, high, wide float32, c color.NRGBA) {
		for widthOf(line, size, true) > wide && size > 1 {
			size *= 0.95
		}
		p.line(area{0, y, wide, high}, line, style{size: size, bold: true, ink: c, align: fyne.TextAlignCenter})
		y += high
	}
	if i.Hour == "" {
		y = (size.Height - 1.3*text) / 2
		centre("No class to come", text, 1.3*text, size.Width, quiet)
	} else {
		centre("Next class "+i.Day, text, 1.3*text, size.Width, quiet)
		centre(i.Hour, hour, 1.3*hour, size.Width, ink)
		centre(i.Name, text, 1.3*text, size.Width, quiet)
	}
	if notice != "" {
		small := max(smallShare*text*0.6, 0.02*size.Height)
		p.pal = dark
		p.foot(notice, frame{size: size, small: small, margin: 0.02 * size.Height})
	}
}

// dim is a colour for a wall that nobody reads at length.
func dim(c color.NRGBA) color.NRGBA {
	c.R, c.G, c.B = c.R/3*2, c.G/3*2, c.B/3*2
	return c
}
