package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

// canvasOf returns the canvas that shows an object, or nil. The driver learns where
// an object stands when it draws it, and forgets what it has not drawn for a minute;
// of what has just come to the front the only window is meant.
func canvasOf(o fyne.CanvasObject) fyne.Canvas {
	app := fyne.CurrentApp()
	if app == nil {
		return nil
	}
	if c := app.Driver().CanvasForObject(o); c != nil {
		return c
	}
	if windows := app.Driver().AllWindows(); len(windows) == 1 {
		return windows[0].Canvas()
	}
	return nil
}

// Focus gives a widget the keyboard, if it is on a screen.
func Focus(w fyne.Focusable) {
	o, ok := w.(fyne.CanvasObject)
	if !ok {
		return
	}
	if c := canvasOf(o); c != nil {
		c.Focus(w)
	}
}

// HearKeys hands a window its keys, those that a focused widget passes on too. A
// key that writes a character is done when the character comes, which every driver
// sends after the key: what the key opens or gives the keyboard to is then not
// written in by it.
func HearKeys(window fyne.Canvas, do func(*fyne.KeyEvent)) {
	var waits *fyne.KeyEvent
	window.SetOnTypedKey(func(key *fyne.KeyEvent) {
		if waits = nil; writes(key.Name) {
			waits = key
			return
		}
		do(key)
	})
	window.SetOnTypedRune(func(rune) {
		key := waits
		if waits = nil; key != nil {
			do(key)
		}
	})
}

// writes reports whether a key without anything held beside it writes a character.
func writes(key fyne.KeyName) bool { return len(key) == 1 || key == fyne.KeySpace }

// PassKey hands a key that a focused widget has no use for to the question in
// front, or else to the window, so that a window's single keys work wherever the
// keyboard is.
func PassKey(from fyne.CanvasObject, key *fyne.KeyEvent) {
	c := canvasOf(from)
	if c == nil {
		return
	}
	if q, ok := c.Overlays().Top().(*Modal); ok {
		q.TypedKey(key)
		return
	}
	if f := c.OnTypedKey(); f != nil {
		f(key)
	}
}

// PassRune is [PassKey] for a typed character.
func PassRune(from fyne.CanvasObject, r rune) {
	c := canvasOf(from)
	if c == nil || c.Overlays().Top() != nil {
		return
	}
	if f := c.OnTypedRune(); f != nil {
		f(r)
	}
}

// PassShortcut is [PassKey] for a shortcut such as Ctrl+K.
func PassShortcut(from fyne.CanvasObject, s fyne.Shortcut) {
	c := canvasOf(from)
	if c == nil || c.Overlays().Top() != nil {
		return
	}
	if sc, ok := c.(fyne.Shortcutable); ok {
		sc.TypedShortcut(s)
	}
}

// modifiers are the keys held down at this moment; none where no driver knows.
func modifiers() fyne.KeyModifier {
	if d, ok := fyne.CurrentApp().Driver().(desktop.Driver); ok {
		return d.CurrentKeyModifiers()
	}
	return 0
}

// ShortcutOf is the shortcut that the desktop driver sends for a key with
// something held down. It has names of its own for the usual editing keys; a
// window that listened for Ctrl+Z by its letters would never hear it.
func ShortcutOf(key fyne.KeyName, held fyne.KeyModifier) fyne.Shortcut {
	if held == fyne.KeyModifierShortcutDefault {
		switch key {
		case fyne.KeyZ:
			return &fyne.ShortcutUndo{}
		case fyne.KeyY:
			return &fyne.ShortcutRedo{}
		case fyne.KeyX:
			return &fyne.ShortcutCut{}
		case fyne.KeyC:
			return &fyne.ShortcutCopy{}
		case fyne.KeyV:
			return &fyne.ShortcutPaste{}
		case fyne.KeyA:
			return &fyne.ShortcutSelectAll{}
		}
	}
	return &desktop.CustomShortcut{KeyName: key, Modifier: held}
}
