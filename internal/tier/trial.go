package tier

import (
	"math"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// trial is a bout as the grid meets it.
type trial struct {
	load, reps float64 // log of the load, and of reps over the usual ones
	outcome    gym.Outcome
	since      span    // the bout before
	choice     bool    // whether the choice of the load may say something
	least      bool    // the load is the lightest there is
	heavier    float64 // log of the next load that could have been suggested; +Inf for none
	confidence float64
	on         day.Date
	stretch    int
	come       state // how far the athlete has come
}

// trialOf returns the trial of a bout after a course. Only a first load and a
// changed one are choices: one repeated is no news.
func (r *Rack) trialOf(b *gym.Bout, c course) trial {
	t := trial{load: logOf(b.Load), reps: r.logReps(b.Reps), outcome: b.Outcome, confidence: r.Confidence, heavier: math.Inf(1)}
	if b.Load == c.last {
		return t
	}
	t.choice = true
	if len(r.Owned) > 0 {
		top, _ := c.limit(r.Owned)
		t.least = b.Load == r.Owned[0]
		if next := r.heavier(b.Load); next > 0 && next <= r.Owned[top] {
			t.heavier = logOf(next)
		}
	}
	return t
}

// logReps is the log of reps over the usual ones; 0 reps are the usual ones.
func (r *Rack) logReps(reps int) float64 {
	if reps <= 0 || r.Usual <= 0 || reps == r.Usual {
		return 0
	}
	return math.Log(float64(reps) / float64(r.Usual))
}

// live takes a grid through the time before a trial and through the trial, and
// returns the chance that was given to its outcome.
func (g *grid) live(h *Habits, t *trial) float64 {
	g.age(h, t.since)
	demand := t.load + h.Reps*t.reps
	if t.choice && h.Choice > 0 && !advised(g, h, t) {
		g.choose(h, demand)
	}
	return g.observe(h, t.outcome, demand)
}

// advised reports whether the load is what the program would have suggested to
// somebody it knows so much of. A coach who follows it says nothing new, and taking
// the program's own caution for the coach's eye would keep an athlete from ever
// going up.
func advised[B interface {
	hold(h *Habits, demand float64) float64
}](b B, h *Habits, t *trial,
) bool {
	if !t.least && b.hold(h, t.load+h.Reps*t.reps) < t.confidence {
		return false
	}
	return math.IsInf(t.heavier, 1) || b.hold(h, t.heavier+h.Reps*t.reps) < t.confidence
}

// age lets a span of time pass.
func (g *grid) age(h *Habits, s span) {
	shift, variance := h.over(s)
	g.low += shift
	g.spread(variance, h.Scale)
}

// over returns what a span of time does to a capacity: its mean shift, and the
// variance that it adds.
func (h *Habits) over(s span) (shift, variance float64) {
	shift, variance = h.gained(s), h.Drift*h.Drift*s.weeks
	if s.told {
		return shift + s.form, variance + s.doubt
	}
	return shift, variance + h.wander(s)
}

// gained is what a span of time is expected to add to a capacity.
func (h *Habits) gained(s span) float64 { return h.grown(s) - h.lost(s) }

// reached is the same since the athlete's first day.
func (h *Habits) reached(s state) float64 { return h.gained(span{trained: s.trained, owing: s.owed}) }

func (h *Habits) lost(s span) float64 {
	return min(h.Loss*s.owing, mostLost) - min(h.Loss*s.owed, mostLost)
}

// wander is the variance of what a span of time does to an athlete's form, as a
// break costs one athlete more than another.
func (h *Habits) wander(s span) float64 {
	lost := h.lost(s)
	return h.Form*h.Form*s.weeks + lost*lost/4
}

// grown is what training adds over a span: Growth a week, halved every Ease weeks.
func (h *Habits) grown(s span) float64 {
	if h.Ease <= 0 {
		return h.Growth * s.trained
	}
	still := math.Exp2(-s.before / h.Ease)
	return h.Growth * still * (1 - math.Exp2(-s.trained/h.Ease)) * h.Ease / math.Ln2
}

// mostLost bounds what a break of any length takes: long-trained strength comes
// back (common practice, no source).
const mostLost = 0.35

// logOf is the log of a load in kilograms.
func logOf(load mass.Mass) float64 { return math.Log(load.Kilograms()) }
