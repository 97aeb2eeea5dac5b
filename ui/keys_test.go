package ui_test

import (
	"errors"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
	"windlass/ui/uitest"
)

// A section that was not in front when the window opened has its keys too.
func TestKeysOfALaterSectionAreHeard(t *testing.T) {
	w, in := open(t, look.Dark())
	w.Open(room.Roster, "")
	w.Press("F6")
	uitest.Shortcut(t, in, kit.ShortcutOf(fyne.KeyG, fyne.KeyModifierControl))
	uitest.See(t, in, "Go lighter")
}

// A complaint stands until the coach does something else; one that is made again
// stays.
func TestAComplaintGoesWithTheNextKey(t *testing.T) {
	w, on := open(t, look.Dark())
	w.Fail(errors.New("keep a thing: it is broken"))
	uitest.See(t, on, "Could not keep a thing: it is broken.")
	w.Press("Ctrl+3")
	uitest.NotSee(t, on, "Could not keep a thing: it is broken.")
	w.Say("Something was done.", true)
	w.Press("Ctrl+2")
	uitest.See(t, on, "Something was done.")
}

// What a question asks about stays as it is while it stands: no key of the window
// acts beneath it.
func TestNoKeyActsBeneathAQuestion(t *testing.T) {
	w, in := open(t, look.Dark())
	w.Press("F12")
	sounds := w.Desk().Settings().Sound
	uitest.Key(t, in, fyne.KeyF1)
	uitest.See(t, in, "What the keys do")
	for _, letter := range []fyne.KeyName{fyne.KeyZ, fyne.KeyY, fyne.KeyW, fyne.KeyK, fyne.Key2} {
		uitest.Shortcut(t, in, kit.ShortcutOf(letter, fyne.KeyModifierControl))
		uitest.See(t, in, "What the keys do")
	}
	assert.Equal(t, sounds, w.Desk().Settings().Sound)
	assert.Equal(t, room.Today, w.Front())

	uitest.Key(t, in, fyne.KeyEscape)
	uitest.See(t, in, "The clock")
	uitest.NotSee(t, in, "without a wall window")
	uitest.Shortcut(t, in, kit.ShortcutOf(fyne.KeyZ, fyne.KeyModifierControl))
	assert.NotEqual(t, sounds, w.Desk().Settings().Sound, "answered, the keys act again")
}
