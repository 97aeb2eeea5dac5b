package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// pressable is what buttons, toggles and choices share: pointer and keyboard
// states, a tip, and being switched off. The widget that embeds it draws itself.
type pressable struct {
	widget.DisableableWidget
	hovered, held, focused bool
	tip                    string
	press                  func()
	me                     fyne.Widget // the widget that embeds this one
}

// is must be called once by the widget that embeds this one.
func (p *pressable) is(w fyne.Widget, press func()) {
	p.me, p.press = w, press
	p.ExtendBaseWidget(w)
}

// Tapped implements fyne.Tappable.
func (p *pressable) Tapped(*fyne.PointEvent) { p.do() }

func (p *pressable) do() {
	if p.Disabled() || p.press == nil {
		return
	}
	HideTip(p.me)
	p.press()
}

// MouseIn implements desktop.Hoverable.
func (p *pressable) MouseIn(*desktop.MouseEvent) {
	p.hovered = true
	p.Refresh()
	showTip(p.me, p.tip)
}

// MouseMoved implements desktop.Hoverable.
func (p *pressable) MouseMoved(*desktop.MouseEvent) {}

// MouseOut implements desktop.Hoverable.
func (p *pressable) MouseOut() {
	p.hovered, p.held = false, false
	p.Refresh()
	HideTip(p.me)
}

// MouseDown implements desktop.Mouseable.
func (p *pressable) MouseDown(*desktop.MouseEvent) {
	p.held = true
	p.Refresh()
}

// MouseUp implements desktop.Mouseable.
func (p *pressable) MouseUp(*desktop.MouseEvent) {
	p.held = false
	p.Refresh()
}

// Cursor implements desktop.Cursorable.
func (p *pressable) Cursor() desktop.Cursor {
	if p.Disabled() {
		return desktop.DefaultCursor
	}
	return desktop.PointerCursor
}

// FocusGained implements fyne.Focusable.
func (p *pressable) FocusGained() {
	p.focused = true
	p.Refresh()
}

// FocusLost implements fyne.Focusable.
func (p *pressable) FocusLost() {
	p.focused = false
	p.Refresh()
}

// TypedRune implements fyne.Focusable. The space bar presses with its character,
// as [HearKeys] does.
func (p *pressable) TypedRune(r rune) {
	if r == ' ' {
		p.do()
		return
	}
	PassRune(p.me, r)
}

// TypedKey implements fyne.Focusable.
func (p *pressable) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeySpace: // see TypedRune
	case fyne.KeyReturn, fyne.KeyEnter:
		p.do()
	default:
		PassKey(p.me, key)
	}
}
