package kit

import (
	"fyne.io/fyne/v2"
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

// Grow gives the shape another side, in units.
func (m *Mark) Grow(side float32) {
	if m.side != side {
		m.side = side
		m.Refresh()
	}
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
