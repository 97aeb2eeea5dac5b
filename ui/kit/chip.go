package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// Chip is a small label for a state. A shape beside the words says what the
// colour says.
type Chip struct {
	widget.BaseWidget
	text   string
	shape  Shape
	tone   look.Meaning
	ground *canvas.Rectangle
	words  *canvas.Text
	glyph  *glyph
}

// chipHeight and chipMark are the heights of a chip and of its shape.
const (
	chipHeight = look.Gap6
	chipMark   = 10
)

// NewChip returns a small label with a shape in a colour.
func NewChip(text string, s Shape, tone look.Meaning) *Chip {
	c := &Chip{text: text, shape: s, tone: tone}
	c.ExtendBaseWidget(c)
	return c
}

// Set changes what the chip says.
func (c *Chip) Set(text string, s Shape, tone look.Meaning) {
	if c.text == text && c.shape == s && c.tone == tone {
		return
	}
	c.text, c.shape, c.tone = text, s, tone
	c.Refresh()
}

// Label implements [Labelled].
func (c *Chip) Label() string { return c.text }

// CreateRenderer implements fyne.Widget.
func (c *Chip) CreateRenderer() fyne.WidgetRenderer {
	c.ground, c.words, c.glyph = box(chipHeight/2), words(look.CaptionSize, false), newGlyph()
	return (&drawing{
		of: c, objects: append([]fyne.CanvasObject{c.ground, c.words}, c.glyph.objects...),
		place: c.place,
		measure: func() fyne.Size {
			return fyne.NewSize(c.mark()+widthOf(c.text, look.CaptionSize, false)+2*look.Gap3, chipHeight)
		},
		paint: func() {
			outline(c.ground, look.Color(look.Raised), look.Color(look.Line), look.Hairline)
			say(c.words, c.text, look.Color(look.Text))
			c.glyph.set(c.shape, look.Color(c.tone))
		},
	}).start()
}

// mark is the width that the shape and its gap take.
func (c *Chip) mark() float32 {
	if c.shape == NoShape {
		return 0
	}
	return chipMark + 6
}

func (c *Chip) place(size fyne.Size) {
	c.ground.Resize(size)
	c.glyph.put(look.Gap3-2, (size.Height-chipMark)/2, chipMark)
	put(c.words, look.Gap3+c.mark()-2, 0, size.Width-2*look.Gap3-c.mark()+2, size.Height)
}
