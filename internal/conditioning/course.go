package conditioning

import (
	"time"

	"windlass/internal/gym"
)

// Leg is one movement of one pass, with when a usual athlete is done with it.
type Leg struct {
	Pass int // from 0
	Item int // index in the workout's items
	Done time.Duration
}

// Course returns where a usual athlete is in a workout by time: a guess for the
// wall, which cannot see how far anyone is. An AMRAP's ends with its length; an
// EMOM and intervals have none, as their clocks say it better. The error is that
// of [Estimate].
func Course(w gym.Workout, find Find, p Pace) ([]Leg, error) {
	if err := Check(w, find); err != nil {
		return nil, err
	}
	if w.Empty() || w.Format == gym.EMOM || w.Format == gym.Intervals {
		return nil, nil
	}
	plan, err := planOf(w, find)
	if err != nil {
		return nil, err
	}
	t := tempo{pace: p, own: 1}
	var legs []Leg
	for i := 0; i < len(plan.steps) || w.Format == gym.AMRAP; i++ {
		s := plan.steps[i%len(plan.steps)]
		before := t.seconds
		t.do(s, i > 0)
		legs = append(legs, Leg{i / len(w.Items), i % len(w.Items), time.Duration((t.seconds - s.rest) * float64(time.Second))})
		if w.Format == gym.AMRAP && (t.seconds >= float64(w.Seconds) || t.seconds-before < 1e-6) {
			break
		}
	}
	return legs, nil
}
