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
	assert.Contains(t, h.said[len(h.said)-1], ": about the 15s. B takes one back.")
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

// Where tracks do different workouts the coach sees whose round would be moved, and
// only that one is.
func TestRoundOnIsForTheChosenAthletesWorkout(t *testing.T) {
	h, c, _, _ := atBouts(t)
	other := h.athlete("Cleo Ash", 2, gym.StandardM, "", "")
	p := c.Pieces[2]
	p.Workout = gym.Workout{Format: gym.ForTime, Rounds: 5, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 20}}}
	assert.NoError(t, h.KeepPiece(c.ID, p))
	assert.NoError(t, h.CheckIn(c.ID, other.ID))
	h.press(fyne.KeySpace)
	h.wait(clock.CountIn + 2*time.Second)
	uitest.See(t, h.window, "Round on is for "+h.Track(c.Pieces[0].Track).Name)
	h.press(fyne.KeyEnd)
	uitest.See(t, h.window, "Round on is for "+h.Track(p.Track).Name, "usual pace: round 1 of 5")
	h.press(fyne.KeyN)
	uitest.See(t, h.window, "about round 2 of 5", "usual pace: the 21s")
	assert.Contains(t, h.said[len(h.said)-1], h.Track(p.Track).Name+": about round 2 of 5.")
}
