package ui_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/ui"
	"windlass/ui/look"
	"windlass/ui/room"
	"windlass/ui/uitest"
)

// bars is what a desktop of the smallest screen that the program promises keeps for
// a window's title, in units.
const bars = 40

// Every room fits the window it opens in, also on a screen of just its size: a room
// that asks for more makes the window taller than the screen, and it stays so.
func TestEveryRoomFitsTheSmallestScreen(t *testing.T) {
	w, in := open(t, look.Dark())
	for _, name := range []string{room.Today, room.Roster, room.Cycle, room.Floor, room.Handouts, room.Gym} {
		w.Open(name, "")
		fits(t, in, name)
	}
	w.Open(room.Roster, "")
	for _, part := range []string{"Lifts", "Conditioning", "Week", "Details"} {
		uitest.Tap(t, in, part)
		fits(t, in, part)
	}
}

func fits(t *testing.T, in *uitest.Window, name string) {
	t.Helper()
	least := in.Content().MinSize()
	assert.LessOrEqual(t, least.Width, ui.Size.Width, "%s asks for %v", name, least)
	assert.LessOrEqual(t, least.Height, ui.Size.Height-bars, "%s asks for %v", name, least)
}
