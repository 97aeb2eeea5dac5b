package climb

import (
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// step is how much a call adds to a load.
type step struct {
	call gym.CallKind
	by   float64
}

// The steps of a climb that has to find the rep max, by how the last set moved;
// common practice, no source.
var jumps = []step{
	{gym.EasyCall, 0.15},
	{gym.FairCall, 0.07},
	{gym.HardCall, 0.03},
}

// find walks the rungs of a lifter without a base: a set of the day's rep count
// in every window, each load from the call before, so that the sets never
// outnumber the windows. Nobody knows what was lifted in a window without a call,
// so the load waits there for the next call. The heaviest set that a call says was
// lifted is the rep max.
func (w *walk) find() Path {
	p := Path{Finding: true, Steps: w.steps, Outcome: Outcome{Kind: Pending}}
	next := w.rig.round(w.lifter.Start, plates.Down)
	for i := w.lifter.Joined; i < len(w.steps); i++ {
		s := &w.steps[i]
		if i < w.latest && w.calls[i] == "" {
			s.State = Skipped
			continue
		}
		s.Load, s.Under, s.Short, s.Reps = next.mass, next.under, next.short, w.lifter.Reps
		call := w.calls[i]
		switch {
		case call == gym.MissedCall:
			s.State = Missed
			p.Outcome = w.found(i - 1)
			return p
		case call == gym.SettleCall, i == len(w.steps)-1 && i <= w.latest:
			s.State = Lifted
			p.Outcome = w.found(i)
			return p
		case i > w.latest:
			s.State = Planned
			w.open(i + 1)
			return p
		}
		s.State = Lifted
		next = w.rig.heavier(s.Load, jump(call))
	}
	return p
}

// found is the last set that was lifted up to rung i as the outcome: loads rise,
// so it is the heaviest.
func (w *walk) found(i int) Outcome {
	for i >= 0 && w.steps[i].State != Lifted {
		i--
	}
	if i < 0 {
		return Outcome{Kind: Nothing}
	}
	return Outcome{Kind: Counts, Rung: i, Load: w.steps[i].Load, Reps: w.lifter.Reps}
}

// open offers from window i on what each call brings: a call that comes windows
// late brings the same, in the window of then.
func (w *walk) open(i int) {
	var options []Option
	for _, j := range jumps {
		next := w.rig.heavier(w.steps[i-1].Load, j.by)
		options = append(options, Option{Call: j.call, Load: next.mass, Reps: w.lifter.Reps})
	}
	for ; i < len(w.steps); i++ {
		w.steps[i].State, w.steps[i].Reps, w.steps[i].Options = Open, w.lifter.Reps, options
	}
}

// jump returns the step after a call; a call that says no more than "go on"
// counts as fair.
func jump(call gym.CallKind) float64 {
	fair := 0.0
	for _, j := range jumps {
		if j.call == call {
			return j.by
		}
		if j.call == gym.FairCall {
			fair = j.by
		}
	}
	return fair
}

// heavier returns the load nearest to a step up. Where that is the same load
// again it takes the next one, if that is at most twice the step; else the load
// is repeated, since a leap after a hard set does harm.
func (r Rig) heavier(from mass.Mass, by float64) load {
	next := r.round(share(from, 100*(1+by)), plates.Nearest)
	if next.mass > from {
		return next
	}
	if up, ok := r.atLeast(from + 1); ok && up <= share(from, 100*(1+2*by)) {
		return load{mass: up}
	}
	next.mass = from
	return next
}
