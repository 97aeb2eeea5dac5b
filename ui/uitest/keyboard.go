package uitest

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/require"
)

// Input is a widget that is filled in under a name, such as a field.
type Input interface {
	// InputName is what the coach reads beside it.
	InputName() string
	// Keyboard is what takes the typing.
	Keyboard() fyne.Focusable
}

// Type types text into whatever has the keyboard, or into the window.
func Type(t testing.TB, w *Window, text string) {
	t.Helper()
	for _, r := range text {
		switch focused := w.Canvas().Focused(); {
		case focused != nil:
			focused.TypedRune(r)
		case w.Canvas().OnTypedRune() != nil:
			w.Canvas().OnTypedRune()(r)
		}
	}
}

// Fill replaces what stands in the input of that name.
func Fill(t testing.TB, w *Window, name, text string) {
	t.Helper()
	var found Input
	walk(front(w), func(s spot) bool {
		if in, ok := s.object.(Input); ok && in.InputName() == name {
			found = in
		}
		return true
	})
	require.NotNil(t, found, "nothing to fill in is called %q", name)
	w.Canvas().Focus(found.Keyboard())
	if s, ok := found.Keyboard().(fyne.Shortcutable); ok {
		s.TypedShortcut(&fyne.ShortcutSelectAll{})
	}
	if text == "" {
		Key(t, w, fyne.KeyDelete)
	}
	Type(t, w, text)
}

// Key presses keys one after the other. Tab moves the keyboard on.
func Key(t testing.TB, w *Window, keys ...fyne.KeyName) {
	t.Helper()
	for _, k := range keys {
		focused := w.Canvas().Focused()
		switch {
		case k == fyne.KeyTab && !takesTab(focused):
			w.Canvas().FocusNext()
		case focused != nil:
			focused.TypedKey(&fyne.KeyEvent{Name: k})
		case w.Canvas().OnTypedKey() != nil:
			w.Canvas().OnTypedKey()(&fyne.KeyEvent{Name: k})
		}
	}
}

func takesTab(f fyne.Focusable) bool {
	tab, ok := f.(fyne.Tabbable)
	return ok && tab.AcceptsTab()
}

// Shortcut presses keys that belong together, such as Ctrl+C.
func Shortcut(t testing.TB, w *Window, s fyne.Shortcut) {
	t.Helper()
	target, ok := w.Canvas().Focused().(fyne.Shortcutable)
	if !ok {
		target, ok = w.Canvas().(fyne.Shortcutable)
	}
	require.True(t, ok, "nothing takes shortcuts")
	target.TypedShortcut(s)
}
