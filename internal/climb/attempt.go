package climb

import (
	"fmt"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// Attempt is what the last rung of a climb asks for when it reaches the record.
type Attempt struct {
	Load   mass.Mass
	Over   float64   // per cent of the ceiling that Load is over it; 0 is within it
	Short  bool      // the gym cannot load more than the record at all
	Lacks  mass.Mass // the plate, a pair of which would bring an attempt within the ceiling; 0 when none would
	Chosen bool      // an exception for this rung, and not what the plates make
}

// Note says what is wrong with the attempt and what would mend it, and nothing
// for one that needs none.
func (a Attempt) Note(u mass.Unit) string {
	var note string
	switch {
	case a.Chosen && a.Over > 0:
		return fmt.Sprintf("%s was chosen for the last rung, over the ceiling by %.1f %%.", a.Load.In(u), a.Over)
	case a.Short:
		note = fmt.Sprintf("The gym cannot load more than the record: %s is its heaviest.", a.Load.In(u))
	case a.Over > 0:
		note = fmt.Sprintf("The lightest load over the record is %s, over the ceiling by %.1f %%.", a.Load.In(u), a.Over)
	default:
		return ""
	}
	if a.Lacks == 0 {
		return note + " No single pair of plates would mend it."
	}
	return note + fmt.Sprintf(" A pair of %s would mend it.", a.Lacks.In(u))
}

// attemptAt finds the load of an attempt: over the record, not over the ceiling,
// and of those the nearest to the rung's percentage, which at the ceiling means
// the heaviest. Where there is none it takes the lightest over the record, and
// says so; it is never silently the record itself.
func attemptAt(percent float64, plan gym.ClimbPlan, record mass.Mass, rig Rig) (load, *Attempt) {
	ceiling := share(record, plan.Ceiling)
	target := share(record, percent)
	below, okBelow := rig.atMost(target)
	above, okAbove := rig.atLeast(max(target, record+1))
	okBelow, within := okBelow && below > record, okAbove && above <= ceiling
	switch {
	case okBelow && (!within || target-below <= above-target):
		return load{mass: below}, &Attempt{Load: below}
	case within:
		return load{mass: above}, &Attempt{Load: above}
	}
	lacks := rig.lacking(record, ceiling)
	if okAbove {
		return load{mass: above}, &Attempt{Load: above, Over: percentOf(above-ceiling, ceiling), Lacks: lacks}
	}
	heaviest := rig.round(record, plates.Down)
	heaviest.short = true
	return heaviest, &Attempt{Load: heaviest.mass, Short: true, Lacks: lacks}
}
