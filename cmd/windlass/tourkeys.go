package main

import (
	"strings"
	"time"
	"unicode"

	"fyne.io/fyne/v2"

	"windlass/ui/kit"
)

// keyGap lets the window draw between two keys, as a fast typist does.
const keyGap = 60 * time.Millisecond

// press presses keys one after the other, each written as the coach reads it.
func (t *tour) press(keys ...string) {
	for _, key := range keys {
		onThread(func() bool { t.key(key); return true })
		time.Sleep(keyGap)
	}
}

// key gives one key to what has the keyboard, and then its character to what has it
// by then, as the driver does.
func (t *tour) key(name string) {
	canvas := t.window.Canvas()
	focused := canvas.Focused()
	if rest, ok := strings.CutPrefix(name, "Ctrl+"); ok {
		shortcut := kit.ShortcutOf(fyne.KeyName(rest), fyne.KeyModifierShortcutDefault)
		if s, ok := focused.(fyne.Shortcutable); ok {
			s.TypedShortcut(shortcut)
		} else if s, ok := canvas.(fyne.Shortcutable); ok {
			s.TypedShortcut(shortcut)
		}
		return
	}
	event := &fyne.KeyEvent{Name: fyne.KeyName(name)}
	switch {
	case name == "Tab":
		canvas.FocusNext()
	case focused != nil:
		focused.TypedKey(event)
	case canvas.OnTypedKey() != nil:
		canvas.OnTypedKey()(event)
	}
	switch {
	case name == "Space":
		t.rune(' ')
	case len(name) == 1:
		t.rune(unicode.ToLower(rune(name[0])))
	}
}

// rune gives one character to what has the keyboard.
func (t *tour) rune(r rune) {
	canvas := t.window.Canvas()
	if focused := canvas.Focused(); focused != nil {
		focused.TypedRune(r)
	} else if typed := canvas.OnTypedRune(); typed != nil {
		typed(r)
	}
}

// intoField presses a letter that leads to a field, where the keyboard is in none yet:
// there it would be written.
func (t *tour) intoField(key string) {
	writing := onThread(func() bool {
		_, ok := t.window.Canvas().Focused().(interface{ SelectedText() string })
		return ok
	})
	if !writing {
		t.press(key)
	}
}

// write types a text into what has the keyboard.
func (t *tour) write(text string) {
	onThread(func() bool {
		for _, r := range text {
			t.rune(r)
		}
		return true
	})
	time.Sleep(keyGap)
}
