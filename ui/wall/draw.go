package wall

import (
	"fmt"
	"image/color"
	"strings"

	"fyne.io/fyne/v2"

	"windlass/ui/kit"
	"windlass/ui/look"
)

// painter draws one picture of the wall.
type painter struct {
	*sheet
	pal look.Palette
}

// lead is the height of a line beside the clock, in shares of its size.
const lead = 1.16

var none = color.NRGBA{}

// climb draws a page of a climb.
func (p painter) climb(c Climb, f fit, turn int, notice string) {
	p.head(c.Now, c.Next, f.band, f.margin, f.size.Width)
	p.strip(c, area{f.margin, f.margin + clockHeight*f.band.clock, f.size.Width - 2*f.margin, f.band.strip})
	gap := columnsGap * f.text
	wide := (f.size.Width - 2*f.margin - float32(f.columns-1)*gap) / float32(f.columns)
	for i, column := range f.pages[turn] {
		x, y := f.margin+float32(i)*(wide+gap), f.margin+f.band.height
		for _, part := range column {
			s := c.Stations[part.station]
			high := float32(part.to-part.from) * f.row
			p.station(area{x, y, wide, high}, c.Badges[part.station], s.Rows[part.from:part.to], f)
			y += high + groupGap*f.text
		}
	}
	p.foot(c.foot(f, turn, notice), f.size, f.small, f.margin)
}

// foot is the one line of small text.
func (c Climb) foot(f fit, turn int, notice string) string {
	if notice != "" {
		return notice
	}
	parts := []string{fmt.Sprintf("Loads in %s, plates on each side of the bar, then the next load", c.Unit)}
	if len(c.Stations) == 0 {
		parts = []string{"Nobody is checked in yet"}
	}
	if n := len(f.pages); n > 1 {
		parts = append([]string{fmt.Sprintf("Page %d of %d", turn+1, n)}, parts...)
	}
	return strings.Join(parts, "   ·   ")
}

func (p painter) foot(text string, size fyne.Size, small, margin float32) {
	a := area{margin, size.Height - margin - 1.3*small, size.Width - 2*margin, 1.3 * small}
	for widthOf(text, small, false) > a.w && small > 1 {
		small *= 0.95
	}
	p.line(a, text, style{size: small, ink: p.pal[look.Muted]})
}

// head draws what runs and what comes next, beside the clock.
func (p painter) head(now, next Line, b band, margin, width float32) {
	x, y := margin+b.wide+0.6*b.now, margin+(clockHeight*b.clock-lead*(b.now+b.next))/2
	room := width - margin - x
	if now.Text != "" {
		side := 0.7 * b.now
		p.mark(area{x, y + (lead*b.now-side)/2, side, side}, now.Zone.Shape(), now.Zone.Meaning())
		p.line(area{x + b.now, y, room - b.now, lead * b.now}, now.Text, style{size: b.now, bold: true, ink: p.pal[look.Text]})
	} else {
		p.line(area{x + b.now, y, room - b.now, lead * b.now}, "Climb is over", style{size: b.now, bold: true, ink: p.pal[look.Muted]})
	}
	if next.Text != "" {
		p.line(area{x + b.now, y + lead*b.now, room - b.now, lead * b.next}, "› "+next.Text, style{size: b.next, ink: p.pal[look.Muted]})
	}
}

// strip draws the whole climb: every rung as wide as it is long, as thick as its
// zone is heavy.
func (p painter) strip(c Climb, a area) {
	for i, r := range c.Rungs {
		high := a.h * [...]float32{kit.Light: 0.4, kit.Working: 0.7, kit.Top: 1}[r.Zone]
		ink := p.pal[r.Zone.Meaning()]
		if i != c.Present {
			ink.A = 0x70
		}
		gap := min(a.h*0.3, a.w*float32(r.To-r.From)*0.1)
		p.box(area{a.x + a.w*float32(r.From), a.y + a.h - high, a.w*float32(r.To-r.From) - gap, high}, ink, none, 0, high/4)
	}
}

// station draws a card with the rows of a station.
func (p painter) station(a area, label string, rows []Row, f fit) {
	p.box(a, p.pal[look.Surface], none, 0, 0.25*f.text)
	badge := (f.widths.badge + badgePads) * f.text
	p.box(area{a.x, a.y, badge, a.h}, p.pal[look.Raised], none, 0, 0.25*f.text)
	p.line(area{a.x, a.y, badge, min(a.h, f.row)}, label, style{size: f.text, bold: true, ink: p.pal[look.Accent], align: fyne.TextAlignCenter})
	pad := (rowPads - badgePads) / 2 * f.text
	for i, r := range rows {
		at := area{a.x + badge + pad, a.y + float32(i)*f.row, a.w - badge - 2*pad, f.row}
		if i > 0 {
			p.box(area{at.x, at.y, at.w, max(1, 0.02*f.text)}, p.pal[look.Line], none, 0, 0)
		}
		if f.two {
			p.rowOfTwo(at, r, f)
		} else {
			p.rowOfOne(at, r, f)
		}
	}
}

// rowOfOne draws a lifter in a line: name, load, plates, next load. What width is
// left goes between them.
func (p painter) rowOfOne(a area, r Row, f fit) {
	t, w := f.text, f.widths
	spare := max(0, a.w-(w.name+w.now+w.discs+w.next+3*columnGap)*t) / 3
	x := a.x
	p.name(area{x, a.y, w.name*t + spare, a.h}, r, t)
	x += (w.name+columnGap)*t + spare
	p.now(area{x, a.y, w.now * t, a.h}, r, t)
	x += (w.now+columnGap)*t + spare
	p.discs(area{x, a.y, w.discs * t, a.h}, r, f)
	x += (w.discs + columnGap) * t
	p.next(area{x, a.y, a.x + a.w - x, a.h}, r, t)
}

// rowOfTwo draws a lifter in two lines: name and load, plates and next load.
func (p painter) rowOfTwo(a area, r Row, f fit) {
	t, w := f.text, f.widths
	top := area{a.x, a.y + 0.02*t, a.w, 1.32 * t}
	low := area{a.x, a.y + 1.32*t, a.w, 1.38 * t}
	p.name(area{top.x, top.y, top.w - w.now*t, top.h}, r, t)
	p.now(area{top.x + top.w - w.now*t, top.y, w.now * t, top.h}, r, t)
	p.discs(area{low.x, low.y, w.discs * t, low.h}, r, f)
	p.next(area{low.x + w.discs*t, low.y, low.w - w.discs*t, low.h}, r, t)
}

func (p painter) name(a area, r Row, t float32) {
	p.line(a, elide(r.Name, t, true, a.w), style{size: t, bold: true, ink: p.pal[look.Text]})
}

// now draws the load to be lifted, or both numbers while the call is open.
func (p painter) now(a area, r Row, t float32) {
	ink := p.pal[look.Text]
	if r.Record {
		ink = p.pal[look.Good]
	}
	x := a.x + a.w - nowWidth(r.Now)*t
	quiet := func(text string) {
		if text == "" {
			return
		}
		wide := (share(text, true) + hair) * t
		p.line(area{x, a.y, wide, a.h}, text, style{size: t, bold: true, ink: p.pal[look.Muted]})
		x += wide
	}
	quiet(before(r.Now))
	main := (share(r.Now.Text, true)*nowShare + hair) * t
	p.line(area{x, a.y, main, a.h}, r.Now.Text, style{size: nowShare * t, bold: true, ink: ink})
	x += main
	quiet(after(r.Now))
}

// next draws the load after this one, or that the day's set was a record.
func (p painter) next(a area, r Row, t float32) {
	if r.Record {
		side := 0.7 * t
		word := widthOf(recordText, t, true)
		p.mark(area{a.x + a.w - word - 1.2*side, a.y + (a.h-side)/2, side, side}, kit.Up, look.Good)
		p.line(a, recordText, style{size: t, bold: true, ink: p.pal[look.Good], align: fyne.TextAlignTrailing})
		return
	}
	p.line(a, nextText(r.Next), style{size: t, ink: p.pal[look.Muted], align: fyne.TextAlignTrailing})
}

// elide cuts a text to a width.
func elide(text string, size float32, bold bool, width float32) string {
	runes := []rune(text)
	for n := len(runes); n > 0; n-- {
		cut := string(runes[:n])
		if n < len(runes) {
			cut += "…"
		}
		if widthOf(cut, size, bold) <= width+1 {
			return cut
		}
	}
	return ""
}
