// Package uitest drives a room the way a coach does: by what can be read on it,
// with a pointer and a keyboard, in a window without a screen.
//
// Most tests need [Open] and [Tap]; [See] and [Read] tell what the window says,
// and [Golden] holds a picture of it. A widget is found by its words, never by
// its place in a container, and a tap lands only where a pointer would land: not
// on what is hidden, cut off or behind a question.
//
// It is for tests only, on one goroutine; tests that use it must not run in
// parallel, because Fyne knows one running application.
package uitest

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"windlass/ui/kit"
	"windlass/ui/look"
)

// usual is the size of the desk window, in units.
var usual = fyne.NewSize(1440, 900)

// Window is an open window of a test.
type Window struct {
	fyne.Window
	app   fyne.App
	shell *kit.Shell
	over  desktop.Hoverable // what the pointer rests on
	least map[fyne.CanvasObject]fyne.Size
}

// Open shows content in a window of 1440 × 900 in the dark palette. It is closed
// at the end of the test.
func Open(t testing.TB, content fyne.CanvasObject) *Window {
	t.Helper()
	return OpenAs(t, look.Dark(), usual, content)
}

// OpenAs is [Open] with a palette and a size of the content.
//
// The content may be made before the window, but not shown in two.
func OpenAs(t testing.TB, p look.Palette, size fyne.Size, content fyne.CanvasObject) *Window {
	t.Helper()
	app := fyne.CurrentApp()
	if _, ours := app.Settings().Theme().(*look.Theme); !ours {
		app = App(t, p)
	} else if look.Current() != p {
		app.Settings().SetTheme(look.New(p)) // not without need: it reads the typeface anew
	}
	shell, ok := content.(*kit.Shell)
	if !ok {
		shell = kit.NewShell(content)
	}
	shell.TipDelay = 0
	w := test.NewTempWindow(t, shell)
	w.SetPadded(false)
	w.Resize(size)
	return &Window{Window: w, app: app, shell: shell, least: map[fyne.CanvasObject]fyne.Size{}}
}

// App starts an application without a screen in a palette, for tests that make
// widgets before a window or without one.
func App(t testing.TB, p look.Palette) fyne.App {
	t.Helper()
	app := test.NewTempApp(t)
	app.Settings().SetTheme(look.New(p))
	return app
}

// Wear changes the running palette, as the coach does in the middle of a day.
func (w *Window) Wear(p look.Palette) {
	w.app.Settings().SetTheme(look.New(p))
	refresh(w.shell)
	for _, o := range w.Canvas().Overlays().List() {
		refresh(o)
	}
}

// refresh redraws a whole tree; the real driver does so when a theme changes.
func refresh(o fyne.CanvasObject) {
	o.Refresh()
	for _, child := range children(o) {
		refresh(child)
	}
}
