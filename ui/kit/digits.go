package kit

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// Widths of a digit and of a colon or point, in shares of the text size. All
// digits of the typeface have the same width, which a test of package look holds.
const (
	digitShare = 0.66
	pointShare = 0.34
	lineShare  = 1.22
)

// Digits is a clock: large figures that do not move when they change. Every
// character has a text and a cell of its own, and only a changed one is drawn
// anew; one large text instead would keep a picture of every second in memory.
type Digits struct {
	widget.BaseWidget
	text  string
	tone  look.Meaning
	least float32 // the least text size
	fixed bool
	cells []*canvas.Text
	made  *drawing
}

// NewDigits returns figures of at least a text size, grown to the room they get.
func NewDigits(least float32) *Digits {
	d := &Digits{least: least, tone: look.Text}
	d.ExtendBaseWidget(d)
	return d
}

// Fixed keeps the figures at their least size and returns them.
func (d *Digits) Fixed() *Digits {
	d.fixed = true
	return d
}

// Set shows a text of digits, colons and points, such as "12:34". It may be
// called at every tick: what did not change is not touched.
func (d *Digits) Set(text string, tone look.Meaning) {
	if d.text == text && d.tone == tone {
		return
	}
	sameCells := pattern(d.text) == pattern(text)
	d.text, d.tone = text, tone
	if sameCells && d.made != nil {
		d.show()
		return
	}
	d.Refresh()
}

// Label implements [Labelled].
func (d *Digits) Label() string { return d.text }

// CreateRenderer implements fyne.Widget.
func (d *Digits) CreateRenderer() fyne.WidgetRenderer {
	d.made = &drawing{
		of: d, place: d.place, paint: d.fit,
		measure: func() fyne.Size {
			return fyne.NewSize(share(d.text)*d.least, lineShare*d.least)
		},
	}
	return d.made.start()
}

// fit makes as many cells as there are characters.
func (d *Digits) fit() {
	n := len([]rune(d.text))
	for len(d.cells) < n {
		t := words(d.least, true)
		t.Alignment = fyne.TextAlignCenter
		d.cells = append(d.cells, t)
	}
	d.made.objects = d.made.objects[:0]
	for _, c := range d.cells[:n] {
		d.made.objects = append(d.made.objects, c)
	}
	d.show()
}

func (d *Digits) show() {
	for i, r := range []rune(d.text) {
		say(d.cells[i], string(r), look.Color(d.tone))
	}
}

func (d *Digits) place(size fyne.Size) {
	text := d.least
	if all := share(d.text); all > 0 && !d.fixed {
		text = max(text, min(size.Width/all, size.Height/lineShare))
	}
	x := (size.Width - share(d.text)*text) / 2
	for i, r := range []rune(d.text) {
		w := share(string(r)) * text
		if d.cells[i].TextSize != text {
			d.cells[i].TextSize = text
			d.cells[i].Refresh()
		}
		put(d.cells[i], x, 0, w, size.Height)
		x += w
	}
}

// share is the width of a text in shares of its size.
func share(text string) (all float32) {
	for _, r := range text {
		if strings.ContainsRune(":.,", r) {
			all += pointShare
		} else {
			all += digitShare
		}
	}
	return all
}

// pattern is the text with all figures alike: cells move only when it changes.
func pattern(text string) string {
	return strings.Map(func(r rune) rune {
		if r >= '0' && r <= '9' {
			return '0'
		}
		return r
	}, text)
}
