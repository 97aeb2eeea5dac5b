package desk

import "windlass/internal/gym"

// WorkoutDrafts remembers the workouts that a coach has tried on a day, one of each
// format and one of each with a rep list, so that coming back to one brings back
// what was written there.
type WorkoutDrafts map[draftKey]gym.Workout

type draftKey struct {
	format gym.Format
	listed bool
}

func draftKeyOf(w gym.Workout) draftKey { return draftKey{w.Format, len(w.Reps) > 0} }

// Keep remembers a workout as it stands.
func (d WorkoutDrafts) Keep(w gym.Workout) {
	if w.Format != "" {
		d[draftKeyOf(w)] = w
	}
}

// WithFormat is [Desk.WithFormat] with the times, rounds and amounts that the
// format had when it was last in sight; the movements are those of now.
func (d WorkoutDrafts) WithFormat(k *Desk, w gym.Workout, f gym.Format) gym.Workout {
	next := k.WithFormat(w, f)
	for _, listed := range []bool{len(w.Reps) > 0, len(w.Reps) == 0} {
		if old, ok := d[draftKey{f, listed}]; ok {
			old.Items = next.Items
			if listed {
				old.Items = withAmounts(old.Items, func(gym.Item) int { return 0 })
			}
			return d.WithAmounts(old)
		}
	}
	return d.WithAmounts(next)
}

// WithAmounts returns a workout with the amounts that its movements had when its
// format was last in sight.
func (d WorkoutDrafts) WithAmounts(w gym.Workout) gym.Workout {
	old, ok := d[draftKeyOf(w)]
	if !ok || len(w.Reps) > 0 {
		return w
	}
	w.Items = withAmounts(w.Items, func(i gym.Item) int {
		for _, before := range old.Items {
			if before.Movement == i.Movement && before.Amount > 0 {
				return before.Amount
			}
		}
		return i.Amount
	})
	return w
}
