package tier

import (
	"errors"
	"math"

	"windlass/internal/gym"
)

// ErrUnloaded marks a movement that has no load to suggest, such as one done
// with body weight alone.
var ErrUnloaded = errors.New("the movement has no loads")

// Habits are the numbers that say how outcomes come about in a gym. Loads are
// natural logarithms of kilograms, so 0.10 is about a tenth of the load.
//
// With c the athlete's capacity and d the demand of a bout,
//
//	d                  = log load + Reps·log(reps / reference reps)
//	P(held)            = σ((c − d) / Scale)
//	P(held or slowed)  = σ((c − d + Slow) / Scale)
//
// which is an ordered logit (McCullagh 1980, proportional odds). Between bouts c
// rises by Growth a week trained, falls by Loss a week away, and spreads.
//
// A coach who knows the athlete says something by the choice of a load, too: c
// is thought to lie Over above its demand, give or take Choice. Only a first load
// and a changed one say it, and only where the program would not have said it too.
type Habits struct {
	Scale  float64 // how gradually held turns into slowed
	Slow   float64 // how far over the capacity a load only slows
	Reps   float64 // what a doubling of the reps costs, as a power
	Drift  float64 // standard deviation of c after a week, growing with its root
	Form   float64 // the same of what all of an athlete's movements share
	Growth float64 // of c, a week trained, at the beginning of the athlete's log
	Ease   float64 // weeks of training after which growth is half of that; 0 is never
	Loss   float64 // of c, a week away beyond the first two
	Choice float64 // how far the coach's eye misses; 0 when it says nothing
	Over   float64 // how far under the capacity the coach aims
}

// lapse is the share of rows that say nothing: a slip of the finger, a bad
// night. It keeps one wrong row from overruling ten right ones. Common practice
// in the fitting of psychometric functions; the value is ours.
const lapse = 0.01

// DefaultHabits are those of a gym whose log is still too short to teach any:
// the project's own choice, no source.
func DefaultHabits() Habits {
	return Habits{Scale: 0.10, Slow: 0.20, Reps: 0.15, Drift: 0.008, Form: 0.009, Growth: 0.002, Loss: 0.005, Over: 0.1}
}

// chances returns the chance of each outcome when the capacity exceeds the
// demand by a margin.
func (h Habits) chances(margin float64) (held, slowed, stopped float64) {
	held = sigmoid(margin / h.Scale)
	upTo := sigmoid((margin + h.Slow) / h.Scale)
	return held, upTo - held, 1 - upTo
}

func sigmoid(x float64) float64 { return 1 / (1 + math.Exp(-x)) }

// likelihood is the chance of an outcome when e = exp(−margin/Scale) and k =
// exp(−Slow/Scale); written with one division, as it runs for every grid point.
func likelihood(o gym.Outcome, e, k float64) float64 {
	switch o {
	case gym.Held:
		return 1 / (1 + e)
	case gym.Slowed:
		return e * (1 - k) / ((1 + e) * (1 + e*k))
	default:
		return e * k / (1 + e*k)
	}
}
