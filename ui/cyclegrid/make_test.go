package cyclegrid_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/conditioning"
	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/cyclegrid"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// newGym is a desk on a gym that has just begun.
func newGym(t *testing.T) *desk.Desk {
	t.Helper()
	n := 0
	book, err := desk.Starter("Quay Gym", func() gym.ID {
		n++
		return gym.NewID(uitest.Morning, [10]byte{byte(n)})
	})
	require.NoError(t, err)
	now := uitest.Morning
	return uitest.DeskOn(t, book, &now)
}

func TestTheFirstCycleIsMadeInFourSteps(t *testing.T) {
	d := newGym(t)
	h := uitest.Stage(t, d, look.Dark(), stage, cyclegrid.New)
	uitest.See(t, h.On, "No cycle yet")
	picture(t, h, "make-0")
	uitest.Tap(t, h.On, "Make a cycle")
	picture(t, h, "make-1")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "Write a name for it.")
	uitest.Type(t, h.On, "Quay spring") // the name has the keyboard
	uitest.Fill(t, h.On, "First day", "2026-05-19")
	uitest.Fill(t, h.On, "Weeks, the test week counted in", "2")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "your week begins on Monday", "3 to 26 weeks")
	uitest.Fill(t, h.On, "First day", "2026-05-25")
	uitest.Fill(t, h.On, "Weeks, the test week counted in", "12")
	uitest.See(t, h.On, "until Sunday 16 August 2026")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "Which tracks run in it")
	picture(t, h, "make-2")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "How do the rep counts")
	picture(t, h, "make-3")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "No rule is broken", "12, test")
	picture(t, h, "make-4")
	assert.Empty(t, d.Book().Cycles, "nothing is kept before the last step")
	uitest.Key(t, h.On, fyne.KeyReturn)
	require.Len(t, d.Book().Cycles, 1)
	c := d.Book().Cycles[0]
	assert.Equal(t, "Quay spring", c.Name)
	assert.Len(t, c.Weeks, 12)
	assert.Len(t, c.Tracks, 3)
	assert.Empty(t, cycle.Check(c, d.Book()))
	uitest.See(t, h.On, "Quay spring", "Back squat")
	uitest.Key(t, h.On, fyne.KeyDelete)
	p, _ := d.Book().Cycles[0].Plan(c.Tracks[0].Track)
	assert.Equal(t, gym.RestDay, p.Day(1, day.Monday).Kind, "it can be edited at once")
}

func TestAnOverlappingCycleIsRefusedInPlace(t *testing.T) {
	h := open(t, look.Dark())
	h.Press(t, "N")
	uitest.Fill(t, h.On, "Name", "Too soon")
	uitest.Fill(t, h.On, "First day", "2026-06-01")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, `It runs in "Harbour cycle" until Sunday 5 July 2026.`)
	uitest.TapNth(t, h.On, "Powerlifting", 0)
	uitest.Tap(t, h.On, "Go on")
	uitest.See(t, h.On, "Which tracks run in it", "Harbour cycle")
	assert.Len(t, h.Desk().Book().Cycles, 1)
	picture(t, h, "make-clash")
	h.Press(t, "Esc")
	h.Press(t, "Esc")
	uitest.See(t, h.On, "Harbour cycle", "Week 1")
}

func TestTheNextCycleStartsFromTheLast(t *testing.T) {
	h := open(t, look.Dark())
	last, _ := cycleOf(t, h)
	h.Press(t, "P")
	picture(t, h, "next")
	uitest.Fill(t, h.On, "First day", "2026-06-29")
	uitest.Tap(t, h.On, "Start it")
	uitest.See(t, h.On, `"Harbour cycle" runs until Sunday 5 July 2026`)
	uitest.Fill(t, h.On, "First day", "2026-07-06")
	uitest.Tap(t, h.On, "Start it")
	require.Len(t, h.Desk().Book().Cycles, 2)
	next := h.Desk().Book().Cycles[1]
	assert.Equal(t, "Harbour cycle 2", next.Name)
	assert.Equal(t, last.Tracks, next.Tracks)
	uitest.See(t, h.On, "Harbour cycle 2")
}

func TestAWaveIsShownAndRun(t *testing.T) {
	h := open(t, look.Dark())
	uitest.Key(t, h.On, fyne.KeyDown)
	h.Press(t, "W")
	uitest.See(t, h.On, "Run a wave through Powerlifting", "Mon  Back squat:")
	picture(t, h, "wave")
	uitest.Fill(t, h.On, "From week", "2")
	uitest.See(t, h.On, "stays as it is")
	uitest.Fill(t, h.On, "From week", "7")
	uitest.Tap(t, h.On, "Block")
	uitest.Tap(t, h.On, "Run it")
	c, track := cycleOf(t, h)
	p, _ := c.Plan(track)
	assert.Equal(t, gym.BlockWave, p.Wave)
	assert.Equal(t, p.Day(7, day.Monday).Main.Reps, p.Day(7, day.Tuesday).Main.Reps, "all lifts share a rep count")
}

func TestABreachLeadsToItsDay(t *testing.T) {
	h := open(t, look.Dark())
	uitest.Key(t, h.On, fyne.KeyDown, fyne.KeyRight, fyne.KeyReturn)
	uitest.Type(t, h.On, "front squat")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "Rules broken")
	h.Press(t, "Esc")
	uitest.Key(t, h.On, fyne.KeyHome, fyne.KeyDown)
	h.Press(t, "B")
	picture(t, h, "breaches")
	v, _ := h.Desk().ViewCycle(h.Desk().Book().Cycles[0].ID)
	require.NotEmpty(t, v.Breaches)
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, v.Breaches[0].Mend)
	h.Press(t, "B")
	uitest.See(t, h.On, "Monday 25 May, week 7")
}

func TestTheConditioningIsComposedAndTaken(t *testing.T) {
	h := open(t, look.Dark())
	uitest.Key(t, h.On, fyne.KeyDown)
	before := planOn(t, h, 7, day.Monday).Workout
	h.Press(t, "C")
	uitest.See(t, h.On, "It takes a usual athlete about", "Planned as it is")
	assert.Equal(t, before, planOn(t, h, 7, day.Monday).Workout, "a proposal changes nothing")
	first := uitest.Read(h.On)
	uitest.Tap(t, h.On, "Another")
	assert.NotEqual(t, first, uitest.Read(h.On), "another one")
	uitest.Tap(t, h.On, "Back")
	assert.Equal(t, first, uitest.Read(h.On), "and back")
	uitest.Tap(t, h.On, "Take it")
	after := planOn(t, h, 7, day.Monday).Workout
	assert.NotEqual(t, before, after)
	assert.NoError(t, h.Desk().WorkoutFault(after))
	uitest.See(t, h.On, "Fast athlete")
}

// What is asked for this once changes the proposal and not the gym's settings.
func TestAProposalHeedsTheWishesOfThisOnce(t *testing.T) {
	h := open(t, look.Dark())
	uitest.Key(t, h.On, fyne.KeyDown)
	h.Press(t, "C")
	picture(t, h, "compose")
	usual := h.Desk().Settings().ComposeBy()
	uitest.Fill(t, h.On, "to", "5")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Contains(t, h.Said[len(h.Said)-1], "the most, 5, is under the least, 8")
	uitest.Fill(t, h.On, "Minutes, from", "20")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Contains(t, h.Said[len(h.Said)-1], "the most, 15, is under the least, 20")
	uitest.Fill(t, h.On, "to", "30")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Fill(t, h.On, "Minutes, from", "20")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Fill(t, h.On, "Athletes", "3")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Tap(t, h.On, "Take it")
	l, err := conditioning.Estimate(planOn(t, h, 7, day.Monday).Workout, func(name string) (gym.Movement, bool) {
		return h.Desk().Movement(gym.MovementKey(name))
	}, h.Desk().Pace())
	require.NoError(t, err)
	assert.GreaterOrEqual(t, l.Usual.Seconds, 20*60)
	assert.Equal(t, usual, h.Desk().Settings().ComposeBy())
}

func TestTheWayToACycleLooksTheSame(t *testing.T) {
	h := uitest.Stage(t, newGym(t), look.Light(), fyne.NewSize(960, 460), cyclegrid.New)
	h.Press(t, "N")
	uitest.Fill(t, h.On, "Name", "Quay spring")
	uitest.Key(t, h.On, fyne.KeyReturn)
	h.On.Canvas().Unfocus()
	uitest.Golden(t, h.On, "tracks")
}

func TestNameGoalAndRemoval(t *testing.T) {
	h := open(t, look.Dark())
	h.Press(t, "G")
	uitest.Fill(t, h.On, "Goal, in a few words", "Strong and whole")
	uitest.Tap(t, h.On, "Keep")
	uitest.See(t, h.On, "Strong and whole")
	h.Press(t, "G")
	uitest.Tap(t, h.On, "Remove the cycle")
	uitest.See(t, h.On, "results exist for it")
	assert.Len(t, h.Desk().Book().Cycles, 1)
}
