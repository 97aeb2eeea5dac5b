package floor_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/ui/look"
)

// The list of classes has the keyboard when the floor comes to the front: the arrows
// choose and Enter opens the one chosen.
func TestAClassIsChosenByKeys(t *testing.T) {
	h := newHall(t, look.Dark())
	for _, s := range []struct {
		name string
		at   day.Clock
	}{{"Noon", 12 * 60}, {"Evening", 18 * 60}} {
		_, err := h.KeepSlot(gym.Slot{Weekday: day.Monday, At: s.at, Minutes: 60, Name: s.name})
		require.NoError(t, err)
	}
	h.window.Canvas().Unfocus() // as the window does before it shows a room
	h.room.Show("")
	assert.True(t, h.onList())
	meetings := h.Meetings(h.Today())
	h.press(fyne.KeyHome)
	for range len(meetings) - 1 {
		h.press(fyne.KeyDown)
	}
	h.press(fyne.KeyReturn)
	c, ok := h.LiveClass()
	require.True(t, ok)
	assert.Equal(t, "Evening", c.Name)
}
