package kit

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// What a drop list shows at once, and its least width in units.
const (
	dropRows  = 8
	dropWidth = 220
)

// dropList is the sheet of options under a [Choice]. It never has the keyboard:
// the field above it keeps that.
type dropList struct {
	widget.BaseWidget
	options []Option
	at      int // the marked option
	top     int // the first in sight
	hovered bool
	pick    func(Option)
	left    func() // hears that the pointer left
	sheet   *canvas.Rectangle
	light   *canvas.Rectangle
	names   [dropRows]*canvas.Text
	notes   [dropRows]*canvas.Text
	more    *canvas.Text
	wheel   *wheel
}

// wheel hears the wheel for a widget that must not be cut off at its bounds, as
// everything scrollable is.
type wheel struct {
	widget.BaseWidget
	turned func(*fyne.ScrollEvent)
}

// Scrolled implements fyne.Scrollable.
func (w *wheel) Scrolled(e *fyne.ScrollEvent) { w.turned(e) }

// CreateRenderer implements fyne.Widget.
func (w *wheel) CreateRenderer() fyne.WidgetRenderer {
	return (&drawing{of: w, measure: func() fyne.Size { return fyne.Size{} }}).start()
}

func newDropList(pick func(Option), left func()) *dropList {
	d := &dropList{pick: pick, left: left}
	d.wheel = &wheel{turned: d.scrolled}
	d.wheel.ExtendBaseWidget(d.wheel)
	d.ExtendBaseWidget(d)
	return d
}

// set shows options with one of them marked.
func (d *dropList) set(options []Option, at int) {
	d.options, d.at, d.top = options, at, 0
	d.reveal()
}

// move marks another option, as far as there are any.
func (d *dropList) move(by int) {
	d.at = max(0, min(d.at+by, len(d.options)-1))
	d.reveal()
}

func (d *dropList) reveal() {
	d.top = max(min(d.top, d.at), d.at-dropRows+1, 0)
	d.Refresh()
}

func (d *dropList) marked() (Option, bool) {
	if d.at < 0 || d.at >= len(d.options) {
		return Option{}, false
	}
	return d.options[d.at], true
}

// rows is how many options are in sight.
func (d *dropList) rows() int { return min(dropRows, len(d.options)) }

// under is the option at a height, or −1.
func (d *dropList) under(y float32) int {
	row := int((y - look.Gap1) / look.RowHeight)
	if y < look.Gap1 || row >= d.rows() {
		return -1
	}
	return d.top + row
}

// Tapped implements fyne.Tappable.
func (d *dropList) Tapped(e *fyne.PointEvent) {
	if i := d.under(e.Position.Y); i >= 0 {
		d.pick(d.options[i])
	}
}

// MouseIn implements desktop.Hoverable.
func (d *dropList) MouseIn(e *desktop.MouseEvent) {
	d.hovered = true
	d.MouseMoved(e)
}

// MouseMoved implements desktop.Hoverable.
func (d *dropList) MouseMoved(e *desktop.MouseEvent) {
	if i := d.under(e.Position.Y); i >= 0 && i != d.at {
		d.at = i
		d.Refresh()
	}
}

// MouseOut implements desktop.Hoverable.
func (d *dropList) MouseOut() {
	d.hovered = false
	d.left()
}

// scrolled moves the options under the pointer.
func (d *dropList) scrolled(e *fyne.ScrollEvent) {
	by := 1
	if e.Scrolled.DY > 0 {
		by = -1
	}
	d.top = max(0, min(d.top+by, len(d.options)-dropRows))
	d.at = max(d.top, min(d.at, d.top+d.rows()-1))
	d.Refresh()
}

// CreateRenderer implements fyne.Widget.
func (d *dropList) CreateRenderer() fyne.WidgetRenderer {
	d.sheet, d.light, d.more = box(look.Radius), box(4), words(look.CaptionSize, false)
	objects := []fyne.CanvasObject{d.wheel, d.sheet, d.light, d.more}
	for i := range dropRows {
		d.names[i], d.notes[i] = words(look.BodySize, false), words(look.CaptionSize, false)
		d.notes[i].Alignment = fyne.TextAlignTrailing
		objects = append(objects, d.names[i], d.notes[i])
	}
	return (&drawing{of: d, objects: objects, place: d.place, measure: d.measure, paint: d.paint}).start()
}

func (d *dropList) measure() fyne.Size {
	height := float32(max(1, d.rows()))*look.RowHeight + 2*look.Gap1
	if len(d.options) > dropRows {
		height += look.Gap5
	}
	return fyne.NewSize(dropWidth, height)
}

func (d *dropList) place(size fyne.Size) {
	d.sheet.Resize(size)
	d.wheel.Resize(size)
	put(d.light, look.Gap1, look.Gap1+float32(d.at-d.top)*look.RowHeight, size.Width-2*look.Gap1, look.RowHeight)
	inner := size.Width - 2*look.Gap3
	for i := range dropRows {
		y := look.Gap1 + float32(i)*look.RowHeight
		put(d.names[i], look.Gap3, y, inner, look.RowHeight)
		put(d.notes[i], look.Gap3, y, inner, look.RowHeight)
	}
	put(d.more, look.Gap3, look.Gap1+float32(d.rows())*look.RowHeight, inner, look.Gap5)
}

func (d *dropList) paint() {
	p := look.Current()
	outline(d.sheet, p[look.Raised], p[look.Edge], look.Hairline)
	fill(d.light, p[look.Selection])
	d.light.Hidden = len(d.options) == 0
	inner := max(dropWidth, d.Size().Width) - 2*look.Gap3
	for i := range dropRows {
		name, note := "", ""
		if i < d.rows() {
			o := d.options[d.top+i]
			name = elide(o.Text, look.BodySize, false, inner)
			note = elide(o.Note, look.CaptionSize, false, inner-widthOf(name, look.BodySize, false)-look.Gap2)
		} else if len(d.options) == 0 && i == 0 {
			name = "Nothing is called that"
		}
		say(d.names[i], name, p[look.Text])
		say(d.notes[i], note, p[look.Muted])
	}
	rest := ""
	if n := len(d.options) - d.top - dropRows; n > 0 {
		rest = fmt.Sprintf("%d more below; type to narrow", n)
	}
	say(d.more, rest, p[look.Muted])
}
