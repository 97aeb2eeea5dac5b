package climb

import (
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// walk is a lifter on the way up.
type walk struct {
	plan   gym.ClimbPlan
	lifter gym.Lifter
	rig    Rig
	calls  []gym.CallKind // by rung, empty where none was made
	latest int            // the last rung with a call
	rungs  []load         // the whole climb as planned, a load a rung
	steps  []Step
}

// climb walks the rungs of a lifter with a base.
func (w *walk) climb() Path {
	p := Path{Steps: w.steps, Lines: lines(w.plan, w.lifter.Base)}
	w.rungs, p.Attempt = ladder(w.plan, w.lifter.Base, w.rig)
	p.Attempt = w.except(p.Attempt)
	for i := w.lifter.Joined; i < len(w.steps); i++ {
		w.plain(i)
		switch w.calls[i] {
		case gym.SettleCall:
			w.steps[i].State = Lifted
			p.Outcome = w.settle(i, i+1)
			return p
		case gym.MissedCall:
			w.steps[i].State = Missed
			p.Outcome = w.settle(w.lower(i), i+1)
			return p
		}
	}
	p.Outcome = w.top()
	return p
}

// except takes the loads that the coach chose for single rungs in place of the
// plan's, and returns the attempt that is left.
func (w *walk) except(a *Attempt) *Attempt {
	last := len(w.rungs) - 1
	for _, e := range w.lifter.Exceptions {
		if e.Load <= 0 || e.Rung < 0 || e.Rung > last {
			continue
		}
		w.rungs[e.Rung] = load{mass: e.Load}
		if e.Rung == last {
			a = w.chosen(e.Load)
		}
	}
	return a
}

// chosen is the attempt at a load that the coach chose: none up to the record.
func (w *walk) chosen(m mass.Mass) *Attempt {
	if m <= w.lifter.Base {
		return nil
	}
	ceiling := share(w.lifter.Base, w.plan.Ceiling)
	return &Attempt{Load: m, Over: max(0, percentOf(m-ceiling, ceiling)), Chosen: true}
}

// plain fills in a step as planned.
func (w *walk) plain(i int) {
	s := &w.steps[i]
	s.Load, s.Under, s.Short = w.rungs[i].mass, w.rungs[i].under, w.rungs[i].short
	s.Reps, s.Percent = s.Rung.RepsOf(w.lifter.Reps), percentOf(s.Load, w.lifter.Base)
	switch {
	case i <= w.latest:
		s.State = Lifted
	case i > w.lifter.Joined && w.steps[i-1].Rung.Zone == gym.TopZone && i-1 > w.latest:
		s.State = Open
		s.Options = []Option{
			{Call: gym.ClimbCall, Load: s.Load, Reps: s.Reps, Percent: s.Percent},
			w.option(i - 1),
		}
	default:
		s.State = Planned
	}
}

// option is what settling at a rung's load brings.
func (w *walk) option(k int) Option {
	m := w.rungs[k].mass
	return Option{
		Call: gym.SettleCall, Load: m, Reps: w.lifter.Reps, Percent: percentOf(m, w.lifter.Base),
		Banked: w.banked(k) >= 0,
	}
}

// banked returns the rung up to k in which the load of rung k was on the bar for
// the day's rep count, -1 when there is none.
func (w *walk) banked(k int) int {
	for i := k; i >= w.lifter.Joined && w.rungs[i].mass == w.rungs[k].mass; i-- {
		if w.plan.Rungs[i].RepsOf(w.lifter.Reps) == w.lifter.Reps {
			return i
		}
	}
	return -1
}

// lower returns the nearest rung before i with a lighter load, -1 when there is
// none: whoever missed a load does not take the same again.
func (w *walk) lower(i int) int {
	k := i - 1
	for k >= 0 && w.rungs[k].mass >= w.rungs[i].mass {
		k--
	}
	return k
}

// settle takes the day's rep count at the load of rung k in window i, and in a
// later window at a lighter one where that is missed.
func (w *walk) settle(k, i int) Outcome {
	if k < 0 {
		return Outcome{Kind: Nothing}
	}
	o := w.option(k)
	if o.Banked {
		w.set(i, o, Banked)
		return Outcome{Kind: Counts, Rung: w.banked(k), Load: o.Load, Reps: o.Reps}
	}
	if i >= len(w.steps) {
		return Outcome{Kind: Nothing}
	}
	switch w.calls[i] {
	case "":
		w.set(i, o, Settle)
	case gym.MissedCall:
		w.set(i, o, Missed)
		return w.settle(w.lower(k), i+1)
	default:
		w.set(i, o, Lifted)
	}
	return Outcome{Kind: Counts, Rung: i, Load: o.Load, Reps: o.Reps}
}

func (w *walk) set(i int, o Option, s State) {
	if i < len(w.steps) {
		w.steps[i] = Step{Rung: w.plan.Rungs[i], Load: o.Load, Reps: o.Reps, Percent: o.Percent, State: s}
	}
}
