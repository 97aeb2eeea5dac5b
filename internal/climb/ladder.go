package climb

import (
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// ladder returns the loads of the whole climb, never falling.
func ladder(plan gym.ClimbPlan, base mass.Mass, rig Rig) ([]load, *Attempt) {
	loads := make([]load, len(plan.Rungs))
	var attempt *Attempt
	var before mass.Mass
	for i, r := range plan.Rungs {
		if i == len(plan.Rungs)-1 && r.Percent >= 100 {
			loads[i], attempt = attemptAt(r.Percent, plan, base, rig)
		} else {
			loads[i] = rungLoad(r, plan, base, rig)
		}
		loads[i].mass = max(loads[i].mass, before)
		before = loads[i].mass
	}
	return loads, attempt
}

// nearHeavy is how far over its own percentage a top rung may go to reach the
// heavy line, in per cent of the record; common practice, no source.
const nearHeavy = 1.0

// rungLoad rounds one rung that is not an attempt. It never rounds over the
// ceiling, as it would where the gym's loads lie far apart.
func rungLoad(r gym.Rung, plan gym.ClimbPlan, base mass.Mass, rig Rig) load {
	target := share(base, r.Percent)
	var l load
	if r.Zone == gym.TopZone {
		l = topLoad(r, plan, base, rig)
	} else {
		rig = rig.coarse()
		l = rig.round(target, rig.Rounding)
	}
	if l.mass > share(base, plan.Ceiling) {
		return rig.round(target, plates.Down)
	}
	return l
}

// topLoad rounds to the nearest load, and up to the heavy line where that is
// near enough.
func topLoad(r gym.Rung, plan gym.ClimbPlan, base mass.Mass, rig Rig) load {
	l := rig.round(share(base, r.Percent), plates.Nearest)
	heavy := share(base, plan.HeavyLine)
	if l.mass >= heavy {
		return l
	}
	if up, ok := rig.atLeast(heavy); ok && up <= share(base, r.Percent+nearHeavy) {
		l.mass = up
	}
	return l
}

func lines(plan gym.ClimbPlan, base mass.Mass) Lines {
	return Lines{Heavy: share(base, plan.HeavyLine), Record: base, Ceiling: share(base, plan.Ceiling)}
}
