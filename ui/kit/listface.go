package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"windlass/ui/look"
)

// listFace is what a [DataList] is drawn with: its titles and as many rows as
// there is room for, which take their words from whatever row they stand for.
type listFace struct {
	of     *DataList
	made   *drawing
	head   *canvas.Rectangle
	under  *canvas.Rectangle
	titles []*canvas.Text
	arrow  *glyph
	rows   []*listRow
	bar    *canvas.Rectangle
	frame  *frame
	empty  *Prose
}

// listRow is the drawing of one row in sight.
type listRow struct {
	ground, stroke, under, box *canvas.Rectangle
	tick                       *glyph
	cells                      []*listCell
}

// listCell is the drawing of one cell; its glyph and the stroke through it are
// made when first needed.
type listCell struct {
	text   *canvas.Text
	glyph  *glyph
	struck *canvas.Rectangle
}

// cellMark is the side of a shape in a cell.
const cellMark = 12

// CreateRenderer implements fyne.Widget.
func (l *DataList) CreateRenderer() fyne.WidgetRenderer {
	f := &listFace{of: l, head: box(0), under: box(0), arrow: newGlyph(), bar: box(2), frame: newFrame()}
	f.head.TopLeftCornerRadius, f.head.TopRightCornerRadius = look.CardRadius-1, look.CardRadius-1
	f.empty = NewProse("", 200).Centred().Tone(look.Muted)
	for _, c := range l.columns {
		t := words(look.CaptionSize, false)
		if c.End {
			t.Alignment = fyne.TextAlignTrailing
		}
		f.titles = append(f.titles, t)
	}
	l.face = f
	f.made = &drawing{of: l, place: f.place, measure: l.measure}
	f.collect()
	return f.made.start()
}

func (l *DataList) measure() fyne.Size {
	width := l.lead() + gripWidth
	for _, c := range l.columns {
		width += c.Width
	}
	return fyne.NewSize(width, headHeight+3*look.RowHeight)
}

// collect gathers every object there is to draw, back to front.
func (f *listFace) collect() {
	objects := []fyne.CanvasObject{f.head, f.under}
	for _, t := range f.titles {
		objects = append(objects, t)
	}
	objects = append(objects, f.arrow.objects...)
	for _, r := range f.rows {
		objects = append(objects, r.ground, r.stroke, r.under, r.box)
		objects = append(objects, r.tick.objects...)
		for _, c := range r.cells {
			objects = append(objects, c.text)
			if c.glyph != nil {
				objects = append(objects, c.glyph.objects...)
			}
			if c.struck != nil {
				objects = append(objects, c.struck)
			}
		}
	}
	f.made.objects = append(append(objects, f.empty, f.bar), f.frame.objects()...)
}

// place lays everything out and fills it in; both depend on the room there is.
func (f *listFace) place(size fyne.Size) {
	l := f.of
	l.widths = spread(l.columns, size.Width-l.lead()-gripWidth)
	l.top = max(0, min(l.top, l.rows.Len()-l.inSight()))
	n := min(l.inSight(), l.rows.Len())
	for len(f.rows) < n {
		f.rows = append(f.rows, f.newRow())
	}
	f.placeHead(size)
	for i, r := range f.rows {
		f.fillRow(r, i, n, size)
	}
	f.placeRest(size)
	f.collect()
}

func (f *listFace) newRow() *listRow {
	r := &listRow{ground: box(0), stroke: box(0), under: box(0), box: box(4), tick: newGlyph()}
	for _, c := range f.of.columns {
		t := words(look.BodySize, false)
		if c.End {
			t.Alignment = fyne.TextAlignTrailing
		}
		r.cells = append(r.cells, &listCell{text: t})
	}
	return r
}

// spread shares a width among columns: each its least, the growing ones the rest.
func spread(columns []ListColumn, width float32) []float32 {
	var least, grow float32
	for _, c := range columns {
		least, grow = least+c.Width, grow+c.Grow
	}
	widths := make([]float32, len(columns))
	for i, c := range columns {
		widths[i] = c.Width
		if grow > 0 {
			widths[i] += max(0, width-least) * c.Grow / grow
		}
	}
	return widths
}

// fillRow gives the ith drawn row the words of the row it stands for.
func (f *listFace) fillRow(r *listRow, i, n int, size fyne.Size) {
	l, row := f.of, f.of.top+i
	there := i < n
	for _, o := range []fyne.CanvasObject{r.ground, r.under} {
		shown(o, there)
	}
	shown(r.stroke, there && row == l.cursor)
	f.fillMark(r, i, row, there)
	if !there {
		f.clearRow(r)
		return
	}
	y := headHeight + float32(i)*look.RowHeight
	put(r.ground, 0, y, size.Width, look.RowHeight)
	put(r.stroke, 0, y, 3, look.RowHeight)
	put(r.under, 0, y+look.RowHeight-look.Hairline, size.Width, look.Hairline)
	f.paintRow(r, row)
	x := l.lead()
	for c, cell := range r.cells {
		cell.fill(l.rows.Cell(row, c), x, y, l.widths[c], l.columns[c].End)
		x += l.widths[c]
	}
}

func (f *listFace) clearRow(r *listRow) {
	for _, c := range r.cells {
		say(c.text, "", look.Color(look.Text))
		if c.glyph != nil {
			c.glyph.set(NoShape, look.Color(look.Text))
		}
		if c.struck != nil {
			c.struck.Hide()
		}
	}
}

func (f *listFace) paintRow(r *listRow, row int) {
	p, l := look.Current(), f.of
	ground := p[look.Surface]
	if row == l.over {
		ground = p[look.Hover]
	}
	if row == l.cursor {
		ground = p[look.Selection]
	}
	fill(r.ground, ground)
	fill(r.stroke, p[look.Accent])
	line := p[look.Line]
	line.A = 0x70
	fill(r.under, line)
}

// fillMark draws the box of a row that can be marked.
func (f *listFace) fillMark(r *listRow, i, row int, there bool) {
	l, p := f.of, look.Current()
	has := there && l.Marked != nil
	shown(r.box, has)
	if !has {
		r.tick.set(NoShape, p[look.Text])
		return
	}
	const side = 16
	y := headHeight + float32(i)*look.RowHeight + (look.RowHeight-side)/2
	put(r.box, look.Gap3, y, side, side)
	r.tick.put(look.Gap3+3, y+3, side-6)
	if l.Marked(row) {
		outline(r.box, p[look.Accent], p[look.Accent], look.Hairline)
		r.tick.set(Tick, p[look.OnAccent])
		return
	}
	outline(r.box, p[look.Ground], p[look.Edge], look.Hairline)
	r.tick.set(NoShape, p[look.Text])
}

// fill gives a cell its words and its shape.
func (c *listCell) fill(cell Cell, x, y, width float32, end bool) {
	left, inner := x+look.Gap2, width-2*look.Gap2
	c.text.TextStyle.Bold = cell.Bold
	mark := float32(0)
	if cell.Shape != NoShape {
		mark = cellMark + 6
		if c.glyph == nil {
			c.glyph = newGlyph()
		}
	}
	text := elide(cell.Text, look.BodySize, cell.Bold, inner-mark)
	if text != cell.Text && cell.Or != "" {
		text = elide(cell.Or, look.BodySize, cell.Bold, inner-mark)
	}
	if c.glyph != nil {
		c.glyph.set(cell.Shape, look.Color(toneOr(cell.Mark, look.Muted)))
		at := left
		if end {
			at = left + inner - mark - widthOf(text, look.BodySize, cell.Bold)
		}
		c.glyph.put(at, y+(look.RowHeight-cellMark)/2, cellMark)
	}
	say(c.text, text, look.Color(toneOr(cell.Tone, look.Text)))
	put(c.text, left+mark, y, inner-mark, look.RowHeight)
	c.strike(cell, area{left + mark, y, inner - mark, look.RowHeight}, widthOf(text, look.BodySize, cell.Bold), end)
}

// strike draws the stroke through a text of a width.
func (c *listCell) strike(cell Cell, in area, width float32, end bool) {
	if c.struck == nil {
		if !cell.Void {
			return
		}
		c.struck = box(0)
	}
	shown(c.struck, cell.Void && width > 0)
	if end {
		in.x += in.w - width
	}
	put(c.struck, in.x, in.y+in.h/2, width, look.Hairline)
	fill(c.struck, look.Color(toneOr(cell.Tone, look.Text)))
}

// toneOr is a meaning, or another where none was set: nothing is ever written in
// the colour of the ground.
func toneOr(m, other look.Meaning) look.Meaning {
	if m == look.Ground {
		return other
	}
	return m
}
