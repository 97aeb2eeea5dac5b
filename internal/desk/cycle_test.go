package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
)

// planned gives the bench a powerlifting cycle of so many weeks from the Monday of
// every test.
func (b *bench) planned(weeks int) gym.Cycle {
	b.t.Helper()
	c, err := b.MakeCycle(cycle.Spec{
		Name: "Spring", Start: day.From(monday), Weeks: weeks,
		Tracks: []cycle.TrackSpec{{Track: powerlifting, Template: "powerlifting", Wave: gym.RollingWave}},
	})
	require.NoError(b.t, err)
	return c
}

// dayOf is a day of the bench's powerlifting track as it is kept on the disk.
func (b *bench) dayOf(c gym.Cycle, week int, on day.Weekday) gym.DayPlan {
	b.t.Helper()
	kept, ok := b.reopened().Cycle(c.ID)
	require.True(b.t, ok)
	p, _ := kept.Plan(powerlifting)
	return p.Day(week, on)
}

func TestCopiedDaysKeepTheirPlaces(t *testing.T) {
	b := newBench(t)
	c := b.planned(8)
	clip := b.CopyDays(c.ID, desk.Block{Track: powerlifting, FromWeek: 1, ToWeek: 1, FromColumn: 0, ToColumn: 1})
	assert.Equal(t, 2, clip.Days())
	require.NoError(t, b.PasteDays(c.ID, powerlifting, 3, 0, clip))
	first, second := b.dayOf(c, 1, day.Monday), b.dayOf(c, 1, day.Tuesday)
	assert.Equal(t, first.Main, b.dayOf(c, 3, day.Monday).Main)
	assert.Equal(t, second.Main, b.dayOf(c, 3, day.Tuesday).Main)
	assert.Equal(t, 3, b.dayOf(c, 3, day.Monday).Week)
	// What falls off the end of the week is left out, and the rest is pasted.
	require.NoError(t, b.PasteDays(c.ID, powerlifting, 4, 6, clip))
	assert.Equal(t, first.Main, b.dayOf(c, 4, day.Sunday).Main)
	assert.NotEqual(t, second.Main, b.dayOf(c, 5, day.Monday).Main)
}

func TestEveryChangeOfACycleIsOneStep(t *testing.T) {
	b := newBench(t)
	c := b.planned(8)
	at := cycle.At{Track: powerlifting, Week: 2, Weekday: day.Monday}
	for _, step := range []struct {
		name string
		do   func() error
	}{
		{"clear", func() error {
			return b.ClearDays(c.ID, desk.Block{Track: powerlifting, FromWeek: 2, ToWeek: 3, FromColumn: 0, ToColumn: 6})
		}},
		{"move", func() error { return b.MoveDay(c.ID, at, cycle.At{Track: powerlifting, Week: 2, Weekday: day.Sunday}) }},
		{"repeat", func() error { return b.RepeatDay(c.ID, at, 6) }},
		{"insert", func() error { return b.InsertWeek(c.ID, 3) }},
		{"remove", func() error { return b.RemoveWeek(c.ID, 3) }},
		{"kind", func() error { return b.SetWeek(c.ID, 3, gym.LightWeek) }},
		{"shift", func() error { return b.ShiftWeeks(c.ID, powerlifting, 3, 1) }},
		{"wave", func() error { return b.RunWave(c.ID, powerlifting, gym.BlockWave, 1) }},
		{"name", func() error { return b.NameCycle(c.ID, "Summer", "stronger") }},
	} {
		t.Run(step.name, func(t *testing.T) {
			before, _ := b.Cycle(c.ID)
			require.NoError(t, step.do())
			after, _ := b.Cycle(c.ID)
			require.NotEqual(t, before, after)
			_, err := b.Undo()
			require.NoError(t, err)
			back, _ := b.reopened().Cycle(c.ID)
			assert.Equal(t, before, back, "undone, on the disk too")
			_, err = b.Redo()
			require.NoError(t, err)
			again, _ := b.Cycle(c.ID)
			assert.Equal(t, after, again)
			_, err = b.Undo()
			require.NoError(t, err)
		})
	}
}

func TestTrainedDaysStayAsTheyAre(t *testing.T) {
	b := newBench(t)
	c := b.planned(8)
	ada := b.join("Ada Brook")
	before, _ := b.Cycle(c.ID)
	trained := b.Trained(before)
	require.False(t, trained(powerlifting, 1, day.Monday))
	b.log(ada, b.dayOf(c, 1, day.Monday).Main.Lift, "5x100")
	require.True(t, b.Trained(before)(powerlifting, 1, day.Monday))
	for name, err := range map[string]error{
		"clear":  b.ClearDays(c.ID, desk.Block{Track: powerlifting, FromWeek: 1, ToWeek: 2, FromColumn: 0, ToColumn: 6}),
		"keep":   b.KeepDay(c.ID, cycle.At{Track: powerlifting, Week: 1, Weekday: day.Monday}, gym.DayPlan{Kind: gym.RecoveryDay}),
		"insert": b.InsertWeek(c.ID, 1),
		"remove": b.RemoveWeek(c.ID, 1),
		"shift":  b.ShiftWeeks(c.ID, powerlifting, 1, 1),
		"wave":   b.RunWave(c.ID, powerlifting, gym.BlockWave, 1),
		"drop":   b.DropCycle(c.ID),
	} {
		assert.ErrorIs(t, err, cycle.ErrTrained, name)
	}
	after, _ := b.Cycle(c.ID)
	assert.Equal(t, before, after, "a refused change has changed nothing")
	assert.NoError(t, b.RunWave(c.ID, powerlifting, gym.BlockWave, 2), "the way forward is open")
}

// A day that a class was held on is trained, also when nothing was logged; a
// class that is only set up is none.
func TestAClassTrainsTheDaysOfItsTracks(t *testing.T) {
	b := newBench(t)
	c := b.planned(8)
	ada := b.join("Ada Brook")
	class, err := b.OpenFreeClass()
	require.NoError(t, err)
	require.NoError(t, b.CheckIn(class.ID, ada.ID))
	assert.False(t, b.Trained(c)(powerlifting, 1, day.Monday), "not yet")
	require.NoError(t, b.StartConditioning(class.ID))
	assert.True(t, b.Trained(c)(powerlifting, 1, day.Monday))
	assert.False(t, b.Trained(c)(powerlifting, 1, day.Tuesday))
}

func TestAChangedDayFindsItsKindAndTitle(t *testing.T) {
	b := newBench(t)
	c := b.planned(8)
	sunday := cycle.At{Track: powerlifting, Week: 2, Weekday: day.Sunday}
	p := cycle.Copy(c, sunday)
	require.Equal(t, gym.RestDay, p.Kind)
	p.Main = b.WithLift(p.Main, "front-squat")
	require.NoError(t, b.KeepDay(c.ID, sunday, p))
	kept := b.dayOf(c, 2, day.Sunday)
	assert.Equal(t, gym.MainDay, kept.Kind)
	assert.Equal(t, "Front squat", kept.Title)
	assert.Equal(t, 5, kept.Main.Reps, "the gym's first rep count that the lift records")
	kept.Main = b.WithLift(kept.Main, "snatch")
	require.NoError(t, b.KeepDay(c.ID, sunday, kept))
	kept = b.dayOf(c, 2, day.Sunday)
	assert.Equal(t, "Snatch", kept.Title)
	assert.Equal(t, 3, kept.Main.Reps, "the snatch has no 5RM")
}

func TestViewShowsWhatStandsInTheCycle(t *testing.T) {
	b := newBench(t)
	c := b.planned(8)
	v, ok := b.ViewCycle(c.ID)
	require.True(t, ok)
	require.Len(t, v.Weeks, 8)
	assert.Equal(t, "8, test", v.Weeks[7].Title)
	assert.True(t, v.Weeks[0].Now)
	assert.Empty(t, v.Breaches, "a built-in track keeps every rule")
	monday := b.dayOf(c, 1, day.Monday)
	cell := v.Tracks[0].Day(1, 0)
	lift, _ := b.Lift(monday.Main.Lift)
	assert.Equal(t, lift.Name, cell.Title)
	assert.Equal(t, gym.Lower, cell.Region)
	assert.Equal(t, desk.ViewDay{Kind: gym.RestDay}, v.Tracks[0].Day(9, 0), "no such week")

	// Two lower-body days beside each other: the breach stands on its cell.
	tuesday := b.dayOf(c, 2, day.Tuesday)
	tuesday.Main = b.WithLift(tuesday.Main, "front-squat")
	require.NoError(t, b.KeepDay(c.ID, cycle.At{Track: powerlifting, Week: 2, Weekday: day.Tuesday}, tuesday))
	v, _ = b.ViewCycle(c.ID)
	require.NotEmpty(t, v.Breaches)
	assert.Equal(t, len(v.Breaches), v.Tracks[0].Breaches)
	x := v.Breaches[0]
	assert.Contains(t, v.Tracks[0].Day(x.Week, x.Column).Breach, x.Mend)
	assert.Contains(t, x.Where, "Powerlifting")
}
