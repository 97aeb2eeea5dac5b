package desk

import (
	"windlass/internal/conditioning"
	"windlass/internal/gym"
)

// amounts are how much of each movement a whole workout comes to, in the movement's
// own measure.
type amounts map[gym.MovementKey]int

// or is the amount of a movement, or failing that the other's.
func (a amounts) or(other amounts, movement gym.MovementKey) int {
	if n, ok := a[movement]; ok {
		return max(1, n)
	}
	return max(1, other[movement])
}

// repsIn is what a usual athlete of this gym does of a movement in a whole workout.
func (d *Desk) repsIn(w gym.Workout, movement gym.MovementKey) int {
	return amounts(nil).or(d.asked(w), movement)
}

// asked is what a workout asks of everybody: in an AMRAP, the rounds that are usual
// at the gym's own pace. Where the workout does not say, it is a usual bout.
func (d *Desk) asked(w gym.Workout) amounts {
	passes, sums := conditioning.Passes(w), amounts{}
	if w.Format == gym.AMRAP {
		passes = 1
		if e, err := conditioning.Estimate(w, d.findMovement, d.Pace()); err == nil {
			passes = max(1, int(e.Usual.Rounds+0.5))
		}
	}
	for i, item := range w.Items {
		sums[item.Movement] += itemReps(w, i, passes)
	}
	for key, n := range sums {
		if m, ok := d.Movement(key); ok && n == 0 {
			sums[key] = m.ReferenceReps
		}
	}
	return sums
}

// itemReps sums an item over the passes; in an EMOM and in intervals the items
// take turns.
func itemReps(w gym.Workout, i, passes int) int {
	turns := w.Format == gym.EMOM || w.Format == gym.Intervals
	if w.Format == gym.EMOM {
		passes = w.Seconds / 60
	}
	sum := 0
	for pass := range passes {
		if !turns || pass%len(w.Items) == i {
			sum += conditioning.AmountIn(w, pass, w.Items[i])
		}
	}
	return sum
}

// doneBy is what an athlete's own score says was done; nothing without a score, or
// where the score does not tell.
func doneBy(w gym.Workout, score string) amounts {
	s, err := conditioning.ParseScore(score, conditioning.KindOf(w.Format))
	if err != nil {
		return nil
	}
	done, told := conditioning.Done(w, s)
	if !told {
		return nil
	}
	sums := amounts{}
	for i, item := range w.Items {
		sums[item.Movement] += done[i]
	}
	return sums
}

func (d *Desk) findMovement(name string) (gym.Movement, bool) {
	return d.Movement(gym.MovementKey(name))
}
