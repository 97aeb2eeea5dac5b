package climb

import (
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Kind says whether a path has led to a result.
type Kind string

// The kinds of outcome.
const (
	Pending Kind = "pending" // calls are still open
	Counts  Kind = "counts"  // a set of the day's rep count, to be confirmed
	Nothing Kind = "nothing" // no such set was lifted
)

// Outcome is what a path proposes for the log. Only a set of exactly the day's
// rep count is a rep max; singles on the way to a five are not.
type Outcome struct {
	Kind Kind
	Rung int // the window of the set
	Load mass.Mass
	Reps int
}

// top is the outcome of a climb without a settle or a miss: the last set, or
// where a coach's climb ends on another rep count, the last top rung that had
// the day's.
func (w *walk) top() Outcome {
	last := len(w.steps) - 1
	if w.steps[last].State == Open {
		return Outcome{Kind: Pending}
	}
	for i := last; i >= w.lifter.Joined && w.steps[i].Rung.Zone == gym.TopZone; i-- {
		if s := w.steps[i]; s.Reps == w.lifter.Reps {
			return Outcome{Kind: Counts, Rung: i, Load: s.Load, Reps: s.Reps}
		}
	}
	return Outcome{Kind: Nothing}
}

// Owes returns the rung whose call a lifter owes while the clock is at a rung,
// and the calls that can be made: the call of the rung before while it is open,
// since a late call is honoured, else that of the present one. Who finds the rep
// max goes on in the present window whenever the call comes; [Path.Asked] is the
// set that it is about. It reports false when there is nothing to call.
func (p Path) Owes(at int) (rung int, kinds []gym.CallKind, ok bool) {
	if at < 0 || at >= len(p.Steps) {
		return 0, nil, false
	}
	s := p.Steps[at]
	if s.State == Open {
		return at - 1, p.kinds(), true
	}
	asked := p.Finding || s.Rung.Zone == gym.TopZone
	if asked && (s.State == Planned || s.State == Settle) {
		return at, p.kinds(), true
	}
	return 0, nil, false
}

// Asked returns the rung of the set that a call after rung at is about: that rung,
// or while the rep max is found, the last one whose load is known.
func (p Path) Asked(at int) int {
	for p.Finding && at > 0 && p.Steps[at].State == Open {
		at--
	}
	return at
}

func (p Path) kinds() []gym.CallKind {
	if p.Finding {
		return []gym.CallKind{gym.EasyCall, gym.FairCall, gym.HardCall, gym.MissedCall}
	}
	return []gym.CallKind{gym.ClimbCall, gym.SettleCall, gym.MissedCall}
}
