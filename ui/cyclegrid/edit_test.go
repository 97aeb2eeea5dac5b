package cyclegrid_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// cycleOf is the demo gym's cycle and its first track.
func cycleOf(t *testing.T, h *uitest.Host) (gym.Cycle, gym.ID) {
	t.Helper()
	c, ok := h.Desk().UsualCycle()
	require.True(t, ok)
	return c, c.Tracks[0].Track
}

func planOn(t *testing.T, h *uitest.Host, week int, on day.Weekday) gym.DayPlan {
	t.Helper()
	c, track := cycleOf(t, h)
	p, _ := c.Plan(track)
	return p.Day(week, on)
}

// The room opens on today, the Monday of week 6.
func TestCopyPasteAndUndo(t *testing.T) {
	h := open(t, look.Dark())
	monday, before := planOn(t, h, 6, day.Monday), planOn(t, h, 7, day.Tuesday)
	uitest.Shortcut(t, h.On, &fyne.ShortcutCopy{})
	uitest.Key(t, h.On, fyne.KeyDown, fyne.KeyRight)
	uitest.See(t, h.On, "Tuesday 26 May, week 7")
	uitest.Shortcut(t, h.On, &fyne.ShortcutPaste{})
	assert.Equal(t, monday.Main, planOn(t, h, 7, day.Tuesday).Main)
	_, err := h.Desk().Undo()
	require.NoError(t, err)
	assert.Equal(t, before, planOn(t, h, 7, day.Tuesday))
	_, err = h.Desk().Redo()
	require.NoError(t, err)
	assert.Equal(t, monday.Main, planOn(t, h, 7, day.Tuesday).Main)
}

func TestCutAndClear(t *testing.T) {
	h := open(t, look.Dark())
	uitest.Key(t, h.On, fyne.KeyDown)
	monday := planOn(t, h, 7, day.Monday)
	uitest.Shortcut(t, h.On, &fyne.ShortcutCut{})
	assert.Equal(t, gym.RestDay, planOn(t, h, 7, day.Monday).Kind)
	uitest.Key(t, h.On, fyne.KeyEnd)
	uitest.Shortcut(t, h.On, &fyne.ShortcutPaste{})
	assert.Equal(t, monday.Main, planOn(t, h, 7, day.Sunday).Main)
	uitest.Key(t, h.On, fyne.KeyDelete)
	assert.Equal(t, gym.RestDay, planOn(t, h, 7, day.Sunday).Kind)
}

func TestADayIsDragged(t *testing.T) {
	h := open(t, look.Dark())
	monday, tuesday := planOn(t, h, 9, day.Monday), planOn(t, h, 9, day.Tuesday)
	week, ok := uitest.Where(h.On, "Week 9")
	require.True(t, ok)
	mon, _ := uitest.Where(h.On, "Mon")
	tue, _ := uitest.Where(h.On, "Tue")
	uitest.Drag(t, h.On, fyne.NewPos(mon.X, week.Y), fyne.NewPos(tue.X, week.Y))
	assert.Equal(t, tuesday.Main, planOn(t, h, 9, day.Monday).Main)
	assert.Equal(t, monday.Main, planOn(t, h, 9, day.Tuesday).Main)
	uitest.See(t, h.On, "Rules broken")
}

func TestATrainedDayIsRefusedWithTheWayForward(t *testing.T) {
	h := open(t, look.Dark())
	before, _ := cycleOf(t, h)
	uitest.Key(t, h.On, fyne.KeyUp)
	uitest.See(t, h.On, "Trained: it stays as it is", "Main lift: Back squat")
	uitest.Key(t, h.On, fyne.KeyDelete)
	after, _ := cycleOf(t, h)
	assert.Equal(t, before, after)
	require.NotEmpty(t, h.Said)
	assert.Contains(t, h.Said[len(h.Said)-1], "Change week")
}

func TestWeeksAreInsertedTakenOutAndShifted(t *testing.T) {
	h := open(t, look.Dark())
	before, _ := cycleOf(t, h)
	uitest.Key(t, h.On, fyne.KeyDown, fyne.KeyDown)
	eight := planOn(t, h, 8, day.Monday)
	h.Press(t, "I")
	c, _ := cycleOf(t, h)
	assert.Len(t, c.Weeks, len(before.Weeks)+1)
	assert.Equal(t, eight.Main, planOn(t, h, 9, day.Monday).Main)
	h.Press(t, "O")
	after, _ := cycleOf(t, h)
	assert.Equal(t, before, after)
	h.Press(t, "L")
	assert.Equal(t, eight.Main, planOn(t, h, 9, day.Monday).Main)
	h.Press(t, "K")
	c, _ = cycleOf(t, h)
	assert.Equal(t, gym.LightWeek, c.Weeks[7])
	uitest.See(t, h.On, "8, light")
}

func TestTheMainLiftIsChosenByTyping(t *testing.T) {
	h := open(t, look.Dark())
	uitest.Key(t, h.On, fyne.KeyDown, fyne.KeyReturn)
	uitest.Type(t, h.On, "safety")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Equal(t, gym.LiftKey("safety-bar-squat"), planOn(t, h, 7, day.Monday).Main.Lift)
	uitest.Tap(t, h.On, "Percentages")
	uitest.Fill(t, h.On, "Sets × reps at per cent of the 1RM", "3 x 3 at 70, 4 x 2 at 85")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Equal(t, []gym.Sets{{Percent: 70, Sets: 3, Reps: 3}, {Percent: 85, Sets: 4, Reps: 2}}, planOn(t, h, 7, day.Monday).Main.Scheme)
}

func TestWhatCannotBeReadIsSaidInPlace(t *testing.T) {
	h := open(t, look.Dark())
	uitest.Key(t, h.On, fyne.KeyDown)
	before, _ := cycleOf(t, h)
	uitest.Fill(t, h.On, "Sets", "many")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, `Could not read number "many"`)
	after, _ := cycleOf(t, h)
	assert.Equal(t, before, after)
}
