package floor_test

import (
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
	"windlass/ui/uitest"
)

// scant is a class of two stations and one pair of each plate, so that both bars
// cannot be loaded at once.
func scant(t *testing.T) (*hall, gym.Class) {
	t.Helper()
	h, c, _, _ := small(t)
	e := h.Book().Equipment
	e.Stock.Plates = []plates.Plate{
		{Mass: 20 * mass.Kilogram, Unit: mass.KG, Pairs: 1, Full: true},
		{Mass: 10 * mass.Kilogram, Unit: mass.KG, Pairs: 1, Full: true},
		{Mass: 5 * mass.Kilogram, Unit: mass.KG, Pairs: 1},
		{Mass: 2500 * mass.Gram, Unit: mass.KG, Pairs: 1},
		{Mass: 1250 * mass.Gram, Unit: mass.KG, Pairs: 1},
	}
	require.NoError(t, h.KeepEquipment(e))
	for i, l := range c.Lifters {
		require.NoError(t, h.MoveLifter(c.ID, l.Athlete, i))
	}
	c, _ = h.Class(c.ID)
	return h, c
}

// A shortage on the live floor is one key away from its mend, which says what it
// changed and is undone as one step; whoever leaves it is not asked again.
func TestAShortageIsMendedOnTheLiveFloor(t *testing.T) {
	h, c := scant(t)
	uitest.See(t, h.window, "all stations together want", "Take turns")
	h.press(fyne.KeyF5)
	uitest.See(t, h.window, "all stations together want", "Leave it")
	h.press(fyne.KeyF8)
	uitest.NotSee(t, h.window, "all stations together want")
	assert.Contains(t, h.said[len(h.said)-1], "Rung")
	now, _ := h.Class(c.ID)
	excepted := 0
	for _, l := range now.Lifters {
		excepted += len(l.Exceptions)
	}
	assert.NotZero(t, excepted)
	uitest.See(t, h.window, "last:")

	_, err := h.Undo()
	require.NoError(t, err)
	uitest.See(t, h.window, "all stations together want")
	h.press(fyne.KeyF9)
	uitest.NotSee(t, h.window, "all stations together want")
	h.wait(time.Second)
	uitest.NotSee(t, h.window, "all stations together want")
	h.press(fyne.KeyF8)
	assert.Equal(t, "There is nothing to mend.", h.said[len(h.said)-1])
}
