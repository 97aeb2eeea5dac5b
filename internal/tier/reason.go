package tier

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// recent is how many of the latest bouts a reason speaks of.
const recent = 6

// why builds the sentence of a suggestion: what the log says, then what follows
// for today.
func (m *Model) why(s Suggestion, a Ask) string {
	said := m.history(a.Unit)
	if said == "" {
		said = "no bout logged yet: a first guess from the standard loads"
	}
	return said + "; " + verdict(s, a, m.course.last)
}

// verdict says which rule set the load, and the load.
func verdict(s Suggestion, a Ask, last mass.Mass) string {
	load, next := s.Load.In(a.Unit), s.Next.In(a.Unit)
	take := "take " + load
	if s.Load == last {
		take = "stay on " + load
	}
	switch s.Bound {
	case ByChance:
		return fmt.Sprintf("%s has a chance of %.0f %% of being held: %s", next, 100*s.Above, take)
	case ByStep:
		return "no more than one implement above the heaviest held: " + take
	case ByStop:
		return "the last bout was stopped: " + take + " at most"
	case ByStock:
		return "the gym owns nothing heavier: " + take
	default:
		return fmt.Sprintf("even the lightest, %s, has only a chance of %.0f %% of being held: take it, or fewer reps", load, 100*s.Hold)
	}
}

// history tells the latest bouts, lightest load first: "16 kg held twice, 20 kg
// held on 3 March".
func (m *Model) history(unit mass.Unit) string {
	latest := m.bouts[max(0, len(m.bouts)-recent):]
	loads := map[mass.Mass][]gym.Bout{}
	for _, b := range latest {
		loads[b.Load] = append(loads[b.Load], b)
	}
	rising := make([]mass.Mass, 0, len(loads))
	for load := range loads {
		rising = append(rising, load)
	}
	slices.Sort(rising)
	var told []string
	for _, load := range rising[max(0, len(rising)-3):] {
		told = append(told, load.In(unit)+" "+tell(loads[load]))
	}
	return strings.Join(told, ", ")
}

// tell says how the bouts at one load went.
func tell(bouts []gym.Bout) string {
	var parts []string
	for _, o := range []gym.Outcome{gym.Held, gym.Slowed, gym.Stopped} {
		var last *gym.Bout
		n := 0
		for i := range bouts {
			if bouts[i].Outcome == o {
				last, n = &bouts[i], n+1
			}
		}
		switch n {
		case 0:
		case 1:
			parts = append(parts, string(o)+" on "+last.On.Time().Format("2 January"))
		case 2:
			parts = append(parts, string(o)+" twice")
		default:
			parts = append(parts, fmt.Sprintf("%s %d times", o, n))
		}
	}
	return strings.Join(parts, " and ")
}
