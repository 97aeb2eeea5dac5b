package desk

import "windlass/internal/gym"

// WithLift returns a main part with another lift. A rep count that the lift keeps
// no record for gives way to the nearest that it does.
func (d *Desk) WithLift(m gym.MainLift, key gym.LiftKey) gym.MainLift {
	m.Lift = key
	lift, _ := d.Lift(key)
	if len(m.Scheme) > 0 || lift.Records(m.Reps) {
		return m
	}
	m.Reps = 0
	for _, n := range d.dayReps() {
		if lift.Records(n) && m.Reps == 0 {
			m.Reps = n
		}
	}
	if m.Reps == 0 && len(lift.Reps) > 0 {
		m.Reps = lift.Reps[len(lift.Reps)-1]
	}
	return m
}

// ByPercent returns a main part that works by percentages; it begins with five
// sets of three at 75, inside Prilepin's ranges.
func ByPercent(m gym.MainLift) gym.MainLift {
	if len(m.Scheme) == 0 {
		m.Scheme = []gym.Sets{{Percent: 75, Sets: 5, Reps: 3}}
	}
	m.Reps = 0
	return m
}

// WithSecond returns a second lift with another lift; a first one begins with four
// sets of six at 75 per cent of the 5RM (common practice, no source).
func (d *Desk) WithSecond(s gym.SecondLift, key gym.LiftKey) gym.SecondLift {
	if s.Empty() {
		s = gym.SecondLift{Sets: 4, Reps: 6, Percent: 75, OfReps: 5}
	}
	s.Lift, s.OfLift = key, ""
	if lift, _ := d.Lift(key); !lift.Records(s.OfReps) && len(lift.Reps) > 0 {
		s.OfReps = lift.Reps[len(lift.Reps)-1]
	}
	return s
}

// UsualDose returns how much of a drill the catalogue gives, and three sets of ten
// for anything else (common practice, no source).
func (d *Desk) UsualDose(key string) string {
	for _, x := range d.book.Drills {
		if x.Key == key {
			return x.Dose
		}
	}
	return "3 × 10"
}
