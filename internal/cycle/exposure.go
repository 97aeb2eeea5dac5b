package cycle

import (
	"fmt"
	"slices"

	"windlass/internal/gym"
)

// checkExposures judges what rep counts the lifts meet over the cycle.
func (t *trackCheck) checkExposures() {
	var order []gym.LiftKey
	met := map[gym.LiftKey][]*cell{}
	byPercent := map[gym.LiftKey]bool{}
	for i := range t.cells {
		c := &t.cells[i]
		if !c.main() {
			continue
		}
		key := c.plan.Main.Lift
		if !c.climbs() {
			byPercent[key] = byPercent[key] || t.kind(c) == gym.TrainingWeek
			continue
		}
		if met[key] == nil {
			order = append(order, key)
		}
		met[key] = append(met[key], c)
	}
	for _, key := range order {
		if !byPercent[key] {
			t.checkMissingReps(met[key])
		}
	}
	for n := range t.cycle.Weeks {
		t.checkSameReps(t.week(n + 1))
	}
}

// checkMissingReps takes the days of one lift that climb. A lift that comes
// oftener than it has rep counts must meet them all; one that only visits, as in
// a strongman rotation, cannot.
func (t *trackCheck) checkMissingReps(days []*cell) {
	lift := days[0].lift
	if lift == nil {
		return
	}
	wanted := slices.DeleteFunc(slices.Clone(t.counts), func(n int) bool { return !lift.Records(n) })
	if len(days) < len(wanted) {
		return
	}
	for _, n := range wanted {
		if !slices.ContainsFunc(days, func(c *cell) bool { return c.plan.Main.Reps == n }) {
			t.breach(RuleMissingReps, days[0], fmt.Sprintf("%s never climbs to %s in this cycle.", lift.Name, aRepMax(n)),
				fmt.Sprintf("Set one of its days to %d, or run the wave again.", n))
		}
	}
}

// checkSameReps finds a training week in which different lifts all climb to the
// same rep count, unless the track wants that.
func (t *trackCheck) checkSameReps(week []cell) {
	if t.plan.SameReps || t.kind(&week[0]) != gym.TrainingWeek {
		return
	}
	var first *cell
	lifts := map[gym.LiftKey]bool{}
	for i := range week {
		c := &week[i]
		if !c.climbs() {
			continue
		}
		if first == nil {
			first = c
		}
		if c.plan.Main.Reps != first.plan.Main.Reps {
			return
		}
		lifts[c.plan.Main.Lift] = true
	}
	if len(lifts) > 1 {
		t.breach(RuleSameReps, first, fmt.Sprintf("Every lift of the week climbs to %s.", aRepMax(first.plan.Main.Reps)),
			"Run the rolling wave, or say that the track wants one rep count a week.")
	}
}
