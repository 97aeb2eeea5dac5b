package ui_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/ui/look"
	"windlass/ui/room"
)

// Every room fits the window it opens in; what asks for more is cut off on the
// smallest screen that the program promises.
func TestEveryRoomFitsTheSmallestScreen(t *testing.T) {
	w, in := open(t, look.Dark())
	for _, name := range []string{room.Today, room.Roster, room.Cycle, room.Floor, room.Handouts, room.Gym} {
		w.Open(name, "")
		least := in.Content().MinSize()
		assert.LessOrEqual(t, least.Width, float32(1440), "%s asks for %v", name, least)
		assert.LessOrEqual(t, least.Height, float32(900), "%s asks for %v", name, least)
	}
}
