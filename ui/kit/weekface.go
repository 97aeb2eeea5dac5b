package kit

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"windlass/ui/look"
)

// weekFace is what a [WeekGrid] is drawn with: its titles and as many weeks as
// there is room for.
type weekFace struct {
	of    *WeekGrid
	made  *drawing
	days  []*canvas.Text
	weeks []*weekRow
	bar   *canvas.Rectangle
}

// weekRow is the drawing of one week in sight.
type weekRow struct {
	title, sub *canvas.Text
	now        *canvas.Rectangle
	cells      []*dayFace
}

// dayFace is the drawing of one day.
type dayFace struct {
	ground            *canvas.Rectangle
	title, count, sub *canvas.Text
	mark, notes       *glyph // the region, and a breach or a tick
}

// gridText is the text size of a day's title: a little under body text, so that
// "Shoulder press" fits a seventh of the desk.
const gridText = look.BodySize - 1

// CreateRenderer implements fyne.Widget.
func (g *WeekGrid) CreateRenderer() fyne.WidgetRenderer {
	f := &weekFace{of: g, bar: box(2)}
	for range g.days {
		f.days = append(f.days, words(look.CaptionSize, false))
	}
	g.face = f
	f.made = &drawing{of: g, place: f.place, measure: func() fyne.Size {
		return fyne.NewSize(weekTitleWidth+float32(len(g.days))*64, weekHeadHeight+2*weekLeast)
	}}
	f.place(g.Size())
	return f.made
}

// at returns the drawing of a day in sight.
func (f *weekFace) at(s Spot) *dayFace { return f.weeks[s.Week-f.of.top].cells[s.Day] }

func (f *weekFace) place(size fyne.Size) {
	g, p := f.of, look.Current()
	g.top = max(0, min(g.top, len(g.weeks)-g.inSight()))
	n := min(g.inSight(), len(g.weeks))
	for len(f.weeks) < n {
		f.weeks = append(f.weeks, newWeekRow(len(g.days)))
	}
	f.made.objects = f.made.objects[:0]
	for i, t := range f.days {
		x, wide := g.column(i)
		say(t, elide(g.days[i], look.CaptionSize, false, wide-look.Gap2), p[look.Muted])
		put(t, x+look.Gap3, 0, wide, weekHeadHeight)
		f.made.objects = append(f.made.objects, t)
	}
	for i, row := range f.weeks[:n] {
		f.fillWeek(row, i)
		f.made.objects = append(f.made.objects, row.objects()...)
	}
	f.placeBar(size)
	f.made.objects = append(f.made.objects, f.bar)
}

func newWeekRow(days int) *weekRow {
	r := &weekRow{title: words(look.BodySize, true), sub: words(look.CaptionSize, false), now: box(1.5)}
	for range days {
		r.cells = append(r.cells, &dayFace{
			ground: box(look.Radius), title: words(gridText, true),
			count: words(look.CaptionSize, true), sub: words(look.CaptionSize, false),
			mark: newGlyph(), notes: newGlyph(),
		})
	}
	return r
}

func (r *weekRow) objects() []fyne.CanvasObject {
	all := []fyne.CanvasObject{r.title, r.sub, r.now}
	for _, c := range r.cells {
		all = append(all, c.ground, c.title, c.count, c.sub)
		all = append(all, c.mark.objects...)
		all = append(all, c.notes.objects...)
	}
	return all
}

// fillWeek gives the ith drawn week the words of the week it stands for.
func (f *weekFace) fillWeek(r *weekRow, i int) {
	g, p := f.of, look.Current()
	week, high := g.top+i, g.rowHeight()
	y := weekHeadHeight + float32(i)*high
	title := g.weeks[week]
	ink := p[look.Muted]
	if title.Now {
		ink = p[look.Text]
	}
	middle := y + high/2
	inner := float32(weekTitleWidth) - 2*look.Gap2
	say(r.title, elide(title.Title, look.BodySize, true, inner), ink)
	say(r.sub, elide(title.Sub, look.CaptionSize, false, inner), p[look.Muted])
	put(r.title, look.Gap3, middle-lineOf(look.BodySize), inner, lineOf(look.BodySize))
	put(r.sub, look.Gap3, middle, inner, lineOf(look.CaptionSize)+2)
	put(r.now, 3, y+8, 3, high-16)
	fill(r.now, p[look.Accent])
	shown(r.now, title.Now)
	for day, c := range r.cells {
		s := Spot{week, day}
		x, wide := g.column(day)
		c.fill(g.cell(s), f.state(s), area{x + 2, y + 2, wide - 4, high - 4})
	}
}

// dayState is what the grid adds to a day.
type dayState struct{ cursor, selected, over, target, focused bool }

func (f *weekFace) state(s Spot) dayState {
	g := f.of
	return dayState{
		cursor: s == g.cursor, selected: g.selected(s) && g.anchor != g.cursor,
		over: s == g.over, target: g.pulled && s == g.drag, focused: g.focused,
	}
}

func (d *dayFace) fill(c WeekCell, st dayState, a area) {
	p := look.Current()
	d.paint(c, st, p)
	put(d.ground, a.x, a.y, a.w, a.h)
	const mark = 10
	pad, narrow := float32(9), a.w < narrowDay
	if narrow {
		pad = 7
	}
	ink := p[look.Text]
	if c.Done || c.Kind == RestDay {
		ink = p[look.Muted]
	}
	first, second := lineOf(gridText), lineOf(look.CaptionSize)+1
	rows := d.rows(c, a)
	if rows == 3 && a.h < first+2*second+pad {
		second -= 2 // three lines stand closer where there is little room
	}
	y := a.y + (a.h-first-second*(rows-1))/2
	indent := float32(0)
	if c.Shape != NoShape {
		indent = mark + 6
	}
	// In a narrow day the mark leaves the first line to the title.
	beside, below := indent, float32(0)
	markAt := y + (first-mark)/2
	if narrow && c.Count != "" {
		beside, below = 0, indent
		markAt = y + first + (second-mark)/2
	}
	d.mark.set(c.Shape, p[toneOr(c.Tone, look.Muted)])
	d.mark.put(a.x+pad, markAt, mark)
	inner := a.w - 2*pad
	say(d.title, elide(c.Title, gridText, true, inner-beside), ink)
	put(d.title, a.x+pad+beside, y, inner-beside, first)
	d.fillBelow(c, ink, area{a.x + pad, y + first, inner, second}, below, rows)
}

// narrowDay is the width under which a day has no room for a mark before its title.
const narrowDay = 120

// rows is how many lines a day has room and words for.
func (d *dayFace) rows(c WeekCell, a area) float32 {
	switch {
	case c.Count != "" && c.Sub != "" && a.h >= lineOf(gridText)+2*lineOf(look.CaptionSize):
		return 3
	case c.Count != "" || c.Sub != "" || c.Breach != "":
		return 2
	}
	return 1
}

// fillBelow sets the count, behind the region's mark where there is an indent for
// it, and the mark of a breach or of training on the second
// line, and the rest on the third, or behind the count where there is none.
func (d *dayFace) fillBelow(c WeekCell, ink color.NRGBA, a area, indent, rows float32) {
	p := look.Current()
	note := d.note(c, p, a)
	say(d.count, c.Count, ink)
	put(d.count, a.x+indent, a.y, a.w-indent, a.h)
	sub := area{a.x, a.y + a.h, a.w, a.h}
	if rows < 3 {
		sub = area{a.x, a.y, a.w - note, a.h}
		if c.Count != "" {
			past := indent + widthOf(c.Count, look.CaptionSize, true) + 6
			sub.x, sub.w = sub.x+past, sub.w-past
		}
	}
	say(d.sub, elide(c.Sub, look.CaptionSize, false, sub.w), p[look.Muted])
	put(d.sub, sub.x, sub.y, sub.w, sub.h)
}

// note draws the mark of a breach, or the tick of a trained day, at a line's far
// end and returns the width it takes.
func (d *dayFace) note(c WeekCell, p look.Palette, a area) float32 {
	side := float32(10)
	shape, tone := NoShape, look.Muted
	switch {
	case c.Breach != "":
		shape, tone, side = Warning, look.Warn, 15
	case c.Done:
		shape = Tick
	}
	d.notes.set(shape, p[tone])
	d.notes.put(a.x+a.w-side, a.y+(a.h-side)/2, side)
	if shape == NoShape {
		return 0
	}
	return side + 4
}

// paint colours a day's ground and outline.
func (d *dayFace) paint(c WeekCell, st dayState, p look.Palette) {
	var ground, edge color.Color = p[look.Raised], p[look.Line]
	switch c.Kind {
	case RestDay:
		ground, edge = color.Transparent, p[look.Line]
	case RecoveryDay:
		ground = p[look.Surface]
	}
	if c.Breach != "" {
		edge = p[look.Warn]
	}
	if st.over {
		ground = p[look.Hover]
	}
	if st.selected || st.cursor {
		ground = p[look.Selection]
	}
	width := look.Hairline
	switch {
	case st.target:
		edge, width = p[look.Accent], 3
	case st.cursor && st.focused:
		edge, width = p[look.Focus], look.RingWidth
	case st.cursor:
		edge, width = p[look.Edge], look.RingWidth
	}
	outline(d.ground, ground, edge, width)
}

func (f *weekFace) placeBar(size fyne.Size) {
	g := f.of
	hidden := len(g.weeks) - g.inSight()
	shown(f.bar, hidden > 0)
	if hidden <= 0 {
		return
	}
	track := size.Height - weekHeadHeight
	thumb := track * float32(g.inSight()) / float32(len(g.weeks))
	put(f.bar, size.Width-look.Gap2, weekHeadHeight+(track-thumb)*float32(g.top)/float32(hidden), 4, thumb)
	fill(f.bar, look.Color(look.Edge))
}
