package tier

import (
	"math"

	"windlass/internal/gym"
)

// belief is a capacity as a normal curve. It is what the gym's habits are learnt
// with: after every bout it has the mean and the variance that the bout leaves (an
// assumed-density filter; Minka 2001, Expectation Propagation, quoted from memory).
type belief struct{ mean, variance float64 }

// The points of a standard normal curve at which a belief is integrated, and their
// weights.
const (
	points = 27
	apart  = 0.36
)

var weights = func() (w [points]float64) {
	sum := 0.0
	for i := range w {
		w[i] = math.Exp(-square(apart*float64(i-points/2)) / 2)
		sum += w[i]
	}
	for i := range w {
		w[i] /= sum
	}
	return w
}()

// live takes a belief through the time before a trial and through the trial, and
// returns the chance that was given to its outcome.
func (b *belief) live(h *Habits, t *trial) float64 {
	shift, variance := h.over(t.since)
	b.mean, b.variance = b.mean+shift, b.variance+variance
	demand := t.load + h.Reps*t.reps
	if t.choice && h.Choice > 0 && !advised(b, h, t) {
		b.choose(demand+h.Over, h.Choice*h.Choice)
	}
	return b.observe(h, t.outcome, demand)
}

// choose multiplies by a normal curve.
func (b *belief) choose(mean, variance float64) {
	share := b.variance / (b.variance + variance)
	b.mean, b.variance = b.mean+share*(mean-b.mean), b.variance*(1-share)
}

// odds is grid.odds for the points of a belief.
func (b *belief) odds(demand, scale float64) (first, factor, step float64) {
	step = apart * math.Sqrt(b.variance)
	u := (b.mean - float64(points/2)*step - demand) / scale
	return math.Exp(-min(max(u, -600), 600)), math.Exp(-step / scale), step
}

func (b *belief) observe(h *Habits, o gym.Outcome, demand float64) float64 {
	e, factor, step := b.odds(demand, h.Scale)
	k := math.Exp(-h.Slow / h.Scale)
	var sum, first, second float64
	for i, w := range weights {
		p := w * ((1-lapse)*likelihood(o, e, k) + lapse/3)
		x := float64(i - points/2)
		sum += p
		first += p * x
		second += p * x * x
		e *= factor
	}
	at := first / sum
	b.mean += at * step
	b.variance = (second/sum - at*at) * step * step
	return sum
}

// hold returns the chance that a demand is held.
func (b *belief) hold(h *Habits, demand float64) float64 {
	e, factor, _ := b.odds(demand, h.Scale)
	sum := 0.0
	for _, w := range weights {
		sum += w / (1 + e)
		e *= factor
	}
	return (1-lapse)*sum + lapse/3
}
