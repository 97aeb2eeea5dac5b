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

var none = color.NRGBA{}

// climb draws a page of a climb.
func (p painter) climb(c Climb, f fit, turn int, notice string) {
	p.head(c, f.frame)
	p.strip(c, area{f.margin, f.margin + clockHeight*f.band.clock, f.size.Width - 2*f.margin, f.band.strip})
	loose := f.loose(f.pages[turn])
	for i, column := range f.pages[turn] {
		at := f.column(i)
		for _, part := range column {
			at.h = loose * f.high(part) * f.text
			p.station(at, c, part, f.aligned(column, part), f)
			at.y += at.h + groupGap*f.text
		}
	}
	p.foot(c.foot(f, turn, notice), f.frame)
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

func (p painter) foot(text string, f frame) {
	small := f.small
	a := area{f.margin, f.size.Height - f.margin - 1.3*small, f.size.Width - 2*f.margin, 1.3 * small}
	for widthOf(text, small, false) > a.w && small > 1 {
		small *= 0.95
	}
	p.line(a, text, style{size: small, ink: p.pal[look.Muted]})
}

// head draws what runs and what comes next, beside the clock.
func (p painter) head(c Climb, f frame) {
	b := f.band
	line, after := b.lines(f.margin, f.size.Width)
	x, now, next := line.x, c.Now, c.Next
	if c.Held {
		p.held(after, b, p.pal[look.Warn])
	}
	line.x, line.w = line.x+b.now, line.w-b.now
	after.x, after.w = after.x+b.now, after.w-b.now
	if now.Text != "" {
		side := 0.7 * b.now
		p.mark(area{x, line.y + (line.h-side)/2, side, side}, now.Zone.Shape(), now.Zone.Meaning())
		p.line(line, now.Text, style{size: b.now, bold: true, ink: p.pal[look.Text]})
	} else {
		p.line(line, isOver, style{size: b.now, bold: true, ink: p.pal[look.Muted]})
	}
	if next.Text != "" {
		p.line(after, soon+next.Text, style{size: b.next, ink: p.pal[look.Muted]})
	}
}

// held draws two bars before the second line of the band: a clock that stands still
// is told by more than its colour.
func (p painter) held(line area, b band, ink color.NRGBA) {
	side := 0.7 * b.next
	p.pause(area{line.x, line.y + (line.h-side)/2, side, side}, ink)
}

const isOver = "Climb is over"

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

// station draws a card with the rows of a station, or a part of them.
func (p painter) station(a area, c Climb, at part, w rowSize, f fit) {
	p.box(a, p.pal[look.Surface], none, 0, 0.25*f.text)
	badge := (f.badge + badgePads) * f.text
	p.box(area{a.x, a.y, badge, a.h}, p.pal[look.Raised], none, 0, 0.25*f.text)
	pad := (rowPads - badgePads) / 2 * f.text
	y, unit := a.y, a.h/f.high(at)
	p.line(area{a.x, a.y, badge, unit * min(f.rowHigh(at.station, at.from), rowShare)}, c.Badges[at.station], style{size: f.text, bold: true, ink: p.pal[look.Accent], align: fyne.TextAlignCenter})
	for n := at.from; n < at.to; n++ {
		row := area{a.x + badge + pad, y, a.w - badge - 2*pad, unit * f.rowHigh(at.station, n)}
		if n > at.from {
			p.box(area{row.x, row.y, row.w, max(1, 0.02*f.text)}, p.pal[look.Line], none, 0, 0)
		}
		if r := c.Stations[at.station].Rows[n]; f.two[at.station][n] {
			p.rowOfTwo(row, r, f.rows[at.station][n], f)
		} else {
			p.rowOfOne(row, r, w, f)
		}
		y += row.h
	}
}

// rowOfOne draws a lifter in a line: name, load, plates, next load. What width is
// left goes between them.
func (p painter) rowOfOne(a area, r Row, w rowSize, f fit) {
	t, discs := f.text, w.plates(f.label)
	spare := max(0, a.w-w.oneLine(f.label)*t) / 3
	x := a.x
	p.name(area{x, a.y, w.name*t + spare, a.h}, r, t)
	x += (w.name+columnGap)*t + spare
	p.now(area{x, a.y, w.now * t, a.h}, r, t)
	x += (w.now+columnGap)*t + spare
	p.discs(area{x, a.y, discs * t, a.h}, r, f)
	x += (discs + columnGap) * t
	p.next(area{x, a.y, a.x + a.w - x, a.h}, r, t)
}

// rowOfTwo draws a lifter in two lines: name and load, plates and next load.
func (p painter) rowOfTwo(a area, r Row, w rowSize, f fit) {
	t, discs := f.text, w.plates(f.label)
	half := a.h * rowShare / twoShare * 0.9
	top := area{a.x, a.y + 0.02*t, a.w, half}
	low := area{a.x, a.y + half, a.w, a.h - half}
	p.name(area{top.x, top.y, top.w - w.now*t, top.h}, r, t)
	p.now(area{top.x + top.w - w.now*t, top.y, w.now * t, top.h}, r, t)
	p.discs(area{low.x, low.y, discs * t, low.h}, r, f)
	p.next(area{low.x + discs*t, low.y, low.w - discs*t, low.h}, r, t)
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
