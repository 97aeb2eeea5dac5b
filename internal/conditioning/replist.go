package conditioning

import "windlass/internal/gym"

// Shape is how a rep list runs.
type Shape string

// The shapes of a rep list.
const (
	Even       Shape = "even"       // all the same
	Descending Shape = "descending" // 21-15-9
	Ascending  Shape = "ascending"  // 2-4-6-8
	Pyramid    Shape = "pyramid"    // 5-10-15-10-5
	Mixed      Shape = "mixed"      // anything else
)

// ShapeOf returns how a rep list runs; neighbours may be equal.
func ShapeOf(reps []int) Shape {
	i, up, down := 1, false, false
	for ; i < len(reps) && reps[i] >= reps[i-1]; i++ {
		up = up || reps[i] > reps[i-1]
	}
	for ; i < len(reps) && reps[i] <= reps[i-1]; i++ {
		down = true
	}
	switch {
	case i < len(reps):
		return Mixed
	case up && down:
		return Pyramid
	case up:
		return Ascending
	case down:
		return Descending
	}
	return Even
}

// Ladder returns the rep list from one number to another by steps of a size over
// zero, both ends included: Ladder(21, 9, 6) is 21, 15, 9. The last step may be
// smaller. It returns nil for numbers under 1 and for lists of over 100 numbers.
func Ladder(from, to, step int) []int {
	if from < 1 || to < 1 || step < 1 || max(from-to, to-from)/step >= mostRounds {
		return nil
	}
	reps := []int{from}
	for n := from; n != to; {
		if n < to {
			n = min(n+step, to)
		} else {
			n = max(n-step, to)
		}
		reps = append(reps, n)
	}
	return reps
}

// PyramidOf returns the rep list up a ladder and down again, the top once.
func PyramidOf(foot, top, step int) []int {
	up := Ladder(foot, top, step)
	reps := append([]int(nil), up...)
	for i := len(up) - 2; i >= 0; i-- {
		reps = append(reps, up[i])
	}
	return reps
}

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
