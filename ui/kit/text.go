package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// Text is one line of drawn text that follows the theme. Give it less room than
// it wants and it ends with an ellipsis.
type Text struct {
	widget.BaseWidget
	text   string
	short  string // what is said where the text would be cut; may be empty
	size   float32
	bold   bool
	tone   look.Meaning
	align  fyne.TextAlign
	least  float32 // the least width, when the text may be cut; 0 is never cut
	shrink bool
	drawn  *canvas.Text
}

// NewTitle returns the name of a room.
func NewTitle(text string) *Text { return newText(text, look.TitleSize, true, look.Text) }

// NewHeading returns the name of a part of a room.
func NewHeading(text string) *Text { return newText(text, look.LeadSize, true, look.Text) }

// NewBody returns plain text of one line; see [NewProse] for more.
func NewBody(text string) *Text { return newText(text, look.BodySize, false, look.Text) }

// NewStrong returns [NewBody] in bold.
func NewStrong(text string) *Text { return newText(text, look.BodySize, true, look.Text) }

// NewCaption returns small, quiet text that explains what is near it.
func NewCaption(text string) *Text { return newText(text, look.CaptionSize, false, look.Muted) }

// NewNumber returns the one figure that a card is about.
func NewNumber(text string) *Text { return newText(text, look.NumberSize, true, look.Text) }

func newText(text string, size float32, bold bool, tone look.Meaning) *Text {
	t := &Text{text: text, size: size, bold: bold, tone: tone}
	t.ExtendBaseWidget(t)
	return t
}

// Tone sets what the text's colour means and returns the text.
func (t *Text) Tone(m look.Meaning) *Text {
	t.tone = m
	t.Refresh()
	return t
}

// Align sets where the text stands in the room it is given.
func (t *Text) Align(a fyne.TextAlign) *Text {
	t.align = a
	t.Refresh()
	return t
}

// Shrinks lets the text be cut down to a least width, in units.
func (t *Text) Shrinks(least float32) *Text {
	t.shrink, t.least = true, least
	t.Refresh()
	return t
}

// Or sets what is said instead where the text has no room.
func (t *Text) Or(short string) *Text {
	if t.short != short {
		t.short = short
		t.Refresh()
	}
	return t
}

// SetText changes what the text says.
func (t *Text) SetText(text string) {
	if t.text == text {
		return
	}
	t.text = text
	t.Refresh()
}

// Say changes what the text says and what its colour means.
func (t *Text) Say(text string, m look.Meaning) {
	if t.text == text && t.tone == m {
		return
	}
	t.text, t.tone = text, m
	t.Refresh()
}

// Label implements [Labelled] with the whole text, also where it is cut.
func (t *Text) Label() string { return t.text }

// CreateRenderer implements fyne.Widget.
func (t *Text) CreateRenderer() fyne.WidgetRenderer {
	t.drawn = words(t.size, t.bold)
	return (&drawing{
		of: t, objects: []fyne.CanvasObject{t.drawn},
		place: func(size fyne.Size) {
			t.drawn.Resize(size)
			t.cut(size.Width)
		},
		measure: t.measure,
		paint: func() {
			t.drawn.Alignment = t.align
			t.cut(t.Size().Width)
		},
	}).start()
}

func (t *Text) measure() fyne.Size {
	size := fyne.MeasureText(t.text, t.size, fyne.TextStyle{Bold: t.bold})
	size.Height = lineOf(t.size)
	if t.shrink {
		size.Width = min(size.Width, t.least)
	}
	return size
}

func (t *Text) cut(width float32) {
	text := t.text
	if width > 0 {
		// Half a unit of tolerance: a layout may round the width it was asked for.
		text = elide(text, t.size, t.bold, width+0.5)
	}
	if text != t.text && t.short != "" {
		text = elide(t.short, t.size, t.bold, width+0.5)
	}
	say(t.drawn, text, look.Color(t.tone))
}
