package ui_test

import (
	"errors"
	"testing"

	"fyne.io/fyne/v2"

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
