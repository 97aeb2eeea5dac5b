package climb

import (
	"errors"
	"fmt"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// ErrNoStart marks a lifter with no record, no estimate and no first load.
var ErrNoStart = errors.New("nothing to start from")

// State says how things stand with one rung for one lifter. It follows from the
// calls alone; what the clock has passed is for package clock.
type State string

// The states of a step.
const (
	Planned State = "planned" // as the plan has it, nothing decided
	Open    State = "open"    // the call after the rung before is still open: see Step.Options
	Lifted  State = "lifted"  // a call says that it was lifted
	Missed  State = "missed"  // a call says that it was missed
	Settle  State = "settle"  // the day's set, and the last
	Banked  State = "banked"  // settled, and a set before already counts: it may be repeated
	Skipped State = "skipped" // before the lifter joined, or left without a call while the rep max is found
	Off     State = "off"     // the lifter is done
)

// Path is one lifter's way through a climb.
type Path struct {
	Finding bool   // no base: each load follows from the call before
	Steps   []Step // one a rung
	Lines   Lines
	Attempt *Attempt // nil when the climb ends under 100 %
	Outcome Outcome
}

// Step is what one lifter does in one rung's window.
type Step struct {
	Rung    gym.Rung  // as the coach typed it
	Load    mass.Mass // 0 when nothing is lifted or the load is not decided
	Percent float64   // Load in per cent of the base; 0 without one
	Reps    int
	State   State
	Under   bool     // the gym cannot load so little: Load is the lightest there is
	Short   bool     // the gym cannot load so much: Load is the heaviest there is
	Options []Option // the loads that the window may bring, while the call is open
}

// Option is what a window brings after a call.
type Option struct {
	Call    gym.CallKind
	Load    mass.Mass
	Reps    int
	Percent float64
	Banked  bool // that set was lifted already and need not be repeated
}

// Lines are the loads that a day is judged by; all 0 without a base.
type Lines struct {
	Heavy   mass.Mass
	Record  mass.Mass // the base itself
	Ceiling mass.Mass
}

// Build plans a lifter's way through a climb: a load for every rung, under the
// calls made so far. A later call for a rung takes the place of an earlier one,
// and a call for a rung says that the rungs before it were lifted. Words of the
// other kind of climb are understood: easy, fair and hard mean climb where there
// is a base, and climb means fair where there is none.
//
// The error wraps [ErrPlan] for a climb that fails [Check], [ErrNoStart] for a
// lifter without a base and a first load, and [plates.ErrStock] for a rack that
// carries nothing.
func Build(plan gym.ClimbPlan, l gym.Lifter, rig Rig) (Path, error) {
	if err := refuse(plan, l, rig); err != nil {
		return Path{}, err
	}
	w := walk{plan: plan, lifter: l, rig: rig}
	w.calls, w.latest = made(l, len(plan.Rungs))
	w.steps = make([]Step, len(plan.Rungs))
	for i, r := range plan.Rungs {
		w.steps[i] = Step{Rung: r, State: Off}
		if i < l.Joined {
			w.steps[i].State = Skipped
		}
	}
	if finds(l) {
		w.rig = rig.coarse()
		return w.find(), nil
	}
	return w.climb(), nil
}

func refuse(plan gym.ClimbPlan, l gym.Lifter, rig Rig) error {
	n := len(plan.Rungs)
	switch faults := Check(plan); {
	case len(faults) > 0:
		return asError(plan.Name, faults)
	case l.Reps < 1 || l.Reps > gym.MaxReps:
		return fmt.Errorf("climb to %d reps: that is no rep max; write 1 to %d", l.Reps, gym.MaxReps)
	case l.Joined < 0 || l.Joined >= n:
		return fmt.Errorf("join climb %q at rung %d: it has %d rungs; join at one of them", plan.Name, l.Joined+1, n)
	case l.Base < 0 || l.Base > mass.Max:
		return fmt.Errorf("climb from a base of %s: write one over 0 and at most %s", l.Base, mass.Max)
	case l.Base == 0 && l.Start <= 0:
		return fmt.Errorf("climb without a record: %w; type a first load, or log a rep max", ErrNoStart)
	}
	if _, ok := rig.atLeast(0); !ok {
		return fmt.Errorf("climb with an empty rack: %w: nothing can be loaded; add a bar or plates", plates.ErrStock)
	}
	return nil
}
