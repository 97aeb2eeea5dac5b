package cycle_test

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

func session(on day.Weekday, title string, region gym.Region) cycle.Session {
	return cycle.Session{Plan: on, Title: title, Kind: gym.MainDay, Lift: gym.LiftKey(title), Region: region}
}

func easy(on day.Weekday, title string) cycle.Session {
	return cycle.Session{Plan: on, Title: title, Kind: gym.RecoveryDay}
}

// The usual skeleton: lower and upper body in turn, and an easy day.
func fourDays() []cycle.Session {
	return []cycle.Session{
		session(day.Monday, "Squat", gym.Lower), session(day.Tuesday, "Bench", gym.Upper), easy(day.Wednesday, "Easy"),
		session(day.Thursday, "Deadlift", gym.Lower), session(day.Friday, "Press", gym.Upper),
	}
}

// wish is the brute force's view of one assignment: onto[i] is where session i
// goes, or -1.
type wish struct{ onto []int }

func (w wish) kept() int {
	n := 0
	for _, d := range w.onto {
		if d >= 0 {
			n++
		}
	}
	return n
}

// allowed says, straight from the rule, whether a week may stand.
func (w wish) allowed(list []cycle.Session, free day.Weekdays) bool {
	for i, d := range w.onto {
		if d < 0 {
			continue
		}
		if !free.Has(day.Weekday(d)) {
			return false
		}
		for j, e := range w.onto {
			if i == j || e < 0 {
				continue
			}
			if d == e {
				return false
			}
			if (d+1)%7 == e && list[i].Region != "" && list[i].Region == list[j].Region {
				return false
			}
		}
	}
	return true
}

// every calls f with each way to put n sessions on weekdays or nowhere.
func every(n int, f func(wish)) {
	onto := make([]int, n)
	var walk func(i int)
	walk = func(i int) {
		if i == n {
			f(wish{onto})
			return
		}
		for d := -1; d < 7; d++ {
			onto[i] = d
			walk(i + 1)
		}
	}
	walk(0)
}

// bruteForce returns the most sessions that can stand, and among the weeks with
// that many the best sum of importance and then the fewest moved days.
func bruteForce(list []cycle.Session, free day.Weekdays, want int, weight []int) (most, importance, moved int) {
	most, importance = -1, -1
	every(len(list), func(w wish) {
		n := w.kept()
		if n < most || (want > 0 && n > want) || !w.allowed(list, free) {
			return
		}
		sum, away := 0, 0
		for i, d := range w.onto {
			if d >= 0 {
				sum += weight[i]
				if day.Weekday(d) != list[i].Plan {
					away++
				}
			}
		}
		if n > most || sum > importance || (sum == importance && away < moved) {
			most, importance, moved = n, sum, away
		}
	})
	return most, importance, moved
}

func checkArrange(t require.TestingT, ask cycle.Ask, weight []int) {
	got := cycle.Arrange(ask)
	most, importance, moved := bruteForce(ask.Sessions, ask.Free, ask.Want, weight)
	onto := make([]int, len(ask.Sessions))
	sum, away := 0, 0
	for i, s := range ask.Sessions {
		onto[i] = -1
		for _, p := range got.Days {
			if p.Plan == s.Plan {
				require.Equal(t, s, p.Session)
				onto[i] = int(p.On)
				sum += weight[i]
				if p.On != s.Plan {
					away++
				}
			}
		}
	}
	require.True(t, wish{onto}.allowed(ask.Sessions, ask.Free), "free %s: %v breaks a rule", ask.Free, got.Days)
	require.Len(t, got.Days, most, "free %s want %d: not the most sessions", ask.Free, ask.Want)
	require.Equal(t, len(ask.Sessions)-most, len(got.Dropped))
	require.Equal(t, importance, sum, "free %s want %d: other sessions matter more than %v", ask.Free, ask.Want, got.Days)
	require.Equal(t, moved, away, "free %s want %d: more days than needed leave the class: %v", ask.Free, ask.Want, got.Days)
	require.NotEmpty(t, got.Why)
	require.Empty(t, cycle.Judge(got.Days, ask.Free))
}

// weights that add up so that a more important session outweighs all less
// important ones together: main days before technique before recovery days, each
// in the track's order.
func weights(list []cycle.Session) []int {
	class := func(s cycle.Session) int {
		switch {
		case s.Kind != gym.MainDay:
			return 0
		case s.Region == "":
			return 1
		}
		return 2
	}
	w := make([]int, len(list))
	for i, s := range list {
		below := 0
		for j, o := range list {
			if class(o) < class(s) || (class(o) == class(s) && j > i) {
				below++
			}
		}
		w[i] = 1 << below
	}
	return w
}

// Every subset of weekdays and every wish, against every assignment there is.
func TestArrangeEqualsBruteForceOnEverySubset(t *testing.T) {
	tracks := map[string][]cycle.Session{
		"lower and upper": fourDays(),
		"three squats":    {session(day.Monday, "A", gym.Lower), session(day.Wednesday, "B", gym.Lower), session(day.Friday, "C", gym.Lower)},
		"olympic": {
			session(day.Monday, "Snatch", gym.WholeBody), session(day.Tuesday, "Squat", gym.Lower),
			session(day.Thursday, "Clean", gym.WholeBody), session(day.Saturday, "Technique", ""),
		},
	}
	for name, list := range tracks {
		t.Run(name, func(t *testing.T) {
			for free := day.Weekdays(0); free < 1<<7; free++ {
				for want := 0; want <= len(list); want++ {
					checkArrange(t, cycle.Ask{Sessions: list, Free: free, Want: want}, weights(list))
				}
			}
		})
	}
}

func TestArrangeEqualsBruteForceOnRandomTracks(t *testing.T) {
	regions := []gym.Region{gym.Lower, gym.Upper, gym.WholeBody, ""}
	rapid.Check(t, func(t *rapid.T) {
		days := rapid.Permutation([]day.Weekday{0, 1, 2, 3, 4, 5, 6}).Draw(t, "weekdays")
		list := make([]cycle.Session, rapid.IntRange(0, 5).Draw(t, "sessions"))
		for i := range list {
			list[i] = session(days[i], string(rune('A'+i)), rapid.SampledFrom(regions).Draw(t, "region"))
			if list[i].Region == "" && rapid.Bool().Draw(t, "easy") {
				list[i].Kind = gym.RecoveryDay
			}
		}
		ask := cycle.Ask{
			Sessions: list, Free: day.Weekdays(rapid.IntRange(0, 127).Draw(t, "free")), Want: rapid.IntRange(0, 6).Draw(t, "want"),
		}
		checkArrange(t, ask, weights(list))
	})
}
