package cycle

import (
	"fmt"
	"strings"

	"windlass/internal/gym"
)

// Least time between two sessions; the sources are those of [RuleRecovery].
// Days count as 24 hours, as if every session began at the same hour.
const (
	hoursForRegion     = 48
	hoursForHeavyLower = 72
	heavyFrom          = 85 // per cent of the 1RM: the handbook's strength row
)

// longestGap is the handbook's "never more than three days between sessions for
// the same training", in days from one session to the next.
const longestGap = 4

// checkSpacing judges every day against the days before it.
func (t *trackCheck) checkSpacing() {
	var lastHeavy *cell
	lastAt := 0
	for i := range t.cells {
		c := &t.cells[i]
		if i > 0 {
			t.checkNeighbours(&t.cells[i-1], c)
			t.checkPreTires(&t.cells[i-1], c)
		}
		if c.region != gym.Lower || heaviest(c.plan.Main) < heavyFrom {
			continue
		}
		// Neighbouring days were told of already.
		if hours := 24 * (i - lastAt); lastHeavy != nil && hours > 24 && hours < hoursForHeavyLower {
			t.breach(RuleRecovery, c, fmt.Sprintf("Two heavy lower-body days lie %d hours apart, %s's %s and this one; guidance asks for %d.",
				hours, lastHeavy.on, t.liftName(lastHeavy.plan.Main.Lift), hoursForHeavyLower),
				"Move one of them a day further away, or make one lighter.")
		}
		lastHeavy, lastAt = c, i
	}
}

// checkNeighbours takes two days that follow each other.
func (t *trackCheck) checkNeighbours(a, b *cell) {
	if clash(a.region, b.region) {
		t.breach(RuleNeighbours, b, fmt.Sprintf("%s's %s and %s's %s both load %s with no day between.",
			a.on, t.liftName(a.plan.Main.Lift), b.on, t.liftName(b.plan.Main.Lift), body(b.region)),
			"Move one of them, or put a rest day, a recovery day or another region between.")
		return
	}
	for _, x := range stress(a) {
		for _, y := range stress(b) {
			if clash(x.Region, y.Region) {
				t.breach(RuleRecovery, b, fmt.Sprintf("%s on %s and %s on %s load %s within %d hours.",
					x.Name, a.on, y.Name, b.on, body(y.Region), hoursForRegion),
					"Choose a second lift for another region, or move one of the days.")
				return
			}
		}
	}
}

// stress returns the lifts of a day that its neighbours must not repeat. What is
// only practised stresses nothing.
func stress(c *cell) []*gym.Lift {
	if !c.main() {
		return nil
	}
	var lifts []*gym.Lift
	if c.lift != nil && !technique(c.plan.Main, c.lift) {
		lifts = append(lifts, c.lift)
	}
	if s := c.second; s != nil && !(s.Pattern == gym.Olympic && c.plan.Second.Percent < techniqueBelow) {
		lifts = append(lifts, s)
	}
	return lifts
}

// checkPreTires finds conditioning that loads what the next day lifts with.
// Running, rowing and riding are easy on the next day's lift and never count.
func (t *trackCheck) checkPreTires(today, next *cell) {
	if next.region == "" || today.plan == nil {
		return
	}
	var tiring []string
	for _, item := range today.plan.Workout.Items {
		m := t.movements[item.Movement]
		if m == nil || m.Pattern == gym.Engine {
			continue
		}
		if clash(m.Region, next.region) || m.Pattern == next.lift.Pattern {
			tiring = append(tiring, m.Name)
		}
	}
	if len(tiring) > 0 {
		verb := "tires"
		if len(tiring) > 1 {
			verb = "tire"
		}
		t.breach(RulePreTires, today, fmt.Sprintf("%s %s %s before %s's %s.",
			strings.Join(tiring, " and "), verb, body(next.region), next.on, next.lift.Name),
			"Choose movements for another region, or swap conditioning with another day.")
	}
}

// checkFrequency finds a region that waits longer than the handbook advises.
// Every lift of a day counts, and a whole-body lift counts for both regions. A
// region that the track never trains is the coach's choice.
func (t *trackCheck) checkFrequency() {
	for _, region := range []gym.Region{gym.Lower, gym.Upper} {
		last := -1
		for i := range t.cells {
			c := &t.cells[i]
			if c.plan == nil || c.plan.Kind == gym.RestDay || (!trains(c.lift, region) && !trains(c.second, region)) {
				continue
			}
			if gap := i - last; last >= 0 && gap > longestGap {
				t.breach(RuleFrequency, c, fmt.Sprintf("%d days lie between this day and the last one for %s; the handbook asks for no more than %d.",
					gap-1, body(region), longestGap-1),
					"Put a lift for it, main or second, on a day between.")
			}
			last = i
		}
	}
}

func trains(l *gym.Lift, r gym.Region) bool {
	return l != nil && (l.Region == r || l.Region == gym.WholeBody)
}
