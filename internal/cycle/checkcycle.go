package cycle

import (
	"fmt"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// checkCycle finds what is wrong with the cycle as a whole.
func checkCycle(c gym.Cycle, b *gym.Book) []Breach {
	found := checkKinds(c)
	say := func(r Rule, why, mend string) { found = append(found, ofCycle(r, why, mend)) }
	if n := len(c.Weeks); n < MinWeeks || n > MaxWeeks {
		say(RuleLength, fmt.Sprintf("The cycle has %s.", count(n, "week")),
			fmt.Sprintf("Insert or remove weeks until it has %d to %d.", MinWeeks, MaxWeeks))
	}
	if n := len(c.Weeks); n > 0 && c.Weeks[n-1] != gym.TestWeek {
		say(RuleTestWeek, "The last week is not a test week.", "Make the last week the test week, or insert one at the end.")
	}
	if c.Start.Weekday() != b.Settings.FirstDay {
		say(RuleFirstDay, fmt.Sprintf("The cycle starts on a %s, and your week begins on %s.", c.Start.Weekday(), b.Settings.FirstDay),
			fmt.Sprintf("Start it on %s.", firstOnOrAfter(c.Start, b.Settings.FirstDay).Long()))
	}
	return append(found, overlaps(c, b)...)
}

func ofCycle(r Rule, why, mend string) Breach {
	return Breach{Rule: r, Weekday: NoWeekday, Why: why, Mend: mend}
}

// checkKinds finds weeks of no known kind and tracks with two plans.
func checkKinds(c gym.Cycle) []Breach {
	var found []Breach
	for i, kind := range c.Weeks {
		if kind != gym.TrainingWeek && kind != gym.LightWeek && kind != gym.TestWeek {
			found = append(found, ofCycle(RuleKind, fmt.Sprintf("Week %d is a %q week, which there is not.", i+1, kind),
				"Make it a training, light or test week."))
		}
	}
	for i, p := range c.Tracks {
		if slices.ContainsFunc(c.Tracks[:i], func(o gym.TrackPlan) bool { return o.Track == p.Track }) {
			found = append(found, ofCycle(RulePlace, "A track stands in the cycle twice.", "Take one of its two plans out."))
		}
	}
	return found
}

// overlaps finds the other cycles that claim a track on the same days.
func overlaps(c gym.Cycle, b *gym.Book) []Breach {
	var found []Breach
	for _, p := range c.Tracks {
		for _, other := range b.Cycles {
			if _, shared := other.Plan(p.Track); !shared || other.ID == c.ID || !meet(c, other) {
				continue
			}
			found = append(found, Breach{
				Rule: RuleOverlap, Track: p.Track, Weekday: NoWeekday,
				Why: fmt.Sprintf("This track also runs through %q from %s to %s.", other.Name, other.Start.Long(), other.End().Long()),
				Mend: fmt.Sprintf("Start on %s or later, or take the track out of one of the two.",
					firstOnOrAfter(other.End().Add(1), b.Settings.FirstDay).Long()),
			})
		}
	}
	return found
}

func meet(a, b gym.Cycle) bool { return a.Start <= b.End() && b.Start <= a.End() }

func firstOnOrAfter(d day.Date, w day.Weekday) day.Date { return d.Add(place(w, d.Weekday())) }
