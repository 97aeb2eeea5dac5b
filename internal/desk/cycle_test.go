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
	b.hold(ada)
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

// hold holds a class of now with one athlete in it.
func (b *bench) hold(a gym.Athlete) {
	b.t.Helper()
	class, err := b.OpenFreeClass()
	require.NoError(b.t, err)
	require.NoError(b.t, b.CheckIn(class.ID, a.ID))
	require.NoError(b.t, b.StartConditioning(class.ID))
}

// A sheet of rep maxes has the date of today unless it says another, and it would
// close today's plan to a whole track if it counted as training.
func TestASheetOfRepMaxesTrainsNoDay(t *testing.T) {
	b := newBench(t)
	c := b.planned(8)
	ada := b.join("Ada Brook")
	monday := cycle.At{Track: powerlifting, Week: 1, Weekday: day.Monday}
	lift, _ := b.Lift(b.dayOf(c, 1, day.Monday).Main.Lift)
	i := b.read(desk.RosterSheet, "Name;Track;"+lift.Name+" 5RM (kg)\nBo Quist;Powerlifting;100\n")
	require.NoError(t, b.AcceptImport(i, false))
	b.log(ada, lift.Key, "5x100")
	assert.False(t, b.Trained(c)(powerlifting, 1, day.Monday))
	assert.NoError(t, b.KeepDay(c.ID, monday, gym.DayPlan{Kind: gym.RecoveryDay}))
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

// A day that a closure moved is trained when it was done on its new day.
func TestAMovedDayIsTrainedWhereItWasPlanned(t *testing.T) {
	b := newBench(t)
	c := b.planned(8)
	ada := b.join("Ada Brook")
	holiday := c.Start.Add(7) // the Monday of week 2
	_, err := b.KeepClosure(gym.Closure{From: holiday, Until: holiday, Name: "Holiday"})
	require.NoError(t, err)
	moved := day.None
	for _, p := range b.Calendar().TrackWeek(powerlifting, holiday).Days {
		if p.Plan == day.Monday {
			moved = holiday.Add(int(p.On - day.Monday))
		}
	}
	require.Greater(t, moved, holiday)
	b.now = moved.At(day.ClockOf(18, 0), b.now.Location())
	b.hold(ada)
	trained := b.Trained(c)
	assert.True(t, trained(powerlifting, 2, day.Monday))
	for on := day.Tuesday; on <= day.Sunday; on++ {
		assert.False(t, trained(powerlifting, 2, on), on)
	}
}

func TestTheStartOfACycleIsReadInPlace(t *testing.T) {
	b := newBench(t)
	for text, want := range map[string]string{
		"2026-03-16": "", "16 March": "it is not a date; write 2026-03-09",
		"2026-03-17": "your week begins on Monday; start on 2026-03-16 or 2026-03-23",
	} {
		on, err := b.ReadStart(text)
		if want == "" {
			require.NoError(t, err)
			assert.Equal(t, text, on.String())
			continue
		}
		require.Error(t, err)
		assert.Contains(t, err.Error(), want)
	}
	for text, want := range map[string]int{"3": 3, " 26 ": 26, "2": 0, "27": 0, "twelve": 0} {
		got, err := desk.ReadWeeks(text)
		assert.Equal(t, want, got, text)
		assert.Equal(t, want == 0, err != nil, text)
	}
}

func TestClashAndFreeStart(t *testing.T) {
	b := newBench(t)
	assert.Equal(t, day.From(monday), b.FreeStart(), "today is a Monday")
	c := b.planned(8)
	assert.Equal(t, c.End().Add(1), b.FreeStart())
	assert.Contains(t, b.Clash(powerlifting, c.End().Add(-6), 8), `"Spring" until Sunday 3 May 2026`)
	assert.Empty(t, b.Clash(powerlifting, c.End().Add(1), 8))
	assert.Empty(t, b.Clash("another track", c.Start, 8))
	_, err := b.NextCycle(c.ID, b.NextName(c.Name), c.End().Add(-6))
	require.Error(t, err)
	next, err := b.NextCycle(c.ID, b.NextName(c.Name), b.FreeStart())
	require.NoError(t, err)
	assert.Equal(t, "Spring 2", next.Name)
	assert.Equal(t, "Spring 3", b.NextName("Spring"))
	assert.NoError(t, b.DropCycle(next.ID))
	latest := b.Cycles()
	require.Len(t, latest, 1)
}

// What a wave would do is what it does.
func TestWavePreviewTellsWhatIsRun(t *testing.T) {
	b := newBench(t)
	c := b.planned(8)
	lines, err := b.WavePreview(c.ID, powerlifting, gym.BlockWave, 1)
	require.NoError(t, err)
	require.Len(t, lines, 4)
	assert.Equal(t, "Mon  Back squat: 5 5 5 3 3 1 1 test 1", lines[0], "seven weeks in blocks of 3, 2 and 2, as package cycle deals them")
	before, _ := b.Cycle(c.ID)
	assert.Equal(t, c, before, "a preview changes nothing")
	require.NoError(t, b.RunWave(c.ID, powerlifting, gym.BlockWave, 1))
	for w, want := range []int{5, 5, 5, 3, 3, 1, 1} {
		assert.Equal(t, want, b.dayOf(c, w+1, day.Monday).Main.Reps)
	}
	_, err = b.WavePreview("no such cycle", powerlifting, gym.BlockWave, 1)
	assert.Error(t, err)
}

func TestEveryRuleHasAFewWords(t *testing.T) {
	for _, r := range []cycle.Rule{cycle.RuleLength, cycle.RuleNeighbours, cycle.RulePrilepin, cycle.RuleOutsideTrack} {
		assert.NotEqual(t, string(r), desk.RuleText(r))
	}
}
