package climb

import (
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// Rack answers what a lifter's bar can carry; [plates.Loads] is one.
type Rack interface {
	// AtMost returns the heaviest load not over a limit, false when there is none.
	AtMost(limit mass.Mass) (plates.Loading, bool)
	// AtLeast returns the lightest load not under a limit, false when there is none.
	AtLeast(limit mass.Mass) (plates.Loading, bool)
}

// Rig is what a lifter lifts with.
type Rig struct {
	Rack     Rack
	Coarse   Rack            // of light and working rungs, and while a rep max is being found; nil means Rack
	Rounding plates.Rounding // of light and working rungs; empty means nearest
	Unit     mass.Unit       // of plates that the gym might buy
}

// Whole is the rack of a lift done with things lifted whole, such as stones: the
// masses that the gym owns, in any order.
type Whole []mass.Mass

// AtMost is that of [Rack].
func (w Whole) AtMost(limit mass.Mass) (plates.Loading, bool) {
	best, ok := mass.Mass(0), false
	for _, m := range w {
		if m <= limit && (!ok || m > best) {
			best, ok = m, true
		}
	}
	return plates.Loading{Total: best}, ok
}

// AtLeast is that of [Rack].
func (w Whole) AtLeast(limit mass.Mass) (plates.Loading, bool) {
	best, ok := mass.Mass(0), false
	for _, m := range w {
		if m >= limit && (!ok || m < best) {
			best, ok = m, true
		}
	}
	return plates.Loading{Total: best}, ok
}

// load is a load that the rack can make for a target.
type load struct {
	mass  mass.Mass
	under bool // the target is lighter than all that the rack makes
	short bool // the target is heavier than all that the rack makes
}

// coarse is what a lifter lifts with on the way up.
func (r Rig) coarse() Rig {
	if r.Coarse != nil {
		r.Rack = r.Coarse
	}
	return r
}

// round returns the load for a target. Nearest takes the lighter of two equally
// near.
func (r Rig) round(target mass.Mass, way plates.Rounding) load {
	below, okBelow := r.atMost(target)
	above, okAbove := r.atLeast(target)
	switch {
	case !okBelow:
		return load{mass: above, under: true}
	case !okAbove:
		return load{mass: below, short: true}
	case way == plates.Up, way != plates.Down && above-target < target-below:
		return load{mass: above}
	}
	return load{mass: below}
}

func (r Rig) atMost(limit mass.Mass) (mass.Mass, bool) {
	l, ok := r.Rack.AtMost(limit)
	return l.Total, ok
}

func (r Rig) atLeast(limit mass.Mass) (mass.Mass, bool) {
	l, ok := r.Rack.AtLeast(limit)
	return l.Total, ok
}

// share returns percent of a base, kept within belief.
func share(base mass.Mass, percent float64) mass.Mass {
	if m := base.Scale(percent / 100); m > 0 || percent <= 0 {
		return m
	}
	return mass.Max
}

// percentOf returns m as per cent of a base.
func percentOf(m, base mass.Mass) float64 { return 100 * m.Ratio(base) }

// The change plates that are sold, one of each pair, for saying what the gym
// lacks. Kilograms: the competition sets of IWF and IPF and the fractional
// plates beside them. Pounds: common practice, no source.
var (
	soldKG = []float64{0.25, 0.5, 1, 1.25, 1.5, 2, 2.5, 5, 10, 15, 20, 25}
	soldLB = []float64{0.25, 0.5, 1, 1.25, 2.5, 5, 10, 25, 35, 45}
)

// lacking returns the plate, a pair of which would bring a load over the one
// bound and not over the other; of several the one that brings the heaviest,
// then the lightest plate. It returns 0 when no single pair would.
func (r Rig) lacking(over, limit mass.Mass) mass.Mass {
	sold := soldKG
	if r.Unit == mass.LB {
		sold = soldLB
	}
	var plate, heaviest mass.Mass
	for _, x := range sold {
		pair := 2 * mass.Of(x, r.Unit)
		rest, ok := r.atMost(limit - pair)
		if ok && rest+pair > max(over, heaviest) {
			plate, heaviest = pair/2, rest+pair
		}
	}
	return plate
}
