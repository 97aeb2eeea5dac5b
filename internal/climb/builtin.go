package climb

import (
	"fmt"
	"math"
	"time"

	"windlass/internal/gym"
)

// Boundaries between the zones of a generated climb, and its first rung, in per
// cent; common practice, no source.
const (
	firstPercent = 35.0
	lightEnd     = 55.0
	workingEnd   = 85.0
	tripleEnd    = 70.0 // working rungs up to here are triples, over it doubles
)

// Minutes that [Generate] can fill.
const (
	MinMinutes = 10
	MaxMinutes = 60
)

// BuiltIns returns the climbs that every gym begins with.
func BuiltIns() []gym.ClimbPlan {
	var plans []gym.ClimbPlan
	for _, minutes := range []int{12, 16, 20, 25} {
		plan := generate(minutes)
		plan.BuiltIn = true
		plan.ID = gym.NewID(time.UnixMilli(0), [10]byte{9: byte(minutes)})
		plans = append(plans, plan)
	}
	return plans
}

// Generate makes a climb of so many minutes by one rule. The top zone has half
// of the clock, in rungs of three minutes; two light rungs of one minute come
// first, three where that is what the clock needs to come out even; working
// rungs of two minutes fill the rest. Percentages are spread evenly within each
// zone, so that the light zone ends on 55, the working zone on 85 and the climb
// on the ceiling, to the half per cent; no top rung is under the heavy line.
// Light rungs are fives, working rungs triples and then doubles, top rungs
// singles, and the last is the day's rep count.
func Generate(minutes int) (gym.ClimbPlan, error) {
	if minutes < MinMinutes || minutes > MaxMinutes {
		return gym.ClimbPlan{}, fmt.Errorf("make climb of %d minutes: %w: write %d to %d", minutes, ErrPlan, MinMinutes, MaxMinutes)
	}
	return generate(minutes), nil
}

func generate(minutes int) gym.ClimbPlan {
	top := int(math.Round(float64(minutes) / 6))
	rest := minutes - 3*top
	light := 2 + rest%2
	working := (rest - light) / 2

	plan := gym.ClimbPlan{Name: fmt.Sprintf("%d minutes", minutes), HeavyLine: HeavyLine, Ceiling: Ceiling}
	plan.Rungs = zone(plan.Rungs, gym.LightZone, 60, spread(firstPercent, lightEnd, light))
	plan.Rungs = zone(plan.Rungs, gym.WorkingZone, 120, spread(lightEnd, workingEnd, working+1)[1:])
	plan.Rungs = zone(plan.Rungs, gym.TopZone, 180, spread(workingEnd, Ceiling, top+1)[1:])
	plan.Rungs[len(plan.Rungs)-1].Reps = 0
	return plan
}

// spread returns n percentages from the first to the last, evenly, to the half.
func spread(first, last float64, n int) []float64 {
	all := make([]float64, n)
	for i := range all {
		all[i] = math.Round(2*(first+(last-first)*float64(i)/float64(n-1))) / 2
	}
	return all
}

// zone adds rungs of equal length.
func zone(rungs []gym.Rung, z gym.Zone, seconds int, percents []float64) []gym.Rung {
	at := 0
	if n := len(rungs); n > 0 {
		at = rungs[n-1].Until
	}
	for _, p := range percents {
		if z == gym.TopZone {
			p = max(p, HeavyLine)
		}
		rungs = append(rungs, gym.Rung{At: at, Until: at + seconds, Percent: p, Reps: repsAt(z, p), Zone: z})
		at += seconds
	}
	return rungs
}

func repsAt(z gym.Zone, percent float64) int {
	switch {
	case z == gym.LightZone:
		return 5
	case z == gym.TopZone:
		return 1
	case percent <= tripleEnd:
		return 3
	}
	return 2
}
