package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"windlass/ui/kit"
	"windlass/ui/room"
)

// press is a key with what is held down beside it.
type press struct {
	name fyne.KeyName
	held fyne.KeyModifier
}

var heldNames = map[string]fyne.KeyModifier{
	"Ctrl": fyne.KeyModifierShortcutDefault, "Shift": fyne.KeyModifierShift, "Alt": fyne.KeyModifierAlt,
}

// keyNames are keys that a coach reads by another name than Fyne's.
var keyNames = map[string]fyne.KeyName{
	"Esc": fyne.KeyEscape, "Enter": fyne.KeyReturn, "Page Up": fyne.KeyPageUp, "Page Down": fyne.KeyPageDown,
	"Del": fyne.KeyDelete, "+": fyne.KeyPlus, "-": fyne.KeyMinus,
}

// readPress reads a key as the coach reads it.
//
//	press = { ("Ctrl" | "Shift" | "Alt") "+" } key
func readPress(text string) press {
	var p press
	for {
		head, rest, more := strings.Cut(text, "+")
		held, ok := heldNames[head]
		if !more || !ok {
			break
		}
		p.held |= held
		text = rest
	}
	p.name = fyne.KeyName(text)
	if name, ok := keyNames[text]; ok {
		p.name = name
	}
	return p
}

// listen makes the window's canvas hand its keys to the room in front and to the
// keys that work everywhere.
func (w *Window) listen() {
	canvas := w.window.Canvas()
	kit.HearKeys(canvas, func(key *fyne.KeyEvent) { w.Typed(key) })
	for _, combination := range w.combinations() {
		canvas.AddShortcut(kit.ShortcutOf(combination.name, combination.held),
			func(fyne.Shortcut) { w.do(combination) })
	}
}

// combinations are the keys with something held down, of every room, each once,
// and every letter with Ctrl: a part of a room that comes to the front later has
// keys that the room does not tell of yet.
func (w *Window) combinations() []press {
	seen := map[press]bool{}
	var all []press
	note := func(keys []room.Key) {
		for _, k := range keys {
			if p := readPress(k.Press); p.held != 0 && !seen[p] {
				seen[p] = true
				all = append(all, p)
			}
		}
	}
	note(w.keys())
	for letter := 'A'; letter <= 'Z'; letter++ {
		note([]room.Key{{Press: "Ctrl+" + string(letter)}})
	}
	for _, r := range w.rooms {
		note(r.Keys())
	}
	return all
}

// Typed implements room.Host.
func (w *Window) Typed(key *fyne.KeyEvent) bool {
	name := key.Name
	if name == fyne.KeyEnter {
		name = fyne.KeyReturn
	}
	return w.do(press{name: name, held: w.held()})
}

// held are the modifiers held down, where the driver can tell.
func (w *Window) held() fyne.KeyModifier {
	if d, ok := fyne.CurrentApp().Driver().(desktop.Driver); ok {
		return d.CurrentKeyModifiers()
	}
	return 0
}

// Press does what a key does, written as the coach reads it: "Ctrl+O".
func (w *Window) Press(press string) bool { return w.do(readPress(press)) }

// do does what a key does in the room in front, or else everywhere. Beneath an open
// question nothing is done: what it asks about would change while it stands, and the
// driver hands combinations past whatever has the keyboard.
func (w *Window) do(p press) bool {
	if w.window.Canvas().Overlays().Top() != nil {
		return false
	}
	for _, keys := range [][]room.Key{w.rooms[w.front].Keys(), w.keys()} {
		for _, k := range keys {
			if readPress(k.Press) == p && k.Do != nil {
				stale := w.notice.Complaint()
				k.Do()
				w.notice.Forget(stale) // the coach went on to something else
				return true
			}
		}
	}
	return false
}
