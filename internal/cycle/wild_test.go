package cycle_test

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// wildCycle is what a damaged or hand-written file might hold.
func wildCycle(t *rapid.T, b *gym.Book) gym.Cycle {
	c := gym.Cycle{ID: "wild", Name: "Wild", Start: day.Date(rapid.IntRange(-400, 40000).Draw(t, "start"))}
	kinds := []gym.WeekKind{gym.TrainingWeek, gym.LightWeek, gym.TestWeek, "odd"}
	for range rapid.IntRange(0, 30).Draw(t, "weeks") {
		c.Weeks = append(c.Weeks, rapid.SampledFrom(kinds).Draw(t, "kind"))
	}
	for _, id := range rapid.SliceOfN(rapid.SampledFrom([]gym.ID{"a", "b", ""}), 0, 3).Draw(t, "tracks") {
		p := gym.TrackPlan{Track: id, MainDays: rapid.IntRange(-1, 8).Draw(t, "main days")}
		for range rapid.IntRange(0, 12).Draw(t, "days") {
			p.Days = append(p.Days, wildDay(t, b))
		}
		c.Tracks = append(c.Tracks, p)
	}
	return c
}

func wildDay(t *rapid.T, b *gym.Book) gym.DayPlan {
	lift := func(name string) gym.LiftKey {
		return rapid.SampledFrom([]gym.LiftKey{"", "no-lift", "snatch", "back-squat", b.Lifts[rapid.IntRange(0, len(b.Lifts)-1).Draw(t, name)].Key}).Draw(t, name)
	}
	number := rapid.IntRange(-3, 40)
	d := gym.DayPlan{
		Week: number.Draw(t, "week"), Weekday: day.Weekday(rapid.IntRange(-2, 9).Draw(t, "weekday")),
		Kind:   rapid.SampledFrom([]gym.DayKind{gym.MainDay, gym.RecoveryDay, gym.RestDay, "odd"}).Draw(t, "kind"),
		Title:  rapid.SampledFrom([]string{"", "A", "B"}).Draw(t, "title"),
		Main:   gym.MainLift{Lift: lift("main"), Reps: number.Draw(t, "reps")},
		Second: gym.SecondLift{Lift: lift("second"), Sets: number.Draw(t, "sets"), OfLift: lift("of")},
	}
	for range rapid.IntRange(0, 3).Draw(t, "scheme") {
		d.Main.Scheme = append(d.Main.Scheme, gym.Sets{
			Percent: rapid.Float64().Draw(t, "percent"), Sets: number.Draw(t, "sets"), Reps: number.Draw(t, "reps"),
		})
	}
	for range rapid.IntRange(0, 2).Draw(t, "items") {
		d.Workout.Items = append(d.Workout.Items, gym.Item{Movement: rapid.SampledFrom([]gym.MovementKey{"run", "none", "kettlebell-swing"}).Draw(t, "movement")})
	}
	return d
}

// Nothing that a file can hold makes the planner panic or speak without a mend,
// and every place that a breach names can be marked in the grid.
func TestWildCyclesAreJudgedCalmly(t *testing.T) {
	b := builtInBook(t)
	rapid.Check(t, func(t *rapid.T) {
		c := wildCycle(t, b)
		for _, f := range cycle.Check(c, b) {
			require.NotEmpty(t, f.Why)
			require.NotEmpty(t, f.Mend)
			if f.Rule != cycle.RulePlace {
				require.True(t, f.Week >= 0 && f.Week <= len(c.Weeks), "%+v", f)
				require.True(t, f.Weekday >= cycle.NoWeekday && f.Weekday <= day.Sunday, "%+v", f)
			}
		}
		b := *b
		b.Cycles = []gym.Cycle{c}
		k := cycle.NewCalendar(&b)
		on := c.Start.Add(rapid.IntRange(-10, 220).Draw(t, "on"))
		a := gym.Athlete{
			ID: "x", Free: day.Weekdays(rapid.IntRange(0, 255).Draw(t, "free")), Want: rapid.IntRange(-1, 9).Draw(t, "want"),
			Hand: []gym.HandDay{{
				Plan: day.Weekday(rapid.IntRange(-1, 8).Draw(t, "plan")), On: day.Weekday(rapid.IntRange(-1, 8).Draw(t, "hand")),
			}},
		}
		cycle.JudgeHand(k.OwnAsk(a, on), k.OwnWeek(a, on))
		require.NotEmpty(t, k.MoveEffect(a, "a", on).Why)
		if len(c.Tracks) > 0 && c.Tracks[0].Track == "a" {
			next, err := randomVerb(t, c, "a", []int{5, 3, 1}, nil)
			if err != nil {
				require.Equal(t, c, next)
			}
		}
	})
}
