package desk

import (
	"slices"

	"windlass/internal/conditioning"
	"windlass/internal/gym"
)

// WithFormat returns a workout in another format, with its movements and with a
// length to begin with (common practice, no source).
func (d *Desk) WithFormat(w gym.Workout, f gym.Format) gym.Workout {
	next := gym.Workout{Format: f, Items: w.Items}
	switch f {
	case gym.AMRAP, gym.EMOM:
		next.Seconds = 12 * 60
	case gym.ForTime:
		next.Rounds = 3
	case gym.Intervals:
		next.Rounds, next.Work, next.Rest = 6, 60, 60
	case gym.PlainSets:
		next.Rounds = 3
	case gym.Chipper:
	default:
		return gym.Workout{}
	}
	next.Items = withAmounts(next.Items, func(i gym.Item) int {
		if i.Amount > 0 || i.Movement == "" {
			return i.Amount
		}
		return d.usualAmount(next, i.Movement)
	})
	return next
}

// usualAmount is about a third of a usual bout of a movement, or nothing under a
// rep list, which says it.
func (d *Desk) usualAmount(w gym.Workout, key gym.MovementKey) int {
	m, ok := d.Movement(key)
	if len(w.Reps) > 0 || !ok {
		return 0
	}
	return max(1, conditioning.RoundAmount(m, m.ReferenceReps/3))
}

// WithMovement returns a workout with one more movement, or with another in the
// place of one; no key at all is a minute of rest.
func (d *Desk) WithMovement(w gym.Workout, at int, key gym.MovementKey) gym.Workout {
	if w.Format == "" {
		w = d.WithFormat(w, gym.ForTime)
	}
	w.Items = slices.Clone(w.Items)
	item := gym.Item{Movement: key, Amount: d.usualAmount(w, key)}
	if at >= len(w.Items) {
		w.Items = append(w.Items, item)
		return w
	}
	if old, _ := d.Movement(w.Items[at].Movement); w.Items[at].Amount > 0 {
		if m, _ := d.Movement(key); m.Measure == old.Measure {
			item.Amount = w.Items[at].Amount
		}
	}
	w.Items[at] = item
	return w
}

// WorkoutFault says what keeps a workout from being whole; empty is nothing.
func (d *Desk) WorkoutFault(w gym.Workout) error { return conditioning.Check(w, d.findMovement) }
