package cycle

import (
	"fmt"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Shift moves a track's plans from a week on by one week, later (by = 1) or
// earlier (by = -1), and leaves the test week alone. Going later, the week named
// becomes empty and the last week before the test drops out. Going earlier, the
// plans of the week before the one named are lost and that last week becomes
// empty.
func Shift(c gym.Cycle, track gym.ID, from, by int, trained Trained) (gym.Cycle, error) {
	last := lastBeforeTest(c)
	low := from + min(by, 0)
	if by != 1 && by != -1 {
		return c, fmt.Errorf("shift weeks: %d weeks at once cannot be done; shift by one", by)
	}
	if low < 1 || from > last {
		return c, fmt.Errorf("shift weeks: week %d has no week to go to; choose %d to %d", from, 1-min(by, 0), last)
	}
	if err := guardWeeks("shift weeks", c, []gym.ID{track}, low, last, trained); err != nil {
		return c, err
	}
	return replace(c, track, func(days []gym.DayPlan) []gym.DayPlan {
		return renumber(days, func(w int) int {
			switch {
			case w < low || w > last:
				return w
			case w < from, w+by > last: // overwritten, or out at the end
				return 0
			}
			return w + by
		})
	}), nil
}

// lastBeforeTest returns the last week that is not the closing test week.
func lastBeforeTest(c gym.Cycle) int {
	n := len(c.Weeks)
	if n > 0 && c.Weeks[n-1] == gym.TestWeek {
		return n - 1
	}
	return n
}

// InsertWeek puts an empty week before the one named, for all tracks, and makes
// the cycle a week longer. One past the last week appends.
func InsertWeek(c gym.Cycle, before int, kind gym.WeekKind, trained Trained) (gym.Cycle, error) {
	switch n := len(c.Weeks); {
	case n >= MaxWeeks:
		return c, fmt.Errorf("insert week: the cycle %q has %d weeks, the most there are; remove one first", c.Name, n)
	case before < 1 || before > n+1:
		return c, fmt.Errorf("insert week: week %d is not in the cycle %q; choose 1 to %d", before, c.Name, n+1)
	}
	if err := guardWeeks("insert week", c, trackIDs(c), before, len(c.Weeks), trained); err != nil {
		return c, err
	}
	c.Weeks = slices.Insert(slices.Clone(c.Weeks), before-1, kind)
	return renumberAll(c, func(w int) int {
		if w >= before {
			return w + 1
		}
		return w
	}), nil
}

// RemoveWeek takes a week out of all tracks and makes the cycle a week shorter.
func RemoveWeek(c gym.Cycle, week int, trained Trained) (gym.Cycle, error) {
	switch n := len(c.Weeks); {
	case n <= MinWeeks:
		return c, fmt.Errorf("remove week: the cycle %q has %d weeks, the fewest there are; insert one first", c.Name, n)
	case week < 1 || week > n:
		return c, fmt.Errorf("remove week: week %d is not in the cycle %q; choose 1 to %d", week, c.Name, n)
	}
	if err := guardWeeks("remove week", c, trackIDs(c), week, len(c.Weeks), trained); err != nil {
		return c, err
	}
	c.Weeks = slices.Delete(slices.Clone(c.Weeks), week-1, week)
	return renumberAll(c, func(w int) int {
		switch {
		case w == week:
			return 0
		case w > week:
			return w - 1
		}
		return w
	}), nil
}

// SetWeek says what a week is for. The plans in it stay; [RunWave] fits them to
// the new kind.
func SetWeek(c gym.Cycle, week int, kind gym.WeekKind, trained Trained) (gym.Cycle, error) {
	if week < 1 || week > len(c.Weeks) {
		return c, fmt.Errorf("set week: week %d is not in the cycle %q; choose 1 to %d", week, c.Name, len(c.Weeks))
	}
	if err := guardWeeks("set week", c, trackIDs(c), week, week, trained); err != nil {
		return c, err
	}
	c.Weeks = slices.Clone(c.Weeks)
	c.Weeks[week-1] = kind
	return c, nil
}

// guardWeeks refuses a track that is not in the cycle and weeks with trained days.
func guardWeeks(what string, c gym.Cycle, tracks []gym.ID, from, through int, trained Trained) error {
	for _, track := range tracks {
		for w := from; w <= through; w++ {
			for on := day.Monday; on <= day.Sunday; on++ {
				if err := guard(what, c, trained, At{track, w, on}); err != nil {
					return err
				}
			}
		}
	}
	return nil
}

func trackIDs(c gym.Cycle) []gym.ID {
	ids := make([]gym.ID, len(c.Tracks))
	for i, p := range c.Tracks {
		ids[i] = p.Track
	}
	return ids
}

func renumberAll(c gym.Cycle, to func(week int) int) gym.Cycle {
	for _, track := range trackIDs(c) {
		c = replace(c, track, func(days []gym.DayPlan) []gym.DayPlan { return renumber(days, to) })
	}
	return c
}

// renumber gives every plan the week that to names, and drops those sent to 0.
func renumber(days []gym.DayPlan, to func(week int) int) []gym.DayPlan {
	kept := days[:0]
	for _, d := range days {
		if d.Week = to(d.Week); d.Week > 0 {
			kept = append(kept, d)
		}
	}
	return kept
}
