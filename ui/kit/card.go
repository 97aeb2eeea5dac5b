package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// Card is a rounded surface with an optional title line above its content.
type Card struct {
	widget.BaseWidget
	title   *Text
	content fyne.CanvasObject
	inside  *fyne.Container
	margin  float32
	ground  look.Meaning
	sheet   *canvas.Rectangle
}

// NewCard returns a card. Without a title and actions it has no title line;
// actions stand at the title line's far end.
func NewCard(title string, content fyne.CanvasObject, actions ...fyne.CanvasObject) *Card {
	c := &Card{title: NewHeading(title).Shrinks(40), content: content, margin: look.Gap4, ground: look.Surface}
	rows := []fyne.CanvasObject{}
	if title != "" || len(actions) > 0 {
		head := append([]fyne.CanvasObject{Fill(c.title)}, actions...)
		rows = append(rows, Row(look.Gap2, head...))
	}
	c.inside = Column(look.Gap3, append(rows, Fill(content))...)
	c.ExtendBaseWidget(c)
	return c
}

// NewPanel returns a card without a margin, for a list or grid that reaches its
// edges.
func NewPanel(content fyne.CanvasObject) *Card {
	c := NewCard("", content)
	c.margin = look.Hairline
	return c
}

// SetTitle changes the title line.
func (c *Card) SetTitle(title string) { c.title.SetText(title) }

// CreateRenderer implements fyne.Widget.
func (c *Card) CreateRenderer() fyne.WidgetRenderer {
	c.sheet = box(look.CardRadius)
	return (&drawing{
		of: c, objects: []fyne.CanvasObject{c.sheet, c.inside},
		place: func(size fyne.Size) {
			c.sheet.Resize(size)
			put(c.inside, c.margin, c.margin, size.Width-2*c.margin, size.Height-2*c.margin)
		},
		measure: func() fyne.Size {
			return c.inside.MinSize().AddWidthHeight(2*c.margin, 2*c.margin)
		},
		paint: func() { outline(c.sheet, look.Color(c.ground), look.Color(look.Line), look.Hairline) },
	}).start()
}

// Rule is a hairline that parts what is above it from what is below.
type Rule struct {
	widget.BaseWidget
	line *canvas.Rectangle
}

// NewRule returns a hairline.
func NewRule() *Rule {
	r := &Rule{}
	r.ExtendBaseWidget(r)
	return r
}

// CreateRenderer implements fyne.Widget.
func (r *Rule) CreateRenderer() fyne.WidgetRenderer {
	r.line = box(0)
	return (&drawing{
		of: r, objects: []fyne.CanvasObject{r.line},
		place:   func(size fyne.Size) { put(r.line, 0, (size.Height-look.Hairline)/2, size.Width, look.Hairline) },
		measure: func() fyne.Size { return fyne.NewSize(0, look.Hairline) },
		paint:   func() { fill(r.line, look.Color(look.Line)) },
	}).start()
}
