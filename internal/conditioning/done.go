package conditioning

import "windlass/internal/gym"

// Done returns how much of each item a score says was done, in each movement's own
// measure, and false where it does not say: a load does not, nor do reps that the
// items shared. Past the last whole round the items were done in their order.
func Done(w gym.Workout, s Score) ([]int, bool) {
	if s.Kind != KindOf(w.Format) || w.Empty() {
		return nil, false
	}
	switch {
	case s.Kind == ByRounds:
		return passesAnd(w, s.Rounds, s.Reps), true
	case s.Kind == ByTime && s.Capped:
		return passesAnd(w, 0, s.Reps), true
	case s.Kind == ByTime:
		return passesAnd(w, Passes(w), 0), true
	case s.Kind == ByReps && len(w.Items) == 1:
		return []int{s.Reps}, true
	}
	return nil, false
}

// passesAnd sums whole passes and so many reps of those that follow.
func passesAnd(w gym.Workout, passes, more int) []int {
	done := make([]int, len(w.Items))
	for pass := range passes {
		for i, item := range w.Items {
			done[i] += AmountIn(w, pass, item)
		}
	}
	for pass := passes; more > 0; pass++ {
		before := more
		for i, item := range w.Items {
			n := min(more, AmountIn(w, pass, item))
			done[i], more = done[i]+n, more-n
		}
		if more == before || w.Format != gym.AMRAP && pass+1 >= Passes(w) {
			break // no pass has more to do
		}
	}
	return done
}

// Pass returns how much all items of a pass, counted from 0, ask for together.
func Pass(w gym.Workout, pass int) int {
	sum := 0
	for _, item := range w.Items {
		sum += AmountIn(w, pass, item)
	}
	return sum
}

// prescribed is all passes together; a workout that the clock ends has none.
func prescribed(w gym.Workout) int {
	sum := 0
	for pass := range Passes(w) {
		sum += Pass(w, pass)
	}
	return sum
}
