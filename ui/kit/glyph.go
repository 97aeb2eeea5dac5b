package kit

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"windlass/ui/look"
)

// glyph is the drawing behind every shape: a few objects that can become any of
// them, so a row of a list can change its mark without new objects.
type glyph struct {
	shape   Shape
	circle  *canvas.Circle
	half    *canvas.Arc
	polygon *canvas.Polygon
	square  *canvas.Rectangle
	lines   [2]*canvas.Line
	objects []fyne.CanvasObject
	x, y    float32
	side    float32
}

// stroke is a line by shares of the glyph's side, from one place to another.
type stroke struct{ x1, y1, x2, y2 float32 }

// strokes are the lines of the shapes that have some.
var strokes = map[Shape][]stroke{
	Warning:   {{0.5, 0.36, 0.5, 0.58}, {0.5, 0.74, 0.5, 0.76}},
	Tick:      {{0.08, 0.52, 0.38, 0.82}, {0.38, 0.82, 0.94, 0.2}},
	Cross:     {{0.15, 0.15, 0.85, 0.85}, {0.15, 0.85, 0.85, 0.15}},
	Plus:      {{0.5, 0.1, 0.5, 0.9}, {0.1, 0.5, 0.9, 0.5}},
	Chevron:   {{0.15, 0.35, 0.5, 0.7}, {0.5, 0.7, 0.85, 0.35}},
	Dash:      {{0.15, 0.5, 0.85, 0.5}},
	Magnifier: {{0.62, 0.62, 0.95, 0.95}},
}

func newGlyph() *glyph {
	g := &glyph{
		circle: canvas.NewCircle(color.Transparent), half: canvas.NewPieArc(-180, 0, color.Transparent),
		polygon: canvas.NewPolygon(3, color.Transparent), square: box(2),
		lines: [2]*canvas.Line{canvas.NewLine(color.Transparent), canvas.NewLine(color.Transparent)},
	}
	g.objects = []fyne.CanvasObject{g.circle, g.half, g.polygon, g.square, g.lines[0], g.lines[1]}
	for _, o := range g.objects {
		o.Hide()
	}
	return g
}

// put places the shape in a square.
func (g *glyph) put(x, y, side float32) {
	if g.x == x && g.y == y && g.side == side {
		return
	}
	g.x, g.y, g.side = x, y, side
	g.settle()
}

// set chooses the shape and its colour.
func (g *glyph) set(s Shape, c color.NRGBA) {
	g.shape = s
	g.colour(c)
	shown(g.circle, s == Ring || s == Half || s == Disc || s == Magnifier)
	shown(g.half, s == Half)
	shown(g.polygon, s == Up || s == Down || s == Warning || s == Diamond)
	shown(g.square, s == Square)
	for i, l := range g.lines {
		shown(l, i < len(strokes[s]))
	}
	g.settle()
}

func (g *glyph) colour(c color.NRGBA) {
	g.circle.FillColor, g.circle.StrokeColor = color.Transparent, c
	if g.shape == Disc {
		g.circle.FillColor = c
	}
	g.half.FillColor, g.polygon.FillColor = c, c
	fill(g.square, c)
	if g.shape == Warning {
		c = look.InkOn(c) // the stroke is cut out of the triangle
	}
	for _, l := range g.lines {
		l.StrokeColor = c
	}
}

// settle places the present shape's parts in the glyph's square.
func (g *glyph) settle() {
	s := g.side
	thick := max(1.5, s/7)
	g.circle.StrokeWidth = thick
	for i, k := range strokes[g.shape] {
		l := g.lines[i]
		l.StrokeWidth = thick
		l.Position1 = fyne.NewPos(g.x+k.x1*s, g.y+k.y1*s)
		l.Position2 = fyne.NewPos(g.x+k.x2*s, g.y+k.y2*s)
	}
	switch g.shape {
	case Ring, Half, Disc:
		put(g.circle, g.x, g.y, s, s)
		put(g.half, g.x, g.y, s, s)
	case Magnifier:
		put(g.circle, g.x, g.y, s*0.72, s*0.72)
	case Square:
		put(g.square, g.x+s*0.08, g.y+s*0.08, s*0.84, s*0.84)
	default:
		g.settlePolygon()
	}
}

// settlePolygon fits a polygon, which is drawn in a circle, to the square.
func (g *glyph) settlePolygon() {
	s := g.side
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
