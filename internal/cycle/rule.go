package cycle

import (
	"cmp"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Rule names a rule of planning by a short slug.
type Rule string

// The rules that [Check] and [Judge] know.
const (
	RuleLength       Rule = "length"        // 3 to 26 weeks
	RuleFirstDay     Rule = "first-day"     // a cycle starts on the gym's first weekday
	RuleOverlap      Rule = "overlap"       // a track runs through one cycle at a time
	RuleTestWeek     Rule = "test-week"     // the last week tests
	RulePlace        Rule = "place"         // every plan lies in the cycle, one for a day
	RuleKind         Rule = "kind"          // days and weeks are of a known kind
	RuleTitle        Rule = "title"         // titles are there and unique in their week
	RuleUnknown      Rule = "unknown"       // everything named is in the catalogue
	RuleNoRegion     Rule = "no-region"     // every lift says what it loads
	RuleNumber       Rule = "number"        // sets, reps and percentages can be done
	RuleEmptyPart    Rule = "empty-part"    // no part of a day is left out
	RuleMainDays     Rule = "main-days"     // no more main days than the track promises
	RuleLightWeek    Rule = "light-week"    // a light week climbs to no rep max
	RuleNotRecorded  Rule = "not-recorded"  // the lift keeps a record for the day's rep count
	RuleMissingReps  Rule = "missing-reps"  // a lift reaches each of its rep counts
	RuleSameReps     Rule = "same-reps"     // a week mixes its rep counts
	RuleNeighbours   Rule = "neighbours"    // neighbouring days load different regions
	RuleRecovery     Rule = "recovery"      // 48 and 72 hours
	RuleFrequency    Rule = "frequency"     // no region waits too long
	RulePreTires     Rule = "pre-tires"     // conditioning spares the next day's lift
	RulePrilepin     Rule = "prilepin"      // percentage work of the Olympic lifts
	RuleTwice        Rule = "twice"         // one session a weekday, each once
	RuleNotFree      Rule = "not-free"      // sessions stand on free weekdays
	RuleOutsideTrack Rule = "outside-track" // a day set by hand is one of the track's
)

// sources of the rules that have one; the others are habits of the trade.
//
// The handbook's figures and Prilepin's were read in second-hand copies, and Garber
// et al. is cited from memory.
func sources() map[Rule]string {
	return map[Rule]string{
		RuleRecovery: "48 h for a muscle group: Garber et al. 2011, ACSM position stand, Med Sci Sports Exerc 43(7), from memory. " +
			"72 h between heavy lower-body sessions: A Christian Guide to Body Stewardship, 4th ed., p. 178",
		RuleFrequency: "Sheppard and Triplett, Program design for resistance training, in Haff and Triplett (eds), " +
			"Essentials of Strength Training and Conditioning, 4th ed., 2016, ch. 17",
		RulePrilepin: "Prilepin's table of the 1970s, from second-hand copies, with half-open bands",
	}
}

// Source returns where a rule comes from.
func (r Rule) Source() string {
	if s, ok := sources()[r]; ok {
		return s
	}
	return "common practice, no source"
}

// NoWeekday stands in a [Breach] that speaks of a whole week or cycle.
const NoWeekday day.Weekday = -1

// Breach is one place where a plan breaks a rule.
type Breach struct {
	Rule    Rule        `json:"rule"`
	Track   gym.ID      `json:"track"`   // empty: the whole cycle
	Week    int         `json:"week"`    // from 1; 0: the whole cycle
	Weekday day.Weekday `json:"weekday"` // NoWeekday: the whole week
	Why     string      `json:"why"`
	Mend    string      `json:"mend"`
}

// sortBreaches puts breaches in the order in which a coach reads the grid: the
// cycle first, then track by track, week by week, day by day.
func sortBreaches(found []Breach, c gym.Cycle) {
	order := make(map[gym.ID]int, len(c.Tracks))
	for i, p := range c.Tracks {
		order[p.Track] = i + 1
	}
	first := c.Start.Weekday()
	slices.SortStableFunc(found, func(a, b Breach) int {
		return cmp.Or(
			cmp.Compare(order[a.Track], order[b.Track]),
			cmp.Compare(a.Week, b.Week),
			cmp.Compare(placeOf(a, first), placeOf(b, first)),
			cmp.Compare(a.Rule, b.Rule),
		)
	})
}

func placeOf(b Breach, first day.Weekday) int {
	if b.Weekday == NoWeekday {
		return -1
	}
	return place(b.Weekday, first)
}
