package tier

import (
	"fmt"
	"math"
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
	return said + "; " + verdict(s, a, m.rack, m.course.last)
}

// verdict says which rule set the load, the load, and the bout it is for.
func verdict(s Suggestion, a Ask, r Rack, last mass.Mass) string {
	take := "take "
	switch {
	case s.Bound == ByStop:
		take = "take at most "
	case s.Load == last:
		take = "stay on "
	}
	take += s.Load.In(a.Unit)
	if a.Work != "" {
		take += " for " + a.Work
	}
	switch s.Bound {
	case ByChance:
		return fmt.Sprintf("%s has a chance of %s of being held, less than the %s wanted: %s", s.Next.In(a.Unit), Percent(s.Above), wanted(r.Confidence), take)
	case ByDoubt:
		return fmt.Sprintf("too little is known to rule out that %s is too heavy (%s): %s", s.Next.In(a.Unit), Percent(s.Heavy), take)
	case ByStep:
		return "no more than one implement above the heaviest held: " + take
	case ByStop:
		return "the last bout was stopped: " + take
	case ByStock:
		return "the gym owns nothing heavier: " + take
	default:
		return fmt.Sprintf("even the lightest has only a chance of %s of being held, less than the %s wanted: %s, or do less of it", Percent(s.Hold), wanted(r.Confidence), take)
	}
}

// Percent writes a chance in whole per cent, rounded down: a chance under the
// wanted one never reads as if it reached it.
func Percent(chance float64) string {
	const slack = 1e-9 // a hundredth is not exact in binary
	return fmt.Sprintf("%.0f %%", math.Floor(100*chance+slack))
}

// wanted writes the confidence of the settings as the coach set it.
func wanted(confidence float64) string { return fmt.Sprintf("%.4g %%", 100*confidence) }

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
