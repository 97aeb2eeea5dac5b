package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"windlass/ui/look"
)

// chartFace is what a [Chart] is drawn with. Lines, texts and shapes are kept and
// used again, because a chart is drawn anew at every move of the pointer.
type chartFace struct {
	of     *Chart
	made   *drawing
	x, y   scale
	frame  area // where the values stand
	band   *canvas.Raster
	lines  pool[*canvas.Line]
	texts  pool[*canvas.Text]
	glyphs pool[*glyph]
	sheet  *canvas.Rectangle
	tells  *canvas.Text
	empty  *Prose
}

// pool keeps objects of one kind for the next drawing.
type pool[T any] struct {
	all  []T
	used int
	make func() T
}

func (p *pool[T]) next() T {
	if p.used == len(p.all) {
		p.all = append(p.all, p.make())
	}
	p.used++
	return p.all[p.used-1]
}

// Room around the values, in units.
const (
	axisWidth   = 56
	axisHeight  = 24
	chartHead   = 26
	chartMargin = 12
	chartInset  = 12 // between the ends of the axis and the first and last value
)

// CreateRenderer implements fyne.Widget.
func (c *Chart) CreateRenderer() fyne.WidgetRenderer {
	f := &chartFace{of: c, sheet: box(look.Radius), tells: words(look.CaptionSize, true)}
	f.empty = NewProse("", 160).Centred().Tone(look.Muted)
	f.band = canvas.NewRaster(f.paintBand)
	f.lines.make = func() *canvas.Line { return canvas.NewLine(look.Color(look.Line)) }
	f.texts.make = func() *canvas.Text { return words(look.CaptionSize, false) }
	f.glyphs.make = newGlyph
	c.face = f
	f.made = &drawing{of: c, place: f.place, measure: func() fyne.Size { return c.least }}
	f.place(c.Size())
	return f.made
}

// place draws the whole chart for a size.
func (f *chartFace) place(size fyne.Size) {
	p := f.of.plot
	f.frame = area{axisWidth, chartHead, max(1, size.Width-axisWidth-chartMargin), max(1, size.Height-chartHead-axisHeight)}
	left, right, low, high := p.bounds()
	f.y = newScale(low, high, max(2, int(f.frame.h/44)), f.frame.h)
	f.x = scale{from: left, to: right, length: max(1, f.frame.w-2*chartInset)}
	if !(right > left) {
		f.x.from, f.x.to = left-1, left+1
	}
	f.lines.used, f.texts.used, f.glyphs.used = 0, 0, 0
	f.made.objects = f.made.objects[:0]
	f.placeEmpty(size)
	if p.empty() {
		return
	}
	f.drawAxes()
	put(f.band, f.frame.x+chartInset, f.frame.y, f.x.length, f.frame.h)
	f.add(f.band)
	f.drawTrend()
	for _, pt := range p.Points {
		f.drawPoint(pt)
	}
	f.drawHand()
}

func (f *chartFace) add(objects ...fyne.CanvasObject) {
	f.made.objects = append(f.made.objects, objects...)
}

func (f *chartFace) placeEmpty(size fyne.Size) {
	f.empty.SetText(f.of.plot.Empty)
	put(f.empty, 0, size.Height/2-look.RowHeight, size.Width, 2*look.RowHeight)
	if f.of.plot.empty() {
		f.add(f.empty)
	}
}

// at is the place of a value on the chart.
func (f *chartFace) at(x, y float64) fyne.Position {
	return fyne.NewPos(f.frame.x+chartInset+f.x.at(x), f.frame.y+f.frame.h-f.y.at(y))
}

// line draws from one place to another.
func (f *chartFace) line(a, b fyne.Position, m look.Meaning, width float32) {
	l := f.lines.next()
	l.Position1, l.Position2, l.StrokeColor, l.StrokeWidth = a, b, look.Color(m), width
	f.add(l)
}

// text writes in an area, in caption size.
func (f *chartFace) text(s string, m look.Meaning, align fyne.TextAlign, a area) {
	t := f.texts.next()
	t.Alignment = align
	say(t, s, look.Color(m))
	put(t, a.x, a.y, a.w, a.h)
	f.add(t)
}

func (f *chartFace) drawAxes() {
	p, fr := f.of.plot, f.frame
	for _, v := range f.y.ticks() {
		y := f.at(f.x.from, v).Y
		f.line(fyne.NewPos(fr.x, y), fyne.NewPos(fr.x+fr.w, y), look.Line, look.Hairline)
		f.text(p.y(v), look.Muted, fyne.TextAlignTrailing, area{0, y - 8, axisWidth - look.Gap2, 16})
	}
	f.text(p.Unit, look.Muted, fyne.TextAlignLeading, area{fr.x, 0, fr.w, chartHead - 8})
	free := float32(0) // the next label of the X axis begins here or later
	for _, t := range p.Ticks {
		x := f.at(t.X, f.y.from).X
		width := widthOf(t.Label, look.CaptionSize, false)
		if t.X < f.x.from || t.X > f.x.to || x-width/2 < free {
			continue
		}
		f.line(fyne.NewPos(x, fr.y+fr.h), fyne.NewPos(x, fr.y+fr.h+4), look.Edge, look.Hairline)
		f.text(t.Label, look.Muted, fyne.TextAlignCenter, area{x - width/2, fr.y + fr.h + 6, width, 16})
		free = x + width/2 + look.Gap3
	}
	for _, m := range p.Marks {
		f.drawMark(m)
	}
}

// drawMark draws an upright line and its name at the top, on the side with room.
func (f *chartFace) drawMark(m PlotTick) {
	fr, x := f.frame, f.at(m.X, f.y.from).X
	f.line(fyne.NewPos(x, fr.y), fyne.NewPos(x, fr.y+fr.h), look.Edge, look.Hairline)
	width := widthOf(m.Label, look.CaptionSize, false)
	left := x + 6
	if left+width > fr.x+fr.w {
		left = x - width - 6
	}
	f.text(m.Label, look.Muted, fyne.TextAlignLeading, area{left, fr.y - 4, width, 16})
}

// drawTrend draws the line; the forecast is dashed.
func (f *chartFace) drawTrend() {
	p, d := f.of.plot, dash{}
	for i := 1; i < len(p.Trend); i++ {
		a, b := p.Trend[i-1], p.Trend[i]
		from, to := f.at(a.X, a.Y), f.at(b.X, b.Y)
		if p.From == 0 || a.X < p.From {
			f.line(from, to, look.Accent, 2)
			continue
		}
		d.along(from, to, func(u, v fyne.Position) { f.line(u, v, look.Accent, 2) })
	}
}

// pointSide is the side of a point's shape.
const pointSide = 11

func (f *chartFace) drawPoint(pt PlotPoint) {
	g := f.glyphs.next()
	at := f.at(pt.X, pt.Y)
	g.set(pt.Shape, look.Color(toneOr(pt.Mark, look.Text)))
	g.put(at.X-pointSide/2.0, at.Y-pointSide/2.0, pointSide)
	f.add(g.objects...)
}

// drawHand draws the upright line under the pointer and says what is there.
func (f *chartFace) drawHand() {
	c, fr := f.of, f.frame
	if c.hand < fr.x || c.hand > fr.x+fr.w {
		return
	}
	const reach = 10 // units within which a point is meant
	x := f.x.value(c.hand - fr.x - chartInset)
	text := c.plot.tells(x, f.x.value(reach)-f.x.value(0))
	if text == "" {
		return
	}
	f.line(fyne.NewPos(c.hand, fr.y), fyne.NewPos(c.hand, fr.y+fr.h), look.Text, look.Hairline)
	width := widthOf(text, look.CaptionSize, true) + 2*look.Gap2
	left := max(0, min(c.hand-width/2, fr.x+fr.w-width))
	put(f.sheet, left, 0, width, chartHead-4)
	outline(f.sheet, look.Color(look.Raised), look.Color(look.Edge), look.Hairline)
	say(f.tells, text, look.Color(look.Text))
	put(f.tells, left+look.Gap2, 0, width, chartHead-4)
	f.add(f.sheet, f.tells)
}
