package floor_test

import (
	"fmt"
	"image"
	"image/draw"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/desk"
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

func TestWhoeverWalksInIsAdded(t *testing.T) {
	h, c, _, _ := small(t)
	uitest.Type(t, h.window, "Dov Quist")
	uitest.See(t, h.window, "Add “Dov Quist”", "walks in")
	h.press(fyne.KeyReturn)
	c, _ = h.Class(c.ID)
	require.Len(t, c.Lifters, 3)
	uitest.See(t, h.window, "3 here", "No record and no estimate: type a first load")
	h.press(fyne.KeyReturn)
	c, _ = h.Class(c.ID)
	assert.Len(t, c.Lifters, 3, "Enter in an empty field checks nobody out")
}

// A letter that gives a field the keyboard is not written into it.
func TestAKeyThatLeadsToAFieldIsNotTypedThere(t *testing.T) {
	h, c, ada, _ := small(t)
	h.press(fyne.KeyTab, fyne.KeyF)
	uitest.Type(t, h.window, "Xan Quist")
	h.press(fyne.KeyReturn)
	c, _ = h.Class(c.ID)
	require.Len(t, c.Lifters, 3)
	xan, _ := h.Athlete(c.Lifters[2].Athlete)
	assert.Equal(t, "Xan Quist", xan.Name)
	require.NoError(t, h.CheckOut(c.ID, xan.ID))

	h.press(fyne.KeyF5, fyne.KeyR, fyne.KeyT)
	uitest.Type(t, h.window, "101")
	h.press(fyne.KeyReturn)
	record, _ := h.Record(ada.ID, "back-squat", 3)
	assert.Equal(t, 101*mass.Kilogram, record.Load)
}

func TestLiftersMoveByNumberAndByDrag(t *testing.T) {
	h, c, ada, bo := small(t)
	uitest.Tap(t, h.window, "Start the clock") // a lifter more than the clock needs
	h.press(fyne.KeyF3)
	uitest.TapNth(t, h.window, "Bo Ito", 1) // at the station: no field has the keyboard
	h.press(fyne.Key5)
	assert.Equal(t, 4, h.lifter(c.ID, bo.ID).Station)
	h.press(fyne.Key0)
	assert.Equal(t, -1, h.lifter(c.ID, bo.ID).Station)
	uitest.See(t, h.window, "No station")

	station := h.lifter(c.ID, ada.ID).Station
	require.NotEqual(t, 5, station)
	head, ok := uitest.Where(h.window, fmt.Sprintf("%d  Rack %d", station+1, station+1))
	require.True(t, ok)
	to, ok := uitest.Where(h.window, "6  Rack 6")
	require.True(t, ok)
	uitest.Drag(t, h.window, head.AddXY(0, 26), to) // the first seat stands below the station's name
	assert.Equal(t, 5, h.lifter(c.ID, ada.ID).Station)
	assert.Contains(t, h.said[len(h.said)-1], "Ada Lund goes to Rack 6.")
}

func TestTheFirstMendIsOneKey(t *testing.T) {
	h, c, _, _ := small(t)
	for _, name := range []string{"Cleo Ash", "Dov Dell", "Ines Marsh", "Jun Reed"} {
		a := h.athlete(name, 0, gym.StandardM, "back-squat", "3x120")
		require.NoError(t, h.CheckIn(c.ID, a.ID))
	}
	c, _ = h.Class(c.ID)
	for _, l := range c.Lifters {
		require.NoError(t, h.MoveLifter(c.ID, l.Athlete, 0))
	}
	uitest.See(t, h.window, "The clock cannot be kept", "Lengthen the rungs")
	h.press(fyne.KeyF8)
	uitest.NotSee(t, h.window, "The clock cannot be kept")
	longer, _ := h.Class(c.ID)
	last := len(c.Climb.Rungs) - 1
	assert.Greater(t, longer.Climb.Rungs[last].Until, c.Climb.Rungs[last].Until)
}

func TestAnOldNumberIsLoweredByOneKey(t *testing.T) {
	h := newHall(t, look.Dark())
	a := h.NewAthlete("Ada Lund")
	require.NoError(t, h.AddAthlete(a, h.Tracks()[0].ID))
	_, err := h.EnterResult(desk.Entry{Athlete: a.ID, Lift: "back-squat", Text: "3x100", On: h.Today().Add(-140), Source: gym.Tested})
	require.NoError(t, err)
	c, err := h.OpenFreeClass()
	require.NoError(t, err)
	h.pieces(c.ID)
	h.room.Show(c.ID)
	uitest.Type(t, h.window, "ada")
	h.press(fyne.KeyReturn)
	uitest.See(t, h.window, "From 100 kg, the record", "It is 20 weeks old")
	h.press(fyne.KeyF7)
	assert.Equal(t, "95 kg", h.lifter(c.ID, a.ID).Base.String())
}

func TestARestrictionStandsBesideTheName(t *testing.T) {
	h, c, ada, _ := small(t)
	require.NoError(t, h.KeepRestriction(gym.Restriction{ID: h.NewID(), Athlete: ada.ID, Text: "sore knee", Region: gym.Lower, From: c.On}))
	h.room.Show(c.ID)
	uitest.See(t, h.window, "Mind: sore knee")
	h.press(fyne.KeyF5)
	uitest.Tap(t, h.window, "Ada Lund")
	uitest.See(t, h.window, "Mind: sore knee")
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

// Nothing is cut off or written over its edge, at any step of a full class.
func TestNothingOverflowsWithThirty(t *testing.T) {
	h := newHall(t, look.Dark())
	c := h.thirty()
	h.room.Show(c.ID)
	fits := func(step string) {
		t.Helper()
		assert.Empty(t, uitest.Overflows(h.window), step)
	}
	fits("set-up")
	require.NoError(t, h.StartWith(c.ID, h.Book().Athletes[4].ID, gym.Effort{Load: 40 * mass.Kilogram}))
	h.press(fyne.KeyF5)
	fits("the first rung")
	h.until(13 * time.Minute)
	fits("a top rung, calls open")
	h.press(fyne.KeyC, fyne.KeyS, fyne.KeyM)
	h.until(15 * time.Minute)
	fits("late calls")
	h.press(fyne.KeyR)
	fits("results")
	h.press(fyne.KeyK, fyne.KeySpace)
	h.wait(30 * time.Second)
	fits("conditioning")
	h.press(fyne.KeyQ)
	fits("summary")
}

// Two stations with their lifters, in the middle of the calls.
func TestStationsGolden(t *testing.T) {
	h := newHall(t, look.Dark())
	c := h.thirty()
	h.room.Show(c.ID)
	require.NoError(t, h.StartWith(c.ID, h.Book().Athletes[4].ID, gym.Effort{Load: 40 * mass.Kilogram}))
	h.press(fyne.KeyF5)
	h.until(13 * time.Minute)
	h.press(fyne.KeyC, fyne.KeyS, fyne.KeyM)
	part := *h.window
	part.Window = cropped{h.window.Window, image.Rect(12, 206, 314, 484)}
	uitest.Golden(t, &part, "station")
}

// cropped is a window of which only a part is pictured.
type cropped struct {
	fyne.Window
	part image.Rectangle
}

func (c cropped) Canvas() fyne.Canvas { return croppedCanvas{c.Window.Canvas(), c.part} }

type croppedCanvas struct {
	fyne.Canvas
	part image.Rectangle
}

func (c croppedCanvas) Capture() image.Image {
	picture := image.NewRGBA(image.Rectangle{Max: c.part.Size()})
	draw.Draw(picture, picture.Bounds(), c.Canvas.Capture(), c.part.Min, draw.Src)
	return picture
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
