package cyclegrid_test

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/cyclegrid"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// onSunday opens the room at the conditioning of a Sunday without a plan.
func onSunday(t *testing.T) *uitest.Host {
	t.Helper()
	h := open(t, look.Dark())
	uitest.Key(t, h.On, fyne.KeyDown, fyne.KeyEnd)
	h.Press(t, "D")
	return h
}

func TestConditioningIsWrittenByHand(t *testing.T) {
	h := onSunday(t)
	uitest.Fill(t, h.On, "Format", "AMRAP")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "Could not check amrap workout: no movements")
	uitest.Fill(t, h.On, "Minutes", "9:30")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Fill(t, h.On, "Movement 1", "kettlebell swing")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Fill(t, h.On, "Movement 1, how much", "12")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Fill(t, h.On, "Movement 1, loads M", "28/20/16")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "rounds", "Fast athlete", "Usual", "Slow")
	plan := planOn(t, h, 7, day.Sunday)
	assert.Equal(t, gym.RecoveryDay, plan.Kind, "a day with its first part is no rest day")
	w := plan.Workout
	assert.Equal(t, gym.AMRAP, w.Format)
	assert.Equal(t, 570, w.Seconds)
	require.Len(t, w.Items, 1)
	assert.Equal(t, 12, w.Items[0].Amount)
	assert.Equal(t, gym.TierLoads{Full: 28 * mass.Kilogram, Mid: 20 * mass.Kilogram, Light: 16 * mass.Kilogram}, w.Items[0].Loads[gym.StandardM])
	assert.NotContains(t, w.Items[0].Loads, gym.StandardW, "what was not changed stays the catalogue's")
}

func TestConditioningThatCannotBeIsSaidInPlace(t *testing.T) {
	h := onSunday(t)
	uitest.Fill(t, h.On, "Movement 1", "kettlebell swing")
	uitest.Key(t, h.On, fyne.KeyReturn)
	before := planOn(t, h, 7, day.Sunday)
	for field, text := range map[string]string{
		"Rounds or reps": "a few", "Time cap": "later", "Movement 1, how much": "-3", "Movement 1, loads W": "16/20/24",
	} {
		uitest.Fill(t, h.On, field, text)
		uitest.Key(t, h.On, fyne.KeyReturn)
		assert.Equal(t, before, planOn(t, h, 7, day.Sunday), field)
	}
	uitest.Fill(t, h.On, "Movement 1", "no such thing")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Equal(t, before, planOn(t, h, 7, day.Sunday))
}

// Whatever is refused is told whole at the foot: the fields are narrow.
func TestWhatIsRefusedIsToldWhole(t *testing.T) {
	h := onSunday(t)
	uitest.Fill(t, h.On, "Movement 1", "row")
	uitest.Key(t, h.On, fyne.KeyReturn)
	for field, row := range map[string][2]string{
		"Movement 1, how much": {"-5", `Could not read number "-5": it is not a whole number. Write 1 to 10000.`},
		"Rounds or reps":       {"a few", `Could not read number "a few"`},
	} {
		uitest.Fill(t, h.On, field, row[0])
		uitest.Key(t, h.On, fyne.KeyReturn)
		assert.Contains(t, h.Said[len(h.Said)-1], row[1])
	}
	uitest.Fill(t, h.On, "Movement 1, how much", "400 m")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Equal(t, 400, planOn(t, h, 7, day.Sunday).Workout.Items[0].Amount)
	uitest.See(t, h.On, "400 m")
}

// After a change was taken, Ctrl+Z in its field takes the change back, not the
// letters.
func TestCtrlZInAFieldTakesTheChangeBack(t *testing.T) {
	h := onSunday(t)
	uitest.Fill(t, h.On, "Movement 1", "burpee")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Fill(t, h.On, "Rounds or reps", "21-15-9")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Equal(t, []int{21, 15, 9}, planOn(t, h, 7, day.Sunday).Workout.Reps)
	field, ok := h.On.Canvas().Focused().(fyne.Shortcutable)
	require.True(t, ok)
	field.TypedShortcut(&fyne.ShortcutUndo{})
	field.TypedShortcut(&fyne.ShortcutUndo{})
	h.On.Canvas().Unfocus()
	assert.Equal(t, []int{21, 15, 9}, planOn(t, h, 7, day.Sunday).Workout.Reps, "no remnant was kept")
}

// The class of the day and the gym's implements decide what is said of a workout.
func TestTooFewImplementsAreSaid(t *testing.T) {
	h := onSunday(t)
	require.NoError(t, h.Desk().KeepTotal("rower", "1"))
	uitest.Fill(t, h.On, "Movement 1", "row")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "Too few for all", "rower (")
	picture(t, h, "too-few")
	require.NoError(t, h.Desk().KeepTotal("rower", "99"))
	h.Room.Refresh(desk.AboutEquipment)
	uitest.See(t, h.On, "can work at once: there is enough of everything it takes.")
}

func TestAMinuteOfAnEMOMMayBeRest(t *testing.T) {
	h := onSunday(t)
	for _, x := range [][2]string{{"Format", "EMOM"}, {"Movement 1", "burpee"}, {"Movement 2", "rest"}} {
		uitest.Fill(t, h.On, x[0], x[1])
		uitest.Key(t, h.On, fyne.KeyReturn)
	}
	w := planOn(t, h, 7, day.Sunday).Workout
	require.Len(t, w.Items, 2)
	assert.Empty(t, w.Items[1].Movement)
	assert.NoError(t, h.Desk().WorkoutFault(w))
}

func TestWarmUpAndFinisherAreWritten(t *testing.T) {
	h := onSunday(t)
	h.Press(t, "D")
	uitest.Fill(t, h.On, "Warm-up 1", "easy bike")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Fill(t, h.On, "Warm-up 1, how much", "4 min")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Fill(t, h.On, "Finisher 1", "hammer curl")
	uitest.Key(t, h.On, fyne.KeyReturn)
	p := planOn(t, h, 7, day.Sunday)
	require.Len(t, p.WarmUp, 1)
	assert.Equal(t, "4 min", p.WarmUp[0].Dose)
	require.Len(t, p.Finisher, 1)
	assert.Equal(t, "3 × 10", p.Finisher[0].Dose)
	uitest.Tap(t, h.On, "Take Warm-up line out")
	assert.Empty(t, planOn(t, h, 7, day.Sunday).WarmUp)
}

func TestSecondLiftShowsEachAthletesLoad(t *testing.T) {
	h := open(t, look.Dark())
	uitest.Key(t, h.On, fyne.KeyDown)
	uitest.Fill(t, h.On, "Per cent", "70")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.InDelta(t, 70, planOn(t, h, 7, day.Monday).Second.Percent, 0)
	uitest.Tap(t, h.On, "Loads")
	uitest.See(t, h.On, "Counted from", "70 % of the")
	picture(t, h, "second")
}

// Nothing is drawn where it does not fit, at either size of window and with six
// tracks of long names.
func TestNothingIsClipped(t *testing.T) {
	d, _ := uitest.DemoDesk(t)
	for name, open := range map[string]func() *uitest.Host{
		"usual": func() *uitest.Host { return uitest.Stage(t, d, look.Dark(), stage, cyclegrid.New) },
		"wide":  func() *uitest.Host { return uitest.Stage(t, d, look.Dark(), fyne.NewSize(1720, 1040), cyclegrid.New) },
		"long":  func() *uitest.Host { return largest(t) },
	} {
		h := open()
		uitest.Key(t, h.On, fyne.KeyDown)
		for range 3 {
			assert.Empty(t, uitest.Overflows(h.On), name)
			picture(t, h, name)
			h.Press(t, "D")
		}
	}
}

// The order of a chipper's or an EMOM's movements is part of it.
func TestTheOrderOfMovementsIsChanged(t *testing.T) {
	h := onSunday(t)
	for i, name := range []string{"burpee", "row", "kettlebell swing"} {
		uitest.Fill(t, h.On, fmt.Sprintf("Movement %d", i+1), name)
		uitest.Key(t, h.On, fyne.KeyReturn)
	}
	before := planOn(t, h, 7, day.Sunday).Workout.Items
	uitest.NotSee(t, h.On, "Do movement 1 before the one above it", "Do movement 4 before the one above it")
	uitest.Tap(t, h.On, "Do movement 3 before the one above it")
	assert.Equal(t, []gym.Item{before[0], before[2], before[1]}, planOn(t, h, 7, day.Sunday).Workout.Items)
	_, err := h.Desk().Undo()
	require.NoError(t, err)
	assert.Equal(t, before, planOn(t, h, 7, day.Sunday).Workout.Items)
}
