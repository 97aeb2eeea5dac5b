package desk

import (
	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// Calendar says what happens on a date, in a track and in an athlete's own week.
func (d *Desk) Calendar() cycle.Calendar {
	if d.calendar == nil {
		k := cycle.NewCalendar(&d.book)
		d.calendar = &k
	}
	return *d.calendar
}

// CycleOn returns the cycle that runs for a track on a day.
func (d *Desk) CycleOn(track gym.ID, on day.Date) (gym.Cycle, bool) {
	return d.Calendar().CycleOn(track, on)
}

// PlanOn returns what a track does on a day, closed days counted in; without a
// cycle it is a rest day.
func (d *Desk) PlanOn(track gym.ID, on day.Date) gym.DayPlan { return d.Calendar().PlanOn(track, on) }

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
