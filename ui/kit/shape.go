package kit

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// Shape is a small drawn mark. A colour never stands alone: the shape beside it
// says the same. Shapes are drawn, because not every font has them.
type Shape uint8

// The shapes. NoShape draws nothing.
const (
	NoShape   Shape = iota
	Ring            // light zone; open
	Half            // working zone; partly
	Disc            // top zone; full
	Up              // more, a record
	Down            // less
	Warning         // a triangle with a stroke in it: needs a look
	Tick            // done, held
	Cross           // missed, stopped
	Diamond         // an estimate
	Square          // a day of training
	Dash            // nothing, rest
	Plus            // put on, add
	Magnifier       // search
	Chevron         // opens a list
)

// shapeNames are the words that stand for shapes where nothing can be drawn.
var shapeNames = map[Shape]string{
	Ring: "light", Half: "working", Disc: "top", Up: "up", Down: "down", Warning: "warning",
	Tick: "done", Cross: "missed", Diamond: "estimate", Square: "training", Dash: "none",
	Plus: "add", Magnifier: "search", Chevron: "open",
}

// String names the shape; NoShape has no name.
func (s Shape) String() string { return shapeNames[s] }

// Zone is a third of a climb: light, working or top rungs.
type Zone uint8

// The zones, from the bottom of a climb upwards.
const (
	Light Zone = iota
	Working
	Top
)

// Shape returns the mark that always stands beside the zone's colour.
func (z Zone) Shape() Shape { return Ring + Shape(min(z, Top)) }

// Meaning returns the zone's colour.
func (z Zone) Meaning() look.Meaning { return look.ZoneLight + look.Meaning(min(z, Top)) }

// Mark is a shape as a widget of its own.
type Mark struct {
	widget.BaseWidget
	shape Shape
	tone  look.Meaning
	side  float32
	glyph *glyph
}

// NewMark returns a shape in a colour; side is its height and width in units.
func NewMark(s Shape, tone look.Meaning, side float32) *Mark {
	m := &Mark{shape: s, tone: tone, side: side}
	m.ExtendBaseWidget(m)
	return m
}

// Set changes the shape and what its colour means.
func (m *Mark) Set(s Shape, tone look.Meaning) {
	if m.shape == s && m.tone == tone {
		return
	}
	m.shape, m.tone = s, tone
	m.Refresh()
}

// Label implements [Labelled] with the shape's name.
func (m *Mark) Label() string { return m.shape.String() }

// CreateRenderer implements fyne.Widget.
func (m *Mark) CreateRenderer() fyne.WidgetRenderer {
	m.glyph = newGlyph()
	return (&drawing{
		of: m, objects: m.glyph.objects,
		measure: func() fyne.Size { return fyne.NewSquareSize(m.side) },
		place: func(size fyne.Size) {
			m.glyph.put((size.Width-m.side)/2, (size.Height-m.side)/2, m.side)
		},
		paint: func() { m.glyph.set(m.shape, look.Color(m.tone)) },
	}).start()
}

// glyph is the drawing behind every shape: a few objects that can become any of
// them, so a row of a list can change its mark without new objects.
type glyph struct {
	shape    Shape
	circle   *canvas.Circle
	half     *canvas.Arc
	polygon  *canvas.Polygon
	square   *canvas.Rectangle
	a, b     *canvas.Line
	objects  []fyne.CanvasObject
	x, y, of float32 // where it stands, and its side
}

func newGlyph() *glyph {
	g := &glyph{
		circle: canvas.NewCircle(color.Transparent), half: canvas.NewPieArc(-180, 0, color.Transparent),
		polygon: canvas.NewPolygon(3, color.Transparent), square: box(2),
		a: canvas.NewLine(color.Transparent), b: canvas.NewLine(color.Transparent),
	}
	g.objects = []fyne.CanvasObject{g.circle, g.half, g.polygon, g.square, g.a, g.b}
	for _, o := range g.objects {
		o.Hide()
	}
	return g
}

// put places the shape in a square.
func (g *glyph) put(x, y, side float32) {
	if g.x == x && g.y == y && g.of == side {
		return
	}
	g.x, g.y, g.of = x, y, side
	g.settle()
}

// set chooses the shape and its colour.
func (g *glyph) set(s Shape, c color.NRGBA) {
	g.shape = s
	for _, o := range g.objects {
		shown(o, false)
	}
	g.colour(c)
	for _, o := range g.parts() {
		shown(o, true)
	}
	g.settle()
}

// parts are the objects that the present shape is made of.
func (g *glyph) parts() []fyne.CanvasObject {
	switch g.shape {
	case Ring, Disc:
		return []fyne.CanvasObject{g.circle}
	case Half:
		return []fyne.CanvasObject{g.circle, g.half}
	case Up, Down, Diamond:
		return []fyne.CanvasObject{g.polygon}
	case Warning:
		return []fyne.CanvasObject{g.polygon, g.a, g.b}
	case Square:
		return []fyne.CanvasObject{g.square}
	case Dash:
		return []fyne.CanvasObject{g.a}
	case Tick, Cross, Plus, Chevron:
		return []fyne.CanvasObject{g.a, g.b}
	case Magnifier:
		return []fyne.CanvasObject{g.circle, g.a}
	}
	return nil
}

func (g *glyph) colour(c color.NRGBA) {
	g.circle.FillColor, g.circle.StrokeColor = color.Transparent, c
	if g.shape == Disc {
		g.circle.FillColor = c
	}
	g.half.FillColor, g.polygon.FillColor = c, c
	fill(g.square, c)
	g.a.StrokeColor, g.b.StrokeColor = c, c
	if g.shape == Warning {
		// The stroke is cut out of the triangle.
		ink := look.InkOn(c)
		g.a.StrokeColor, g.b.StrokeColor = ink, ink
	}
}

// settle places the present shape's parts in the glyph's square.
func (g *glyph) settle() {
	s := g.of
	thick := max(1.5, s/7)
	g.circle.StrokeWidth, g.a.StrokeWidth, g.b.StrokeWidth = thick, thick, thick
	switch g.shape {
	case Ring, Half, Disc:
		put(g.circle, g.x, g.y, s, s)
		put(g.half, g.x, g.y, s, s)
	case Magnifier:
		put(g.circle, g.x, g.y, s*0.72, s*0.72)
		g.stroke(g.a, 0.62, 0.62, 0.95, 0.95)
	case Square:
		put(g.square, g.x+s*0.08, g.y+s*0.08, s*0.84, s*0.84)
	default:
		g.settlePolygon()
		g.settleStrokes()
	}
}

func (g *glyph) settlePolygon() {
	s := g.of
	g.polygon.Sides, g.polygon.Angle = 3, 0
	switch g.shape {
	case Down:
		g.polygon.Angle = 180
		put(g.polygon, g.x-s*0.1, g.y-s*0.2, s*1.2, s*1.2)
	case Diamond:
		g.polygon.Sides = 4
		put(g.polygon, g.x, g.y, s, s)
	case Up, Warning:
		put(g.polygon, g.x-s*0.1, g.y, s*1.2, s*1.2)
	}
}

func (g *glyph) settleStrokes() {
	switch g.shape {
	case Warning:
		g.stroke(g.a, 0.5, 0.36, 0.5, 0.58)
		g.stroke(g.b, 0.5, 0.74, 0.5, 0.76)
	case Tick:
		g.stroke(g.a, 0.08, 0.52, 0.38, 0.82)
		g.stroke(g.b, 0.38, 0.82, 0.94, 0.2)
	case Cross:
		g.stroke(g.a, 0.15, 0.15, 0.85, 0.85)
		g.stroke(g.b, 0.15, 0.85, 0.85, 0.15)
	case Plus:
		g.stroke(g.a, 0.5, 0.1, 0.5, 0.9)
		g.stroke(g.b, 0.1, 0.5, 0.9, 0.5)
	case Chevron:
		g.stroke(g.a, 0.15, 0.35, 0.5, 0.7)
		g.stroke(g.b, 0.5, 0.7, 0.85, 0.35)
	case Dash:
		g.stroke(g.a, 0.15, 0.5, 0.85, 0.5)
	}
}

// stroke places a line by shares of the square's side.
func (g *glyph) stroke(l *canvas.Line, x1, y1, x2, y2 float32) {
	l.Position1 = fyne.NewPos(g.x+x1*g.of, g.y+y1*g.of)
	l.Position2 = fyne.NewPos(g.x+x2*g.of, g.y+y2*g.of)
}
