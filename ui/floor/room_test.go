package floor_test

import (
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// small is a hall with two lifters of the first track in an open class.
func small(t *testing.T) (*hall, gym.Class, gym.Athlete, gym.Athlete) {
	t.Helper()
	h := newHall(t, look.Dark())
	ada := h.athlete("Ada Lund", 0, gym.StandardM, "back-squat", "3x100")
	bo := h.athlete("Bo Ito", 0, gym.StandardM, "back-squat", "3x140")
	c, err := h.OpenFreeClass()
	require.NoError(t, err)
	h.pieces(c.ID)
	require.NoError(t, h.CheckIn(c.ID, ada.ID))
	require.NoError(t, h.CheckIn(c.ID, bo.ID))
	h.room.Show(c.ID)
	return h, c, ada, bo
}

func (h *hall) lifter(class, athlete gym.ID) gym.Lifter {
	h.t.Helper()
	c, ok := h.Class(class)
	require.True(h.t, ok)
	for _, l := range c.Lifters {
		if l.Athlete == athlete {
			return l
		}
	}
	require.Fail(h.t, "not checked in")
	return gym.Lifter{}
}

func TestFloorOpensAClassOfTheTimetable(t *testing.T) {
	h := newHall(t, look.Dark())
	uitest.See(t, h.window, "No class stands in the timetable for today")
	_, err := h.KeepSlot(gym.Slot{ID: h.NewID(), Weekday: day.Monday, At: day.ClockOf(6, 30), Minutes: 60, Name: "Early bar"})
	require.NoError(t, err)
	h.room.Show("")
	uitest.See(t, h.window, "06:30", "Early bar", "Enter opens it")
	h.press(fyne.KeyReturn)
	c, ok := h.LiveClass()
	require.True(t, ok)
	assert.Equal(t, "Early bar", c.Name)
	uitest.See(t, h.window, "Early bar, 06:30", "Who is here", "What each track lifts")
	_, err = h.Undo()
	require.NoError(t, err)
	uitest.See(t, h.window, "Choose the class that begins")
}

func TestAStrictClimbAsksBeforeItIsHeld(t *testing.T) {
	h, c, _, _ := small(t)
	strict := c.Climb
	strict.Strict = true
	require.NoError(t, h.KeepClimb(c.ID, strict))
	h.press(fyne.KeyF5)
	h.press(fyne.KeySpace)
	uitest.See(t, h.window, "Hold a strict climb?")
	c, _ = h.Class(c.ID)
	assert.True(t, c.Clock.Running)
	uitest.Tap(t, h.window, "Hold the clock")
	c, _ = h.Class(c.ID)
	assert.False(t, c.Clock.Running)
}

func TestOnlyTheDaysRepMaxIsLogged(t *testing.T) {
	h, c, ada, _ := small(t)
	h.press(fyne.KeyF5)
	h.press(fyne.KeyR)
	before := len(h.Book().Results)
	uitest.Type(t, h.window, "5x90")
	uitest.See(t, h.window, "today counts 3 reps, not 5")
	h.press(fyne.KeyReturn)
	assert.Len(t, h.Book().Results, before, "nothing was written")
	uitest.Fill(t, h.window, "What was lifted, as in 142.5", "heavy")
	h.press(fyne.KeyReturn)
	assert.Len(t, h.Book().Results, before)
	h.press(fyne.KeyEscape)
	uitest.Type(t, h.window, "102.5")
	uitest.See(t, h.window, "102.5 kg is 102.5 % of the record of 100 kg: the record rises.")
	h.press(fyne.KeyReturn)
	record, _ := h.Record(ada.ID, "back-squat", 3)
	assert.Equal(t, "102.5 kg", record.Load.String())
	assert.Equal(t, h.lifter(c.ID, ada.ID).Result, record.ID)
}

// What is hardly what was lifted is asked about, and Enter twice does not log it.
func TestADoubtfulResultIsAskedAbout(t *testing.T) {
	h, _, ada, _ := small(t)
	h.press(fyne.KeyF5, fyne.KeyR)
	before := len(h.Book().Results)
	uitest.Type(t, h.window, "8")
	uitest.See(t, h.window, "8 kg is less than the lightest that can be lifted here")
	h.press(fyne.KeyReturn)
	uitest.See(t, h.window, "Log this for Ada Lund?")
	h.press(fyne.KeyReturn)
	assert.Len(t, h.Book().Results, before, "the usual answer is to write it again")
	h.press(fyne.KeyReturn)
	uitest.Tap(t, h.window, "Log it as it is")
	results := h.Results(ada.ID)
	assert.Equal(t, 8*mass.Kilogram, results[len(results)-1].Load)
}

func TestBoutsAndScoresAreTyped(t *testing.T) {
	h, c, ada, bo := small(t)
	h.press(fyne.KeyF5)
	h.press(fyne.KeyR, fyne.KeyK)
	uitest.See(t, h.window, "For time, 21-15-9, cap 10 min", "0 of 2 bouts are logged")
	uitest.Type(t, h.window, "20")
	h.press(fyne.KeyReturn, fyne.KeyS)
	h.press(fyne.KeyX)
	c, _ = h.Class(c.ID)
	rows := h.BoutSheet(c)
	require.Len(t, rows, 2)
	assert.Equal(t, 20*mass.Kilogram, rows[0].Logged.Load)
	assert.Equal(t, gym.Slowed, rows[0].Logged.Outcome)
	assert.Equal(t, gym.Stopped, rows[1].Logged.Outcome)
	uitest.See(t, h.window, "2 of 2 bouts are logged")

	h.press(fyne.KeyUp)
	h.press(fyne.KeyP)
	uitest.Type(t, h.window, "8:45")
	h.press(fyne.KeyReturn)
	uitest.Type(t, h.window, "fast")
	h.press(fyne.KeyReturn)
	assert.Equal(t, "8:45", h.lifter(c.ID, ada.ID).Score)
	assert.Empty(t, h.lifter(c.ID, bo.ID).Score)
	uitest.See(t, h.window, "Write it as minutes and seconds, 8:45")
}

func TestAFinishedClassIsOpenedAgain(t *testing.T) {
	h, c, _, _ := small(t)
	h.press(fyne.KeyF5)
	h.press(fyne.KeyR, fyne.KeyQ)
	uitest.See(t, h.window, "No result yet for Ada Lund, Bo Ito.", "2 bouts of the conditioning are not logged.")
	h.press(fyne.KeyF5)
	uitest.See(t, h.window, "Finish with 2 results and 2 bouts open?")
	uitest.Tap(t, h.window, "Go on with the class")
	c, _ = h.Class(c.ID)
	require.Equal(t, gym.Climbing, c.Stage)
	h.press(fyne.KeyF5)
	uitest.Tap(t, h.window, "Finish all the same")
	uitest.See(t, h.window, "Choose the class that begins")
	h.room.Show(c.ID)
	h.press(fyne.KeyA)
	c, _ = h.Class(c.ID)
	assert.Equal(t, gym.Climbing, c.Stage)
}

func TestTheClockIsPutRightByRungs(t *testing.T) {
	h, c, _, _ := small(t)
	h.press(fyne.KeyF5)
	h.press(fyne.KeyN, fyne.KeyN)
	uitest.See(t, h.window, "left of rung 3 of 10")
	h.wait(10 * time.Second)
	uitest.See(t, h.window, "00:50")
	h.press(fyne.KeyB)
	c, _ = h.Class(c.ID)
	assert.Equal(t, time.Minute, c.Clock.Elapsed(h.now))
}

func TestTheClimbsKeysLeaveTheConditioningAlone(t *testing.T) {
	h, c, _, _ := small(t)
	h.press(fyne.KeyF5)
	h.press(fyne.KeyR, fyne.KeyK)
	h.press(fyne.KeyF3, fyne.KeyF3)
	uitest.See(t, h.window, "Held")
	h.press(fyne.KeySpace)
	c, _ = h.Class(c.ID)
	assert.False(t, c.Workout.Running)
	assert.False(t, c.Clock.Running)
	require.NoError(t, h.FinishClass(c.ID))
	require.ErrorContains(t, h.StartClock(c.ID), "open it again first")
	require.ErrorContains(t, h.StartConditioning(c.ID), "open it again first")
}

// A track without a main lift goes straight to its conditioning.
func TestConditioningWithoutAClimb(t *testing.T) {
	h, c, _, _ := small(t)
	h.press(fyne.KeyF4, fyne.KeyF4, fyne.KeyF4)
	h.press(fyne.KeySpace)
	c, _ = h.Class(c.ID)
	assert.Equal(t, gym.Conditioning, c.Stage)
	assert.True(t, c.Workout.Running)
	assert.False(t, c.Clock.Started())
}
