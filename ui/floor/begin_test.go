package floor_test

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// late is a hall whose racks the squatters hold one each before the last, who
// cleans, comes.
func late(t *testing.T) (*hall, gym.Class, gym.Athlete) {
	t.Helper()
	h := newHall(t, look.Dark())
	c, err := h.OpenFreeClass()
	require.NoError(t, err)
	h.pieces(c.ID)
	for i := range h.Book().Equipment.Stations {
		a := h.athlete(fmt.Sprint("Ada ", i), 0, gym.StandardM, "back-squat", fmt.Sprintf("3x%d", 100+5*i))
		require.NoError(t, h.CheckIn(c.ID, a.ID))
		require.NoError(t, h.MoveLifter(c.ID, a.ID, i))
	}
	last := h.athlete("Una Dahl", 1, gym.StandardW, "clean", "1x60")
	require.NoError(t, h.CheckIn(c.ID, last.ID))
	h.room.Show(c.ID)
	require.Equal(t, -1, h.lifter(c.ID, last.ID).Station)
	return h, c, last
}

func TestTheClockAsksWhileSomebodyHasNoStation(t *testing.T) {
	h, c, last := late(t)
	uitest.See(t, h.window, "Una Dahl has no station. Shared anew, everybody has one.")
	h.press(fyne.KeyF5)
	uitest.See(t, h.window, "Start while lifters have no station?")
	uitest.Tap(t, h.window, "Not yet")
	now, _ := h.Class(c.ID)
	assert.Equal(t, gym.SetUp, now.Stage)

	h.press(fyne.KeyF5)
	uitest.Tap(t, h.window, "Share anew")
	assert.GreaterOrEqual(t, h.lifter(c.ID, last.ID).Station, 0)
	uitest.NotSee(t, h.window, "Una Dahl has no station")
	h.press(fyne.KeyF5)
	now, _ = h.Class(c.ID)
	assert.True(t, now.Clock.Running, "nobody is left to ask about")
}

func TestTheClockStartsAnyway(t *testing.T) {
	h, c, last := late(t)
	h.press(fyne.KeyF4, fyne.KeySpace) // from the climb as from the set-up
	uitest.Tap(t, h.window, "Start anyway")
	now, _ := h.Class(c.ID)
	assert.True(t, now.Clock.Running)
	assert.Equal(t, -1, h.lifter(c.ID, last.ID).Station)
	h.press(fyne.KeySpace, fyne.KeySpace)
	uitest.NotSee(t, h.window, "Start while lifters have no station?")
}

// The set-up opens with the keyboard in the search: Enter and the arrows do there
// what they do in the list.
func TestEnterChecksInWithoutAName(t *testing.T) {
	h := newHall(t, look.Dark())
	h.athlete("Ada Lund", 0, gym.StandardM, "back-squat", "3x100")
	bo := h.athlete("Bo Ito", 0, gym.StandardM, "back-squat", "3x140")
	c, err := h.OpenFreeClass()
	require.NoError(t, err)
	h.pieces(c.ID)
	h.room.Show(c.ID)
	h.press(fyne.KeyDown)
	uitest.See(t, h.window, "Not here yet. Enter checks them in.")
	h.press(fyne.KeyReturn)
	c, _ = h.Class(c.ID)
	require.Len(t, c.Lifters, 1)
	assert.Equal(t, bo.ID, c.Lifters[0].Athlete)
	h.press(fyne.KeyReturn)
	c, _ = h.Class(c.ID)
	assert.Len(t, c.Lifters, 1, "a second Enter checks nobody out")
}

func TestHoldMovesNoButton(t *testing.T) {
	h, _, _, _ := small(t)
	h.press(fyne.KeyF5)
	before, ok := uitest.Where(h.window, "Next rung")
	require.True(t, ok)
	h.press(fyne.KeySpace)
	uitest.See(t, h.window, "Go on")
	after, ok := uitest.Where(h.window, "Next rung")
	require.True(t, ok)
	assert.Equal(t, before, after)
}
