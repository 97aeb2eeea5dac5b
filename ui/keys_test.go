package ui_test

import (
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
