package kit

import (
	"fmt"
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"windlass/ui/look"
)

// hourFace is what an [HourGrid] is drawn with.
type hourFace struct {
	of     *HourGrid
	made   *drawing
	heads  []*canvas.Text
	hours  []*hourLine
	blocks []*blockFace
	empty  *canvas.Text
}

// hourLine is one hour: its name and the hairline at its beginning.
type hourLine struct {
	name *canvas.Text
	line *canvas.Rectangle
}

// blockFace is one drawn block.
type blockFace struct {
	ground, edge     *canvas.Rectangle
	title, time, sub *canvas.Text
}

// CreateRenderer implements fyne.Widget.
func (g *HourGrid) CreateRenderer() fyne.WidgetRenderer {
	f := &hourFace{of: g, empty: words(look.BodySize, false)}
	f.empty.Alignment = fyne.TextAlignCenter
	g.face = f
	f.made = &drawing{
		of: g, place: f.place, paint: f.paint,
		measure: func() fyne.Size {
			return fyne.NewSize(hourTitleWidth+60*float32(len(g.days)), hourHeadHeight+240)
		},
	}
	return f.made.start()
}

// paint makes what is missing; place fills it in, because what fits depends on
// the size.
func (f *hourFace) paint() {
	g := f.of
	from, to := g.hours()
	for len(f.heads) < len(g.days) {
		t := words(look.CaptionSize, true)
		t.Alignment = fyne.TextAlignCenter
		f.heads = append(f.heads, t)
	}
	for len(f.hours) < to-from {
		f.hours = append(f.hours, &hourLine{name: words(look.CaptionSize, false), line: box(0)})
	}
	for len(f.blocks) < len(g.blocks) {
		f.blocks = append(f.blocks, &blockFace{
			ground: box(look.Radius), edge: box(1.5),
			title: words(look.CaptionSize, true), time: words(look.CaptionSize, false), sub: words(look.CaptionSize, false),
		})
	}
	f.made.objects = f.objects()
}

func (f *hourFace) objects() []fyne.CanvasObject {
	from, to := f.of.hours()
	var all []fyne.CanvasObject
	for _, h := range f.hours[:to-from] {
		all = append(all, h.line, h.name)
	}
	for _, t := range f.heads[:len(f.of.days)] {
		all = append(all, t)
	}
	for _, b := range f.blocks[:len(f.of.blocks)] {
		all = append(all, b.ground, b.edge, b.title, b.time, b.sub)
	}
	return append(all, f.empty)
}

func (f *hourFace) place(size fyne.Size) {
	g, p := f.of, look.Current()
	from, to := g.hours()
	for i, t := range f.heads[:len(g.days)] {
		say(t, g.days[i], p[look.Muted])
		put(t, hourTitleWidth+g.columnWidth()*float32(i), 0, g.columnWidth(), hourHeadHeight)
	}
	for i, h := range f.hours[:to-from] {
		y := g.y(60 * (from + i))
		say(h.name, hourText(60*(from+i)), p[look.Muted])
		put(h.name, look.Gap2, y, hourTitleWidth-look.Gap2, lineOf(look.CaptionSize))
		fill(h.line, p[look.Line])
		put(h.line, 0, y, size.Width, look.Hairline)
	}
	for i, b := range f.blocks[:len(g.blocks)] {
		f.fill(b, i)
	}
	say(f.empty, f.emptyText(), p[look.Muted])
	put(f.empty, hourTitleWidth, 0, size.Width-hourTitleWidth, size.Height)
}

func (f *hourFace) emptyText() string {
	if len(f.of.blocks) > 0 {
		return ""
	}
	return f.of.Empty
}

// fill draws one block, with as many lines as it has the height for.
func (f *hourFace) fill(b *blockFace, i int) {
	g, p, a := f.of, look.Current(), f.of.frameOf(i)
	block := g.blocks[i]
	f.colour(b, i, p)
	put(b.ground, a.x, a.y, a.w, a.h)
	put(b.edge, a.x+3, a.y+4, 3, a.h-8)
	fill(b.edge, p[look.Accent])
	const pad = 9
	inner := a.w - pad - 2
	line := lineOf(look.CaptionSize)
	lines := []struct {
		text *canvas.Text
		says string
		ink  color.Color
		size float32
		bold bool
	}{
		{b.title, block.Title, p[look.Text], look.CaptionSize, true},
		{b.time, hourText(block.Start), p[look.Muted], look.CaptionSize, false},
		{b.sub, block.Sub, p[look.Muted], look.CaptionSize, false},
	}
	y := a.y + 3
	for _, l := range lines {
		text := elide(l.says, l.size, l.bold, inner)
		if y+line > a.y+a.h {
			text = ""
		}
		say(l.text, text, l.ink)
		put(l.text, a.x+pad, y, inner, line)
		y += line
	}
}

func (f *hourFace) colour(b *blockFace, i int, p look.Palette) {
	g := f.of
	ground, edge, width := p[look.Raised], p[look.Line], look.Hairline
	if i == g.over {
		ground = p[look.Hover]
	}
	if i == g.cursor {
		ground, edge = p[look.Selection], p[look.Edge]
	}
	if i == g.cursor && g.focused {
		edge, width = p[look.Focus], look.RingWidth
	}
	outline(b.ground, ground, edge, width)
}

// hourText writes minutes from midnight as a time of day.
func hourText(minutes int) string { return fmt.Sprintf("%02d:%02d", minutes/60, minutes%60) }
