package kit

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// Prose is text of several lines, broken at spaces to the width it is given.
type Prose struct {
	widget.BaseWidget
	text  string
	size  float32
	tone  look.Meaning
	align fyne.TextAlign
	width float32 // the width that the lines were last broken to
	least float32
	lines []*canvas.Text
	made  *drawing
}

// NewProse returns text that breaks to its width. The width it asks for is at
// least the given one, in units.
func NewProse(text string, least float32) *Prose {
	p := &Prose{text: text, size: look.BodySize, tone: look.Text, least: least, width: least}
	p.ExtendBaseWidget(p)
	return p
}

// Tone sets what the text's colour means and returns the prose.
func (p *Prose) Tone(m look.Meaning) *Prose {
	p.tone = m
	p.Refresh()
	return p
}

// Small sets the prose in the size of a caption.
func (p *Prose) Small() *Prose {
	p.size = look.CaptionSize
	p.Refresh()
	return p
}

// Centred sets every line in the middle.
func (p *Prose) Centred() *Prose {
	p.align = fyne.TextAlignCenter
	p.Refresh()
	return p
}

// SetText changes what the prose says.
func (p *Prose) SetText(text string) {
	if p.text == text {
		return
	}
	p.text = text
	p.Refresh()
}

// Label implements [Labelled].
func (p *Prose) Label() string { return p.text }

// CreateRenderer implements fyne.Widget.
func (p *Prose) CreateRenderer() fyne.WidgetRenderer {
	p.made = &drawing{of: p, place: p.place, measure: p.measure, paint: p.set}
	return p.made.start()
}

func (p *Prose) measure() fyne.Size {
	n := len(wrap(p.text, p.size, false, p.width))
	if strings.TrimSpace(p.text) == "" {
		n = 0
	}
	return fyne.NewSize(p.least, float32(n)*p.leading())
}

// leading is the height of a line with the air that several lines need.
func (p *Prose) leading() float32 { return lineOf(p.size) * 1.2 }

// place breaks the lines anew only when the width changed; the parent measures
// again afterwards, because the height follows from the width.
func (p *Prose) place(size fyne.Size) {
	p.width = max(size.Width, p.least)
	p.set()
	line := p.leading()
	for i, t := range p.lines {
		put(t, 0, float32(i)*line, size.Width, line)
	}
}

func (p *Prose) set() {
	lines := wrap(p.text, p.size, false, p.width)
	for len(p.lines) < len(lines) {
		p.lines = append(p.lines, words(p.size, false))
	}
	p.lines = p.lines[:len(lines)]
	p.made.objects = p.made.objects[:0]
	for i, t := range p.lines {
		t.TextSize, t.Alignment = p.size, p.align
		say(t, lines[i], look.Color(p.tone))
		p.made.objects = append(p.made.objects, t)
	}
}
