package cycle

import (
	"windlass/internal/gym"
)

// known finds the entries of a gym's catalogue by key.
type known struct {
	lifts     map[gym.LiftKey]*gym.Lift
	movements map[gym.MovementKey]*gym.Movement
	drills    map[string]bool
	finishers map[string]bool
}

func know(b *gym.Book) known {
	k := known{
		lifts:     knowLifts(b.Lifts),
		movements: make(map[gym.MovementKey]*gym.Movement, len(b.Movements)),
		drills:    make(map[string]bool, len(b.Drills)),
		finishers: make(map[string]bool, len(b.Finishers)),
	}
	for i := range b.Movements {
		k.movements[b.Movements[i].Key] = &b.Movements[i]
	}
	for _, d := range b.Drills {
		k.drills[d.Key] = true
	}
	for _, f := range b.Finishers {
		k.finishers[f.Key] = true
	}
	return k
}

func knowLifts(lifts []gym.Lift) map[gym.LiftKey]*gym.Lift {
	m := make(map[gym.LiftKey]*gym.Lift, len(lifts))
	for i := range lifts {
		m[lifts[i].Key] = &lifts[i]
	}
	return m
}

// techniqueBelow is the percentage of the 1RM under which a day of an Olympic
// lift counts as practice: the lowest band of Prilepin's table ends there.
const techniqueBelow = 70

// technique reports whether an Olympic lift is only practised on a day.
func technique(m gym.MainLift, l *gym.Lift) bool {
	return l != nil && l.Pattern == gym.Olympic && len(m.Scheme) > 0 && heaviest(m) < techniqueBelow
}

// heaviest returns the highest percentage of a day's sets; a climb to a rep max
// has none and counts as everything.
func heaviest(m gym.MainLift) float64 {
	if len(m.Scheme) == 0 {
		return 100
	}
	top := 0.0
	for _, s := range m.Scheme {
		top = max(top, s.Percent)
	}
	return top
}

// loadedRegion returns the region that a day's main lift loads, and nothing for
// days that any other day may stand beside: rest, recovery and technique.
func loadedRegion(d *gym.DayPlan, l *gym.Lift) gym.Region {
	if d == nil || l == nil || d.Kind != gym.MainDay || technique(d.Main, l) {
		return ""
	}
	return l.Region
}

// clash is the spacing rule: neighbouring days must not load the same region.
// Squat and hinge patterns are both the lower body in the catalogue.
func clash(a, b gym.Region) bool { return a != "" && a == b }

// body names a region inside a sentence.
func body(r gym.Region) string {
	switch r {
	case gym.Lower:
		return "the lower body"
	case gym.Upper:
		return "the upper body"
	case gym.WholeBody:
		return "the whole body"
	}
	return "the " + string(r)
}
