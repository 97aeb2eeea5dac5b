package main

import (
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// settleTime is how long after it was opened or moved the wall hands the keyboard on:
// desktops give it to every new window, and the desk's next key is a call.
const settleTime = 3 * time.Second

// takeKeys sets what the wall's own window does with keys. Those of the desk do
// nothing here, but for Ctrl+W, which is the same in both.
func (w *wallWindow) takeKeys() {
	w.window.Canvas().SetOnTypedKey(w.typed)
	w.window.Canvas().SetOnTypedRune(func(rune) { w.strayed() })
	w.window.Canvas().AddShortcut(&desktop.CustomShortcut{KeyName: fyne.KeyW, Modifier: fyne.KeyModifierControl},
		func(fyne.Shortcut) { w.next() })
	w.app.Lifecycle().SetOnEnteredForeground(w.handOn)
	w.app.Lifecycle().SetOnExitedForeground(func() { w.clicked = false })
}

// typed makes the wall a window again, and fills the screen only for a coach who
// clicked it: an F that strays here is a call.
func (w *wallWindow) typed(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeyF, fyne.KeyF11:
		switch {
		case w.place.full():
			w.leave()
		case w.clicked:
			w.place.toggle()
		}
	case fyne.KeyEscape:
		w.leave()
	}
}

// strayed answers a letter that was typed here and is the desk's: it did nothing, but
// the next one reaches the desk, or the wall says how to get there.
func (w *wallWindow) strayed() {
	if w.place.over() {
		w.place.explain()
		return
	}
	go askDesk(w.options.db, askFront)
}

// leave makes the wall a window again and shows the desk, if it lay under the wall.
func (w *wallWindow) leave() {
	over := w.place.over()
	w.place.leave()
	if over {
		w.settle()
		w.handOn()
	}
}

// next fills the screen, and closes a wall that fills it. One that has to lie over the
// desk comes to the front, with the keys that take it away.
func (w *wallWindow) next() {
	if w.place.full() {
		w.app.Quit()
		return
	}
	w.settle()
	w.place.toggle()
	if w.place.over() {
		w.window.RequestFocus()
	}
}

// settle lets the wall hand the keyboard on for a while.
func (w *wallWindow) settle() {
	w.settled = false
	time.AfterFunc(settleTime, func() { fyne.Do(func() { w.settled = true }) })
}

// handOn gives the desk the keyboard that nobody meant for the wall.
func (w *wallWindow) handOn() {
	if !w.settled && !w.place.over() {
		go askDesk(w.options.db, askFront)
	}
}

// clickable tells that the coach has clicked what it shows.
type clickable struct {
	widget.BaseWidget
	shows   fyne.CanvasObject
	clicked func()
}

func newClickable(shows fyne.CanvasObject, clicked func()) *clickable {
	c := &clickable{shows: shows, clicked: clicked}
	c.ExtendBaseWidget(c)
	return c
}

// Tapped implements fyne.Tappable.
func (c *clickable) Tapped(*fyne.PointEvent) { c.clicked() }

// CreateRenderer implements fyne.Widget.
func (c *clickable) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(c.shows) }
