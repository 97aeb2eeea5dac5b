package floor_test

import (
	"fmt"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

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

// Escape leaves the search, and the numbers move the chosen lifter.
func TestNumbersMoveAfterTheSearchWasLeft(t *testing.T) {
	h, c, ada, _ := small(t)
	uitest.Type(t, h.window, "Ada")
	h.press(fyne.KeyEscape, fyne.KeyEscape, fyne.Key4)
	assert.Equal(t, 3, h.lifter(c.ID, ada.ID).Station)
}

// One slip does not take a lifter out while the clock runs.
func TestCheckingOutOnTheClockAsks(t *testing.T) {
	h, c, ada, _ := small(t)
	h.press(fyne.KeyF5, fyne.KeyF3)
	slip := func() {
		uitest.Type(t, h.window, "Ada Lund")
		h.press(fyne.KeyReturn)
		uitest.See(t, h.window, "Take Ada Lund out of the class?", "The clock has started.")
	}
	slip()
	h.press(fyne.KeyEscape)
	h.lifter(c.ID, ada.ID)
	slip()
	uitest.Tap(t, h.window, "Take out")
	now, _ := h.Class(c.ID)
	assert.Len(t, now.Lifters, 1)
}

// A second click hits whom the first one did.
func TestRowsStayUnderThePointer(t *testing.T) {
	h, c, _, _ := small(t)
	cleo := h.athlete("Cleo Ash", 0, gym.StandardM, "back-squat", "3x80")
	h.athlete("Dov Berg", 0, gym.StandardM, "back-squat", "3x80")
	h.room.Show(c.ID)
	at, ok := uitest.Where(h.window, "Cleo Ash")
	require.True(t, ok)
	for i := range 3 {
		uitest.TapAt(h.window, fyne.NewPos(50, at.Y))
		again, _ := uitest.Where(h.window, "Cleo Ash")
		assert.Equal(t, at, again)
		now, _ := h.Class(c.ID)
		assert.Len(t, now.Lifters, 3-i%2)
	}
	h.lifter(c.ID, cleo.ID)
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
	uitest.Drag(t, h.window, head.AddXY(0, 44), to) // the first seat stands below the station's name and lift
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

// The list of the class before leaves neither its cursor nor its place: Enter in the
// empty search checks the first row in.
func TestTheNextClassOpensAtTheTopOfItsList(t *testing.T) {
	h, c, _, _ := small(t)
	for i := range 30 {
		h.athlete(fmt.Sprintf("Cleo %c%c", 'A'+i/26, 'a'+i%26), 0, gym.StandardM, "", "")
	}
	h.room.Show(c.ID)
	h.press(fyne.KeyPageDown, fyne.KeyPageDown)
	for range 20 {
		h.press(fyne.KeyDown)
	}
	uitest.NotSee(t, h.window, "Cleo Aa")
	require.NoError(t, h.FinishClass(c.ID))
	h.now = h.now.Add(24 * time.Hour) // a day has one class outside the timetable
	next, err := h.OpenFreeClass()
	require.NoError(t, err)
	require.NotEqual(t, c.ID, next.ID)
	h.room.Show(next.ID)
	first := h.Arrivals(next, h.ExpectedIn(next))[0].Athlete
	uitest.See(t, h.window, first.Name)
	h.press(fyne.KeyReturn)
	h.lifter(next.ID, first.ID)
}
