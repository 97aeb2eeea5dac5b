package desk

import (
	"slices"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// knownPath is a lifter's way up with all that it was worked out from. A call
// changes one lifter of many; the others' ways are asked for several times over.
type knownPath struct {
	from pathFrom
	path climb.Path
}

// pathFrom is what a way up follows from, beside the equipment.
type pathFrom struct {
	plan     gym.ClimbPlan
	lifter   gym.Lifter
	lift     gym.Lift
	rounding plates.Rounding
	unit     mass.Unit
	small    bool
}

func (f pathFrom) is(other pathFrom) bool {
	return f.lift.Key == other.lift.Key && f.lift.Floor == other.lift.Floor && f.lift.Bar == other.lift.Bar &&
		f.rounding == other.rounding && f.unit == other.unit && f.small == other.small &&
		samePlan(f.plan, other.plan) && sameClimber(f.lifter, other.lifter)
}

func samePlan(a, b gym.ClimbPlan) bool {
	return a.HeavyLine == b.HeavyLine && a.Ceiling == b.Ceiling && a.Name == b.Name && slices.Equal(a.Rungs, b.Rungs)
}

// sameClimber reports whether two lifters are alike in what their ways up follow
// from.
func sameClimber(a, b gym.Lifter) bool {
	return a.Bar == b.Bar && a.Reps == b.Reps && a.Base == b.Base && a.Start == b.Start && a.Joined == b.Joined &&
		slices.Equal(a.Calls, b.Calls) && slices.Equal(a.Exceptions, b.Exceptions)
}

// path returns a lifter's way through a climb. Nobody may change what it returns.
func (bs *Boards) path(plan gym.ClimbPlan, l gym.Lifter) (climb.Path, error) {
	s := bs.book.Settings
	from := pathFrom{plan: plan, lifter: l, rounding: s.Rounding, unit: s.Unit, small: !s.SmallAll}
	if i := slices.IndexFunc(bs.book.Lifts, func(x gym.Lift) bool { return x.Key == l.Lift }); i >= 0 {
		from.lift = bs.book.Lifts[i]
	}
	if known, ok := bs.paths[l.Athlete]; ok && known.from.is(from) {
		return known.path, nil
	}
	rig, err := rigOf(bs.book, l, bs.loadsOf)
	if err != nil {
		return climb.Path{}, err
	}
	path, err := climb.Build(plan, l, rig)
	if err == nil {
		bs.paths[l.Athlete] = knownPath{from, path}
	}
	return path, err
}
