package cycle

import (
	"fmt"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Judge finds what breaks a rule in a week that somebody changed by hand:
// neighbours for one region, round the end of the week too, two sessions on one
// weekday, a session done twice, and a weekday that is not free. It does not ask
// for any number of days.
func Judge(days []Placed, free day.Weekdays) []Breach {
	var found []Breach
	say := func(r Rule, on day.Weekday, why, mend string) {
		found = append(found, Breach{Rule: r, Weekday: on, Why: why, Mend: mend})
	}
	for i, d := range days {
		if !free.Has(d.On) {
			say(RuleNotFree, d.On, fmt.Sprintf("%s stands on %s, which is not free.", d.Title, d.On), "Move it to a free weekday, or free that one.")
		}
		for _, e := range days[:i] {
			judgePair(e, d, say)
		}
	}
	return found
}

func judgePair(a, b Placed, say func(r Rule, on day.Weekday, why, mend string)) {
	switch apart := (int(b.On-a.On) + 7) % 7; {
	case a.Plan == b.Plan:
		say(RuleTwice, b.On, fmt.Sprintf("%s is done twice, on %s and on %s.", b.Title, a.On, b.On), "Take one of them out.")
	case apart == 0:
		say(RuleTwice, b.On, fmt.Sprintf("%s and %s both stand on %s.", a.Title, b.Title, b.On), "Move one of them to another weekday.")
	case (apart == 1 || apart == 6) && clash(a.Region, b.Region):
		say(RuleNeighbours, b.On, fmt.Sprintf("%s on %s and %s on %s both load %s with no day between.", a.Title, a.On, b.Title, b.On, body(b.Region)),
			"Move one of them, or put a day for another region between.")
	}
}

// JudgeHand finds what breaks a rule in the days that a coach set by hand in an
// athlete's week, together with the week that [Arrange] made around them.
func JudgeHand(a Ask, w Week) []Breach {
	var found []Breach
	say := func(r Rule, on day.Weekday, why, mend string) {
		found = append(found, Breach{Rule: r, Weekday: on, Why: why, Mend: mend})
	}
	for i, h := range a.Hand {
		if sessionOf(a.Sessions, h.Plan) < 0 || !onWeek(h.On) {
			say(RuleOutsideTrack, h.On, fmt.Sprintf("%s is set to do the track's %s, on which the track does not train.", h.On, h.Plan),
				"Take the day out of the athlete's week.")
		}
		if slices.ContainsFunc(a.Hand[:i], func(o gym.HandDay) bool { return o.Plan == h.Plan || o.On == h.On }) {
			say(RuleTwice, h.On, fmt.Sprintf("The track's %s on %s is set against an earlier choice, which stays.", h.Plan, h.On),
				"Take one of the two out of the athlete's week.")
		}
	}
	return append(found, Judge(w.Days, a.Free)...)
}
