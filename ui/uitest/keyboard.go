package uitest

import (
	"strings"
	"testing"
	"unicode"

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

// Type types text into whatever has the keyboard, or into the window: for every
// character the key and then, wherever the keyboard is by now, the character, as a
// desktop's driver sends them.
func Type(t testing.TB, w *Window, text string) {
	t.Helper()
	for _, r := range text {
		if name, ok := keyOf(r); ok {
			sendKey(w, name)
		}
		sendRune(w, r)
	}
}

// keyOf is the key that writes a character; of a few characters only is it known.
func keyOf(r rune) (fyne.KeyName, bool) {
	switch {
	case r == ' ':
		return fyne.KeySpace, true
	case r > ' ' && r <= unicode.MaxASCII:
		return fyne.KeyName(unicode.ToUpper(r)), true
	}
	return "", false
}

func sendKey(w *Window, name fyne.KeyName) {
	if focused := w.Canvas().Focused(); focused != nil {
		focused.TypedKey(&fyne.KeyEvent{Name: name})
	} else if hear := w.Canvas().OnTypedKey(); hear != nil {
		hear(&fyne.KeyEvent{Name: name})
	}
}

func sendRune(w *Window, r rune) {
	if focused := w.Canvas().Focused(); focused != nil {
		focused.TypedRune(r)
	} else if hear := w.Canvas().OnTypedRune(); hear != nil {
		hear(r)
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

// Key presses keys one after the other; those that write a character type it, as
// [Type] does. Tab moves the keyboard on.
func Key(t testing.TB, w *Window, keys ...fyne.KeyName) {
	t.Helper()
	for _, k := range keys {
		switch {
		case k == fyne.KeyTab && !takesTab(w.Canvas().Focused()):
			w.Canvas().FocusNext()
		case k == fyne.KeySpace:
			Type(t, w, " ")
		case len(k) == 1:
			Type(t, w, strings.ToLower(string(k)))
		default:
			sendKey(w, k)
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
