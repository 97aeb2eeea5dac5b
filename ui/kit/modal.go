package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// Modal is a question in front of everything else in a window.
type Modal struct {
	widget.BaseWidget
	window fyne.Canvas
	before fyne.Focusable // what had the keyboard, and gets it back
	answer *Button        // what Enter presses
	way    *Button        // what Escape presses
	width  float32
	leave  func()
	veil   *canvas.Rectangle
	sheet  *Card
	layer  *floating
}

// Question is what a [Modal] asks.
type Question struct {
	Title string
	Text  string            // one or two sentences; may be empty
	Body  fyne.CanvasObject // what to fill in or look at; may be nil
	Width float32           // of the sheet, in units; 0 is a usual width
	// Actions are the answers, the usual one first. Each closes the question,
	// unless its Do returns false.
	Actions []Action
	// Cancel names the way out that changes nothing; empty is "Cancel".
	Cancel string
	// OnCancel, if not nil, hears that the question was left without an answer.
	OnCancel func()
	// First is what has the keyboard first; nil is the first thing of the body
	// that takes it, or else the usual answer.
	First fyne.Focusable
}

// Action is one answer to a question.
type Action struct {
	Label  string
	Danger bool
	Do     func() (done bool)
}

// usualWidth is the width of a question's sheet in units.
const usualWidth = 480

// Ask puts a question in front of a window. Escape leaves it, Return gives the
// usual answer, and the keyboard returns to where it was.
func Ask(window fyne.Canvas, q Question) *Modal {
	m := &Modal{window: window, before: window.Focused(), width: q.Width, leave: q.OnCancel, layer: newFloating()}
	if m.width == 0 {
		m.width = usualWidth
	}
	m.sheet = NewCard(q.Title, m.content(q))
	m.sheet.margin = look.Gap6
	m.ExtendBaseWidget(m)
	window.Overlays().Add(m)
	m.Resize(window.Size())
	m.focusFirst(q)
	return m
}

func (m *Modal) focusFirst(q Question) {
	first := q.First
	if first == nil && q.Body != nil {
		m.window.FocusNext()
		first = m.window.Focused()
	}
	// In a body without anything to fill in, the way out would come first.
	if b, isButton := first.(*Button); first == nil || isButton && b == m.way {
		first = m.answer
	}
	m.window.Focus(first)
}

// content is the text, the body and the row of answers. The way out stands
// first, the usual answer at the far end, where the eye ends.
func (m *Modal) content(q Question) fyne.CanvasObject {
	rows := []fyne.CanvasObject{}
	if q.Text != "" {
		rows = append(rows, NewProse(q.Text, m.width-2*look.Gap6))
	}
	if q.Body != nil {
		rows = append(rows, q.Body)
	}
	m.way = NewButton(orElse(q.Cancel, "Cancel"), m.cancel).Key("Esc")
	buttons := []fyne.CanvasObject{Fill(), m.way}
	for i := len(q.Actions) - 1; i >= 0; i-- {
		buttons = append(buttons, m.button(q.Actions[i], i == 0))
	}
	if len(q.Actions) == 0 {
		m.answer = m.way
	}
	return Column(look.Gap4, append(rows, Row(look.Gap2, buttons...))...)
}

func (m *Modal) button(a Action, usual bool) *Button {
	b := NewButton(a.Label, func() {
		if a.Do == nil || a.Do() {
			m.Close()
		}
	})
	switch {
	case a.Danger:
		b.Danger()
	case usual:
		b.Primary()
	}
	if usual {
		m.answer = b.Key("Enter")
	}
	return b
}

func orElse(text, other string) string {
	if text == "" {
		return other
	}
	return text
}

// Close takes the question away and gives the keyboard back, unless an answer
// gave it to something else.
func (m *Modal) Close() {
	m.window.Overlays().Remove(m)
	if m.before != nil && m.window.Focused() == nil {
		m.window.Focus(m.before)
	}
}

func (m *Modal) cancel() {
	m.Close()
	if m.leave != nil {
		m.leave()
	}
}

// TypedKey answers for every widget of the question that has no use for a key.
func (m *Modal) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeyEscape:
		m.cancel()
	case fyne.KeyReturn, fyne.KeyEnter:
		m.answer.Press()
	}
}

// The driver takes the keyboard from a question when a press falls on nothing
// that can have it. So the question counts as something that can, and is switched
// off, so that Tab passes over it.

// FocusGained implements fyne.Focusable.
func (m *Modal) FocusGained() {}

// FocusLost implements fyne.Focusable.
func (m *Modal) FocusLost() {}

// TypedRune implements fyne.Focusable.
func (m *Modal) TypedRune(rune) {}

// Disabled implements fyne.Disableable.
func (m *Modal) Disabled() bool { return true }

// Enable implements fyne.Disableable; a question stays as it is.
func (m *Modal) Enable() {}

// Disable implements fyne.Disableable; a question stays as it is.
func (m *Modal) Disable() {}

// CreateRenderer implements fyne.Widget.
func (m *Modal) CreateRenderer() fyne.WidgetRenderer {
	m.veil = box(0)
	return (&drawing{
		of: m, objects: []fyne.CanvasObject{m.veil, m.sheet, m.layer.box},
		place:   m.place,
		measure: func() fyne.Size { return m.sheet.MinSize() },
		paint:   func() { fill(m.veil, look.Color(look.Veil)) },
	}).start()
}

// place centres the sheet, a little above the middle.
func (m *Modal) place(size fyne.Size) {
	m.veil.Resize(size)
	m.layer.box.Resize(size)
	width := min(m.width, size.Width-2*look.Gap4)
	m.sheet.Resize(fyne.NewSize(width, m.sheet.MinSize().Height))
	height := min(m.sheet.MinSize().Height, size.Height-2*look.Gap4)
	put(m.sheet, (size.Width-width)/2, (size.Height-height)*0.4, width, height)
}
