package wall

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"windlass/ui/kit"
	"windlass/ui/look"
)

// sheet draws a picture from boxes, marks and lines of text, and keeps the
// objects of the last picture for the next one: a wall that turns its pages for
// hours must not leave anything behind.
type sheet struct {
	boxes  pool[*canvas.Rectangle]
	marks  pool[*kit.Mark]
	lines  pool[*canvas.Text]
	layers []fyne.CanvasObject // behind each other
}

// pool is the objects of one sort, and how many of them the picture uses.
type pool[T fyne.CanvasObject] struct {
	all  []T
	used int
	on   *fyne.Container
	make func() T
}

func newPool[T fyne.CanvasObject](build func() T) pool[T] {
	return pool[T]{on: container.NewWithoutLayout(), make: build}
}

func (p *pool[T]) next() T {
	if p.used == len(p.all) {
		o := p.make()
		p.all = append(p.all, o)
		p.on.Objects = append(p.on.Objects, o)
	}
	p.used++
	o := p.all[p.used-1]
	if !o.Visible() {
		o.Show()
	}
	return o
}

// rest hides what the picture did not use.
func (p *pool[T]) rest() {
	for _, o := range p.all[p.used:] {
		if o.Visible() {
			o.Hide()
		}
	}
}

func newSheet() *sheet {
	s := &sheet{
		boxes: newPool(func() *canvas.Rectangle { return canvas.NewRectangle(color.Transparent) }),
		marks: newPool(func() *kit.Mark { return kit.NewMark(kit.NoShape, look.Text, 1) }),
		lines: newPool(func() *canvas.Text { return canvas.NewText("", color.Transparent) }),
	}
	s.layers = []fyne.CanvasObject{s.boxes.on, s.marks.on, s.lines.on}
	return s
}

// begin starts a new picture.
func (s *sheet) begin() { s.boxes.used, s.marks.used, s.lines.used = 0, 0, 0 }

// end shows it.
func (s *sheet) end() {
	s.boxes.rest()
	s.marks.rest()
	s.lines.rest()
	for _, l := range s.layers {
		l.Refresh()
	}
}

// area is a place and a size.
type area struct{ x, y, w, h float32 }

func (a area) put(o fyne.CanvasObject) {
	o.Move(fyne.NewPos(a.x, a.y))
	o.Resize(fyne.NewSize(a.w, a.h))
}

// box draws a rectangle with an edge of a thickness, which may be 0.
func (s *sheet) box(a area, inside, edge color.NRGBA, thick, radius float32) {
	r := s.boxes.next()
	r.FillColor, r.StrokeColor, r.StrokeWidth, r.CornerRadius = inside, edge, thick, radius
	a.put(r)
}

func (s *sheet) mark(a area, shape kit.Shape, tone look.Meaning) {
	m := s.marks.next()
	m.Grow(min(a.w, a.h))
	m.Set(shape, tone)
	a.put(m)
}

// lineShare is the height of a line of the typeface in shares of its size.
const lineShare = 1.215

// style is how a line of text is drawn.
type style struct {
	size  float32
	bold  bool
	ink   color.NRGBA
	align fyne.TextAlign
}

// line draws a text in the middle of an area's height.
func (s *sheet) line(a area, text string, st style) {
	t := s.lines.next()
	t.Text, t.TextSize, t.TextStyle.Bold, t.Color, t.Alignment = text, st.size, st.bold, st.ink, st.align
	high := lineShare * st.size
	area{a.x, a.y + (a.h-high)/2, a.w, high}.put(t)
	t.Refresh()
}

// widthOf is the width of a text of a size.
func widthOf(text string, size float32, bold bool) float32 {
	return fyne.MeasureText(text, size, fyne.TextStyle{Bold: bold}).Width
}
