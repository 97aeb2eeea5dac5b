package conditioning

import "windlass/internal/gym"

// Passes returns how often a workout goes through its items: its rounds, the
// numbers of its rep list, or once. An AMRAP and an EMOM go on until the clock
// stops them, which is 0.
func Passes(w gym.Workout) int {
	switch {
	case w.Format == gym.AMRAP || w.Format == gym.EMOM:
		return 0
	case len(w.Reps) > 0:
		return len(w.Reps)
	}
	return max(1, w.Rounds)
}

// AmountIn returns how much of an item a pass, counted from 0, asks for.
func AmountIn(w gym.Workout, pass int, item gym.Item) int {
	if len(w.Reps) == 0 {
		return item.Amount
	}
	return w.Reps[min(pass, len(w.Reps)-1)]
}
