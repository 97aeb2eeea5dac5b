package cycle

import "windlass/internal/gym"

// helper is a second lift: what it is counted from, and how hard it is.
type helper struct {
	lift   gym.LiftKey
	of     gym.LiftKey // empty: the lift itself
	ofReps int
	dose   dose
}

// dose is how a second lift is done in a light week, and beside a main lift of
// many reps (four and more), of a few, and of one.
type dose struct{ light, many, few, one gym.Sets }

// The doses of second lifts; common practice, no source. The fewer reps the main
// lift has, the less there is of the second.
func bySets() dose { // of a 5RM
	return dose{
		light: gym.Sets{Percent: 65, Sets: 2, Reps: 6}, many: gym.Sets{Percent: 80, Sets: 4, Reps: 6},
		few: gym.Sets{Percent: 85, Sets: 4, Reps: 5}, one: gym.Sets{Percent: 87.5, Sets: 3, Reps: 4},
	}
}

func byTriples() dose { // of a 3RM
	return dose{
		light: gym.Sets{Percent: 65, Sets: 3, Reps: 2}, many: gym.Sets{Percent: 75, Sets: 5, Reps: 3},
		few: gym.Sets{Percent: 82.5, Sets: 5, Reps: 2}, one: gym.Sets{Percent: 85, Sets: 4, Reps: 2},
	}
}

func byPulls() dose { // of the Olympic lift's 1RM
	return dose{
		light: gym.Sets{Percent: 80, Sets: 3, Reps: 3}, many: gym.Sets{Percent: 90, Sets: 4, Reps: 4},
		few: gym.Sets{Percent: 95, Sets: 4, Reps: 3}, one: gym.Sets{Percent: 100, Sets: 3, Reps: 3},
	}
}

func (d dose) beside(reps int) gym.Sets {
	switch {
	case reps == 0:
		return d.light
	case reps >= 4:
		return d.many
	case reps >= 2:
		return d.few
	}
	return d.one
}

// second is the second part beside a main lift of so many reps, 0 in a light week.
func (h helper) second(reps int) gym.SecondLift {
	if h.lift == "" {
		return gym.SecondLift{}
	}
	s := h.dose.beside(reps)
	return gym.SecondLift{Lift: h.lift, Sets: s.Sets, Reps: s.Reps, Percent: s.Percent, OfReps: h.ofReps, OfLift: h.of}
}
