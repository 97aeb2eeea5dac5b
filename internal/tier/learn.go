package tier

import (
	"math"
	"slices"
)

// sample is about how many bouts the habits are learnt from: more change nothing
// that shows.
const sample = 5000

// knob is one of the habits with the few values that it may take.
type knob struct {
	of     func(*Habits) *float64
	values []float64
	doubt  float64 // what a value other than the default has to gain, in log likelihood
}

// The knobs, in the order in which they are turned. That the coach's eye counts
// has to be shown more clearly than the rest, as it is wrong where loads are
// handed out by rote.
var knobs = []knob{
	{func(h *Habits) *float64 { return &h.Scale }, []float64{0.05, 0.07, 0.10, 0.14, 0.20, 0.28}, 1},
	{func(h *Habits) *float64 { return &h.Choice }, []float64{0, 0.7, 0.5, 0.35, 0.25, 0.18}, 4},
	{func(h *Habits) *float64 { return &h.Over }, []float64{-0.1, 0, 0.1, 0.2, 0.3}, 1},
	{func(h *Habits) *float64 { return &h.Growth }, []float64{0, 0.002, 0.004, 0.007, 0.011, 0.016}, 1},
	{func(h *Habits) *float64 { return &h.Ease }, []float64{0, 100, 50, 25}, 1},
	{func(h *Habits) *float64 { return &h.Slow }, []float64{0.08, 0.12, 0.20, 0.30, 0.45}, 1},
	{func(h *Habits) *float64 { return &h.Drift }, []float64{0.004, 0.012, 0.02, 0.035}, 1},
	{func(h *Habits) *float64 { return &h.Reps }, []float64{0, 0.08, 0.15, 0.22, 0.30}, 1},
	{func(h *Habits) *float64 { return &h.Loss }, []float64{0, 0.005, 0.01, 0.02, 0.03}, 1},
}

// near returns the values to try in a turn: all in the first, later only the
// present one's neighbours.
func (k knob) near(h Habits, turn int) []float64 {
	i := slices.Index(k.values, *k.of(&h))
	if turn == 0 || i < 0 {
		return k.values
	}
	return k.values[max(0, i-1):min(len(k.values), i+2)]
}

// turns is how often every knob is turned.
const turns = 2

// learn sets the habits to those under which the log's outcomes are likeliest,
// each in turn over its few values. The chance of an outcome is the one given
// before it was seen, so habits that overfit do not win.
func (s *Standing) learn() {
	l := s.newLearner()
	best := l.told(s.habits)
	for turn := range turns {
		for _, k := range knobs {
			for _, v := range k.near(s.habits, turn) {
				try := s.habits
				*k.of(&try) = v
				if told := l.told(try); told > best {
					s.habits, best = try, told
				}
			}
		}
	}
}

// learner tries habits on a part of the log.
type learner struct {
	pairs  []*pair
	priors []Prior // at the athlete's first day
	grid   *grid
}

func (s *Standing) newLearner() *learner {
	l := &learner{grid: newGrid(coarsePoints)}
	stride := 1 + len(s.bouts)/sample
	for i := 0; i < len(s.tried); i += stride {
		l.pairs = append(l.pairs, s.tried[i])
		l.priors = append(l.priors, s.prior(s.tried[i], span{}))
	}
	return l
}

// told returns the log of the chance that the sample had under some habits, less
// what they have to gain.
func (l *learner) told(h Habits) float64 {
	sum, usual := 0.0, DefaultHabits()
	for _, k := range knobs {
		if *k.of(&h) != *k.of(&usual) {
			sum -= k.doubt
		}
	}
	for i, p := range l.pairs {
		grown, _ := h.over(p.early)
		l.grid.normal(l.priors[i].Mean+grown, l.priors[i].SD)
		chance := 1.0
		for _, t := range p.trials {
			chance *= l.grid.live(h, t)
			if chance < 1e-200 {
				sum, chance = sum+math.Log(chance), 1
			}
		}
		sum += math.Log(chance)
	}
	return sum
}
