package cycle_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
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

// best is what the brute force knows of all weeks with one number of sessions.
type best struct {
	found             bool
	importance, moved int
}

// awayCost weighs a session away from the track's own weekday: one main day more
// than any number of others.
func awayCost(s cycle.Session, on day.Weekday) int {
	switch {
	case on == s.Plan:
		return 0
	case s.Kind == gym.MainDay:
		return 100
	}
	return 1
}

// bruteForce returns, for every number of sessions that can stand, the best sum
// of importance and then the least cost of moved days.
func bruteForce(list []cycle.Session, free day.Weekdays, weight []int) []best {
	found := make([]best, len(list)+1)
	every(len(list), func(w wish) {
		b := &found[w.kept()]
		if !w.allowed(list, free) {
			return
		}
		sum, away := 0, 0
		for i, d := range w.onto {
			if d >= 0 {
				sum += weight[i]
				away += awayCost(list[i], day.Weekday(d))
			}
		}
		if !b.found || sum > b.importance || (sum == b.importance && away < b.moved) {
			*b = best{true, sum, away}
		}
	})
	return found
}

func checkArrange(t require.TestingT, ask cycle.Ask, weight []int, all []best) {
	got := cycle.Arrange(ask)
	most := len(all) - 1
	if ask.Want > 0 {
		most = min(most, ask.Want)
	}
	for !all[most].found {
		most--
	}
	onto := make([]int, len(ask.Sessions))
	sum, away := 0, 0
	for i, s := range ask.Sessions {
		onto[i] = -1
		for _, p := range got.Days {
			if p.Plan == s.Plan {
				require.Equal(t, s, p.Session)
				onto[i] = int(p.On)
				sum += weight[i]
				away += awayCost(s, p.On)
			}
		}
	}
	require.True(t, wish{onto}.allowed(ask.Sessions, ask.Free), "free %s: %v breaks a rule", ask.Free, got.Days)
	require.Len(t, got.Days, most, "free %s want %d: not the most sessions", ask.Free, ask.Want)
	require.Equal(t, len(ask.Sessions)-most, len(got.Dropped))
	require.Equal(t, all[most].importance, sum, "free %s want %d: other sessions matter more than %v", ask.Free, ask.Want, got.Days)
	require.Equal(t, all[most].moved, away, "free %s want %d: more days than needed leave the class: %v", ask.Free, ask.Want, got.Days)
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
				all := bruteForce(list, free, weights(list))
				for want := 0; want <= len(list); want++ {
					checkArrange(t, cycle.Ask{Sessions: list, Free: free, Want: want}, weights(list), all)
				}
			}
		})
	}
}

// Random regions and weekdays, sometimes with a session that the coach puts first.
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
		w := weights(list)
		if len(list) > 0 && rapid.Bool().Draw(t, "first") {
			i := rapid.IntRange(0, len(list)-1).Draw(t, "which")
			ask.First, w[i] = []day.Weekday{list[i].Plan}, 1<<len(list)
		}
		checkArrange(t, ask, w, bruteForce(list, ask.Free, w))
	})
}

// placed writes a week as "Squat Mon, Bench Tue".
func placed(w cycle.Week) string {
	var parts []string
	for _, p := range w.Days {
		parts = append(parts, p.Title+" "+p.On.Short())
	}
	return strings.Join(parts, ", ")
}

// Weeks worked out by hand.
func TestArrangeByHand(t *testing.T) {
	for _, test := range []struct {
		name string
		ask  cycle.Ask
		want string // the days
		drop string // the titles left out
		why  string
	}{
		{
			name: "all weekdays free: nothing moves",
			ask:  cycle.Ask{Sessions: fourDays(), Free: 0b1111111},
			want: "Squat Mon, Bench Tue, Easy Wed, Deadlift Thu, Press Fri",
			why:  "Every day stands on the track's own weekday.",
		},
		{
			name: "one day moves to the only other free weekday",
			ask:  cycle.Ask{Sessions: fourDays(), Free: day.WeekdaysOf(day.Monday, day.Tuesday, day.Thursday, day.Saturday), Want: 4},
			want: "Squat Mon, Bench Tue, Deadlift Thu, Press Sat",
			drop: "Easy",
			why:  "Left out, to keep to 4 days: Easy. Moved: Press from Friday to Saturday.",
		},
		{
			name: "no weekday",
			ask:  cycle.Ask{Sessions: fourDays()},
			drop: "Squat, Bench, Easy, Deadlift, Press",
			why:  "No weekday is free, so nothing fits: Squat, Bench, Easy, Deadlift, Press.",
		},
		{
			name: "two weekdays: the main days that stand there",
			ask:  cycle.Ask{Sessions: fourDays(), Free: day.WeekdaysOf(day.Monday, day.Tuesday)},
			want: "Squat Mon, Bench Tue",
			drop: "Easy, Deadlift, Press",
			why:  "Left out, because no other weekday is free: Easy, Deadlift, Press.",
		},
		{
			name: "Sunday and Monday are neighbours",
			ask: cycle.Ask{
				Sessions: []cycle.Session{session(day.Monday, "Squat", gym.Lower), session(day.Thursday, "Deadlift", gym.Lower)},
				Free:     day.WeekdaysOf(day.Sunday, day.Monday),
			},
			want: "Squat Mon",
			drop: "Deadlift",
			why: "Left out, because on every weekday left it would stand beside a day for the same region: Deadlift. " +
				"Deadlift loads the lower body, and so does Squat on Monday.",
		},
		{
			name: "what comes first stays",
			ask:  cycle.Ask{Sessions: fourDays(), Free: 0b1111111, Want: 1, First: []day.Weekday{day.Thursday}},
			want: "Deadlift Thu",
			drop: "Squat, Bench, Easy, Press",
			why:  "Left out, to keep to 1 day: Squat, Bench, Easy, Press.",
		},
		{
			name: "a day set by hand stays, and the rest is arranged around it",
			ask: cycle.Ask{
				Sessions: fourDays(), Free: 0b1111111, Want: 4,
				Hand: []gym.HandDay{{Plan: day.Monday, On: day.Wednesday}},
			},
			want: "Bench Tue, Squat Wed, Press Fri, Deadlift Sat",
			drop: "Easy",
			why:  "Left out, to keep to 4 days: Easy. Moved: Squat from Monday to Wednesday, Deadlift from Thursday to Saturday. Set by hand: Squat.",
		},
		{
			name: "among equals the track's order stays",
			ask: cycle.Ask{
				Sessions: []cycle.Session{
					session(day.Wednesday, "A", gym.Lower), session(day.Saturday, "B", gym.Lower), session(day.Sunday, "C", gym.Upper),
				},
				Free: day.WeekdaysOf(day.Monday, day.Tuesday, day.Thursday, day.Friday),
			},
			want: "A Mon, B Thu, C Fri",
			why:  "All 3 days of the track fit. Moved: A from Wednesday to Monday, B from Saturday to Thursday, C from Sunday to Friday.",
		},
		{
			name: "no training days",
			ask:  cycle.Ask{Free: 0b1111111},
			why:  "The track has no training days this week.",
		},
	} {
		t.Run(test.name, func(t *testing.T) {
			got := cycle.Arrange(test.ask)
			assert.Equal(t, test.want, placed(got))
			var dropped []string
			for _, s := range got.Dropped {
				dropped = append(dropped, s.Title)
			}
			assert.Equal(t, test.drop, strings.Join(dropped, ", "))
			assert.Equal(t, test.why, got.Why)
		})
	}
}

func TestJudge(t *testing.T) {
	list := fourDays()
	put := func(i int, on day.Weekday) cycle.Placed { return cycle.Placed{Session: list[i], On: on} }
	all := day.Weekdays(0b1111111)
	for _, test := range []struct {
		name string
		days []cycle.Placed
		free day.Weekdays
		want []cycle.Rule
	}{
		{"the track's own week", []cycle.Placed{put(0, 0), put(1, 1), put(3, 3), put(4, 4)}, all, nil},
		{"lower beside lower", []cycle.Placed{put(0, 2), put(3, 3)}, all, []cycle.Rule{cycle.RuleNeighbours}},
		{"round the end of the week", []cycle.Placed{put(0, 0), put(3, 6)}, all, []cycle.Rule{cycle.RuleNeighbours}},
		{"an easy day may stand anywhere", []cycle.Placed{put(2, 0), put(0, 1)}, all, nil},
		{"two on one weekday", []cycle.Placed{put(0, 0), put(1, 0)}, all, []cycle.Rule{cycle.RuleTwice}},
		{"one twice", []cycle.Placed{put(0, 0), put(0, 3)}, all, []cycle.Rule{cycle.RuleTwice}},
		{"not free", []cycle.Placed{put(0, 0)}, day.WeekdaysOf(day.Tuesday), []cycle.Rule{cycle.RuleNotFree}},
	} {
		t.Run(test.name, func(t *testing.T) {
			assert.Equal(t, test.want, rulesOf(t, cycle.Judge(test.days, test.free)))
		})
	}
}

func TestJudgeHand(t *testing.T) {
	ask := cycle.Ask{Sessions: fourDays(), Free: 0b1111111, Hand: []gym.HandDay{
		{Plan: day.Monday, On: day.Wednesday}, {Plan: day.Thursday, On: day.Thursday}, // lower beside lower, by hand
		{Plan: day.Sunday, On: day.Sunday}, // the track rests on Sunday
		{Plan: day.Monday, On: day.Friday}, // Monday's plan was set already
	}}
	w := cycle.Arrange(ask)
	assert.Equal(t, []cycle.Rule{cycle.RuleOutsideTrack, cycle.RuleTwice, cycle.RuleNeighbours}, rulesOf(t, cycle.JudgeHand(ask, w)))
	p, ok := w.On(day.Wednesday)
	require.True(t, ok)
	assert.Equal(t, "Squat", p.Title, "the coach's choice is kept all the same")
}

// rulesOf lists the rules of breaches, each of which must say why and how to mend.
func rulesOf(t *testing.T, found []cycle.Breach) []cycle.Rule {
	t.Helper()
	var rules []cycle.Rule
	for _, f := range found {
		assert.NotEmpty(t, f.Why)
		assert.NotEmpty(t, f.Mend)
		assert.NotEmpty(t, f.Rule.Source())
		rules = append(rules, f.Rule)
	}
	return rules
}
