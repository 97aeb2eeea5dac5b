package desk

import (
	"windlass/internal/day"
	"windlass/internal/gym"
)

// CycleOn returns the cycle that runs for a track on a day.
func (d *Desk) CycleOn(track gym.ID, on day.Date) (gym.Cycle, bool) {
	for _, c := range d.book.Cycles {
		if _, ok := c.Plan(track); ok && c.WeekOf(on) > 0 {
			return c, true
		}
	}
	return gym.Cycle{}, false
}

// PlanOn returns what a track does on a day; without a cycle it is a rest day.
func (d *Desk) PlanOn(track gym.ID, on day.Date) gym.DayPlan {
	c, ok := d.CycleOn(track, on)
	if !ok {
		return gym.DayPlan{Weekday: on.Weekday(), Kind: gym.RestDay, Title: "Rest"}
	}
	plan, _ := c.Plan(track)
	return plan.Day(c.WeekOf(on), on.Weekday())
}

// MainLifts returns the lifts to a rep max that a track's cycle asks for, each
// once, in the order of the plan. Without a cycle on that day the latest one
// counts.
func (d *Desk) MainLifts(track gym.ID, on day.Date) []gym.LiftKey {
	c, ok := d.CycleOn(track, on)
	for i := len(d.book.Cycles) - 1; i >= 0 && !ok; i-- {
		c = d.book.Cycles[i]
		_, ok = c.Plan(track)
	}
	plan, _ := c.Plan(track)
	seen := map[gym.LiftKey]bool{}
	var lifts []gym.LiftKey
	for _, p := range plan.Days {
		if l := p.Main.Lift; l != "" && !seen[l] {
			seen[l] = true
			lifts = append(lifts, l)
		}
	}
	return lifts
}
