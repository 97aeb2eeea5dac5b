package floor_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/kit"
	"windlass/ui/uitest"
)

// atBouts is a class of two at its bout sheet: swings for time, 21-15-9, cap 10:00.
func atBouts(t *testing.T) (h *hall, c gym.Class, ada, bo gym.Athlete) {
	t.Helper()
	h, c, ada, bo = small(t)
	h.press(fyne.KeyF5)
	h.press(fyne.KeyR, fyne.KeyK)
	c, _ = h.Class(c.ID)
	return h, c, ada, bo
}

// onList reports whether the list has the keyboard.
func (h *hall) onList() bool {
	_, ok := h.window.Canvas().Focused().(*kit.DataList)
	return ok
}

// A score is kept like everything else that is typed: when the keyboard leaves.
func TestAScoreIsKeptOnLeaving(t *testing.T) {
	h, c, ada, _ := atBouts(t)
	h.press(fyne.KeyP)
	uitest.Type(t, h.window, "8:45")
	h.press(fyne.KeyTab)
	assert.Equal(t, "8:45", h.lifter(c.ID, ada.ID).Score)
	h.press(fyne.KeyP)
	uitest.Tap(t, h.window, "Bo Ito")
	assert.Equal(t, "8:45", h.lifter(c.ID, ada.ID).Score)
	assert.Empty(t, h.failed)
}

func TestEscapeAndArrowsLeadBackToTheList(t *testing.T) {
	h, c, ada, bo := atBouts(t)
	h.press(fyne.KeyP)
	uitest.Type(t, h.window, "8:4")
	h.press(fyne.KeyEscape)
	assert.True(t, h.onList())
	assert.Empty(t, h.lifter(c.ID, ada.ID).Score, "Escape takes back what was typed")
	h.press(fyne.KeyH)
	c, _ = h.Class(c.ID)
	assert.Equal(t, gym.Held, h.BoutSheet(c)[0].Logged.Outcome)

	h.press(fyne.KeyUp, fyne.KeyP)
	uitest.Type(t, h.window, "8:45")
	h.press(fyne.KeyDown)
	uitest.Type(t, h.window, "9:15")
	h.press(fyne.KeyUp)
	assert.Equal(t, []string{"8:45", "9:15"}, []string{h.lifter(c.ID, ada.ID).Score, h.lifter(c.ID, bo.ID).Score}, "the arrows go from score to score")
	h.press(fyne.KeyEscape)

	uitest.Type(t, h.window, "20")
	h.press(fyne.KeyEscape)
	assert.True(t, h.onList())
	uitest.Type(t, h.window, "2")
	h.press(fyne.KeyReturn) // 2 kg
	assert.True(t, h.onList())
	uitest.Fill(t, h.window, "Load used", "2 kg")
	h.press(fyne.KeyReturn)
	assert.True(t, h.onList(), "Enter on a load that is the same leads back too")
}

// A score past the cap is refused with the cure; one that is hard to believe is
// asked about once.
func TestScoresThatAreLookedAtTwice(t *testing.T) {
	h, c, ada, _ := atBouts(t)
	h.press(fyne.KeyP)
	uitest.Type(t, h.window, "28:15")
	h.press(fyne.KeyReturn)
	assert.Empty(t, h.lifter(c.ID, ada.ID).Score)
	require.Len(t, h.failed, 1)
	assert.Contains(t, h.failed[0], "past the cap of 10:00")
	h.press(fyne.KeyEscape, fyne.KeyP)
	uitest.Type(t, h.window, "0:15")
	h.press(fyne.KeyReturn)
	assert.Empty(t, h.lifter(c.ID, ada.ID).Score)
	h.press(fyne.KeyReturn)
	assert.Equal(t, "0:15", h.lifter(c.ID, ada.ID).Score)
	assert.Len(t, h.failed, 1)
}

// The panel says how likely the load that stands there is held, and when the gym
// owns no such load; a load that cannot have been is refused.
func TestThePanelTellsOfTheLoad(t *testing.T) {
	h, c, _, _ := atBouts(t)
	row := h.BoutSheet(c)[0]
	uitest.See(t, h.window, h.BoutChance(row, row.Load))
	uitest.Type(t, h.window, "13")
	h.press(fyne.KeyReturn)
	uitest.See(t, h.window, h.BoutChance(row, 13*mass.Kilogram), "The gym owns no kettlebell of 13 kg.")
	uitest.Type(t, h.window, "500")
	h.press(fyne.KeyReturn)
	require.Len(t, h.failed, 1)
	assert.Contains(t, h.failed[0], "500 kg of Kettlebell swing is more than 4 times")
	h.press(fyne.KeyEscape)
	assert.True(t, h.onList())
}

// However many lines a reason takes, there is room for it at once: a window lays out
// again only when it is told to, so the keys are pressed here without the driver that
// does it for the tests.
func TestTheReasonLiesOverNothing(t *testing.T) {
	h, _, _, bo := atBouts(t)
	require.NoError(t, h.KeepOverride(gym.Override{
		Athlete: bo.ID, Movement: "kettlebell-swing", Tier: gym.Light, From: h.Today(),
		Reason: "the left wrist was sore on Saturday, after the longest hang that anybody here has seen, and the doctor asked for two easy weeks",
	}))
	heights := map[float32]bool{}
	for _, key := range []fyne.KeyName{fyne.KeyX, fyne.KeyX, fyne.KeyX} {
		h.Typed(&fyne.KeyEvent{Name: key}) // logs, and goes on to the other
		for _, p := range shown[*kit.Prose](h.window.Content()) {
			heights[p.MinSize().Height] = true
			assert.GreaterOrEqual(t, p.Size().Height+0.5, p.MinSize().Height, p.Label())
		}
	}
	assert.Greater(t, len(heights), 3, "reasons of several lengths")
}

// Where there is no load to log, no answer looks as if it could be given.
func TestNoLoadToLog(t *testing.T) {
	h, c, _, _ := atBouts(t)
	for _, p := range c.Pieces {
		p.Workout = gym.Workout{Format: gym.ForTime, Rounds: 3, Items: []gym.Item{{Movement: "burpee", Amount: 10}}}
		require.NoError(t, h.KeepPiece(c.ID, p))
	}
	uitest.See(t, h.window, "No load to log")
	h.press(fyne.KeyH, fyne.KeyS)
	assert.Empty(t, h.failed)
	off := 0
	for _, b := range shown[*kit.Button](h.window.Content()) {
		if b.Disabled() {
			off++
		}
	}
	assert.GreaterOrEqual(t, off, 3)
}

// shown are the objects of a kind that can be seen, as they lie now.
func shown[T fyne.CanvasObject](o fyne.CanvasObject) (all []T) {
	if !o.Visible() {
		return nil
	}
	if t, ok := o.(T); ok {
		all = append(all, t)
	}
	var parts []fyne.CanvasObject
	switch o := o.(type) {
	case *fyne.Container:
		parts = o.Objects
	case fyne.Widget:
		parts = test.WidgetRenderer(o).Objects()
	}
	for _, part := range parts {
		all = append(all, shown[T](part)...)
	}
	return all
}
