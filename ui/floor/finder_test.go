package floor_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// The loads that a finding climb's calls bring stand in the order of the buttons:
// easy, fair, hard. From 60 kg they are 69, 64.2 and 61.8 kg, with plates from 1.25
// kg the nearest loads are 70, 65 and 62.5.
func TestAFindersLoadsStandInTheOrderOfTheButtons(t *testing.T) {
	h := newHall(t, look.Dark())
	a := h.athlete("Ada Lund", 0, gym.StandardM, "back-squat", "")
	c, err := h.OpenFreeClass()
	require.NoError(t, err)
	h.pieces(c.ID)
	require.NoError(t, h.CheckIn(c.ID, a.ID))
	require.NoError(t, h.StartWith(c.ID, a.ID, gym.Effort{Load: 60e12}))
	h.room.Show(c.ID)
	h.press(fyne.KeyF5)
	uitest.See(t, h.window, "next 70 / 65 / 62.5", "Easy", "Fair", "Hard")
}
