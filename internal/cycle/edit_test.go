package cycle_test

import (
	"fmt"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

const power = gym.ID("powerlifting")

func at(week int, on day.Weekday) cycle.At {
	return cycle.At{Track: power, Week: week, Weekday: on}
}

// lines writes a track's week as "Mon Squat, Tue Bench press".
func titlesOf(c gym.Cycle, week int) []string {
	var list []string
	for _, s := range cycle.Sessions(c, power, week, nil) {
		list = append(list, s.Plan.Short()+" "+s.Title)
	}
	return list
}

// trainedUntil has results on the main days of the first weeks.
func trainedUntil(week int) cycle.Trained {
	return func(_ gym.ID, w int, on day.Weekday) bool { return w <= week && on == day.Monday }
}

func TestPutCopyPasteCutClear(t *testing.T) {
	b := builtInBook(t)
	c := makeCycle(t, b, 6, gym.RollingWave, "powerlifting")

	squat := cycle.Copy(c, at(1, day.Monday))
	squat.WarmUp[0].Dose = "changed in the copy"
	assert.NotEqual(t, squat.WarmUp[0].Dose, cycle.Copy(c, at(1, day.Monday)).WarmUp[0].Dose, "a copy shares nothing")

	pasted, err := cycle.Paste(c, at(1, day.Sunday), squat, nil)
	require.NoError(t, err)
	assert.Equal(t, "Squat (2)", cycle.Copy(pasted, at(1, day.Sunday)).Title, "titles stay unique in a week")
	assert.Equal(t, gym.RestDay, cycle.Copy(c, at(1, day.Sunday)).Kind, "the old cycle is as it was")

	again, err := cycle.Paste(pasted, at(1, day.Sunday), squat, nil)
	require.NoError(t, err)
	assert.Equal(t, pasted, again, "pasting twice is pasting once")

	cut, held, err := cycle.Cut(pasted, at(1, day.Sunday), nil)
	require.NoError(t, err)
	assert.Equal(t, "Squat (2)", held.Title)
	assert.Equal(t, c, cut)

	cleared, err := cycle.Clear(c, at(1, day.Monday), nil)
	require.NoError(t, err)
	assert.Equal(t, []string{"Tue Bench press", "Wed Easy day", "Thu Deadlift", "Fri Shoulder press", "Sat Long and easy"}, titlesOf(cleared, 1))
}

func TestAtDate(t *testing.T) {
	c := gym.Cycle{Start: day.Of(2026, 3, 1)} // a Sunday
	assert.Equal(t, day.Of(2026, 3, 2), at(1, day.Monday).Date(c))
	assert.Equal(t, day.Of(2026, 3, 8), at(2, day.Sunday).Date(c))
	assert.Equal(t, day.Of(2026, 3, 14), at(2, day.Saturday).Date(c))
}

func TestMove(t *testing.T) {
	b := builtInBook(t)
	c := makeCycle(t, b, 6, gym.RollingWave, "powerlifting")
	swapped, err := cycle.Move(c, at(1, day.Monday), at(1, day.Tuesday), nil)
	require.NoError(t, err)
	assert.Equal(t, []string{"Mon Bench press", "Tue Squat", "Wed Easy day", "Thu Deadlift", "Fri Shoulder press", "Sat Long and easy"}, titlesOf(swapped, 1))
	onto, err := cycle.Move(c, at(1, day.Saturday), at(1, day.Sunday), nil)
	require.NoError(t, err)
	assert.Equal(t, "Sun Long and easy", titlesOf(onto, 1)[5])

	later, err := cycle.Move(c, at(1, day.Monday), at(2, day.Sunday), nil)
	require.NoError(t, err)
	assert.Equal(t, "Sun Squat (2)", titlesOf(later, 2)[6], "titles stay unique in a week")

	_, err = cycle.Move(c, at(1, day.Monday), cycle.At{Track: "strongman", Week: 1}, nil)
	assert.ErrorContains(t, err, "copy and paste instead")
}

func TestWeeksInAndOut(t *testing.T) {
	b := builtInBook(t)
	c := makeCycle(t, b, 5, gym.RollingWave, "powerlifting", "strongman")
	more, err := cycle.InsertWeek(c, 2, gym.LightWeek, nil)
	require.NoError(t, err)
	assert.Equal(t, []gym.WeekKind{gym.TrainingWeek, gym.LightWeek, gym.TrainingWeek, gym.TrainingWeek, gym.TrainingWeek, gym.TestWeek}, more.Weeks)
	assert.Empty(t, titlesOf(more, 2))
	assert.Equal(t, titlesOf(c, 2), titlesOf(more, 3))
	back, err := cycle.RemoveWeek(more, 2, nil)
	require.NoError(t, err)
	assert.Equal(t, c, back)
	assert.Len(t, c.Weeks, 5, "the old cycle is as it was")

	appended, err := cycle.InsertWeek(c, 6, gym.TestWeek, nil)
	require.NoError(t, err)
	assert.Len(t, appended.Weeks, 6)
}

// A shift later, by hand: week 2 empties, the last week before the test is lost.
func TestShift(t *testing.T) {
	b := builtInBook(t)
	c := makeCycle(t, b, 6, gym.BlockWave, "powerlifting")
	mark := func(c gym.Cycle) []int { // which week's plan stands in each week, by its squat's notes
		var was []int
		for w := range c.Weeks {
			was = append(was, len(cycle.Copy(c, at(w+1, day.Monday)).Notes))
		}
		return was
	}
	for w := range c.Weeks {
		d := cycle.Copy(c, at(w+1, day.Monday))
		d.Notes = "123456"[:w+1]
		var err error
		c, err = cycle.Put(c, power, d, nil)
		require.NoError(t, err)
	}
	later, err := cycle.Shift(c, power, 2, 1, nil)
	require.NoError(t, err)
	assert.Equal(t, []int{1, 0, 2, 3, 4, 6}, mark(later))
	earlier, err := cycle.Shift(c, power, 3, -1, nil)
	require.NoError(t, err)
	assert.Equal(t, []int{1, 3, 4, 5, 0, 6}, mark(earlier))
	assert.Equal(t, []int{1, 2, 3, 4, 5, 6}, mark(c))
}

func TestRepeat(t *testing.T) {
	b := builtInBook(t)
	c := makeCycle(t, b, 9, gym.StepWave, "powerlifting")
	d := cycle.Copy(c, at(1, day.Monday))
	d.Notes, d.Title = "New cue.", "Deep squat"
	c, err := cycle.Put(c, power, d, nil)
	require.NoError(t, err)
	again, err := cycle.Repeat(c, at(1, day.Monday), 9, nil)
	require.NoError(t, err)
	for w, kind := range c.Weeks {
		before, after := cycle.Copy(c, at(w+1, day.Monday)), cycle.Copy(again, at(w+1, day.Monday))
		assert.Equal(t, kind == gym.TrainingWeek, after.Notes == "New cue.", "week %d", w+1)
		assert.Equal(t, before.Main, after.Main, "week %d keeps its rep count", w+1)
	}
	assert.Empty(t, told(cycle.Check(again, b)))
}

// Each wave run over each other leaves a cycle without breaches.
func TestRunWaveKeepsEveryRule(t *testing.T) {
	b := builtInBook(t)
	counts := b.Settings.DayReps
	for _, key := range builtIn {
		for _, from := range everyWave {
			for _, to := range everyWave {
				for _, n := range []int{3, 4, 5, 8, 12, 13, 26} {
					c := makeCycle(t, b, n, from, key)
					run, err := cycle.RunWave(c, gym.ID(key), to, 1, counts, nil)
					require.NoError(t, err)
					require.Empty(t, told(cycle.Check(run, b)), "%s %d weeks, %s to %s", key, n, from, to)
					assert.Equal(t, to, run.Tracks[0].Wave)
				}
			}
		}
	}
}

// From a later week on, the weeks before it keep their lifts and rep counts.
func TestRunWaveFromAWeek(t *testing.T) {
	b := builtInBook(t)
	c := makeCycle(t, b, 12, gym.RollingWave, "powerlifting", "strongman")
	trained := trainedUntil(5)
	_, err := cycle.RunWave(c, power, gym.StepWave, 5, b.Settings.DayReps, trained)
	require.ErrorIs(t, err, cycle.ErrTrained)
	assert.ErrorContains(t, err, "change week 6 or later")

	run, err := cycle.RunWave(c, power, gym.StepWave, 6, b.Settings.DayReps, trained)
	require.NoError(t, err)
	for w := 1; w <= 5; w++ {
		assert.Equal(t, cycle.Copy(c, at(w, day.Monday)), cycle.Copy(run, at(w, day.Monday)))
	}
	assert.Equal(t, gym.TrainingWeek, run.Weeks[3], "week 4 is over")
	assert.Equal(t, gym.LightWeek, run.Weeks[7])
	strong := slices.IndexFunc(cycle.Check(run, b), func(f cycle.Breach) bool { return f.Rule == cycle.RuleLightWeek && f.Track == "strongman" })
	assert.GreaterOrEqual(t, strong, 0, "the other track now climbs in a light week, and is told so")
}

// Lifts that take turns go on taking turns from what was done, and a light week
// has the first of them.
func TestRunWaveDealsTheLiftsOn(t *testing.T) {
	b := builtInBook(t)
	strong := func(c gym.Cycle, week int) gym.MainLift {
		return cycle.Copy(c, cycle.At{Track: "strongman", Week: week, Weekday: day.Monday}).Main
	}
	c := makeCycle(t, b, 12, gym.RollingWave, "strongman")
	require.Equal(t, gym.LiftKey("paused-squat"), strong(c, 6).Lift)
	block, err := cycle.RunWave(c, "strongman", gym.BlockWave, 7, b.Settings.DayReps, nil)
	require.NoError(t, err)
	// Two singles are done, of the back squat and the paused squat; the block's
	// first single, in week 9, goes to the front squat.
	assert.Equal(t, "front-squat 1", fmt.Sprint(strong(block, 9).Lift, " ", strong(block, 9).Reps))

	step, err := cycle.RunWave(c, "strongman", gym.StepWave, 7, b.Settings.DayReps, nil)
	require.NoError(t, err)
	require.Equal(t, gym.LiftKey("front-squat"), strong(c, 8).Lift)
	assert.Equal(t, gym.LiftKey("back-squat"), strong(step, 8).Lift)
	assert.NotEmpty(t, strong(step, 8).Scheme)
}

func TestVerbsRefuse(t *testing.T) {
	b := builtInBook(t)
	c := makeCycle(t, b, 6, gym.RollingWave, "powerlifting")
	short := makeCycle(t, b, 3, gym.RollingWave, "powerlifting")
	long := makeCycle(t, b, 26, gym.RollingWave, "powerlifting")
	past := trainedUntil(3)
	counts := b.Settings.DayReps
	for _, test := range []struct {
		name  string
		in    gym.Cycle
		try   func(gym.Cycle) (gym.Cycle, error)
		past  bool
		tells string
	}{
		{"put on a trained day", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Put(c, power, cycle.Copy(c, at(2, 0)), past) }, true, "Monday of week 2"},
		{"clear a trained day", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Clear(c, at(3, 0), past) }, true, "change week 4 or later"},
		{"move from a trained day", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Move(c, at(3, 0), at(5, 0), past) }, true, "week 3"},
		{"move onto a trained day", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Move(c, at(5, 0), at(3, 0), past) }, true, "week 3"},
		{"repeat over trained days", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Repeat(c, at(1, 0), 6, past) }, true, "week 2"},
		{"shift over trained days", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Shift(c, power, 3, 1, past) }, true, "week 3"},
		{"shift onto a trained week", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Shift(c, power, 4, -1, past) }, true, "week 3"},
		{"insert before trained days", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.InsertWeek(c, 2, gym.LightWeek, past) }, true, "week 2"},
		{"remove a trained week", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.RemoveWeek(c, 3, past) }, true, "week 3"},
		{"relabel a trained week", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.SetWeek(c, 3, gym.LightWeek, past) }, true, "week 3"},
		{"everything is trained", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Clear(c, at(3, 0), trainedUntil(6)) }, true, "start the next cycle from this one"},
		{"no such week", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Clear(c, at(7, 0), nil) }, false, "choose 1 to 6"},
		{"no such weekday", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Clear(c, at(1, 9), nil) }, false, "not a weekday"},
		{"no such track", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Clear(c, cycle.At{Track: "x", Week: 1}, nil) }, false, "add the track first"},
		{"repeat no day", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Repeat(c, at(0, 0), 6, nil) }, false, "choose 1 to 6"},
		{"shift by two", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Shift(c, power, 2, 2, nil) }, false, "shift by one"},
		{"shift before the start", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Shift(c, power, 1, -1, nil) }, false, "choose 2 to 5"},
		{"shift the test week", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.Shift(c, power, 6, 1, nil) }, false, "choose 1 to 5"},
		{"one week too many", long, func(c gym.Cycle) (gym.Cycle, error) { return cycle.InsertWeek(c, 1, gym.LightWeek, nil) }, false, "26 weeks"},
		{"insert nowhere", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.InsertWeek(c, 9, gym.LightWeek, nil) }, false, "choose 1 to 7"},
		{"one week too few", short, func(c gym.Cycle) (gym.Cycle, error) { return cycle.RemoveWeek(c, 1, nil) }, false, "3 weeks"},
		{"remove nothing", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.RemoveWeek(c, 0, nil) }, false, "choose 1 to 6"},
		{"relabel nothing", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.SetWeek(c, 7, gym.LightWeek, nil) }, false, "choose 1 to 6"},
		{"a wave that is none", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.RunWave(c, power, "zigzag", 1, counts, nil) }, false, "block, rolling or step"},
		{"a wave over nothing", c, func(c gym.Cycle) (gym.Cycle, error) { return cycle.RunWave(c, "x", gym.BlockWave, 1, counts, nil) }, false, "add the track first"},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, err := test.try(test.in)
			require.ErrorContains(t, err, test.tells)
			if test.past {
				assert.ErrorIs(t, err, cycle.ErrTrained)
			}
			assert.Equal(t, test.in, got, "nothing changed")
		})
	}
}

// Whatever a coach does, the cycle that was stays as it was, trained days keep
// their plans, and the days stay in order, one plan each.
func TestVerbsKeepThePast(t *testing.T) {
	b := builtInBook(t)
	counts := b.Settings.DayReps
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(3, 8).Draw(t, "weeks")
		c := makeCycle(t, b, n, rapid.SampledFrom(everyWave).Draw(t, "wave"), "powerlifting", "strongman")
		until := rapid.IntRange(0, 3).Draw(t, "trained until")
		trained := trainedUntil(until)
		for range rapid.IntRange(1, 6).Draw(t, "verbs") {
			before := deepCopy(c)
			next, err := randomVerb(t, c, power, counts, trained)
			require.Equal(t, before, c, "the old cycle is as it was")
			if err != nil {
				require.Equal(t, c, next, "an error changes nothing")
			}
			for w := 1; w <= until; w++ {
				require.Equal(t, cycle.Copy(c, at(w, day.Monday)), cycle.Copy(next, at(w, day.Monday)), "trained days keep their plans")
			}
			for _, p := range next.Tracks {
				require.True(t, slices.IsSortedFunc(p.Days, func(a, b gym.DayPlan) int {
					if d := 7*a.Week + int(a.Weekday) - 7*b.Week - int(b.Weekday); d != 0 {
						return d
					}
					return 1 // two plans for one day are out of order
				}))
			}
			c = next
		}
	})
}

func deepCopy(c gym.Cycle) gym.Cycle {
	c.Weeks, c.Tracks = slices.Clone(c.Weeks), slices.Clone(c.Tracks)
	for i, p := range c.Tracks {
		c.Tracks[i].Days = slices.Clone(p.Days)
		for j, d := range p.Days {
			c.Tracks[i].Days[j] = cycle.Copy(gym.Cycle{Tracks: []gym.TrackPlan{p}}, cycle.At{Track: p.Track, Week: d.Week, Weekday: d.Weekday})
		}
	}
	return c
}

func randomVerb(t *rapid.T, c gym.Cycle, track gym.ID, counts []int, trained cycle.Trained) (gym.Cycle, error) {
	week := func(name string) int { return rapid.IntRange(0, len(c.Weeks)+1).Draw(t, name) }
	anyDay := func(name string) cycle.At {
		return cycle.At{Track: track, Week: week(name), Weekday: rapid.SampledFrom([]day.Weekday{0, 1, 2, 3, 4, 5, 6}).Draw(t, name)}
	}
	kind := rapid.SampledFrom([]gym.WeekKind{gym.TrainingWeek, gym.LightWeek}).Draw(t, "kind")
	switch rapid.IntRange(0, 8).Draw(t, "verb") {
	case 0:
		return cycle.Paste(c, anyDay("to"), cycle.Copy(c, anyDay("from")), trained)
	case 1:
		next, _, err := cycle.Cut(c, anyDay("day"), trained)
		return next, err
	case 2:
		return cycle.Move(c, anyDay("from"), anyDay("to"), trained)
	case 3:
		return cycle.Repeat(c, anyDay("day"), week("through"), trained)
	case 4:
		return cycle.Shift(c, track, week("from"), rapid.SampledFrom([]int{-1, 1}).Draw(t, "by"), trained)
	case 5:
		return cycle.InsertWeek(c, week("before"), kind, trained)
	case 6:
		return cycle.RemoveWeek(c, week("week"), trained)
	case 7:
		return cycle.SetWeek(c, week("week"), kind, trained)
	}
	return cycle.RunWave(c, track, rapid.SampledFrom(everyWave).Draw(t, "wave"), week("from"), counts, trained)
}
