package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/station"
)

// late says where the clock cannot be kept in the rungs from one on, and offers to
// lengthen them, or one move.
func (d *Desk) late(c gym.Class, s seating, plan station.Plan, from int) []SharingNote {
	short := shortfalls(plan, from)
	short.behind(c, s, plan, from)
	if c.Clock.Started() && short.worst <= slack {
		short = shortfall{by: make([]int, len(c.Climb.Rungs))}
	}
	rungs := short.rungs()
	if len(rungs) == 0 && len(plan.Standing) == 0 {
		return nil
	}
	var notes []SharingNote
	if len(rungs) > 0 {
		longer := lengthened(c.Climb, short.by)
		notes = append(notes, SharingNote{
			Text: fmt.Sprintf("The clock cannot be kept: %s too short, by %d s at %s.",
				listed("rung", rungs, len(short.by)), short.worst, s.stations[short.at].Name),
			Mend: "Lengthen the rungs",
			Does: []string{fmt.Sprintf("The climb takes %s in place of %s; loads and stations stay.", length(longer), length(c.Climb))},
			Do:   func(class gym.ID) error { return d.lengthen(class, longer) },
		})
	}
	mends, err := s.solver.Mends(s.lifters)
	if err != nil {
		return notes
	}
	return append(notes, d.mends(c, s, mends)...)
}

// slack is by how many seconds a window may be short while the clock runs: the pace
// of a class is not known better. Common practice, no source.
const slack = 5

// length writes how long a climb is.
func length(plan gym.ClimbPlan) string { return climb.Time(plan.Rungs[len(plan.Rungs)-1].Until) }

// lengthen gives rungs more time, also while the clock runs: what has passed stays
// as it was.
func (d *Desk) lengthen(class gym.ID, longer gym.ClimbPlan) error {
	return d.change("lengthen the rungs", class, func(c *gym.Class) error {
		if faults := climb.Check(longer); len(faults) > 0 {
			return fmt.Errorf("%s", faults[0])
		}
		c.Climb = longer
		return nil
	})
}

// shortfall is where and by how much a class's windows are too short.
type shortfall struct {
	by    []int // seconds, for each rung
	worst int   // seconds
	at    int   // the station of the worst
}

func shortfalls(plan station.Plan, from int) shortfall {
	var f shortfall
	for at, g := range plan.Groups {
		if f.by == nil {
			f.by = make([]int, len(g.Windows))
		}
		for w := from; w < len(g.Windows); w++ {
			f.note(w, g.Windows[w].Over(), at)
		}
	}
	return f
}

// behind adds the windows in which those who lift when all others have come too
// late: they follow the slowest station, one after the other.
func (f *shortfall) behind(c gym.Class, s seating, plan station.Plan, from int) {
	for w := from; w < len(f.by); w++ {
		slowest, after, at, given := 0, 0, 0, 0
		for i, g := range plan.Groups {
			before := 0
			for _, t := range g.Turns {
				switch {
				case t.Window != w:
				case c.Lifters[s.who[t.Lifter]].Exception(w).Last:
					after, at = after+t.Seconds, i
				default:
					before += t.Seconds
				}
			}
			slowest, given = max(slowest, before), g.Windows[w].Given
		}
		if after > 0 {
			f.note(w, slowest+after-given, at)
		}
	}
}

// note keeps by how many seconds a window is too short at a station.
func (f *shortfall) note(window, over, station int) {
	f.by[window] = max(f.by[window], over)
	if over > f.worst {
		f.worst, f.at = over, station
	}
}

// rungs are the rungs that are too short, from 1.
func (f *shortfall) rungs() (rungs []int) {
	for w, by := range f.by {
		if by > 0 {
			rungs = append(rungs, w+1)
		}
	}
	return rungs
}

// listed writes "rung 2 is", "rungs 1, 2 and 4 are", "all rungs are".
func listed(noun string, numbers []int, of int) string {
	if len(numbers) == of {
		return "all " + noun + "s are"
	}
	if len(numbers) == 1 {
		return fmt.Sprintf("%s %d is", noun, numbers[0])
	}
	var words []string
	for _, n := range numbers[:len(numbers)-1] {
		words = append(words, fmt.Sprint(n))
	}
	return fmt.Sprintf("%ss %s and %d are", noun, strings.Join(words, ", "), numbers[len(numbers)-1])
}

// lengthenedName ends the name of a climb that is no longer the one of its name.
const lengthenedName = ", lengthened"

// lengthened is a climb with so many more seconds in each rung.
func lengthened(plan gym.ClimbPlan, by []int) gym.ClimbPlan {
	plan.Rungs = slices.Clone(plan.Rungs)
	if !strings.HasSuffix(plan.Name, lengthenedName) {
		plan.Name += lengthenedName
	}
	later := 0
	for i := range plan.Rungs {
		plan.Rungs[i].At += later
		later += by[i]
		plan.Rungs[i].Until += later
	}
	return plan
}

// mends turns a move that would help into an action.
func (d *Desk) mends(c gym.Class, s seating, mends []station.Mend) []SharingNote {
	var notes []SharingNote
	for _, m := range mends {
		if m.Do != station.Move {
			continue
		}
		who, to := c.Lifters[s.who[m.Lifters[0]]].Athlete, s.where[m.To]
		notes = append(notes, SharingNote{
			Text:  fmt.Sprintf("One move helps most: %s to %s.", s.lifters[m.Lifters[0]].Name, s.stations[m.To].Name),
			Aside: true, Mend: "Move",
			Does: []string{fmt.Sprintf("All stations together are %d s short then.", m.Over)},
			Do:   func(class gym.ID) error { return d.MoveLifter(class, who, to) },
		})
	}
	return notes
}
