package floor_test

import (
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

	"windlass/internal/clock"
	"windlass/internal/gym"
	"windlass/ui/uitest"
)

// The cards say whose turn comes next, rest too, and where the class is thought to
// be, which the coach may say better.
func TestTheCardsSayWhereTheClassIs(t *testing.T) {
	h, _, _, _ := atBouts(t)
	h.press(fyne.KeySpace)
	h.wait(clock.CountIn + 2*time.Second)
	uitest.See(t, h.window, "usual pace: the 21s", "Wall ball, next Row for calories")
	h.press(fyne.KeyN)
	uitest.See(t, h.window, "about the 15s")
	h.press(fyne.KeyB)
	uitest.See(t, h.window, "about the 21s")
	h.wait(time.Minute)
	uitest.See(t, h.window, "Row for calories, next Rest")
	h.wait(time.Minute)
	uitest.See(t, h.window, "Rest, next Wall ball")
	assert.Empty(t, h.failed)
}

// A chipper's card names the movement and the next.
func TestAChippersCardNamesTheMovement(t *testing.T) {
	h, c, _, _ := atBouts(t)
	for _, p := range c.Pieces {
		p.Workout = gym.Workout{Format: gym.Chipper, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 50}, {Movement: "burpee", Amount: 30}}}
		assert.NoError(t, h.KeepPiece(c.ID, p))
	}
	h.press(fyne.KeySpace)
	h.wait(clock.CountIn + 2*time.Second)
	uitest.See(t, h.window, "usual pace: 1 of 2: Kettlebell swing, next Burpee")
	h.press(fyne.KeyN)
	uitest.See(t, h.window, "about 2 of 2: Burpee")
}
