package cycle_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// runningGym is a gym in a six-week cycle of all built-in tracks.
func runningGym(t require.TestingT) *gym.Book {
	b := builtInBook(t)
	b.Cycles = []gym.Cycle{makeCycle(t, b, 6, gym.RollingWave, builtIn...)}
	return b
}

func closed(from day.Date, days int) gym.Closure {
	return gym.Closure{From: from, Until: from.Add(days - 1), Name: "Holiday"}
}

func TestPlanOn(t *testing.T) {
	b := runningGym(t)
	k := cycle.NewCalendar(b)
	assert.Equal(t, "Squat", k.PlanOn(power, aMonday).Title)
	assert.Equal(t, 2, k.PlanOn(power, aMonday.Add(8)).Week)
	assert.Equal(t, gym.RestDay, k.PlanOn(power, aMonday.Add(6)).Kind)
	assert.Equal(t, gym.RestDay, k.PlanOn(power, aMonday.Add(-1)).Kind, "before the cycle")
	assert.Equal(t, gym.RestDay, k.PlanOn("nobody's", aMonday).Kind)

	b.Closures = []gym.Closure{closed(aMonday.Add(7), 1)}
	assert.Equal(t, gym.RestDay, k.PlanOn(power, aMonday.Add(7)).Kind, "closed")
}

// A cycle that starts on a Sunday has its weeks from Sunday to Saturday.
func TestWeeksBeginOnTheGymsFirstDay(t *testing.T) {
	b := builtInBook(t)
	b.Settings.FirstDay = day.Sunday
	s := cycle.Spec{ID: "c", Name: "Spring", Start: aMonday.Add(-1), Weeks: 4, Tracks: []cycle.TrackSpec{{Track: power, Template: "powerlifting", Wave: gym.RollingWave}}}
	c, err := cycle.Make(s, b)
	require.NoError(t, err)
	require.Empty(t, told(cycle.Check(c, b)))
	d := cycle.Copy(c, at(1, day.Monday))
	d.Week, d.Weekday, d.Title = 2, day.Sunday, "Extra squat"
	c, err = cycle.Put(c, power, d, nil)
	require.NoError(t, err)
	b.Cycles = []gym.Cycle{c}
	k := cycle.NewCalendar(b)
	assert.Equal(t, "Extra squat", k.PlanOn(power, aMonday.Add(6)).Title)
	found := cycle.Check(c, b)
	require.NotEmpty(t, found)
	last := found[len(found)-1]
	assert.Equal(t, where{cycle.RuleNeighbours, 2, day.Monday}, where{last.Rule, last.Week, last.Weekday}, "%q", told(found))
}

func TestMovedByHand(t *testing.T) {
	for _, test := range []struct {
		name     string
		closures []gym.Closure
		want     string
		why      string
	}{
		{
			name: "nothing is closed",
			want: "Squat Mon, Bench press Tue, Easy day Wed, Deadlift Thu, Shoulder press Fri, Long and easy Sat",
			why:  "Every day stands on the track's own weekday.",
		},
		{
			name:     "Monday is closed: the easy day moves to Sunday and makes way for the squat",
			closures: []gym.Closure{closed(aMonday.Add(7), 1)},
			want:     "Bench press Tue, Easy day Wed, Deadlift Thu, Shoulder press Fri, Squat Sat, Long and easy Sun",
			why:      "Closed: Mon. All 6 days of the track fit. Moved: Squat from Monday to Saturday, Long and easy from Saturday to Sunday.",
		},
		{
			name:     "two days are closed: the last easy day makes way",
			closures: []gym.Closure{closed(aMonday.Add(7), 2)},
			want:     "Easy day Wed, Deadlift Thu, Shoulder press Fri, Squat Sat, Bench press Sun",
			why:      "Closed: Mon, Tue. Left out, because no other weekday is free: Long and easy. Moved: Squat from Monday to Saturday, Bench press from Tuesday to Sunday.",
		},
		{
			name:     "the whole week is closed",
			closures: []gym.Closure{closed(aMonday.Add(7), 7)},
			why:      "Closed: Mon, Tue, Wed, Thu, Fri, Sat, Sun. No weekday is free, so nothing fits: Squat, Bench press, Easy day, Deadlift, Shoulder press, Long and easy.",
		},
	} {
		t.Run(test.name, func(t *testing.T) {
			b := runningGym(t)
			w := cycle.NewCalendar(b).Moved(power, aMonday.Add(9), test.closures)
			assert.Equal(t, test.want, placed(w), w.Why)
			if test.why != "" {
				assert.Equal(t, test.why, w.Why)
			}
		})
	}
}

// Only weekdays with classes take a moved day in.
func TestMovedKeepsToTheTimetable(t *testing.T) {
	b := runningGym(t)
	for _, on := range []day.Weekday{day.Monday, day.Tuesday, day.Thursday, day.Friday} {
		b.Slots = append(b.Slots, gym.Slot{ID: gym.ID(on.Short()), Weekday: on, Tracks: []gym.ID{power}})
	}
	k := cycle.NewCalendar(b)
	assert.Equal(t, day.WeekdaysOf(day.Monday, day.Tuesday, day.Thursday, day.Friday), k.ClassDays(power))
	w := k.Moved(power, aMonday, []gym.Closure{closed(aMonday, 1)})
	_, sunday := w.On(day.Sunday)
	assert.False(t, sunday, "nobody teaches on Sunday")
}

// clearAll clears weekdays of the powerlifting track in every week.
func clearAll(t *testing.T, b *gym.Book, days ...day.Weekday) {
	c := b.Cycles[0]
	for w := range c.Weeks {
		for _, on := range days {
			var err error
			c, err = cycle.Clear(c, at(w+1, on), nil)
			require.NoError(t, err)
		}
	}
	b.Cycles = []gym.Cycle{c}
}

// The bench press of week 1 had to go to Sunday, so that of week 2 cannot go to
// Monday, although no plan stands there.
func TestMovedMindsTheWeekBefore(t *testing.T) {
	b := runningGym(t)
	clearAll(t, b, day.Monday)
	b.Closures = []gym.Closure{closed(aMonday, 2), closed(aMonday.Add(8), 1)}
	k := cycle.NewCalendar(b)
	assert.Equal(t, "Easy day Wed, Deadlift Thu, Shoulder press Fri, Long and easy Sat, Bench press Sun", placed(k.TrackWeek(power, aMonday)))
	assert.Equal(t, "Easy day Wed, Deadlift Thu, Shoulder press Fri, Long and easy Sat, Bench press Sun", placed(k.TrackWeek(power, aMonday.Add(7))))
	b.Closures = b.Closures[1:]
	assert.Equal(t, "Bench press Mon, Easy day Wed, Deadlift Thu, Shoulder press Fri, Long and easy Sat", placed(k.TrackWeek(power, aMonday.Add(7))))
}

// On a closed Monday an athlete's squat could go to Sunday, were it not for the
// squat of the Monday after.
func TestOwnWeekMindsTheWeekAfter(t *testing.T) {
	b := runningGym(t)
	clearAll(t, b, day.Tuesday, day.Wednesday, day.Thursday, day.Friday, day.Saturday)
	b.Moves = []gym.TrackMove{{Athlete: "a", Track: power, From: aMonday}}
	b.Closures = []gym.Closure{closed(aMonday.Add(7), 1)}
	k := cycle.NewCalendar(b)
	a := gym.Athlete{ID: "a", Free: day.WeekdaysOf(day.Monday, day.Sunday)}
	w := k.OwnWeek(a, aMonday.Add(7))
	assert.Empty(t, w.Days)
	assert.Contains(t, w.Why, "The week before or after stands too near.")
	a.Free |= day.WeekdaysOf(day.Saturday)
	assert.Equal(t, "Squat Sat", placed(k.OwnWeek(a, aMonday.Add(7))))
}

// Whatever is closed, in three weeks on end, no day of a track stands on a closed
// day, beside a day for its region, or twice; and days that could stay did not
// all move for nothing: with nothing closed nothing moves.
func TestMovedKeepsSpacingAcrossWeeks(t *testing.T) {
	b := runningGym(t)
	rapid.Check(t, func(t *rapid.T) {
		var closures []gym.Closure
		for range rapid.IntRange(0, 3).Draw(t, "closures") {
			closures = append(closures, closed(aMonday.Add(rapid.IntRange(0, 27).Draw(t, "from")), rapid.IntRange(1, 9).Draw(t, "days")))
		}
		k := cycle.NewCalendar(b)
		track := gym.ID(rapid.SampledFrom(builtIn).Draw(t, "track"))
		before := gym.Region("")
		for week := range 4 {
			first := aMonday.Add(7 * week)
			w := k.Moved(track, first, closures)
			done := map[day.Weekday]bool{}
			for i := range 7 {
				on := first.Add(i)
				p, trains := w.On(on.Weekday())
				if !trains {
					before = ""
					continue
				}
				require.False(t, done[p.Plan], "%s is done twice", p.Title)
				done[p.Plan] = true
				for _, c := range closures {
					require.False(t, c.Covers(on), "%s stands on a closed day", p.Title)
				}
				require.False(t, p.Region != "" && p.Region == before, "%s on %s stands beside its own region", p.Title, on.Long())
				before = p.Region
			}
			require.Len(t, w.Dropped, len(cycle.Sessions(b.Cycles[0], track, week+1, b.Lifts))-len(w.Days))
		}
	})
}

func TestTrackOf(t *testing.T) {
	b := runningGym(t)
	b.Moves = []gym.TrackMove{
		{Athlete: "a", Track: "strongman", From: 20},
		{Athlete: "b", Track: power, From: 10},
		{Athlete: "a", Track: power, From: 10},
		{Athlete: "a", Track: "", From: 30},
		{Athlete: "a", Track: "weightlifting", From: 40},
		{Athlete: "a", Track: "strongman", From: 40},
	}
	k := cycle.NewCalendar(b)
	for on, want := range map[day.Date]gym.ID{
		9: "", 10: power, 19: power, 20: "strongman", 29: "strongman", 30: "", 39: "",
		40: "strongman", // made last
	} {
		assert.Equal(t, want, k.TrackOf("a", on), "day %d", on)
	}
}

func TestOwnWeek(t *testing.T) {
	b := runningGym(t)
	b.Moves = []gym.TrackMove{{Athlete: "a", Track: power, From: aMonday}}
	k := cycle.NewCalendar(b)
	a := gym.Athlete{ID: "a", Status: gym.Active}
	assert.Equal(t, k.TrackWeek(power, aMonday), k.OwnWeek(a, aMonday), "who said nothing follows the track")

	a.Free, a.Want = day.WeekdaysOf(day.Monday, day.Tuesday, day.Thursday, day.Saturday), 4
	assert.Equal(t, "Squat Mon, Bench press Tue, Deadlift Thu, Shoulder press Sat", placed(k.OwnWeek(a, aMonday)))

	a.Hand = []gym.HandDay{{Plan: day.Thursday, On: day.Sunday}}
	w := k.OwnWeek(a, aMonday)
	assert.Contains(t, w.Why, "Set by hand: Deadlift.")
	assert.Equal(t, []cycle.Rule{cycle.RuleNotFree}, rulesOf(t, cycle.JudgeHand(k.OwnAsk(a, aMonday), w)), "Sunday is not free, and the squat gave way")

	a.Free, a.Hand, a.Want = 0, nil, 2
	assert.Equal(t, "Squat Mon, Bench press Tue", placed(k.OwnWeek(a, aMonday)))

	b.Closures = []gym.Closure{closed(aMonday.Add(7), 1)}
	a.Free = day.WeekdaysOf(day.Monday, day.Wednesday, day.Friday)
	w = k.OwnWeek(a, aMonday.Add(7))
	assert.Contains(t, w.Why, "Closed: Mon.")
	_, monday := w.On(day.Monday)
	assert.False(t, monday)
	assert.Len(t, w.Days, 2)

	assert.Empty(t, k.OwnWeek(gym.Athlete{ID: "nobody", Want: 3}, aMonday).Days)
	assert.Empty(t, k.OwnAsk(gym.Athlete{ID: "nobody"}, aMonday).Sessions)
}

func TestExpected(t *testing.T) {
	b := runningGym(t)
	for i, a := range []gym.Athlete{
		{Status: gym.Active},
		{Status: gym.Paused},
		{Status: gym.Active, Free: day.WeekdaysOf(day.Tuesday, day.Friday)},
		{Status: gym.Active},
		{Status: gym.Active},
	} {
		a.ID = gym.ID(fmt.Sprint(i))
		b.Athletes = append(b.Athletes, a)
		track := power
		if i == 3 {
			track = "strongman"
		}
		if i != 4 {
			b.Moves = append(b.Moves, gym.TrackMove{Athlete: a.ID, Track: track, From: aMonday})
		}
	}
	slot := gym.Slot{Weekday: day.Monday, Tracks: []gym.ID{power}}
	ids := func(due []cycle.Due) []gym.ID {
		var list []gym.ID
		for _, d := range due {
			list = append(list, d.Athlete)
		}
		return list
	}
	k := cycle.NewCalendar(b)
	assert.Equal(t, []gym.ID{"0"}, ids(k.Expected(slot, aMonday)))
	slot.Tracks = nil
	assert.Equal(t, []gym.ID{"0", "3"}, ids(k.Expected(slot, aMonday)))
	assert.Empty(t, k.Expected(slot, aMonday.Add(1)), "another weekday")
	b.Closures = []gym.Closure{closed(aMonday, 1)}
	assert.Empty(t, k.Expected(slot, aMonday), "closed")
}

func TestMoveEffect(t *testing.T) {
	b := runningGym(t)
	b.Moves = []gym.TrackMove{{Athlete: "a", Track: power, From: aMonday}}
	for _, reps := range []int{5, 3, 1} {
		b.Results = append(b.Results, gym.Result{Athlete: "a", Lift: "back-squat", Reps: reps})
	}
	b.Results = append(b.Results,
		gym.Result{Athlete: "a", Lift: "axle-deadlift", Reps: 1, Void: &gym.Void{}}, // void: still lacking
		gym.Result{Athlete: "b", Lift: "log-press", Reps: 1})                        // another athlete's
	k := cycle.NewCalendar(b)
	a := gym.Athlete{ID: "a", Free: day.WeekdaysOf(day.Monday, day.Tuesday, day.Thursday), Want: 3}
	e := k.MoveEffect(a, "strongman", aMonday.Add(14))
	assert.Equal(t, "Squat Mon, Bench press Tue, Deadlift Thu", placed(e.Before))
	assert.Equal(t, "Squat Mon, Overhead Tue, Pull Thu", placed(e.After))
	lacks := map[gym.LiftKey][]int{}
	for _, l := range e.Lacks {
		assert.GreaterOrEqual(t, l.From, aMonday.Add(14))
		lacks[l.Lift] = append(lacks[l.Lift], l.Reps)
	}
	assert.NotContains(t, lacks, gym.LiftKey("back-squat"))
	assert.Contains(t, lacks["log-press"], 1)
	assert.Contains(t, lacks["axle-deadlift"], 1)
	assert.Contains(t, lacks["stone-over-bar"], 3, "second lifts count too")
	assert.Contains(t, e.Why, "From Monday 16 March 2026: 3 days a week, as before.")
	assert.Contains(t, e.Why, "rep maxes to find or estimate.")

	none := k.MoveEffect(a, "strongman", aMonday.Add(300))
	assert.Contains(t, none.Why, "No cycle runs for that track")
	assert.Empty(t, none.Lacks)

	// Percentages are counted from the single.
	olympic := k.MoveEffect(a, "weightlifting", aMonday)
	assert.Contains(t, olympic.Lacks, cycle.Lack{Lift: "snatch", Reps: 1, From: aMonday})
}
