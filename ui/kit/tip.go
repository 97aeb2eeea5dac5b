package kit

import (
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// tip is the small sheet that says what a widget does and which key does it.
type tip struct {
	widget.BaseWidget
	text  string
	sheet *canvas.Rectangle
	words *Prose
}

// tipWidth is the most that a line of a tip is wide, in units.
const tipWidth = 420

// showTip tells what a widget is for, after the moment that its window sets.
// Call HideTip when the pointer leaves.
func showTip(o fyne.CanvasObject, text string) {
	f := floaterOf(o)
	if f == nil || text == "" {
		return
	}
	layer := f.floats()
	layer.tips++
	mine := layer.tips
	show := func() {
		if layer.tips == mine {
			layer.showTip(o, text)
		}
	}
	if f.tipWait() == 0 {
		show()
		return
	}
	time.AfterFunc(f.tipWait(), func() { fyne.Do(show) })
}

// HideTip takes away the tip of the window that shows o, also one that is still to
// come: the pointer left, or what lies under it changes.
func HideTip(o fyne.CanvasObject) {
	f := floaterOf(o)
	if f == nil {
		return
	}
	layer := f.floats()
	layer.tips++
	if layer.tip != nil {
		layer.drop(layer.tip)
		layer.tip = nil
	}
}

// showTip puts the tip under the widget, or above it at the window's foot.
func (f *floating) showTip(o fyne.CanvasObject, text string) {
	if f.tip != nil {
		f.drop(f.tip)
	}
	f.tip = &tip{text: text}
	f.tip.ExtendBaseWidget(f.tip)
	size := f.tip.MinSize()
	at := f.under(o, size.Height)
	at.X = max(look.Gap2, min(at.X, f.box.Size().Width-size.Width-look.Gap2))
	f.show(f.tip, at, size)
}

// Label implements [Labelled].
func (t *tip) Label() string { return t.text }

// CreateRenderer implements fyne.Widget.
func (t *tip) CreateRenderer() fyne.WidgetRenderer {
	t.sheet = box(look.Radius)
	t.words = NewProse(t.text, min(tipWidth, widthOf(t.text, look.BodySize, false)+1))
	return (&drawing{
		of: t, objects: []fyne.CanvasObject{t.sheet, t.words},
		place: func(size fyne.Size) {
			t.sheet.Resize(size)
			put(t.words, look.Gap3, look.Gap2, size.Width-2*look.Gap3, size.Height-2*look.Gap2)
		},
		measure: func() fyne.Size {
			return t.words.MinSize().AddWidthHeight(2*look.Gap3, 2*look.Gap2)
		},
		paint: func() { outline(t.sheet, look.Color(look.Raised), look.Color(look.Edge), look.Hairline) },
	}).start()
}
