package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/mass"
	"windlass/internal/plates"
)

// Reach is what can be loaded on one bar with the whole stock.
type Reach struct {
	Bar      plates.Bar
	Lightest mass.Mass
	Heaviest mass.Mass
	Step     mass.Mass // the smallest step between two loads; 0 where there is one load only
	From, To mass.Mass // the longest stretch in which every step is the smallest
}

// ReachOf returns what can be loaded on a bar.
func (d *Desk) ReachOf(bar string) (Reach, error) {
	l, err := d.Loads(bar)
	if err != nil {
		return Reach{}, err
	}
	r := Reach{Bar: l.Bar(), Lightest: l.Lightest(), Heaviest: l.Heaviest()}
	all := slices.Compact(l.Between(r.Lightest, r.Heaviest))
	for i := 1; i < len(all); i++ {
		if step := all[i] - all[i-1]; r.Step == 0 || step < r.Step {
			r.Step = step
		}
	}
	r.From, r.To = longestRun(all, r.Step)
	return r, nil
}

// longestRun returns the first of the longest stretches of rising loads that lie
// one step apart.
func longestRun(all []mass.Mass, step mass.Mass) (from, to mass.Mass) {
	begin := 0
	for i := range all {
		if i > 0 && all[i]-all[i-1] != step {
			begin = i
		}
		if all[i]-all[begin] > to-from {
			from, to = all[begin], all[i]
		}
	}
	return from, to
}

// Lines says what can be loaded, in the bar's own unit.
func (r Reach) Lines() []string {
	u := r.Bar.Unit
	lines := []string{fmt.Sprintf("From %s to %s", r.Lightest.In(u), r.Heaviest.In(u))}
	if r.Heaviest == mass.Max {
		lines[0] += ", the most that is reckoned with"
	}
	switch {
	case r.Step == 0:
		return lines
	case r.Step < u.One()/100: // kilograms and pounds on one heap
		return append(lines, "Some loads lie less than 0.01 "+string(u)+" apart")
	case r.From == r.Lightest && r.To == r.Heaviest:
		return append(lines, fmt.Sprintf("In steps of %s all the way", r.Step.In(u)))
	case r.To-r.From >= 4*r.Step:
		return append(lines, fmt.Sprintf("In steps of %s between %s and %s", r.Step.In(u), r.From.In(u), r.To.In(u)))
	}
	return append(lines, fmt.Sprintf("Smallest step %s", r.Step.In(u)))
}

// Trial is what the gym makes of a load that a coach asks for.
type Trial struct {
	Loading plates.Loading
	Text    string
}

// TryLoad loads a bar as near to a target as the stock goes.
func (d *Desk) TryLoad(bar string, target mass.Mass) (Trial, error) {
	l, err := d.Loads(bar)
	if err != nil {
		return Trial{}, err
	}
	loading, err := l.Loadable(target, plates.Nearest)
	if err != nil {
		return Trial{}, err
	}
	return Trial{loading, trialText(loading, target)}, nil
}

func trialText(l plates.Loading, target mass.Mass) string {
	u := l.Bar.Unit
	said := l.Total.In(u)
	switch {
	case l.Short:
		said += ", which is all there is"
	case l.Total != target:
		said += ", the nearest load"
	}
	if len(l.PerSide) == 0 {
		return said + ": the bar alone"
	}
	var discs []string
	for _, disc := range l.PerSide {
		discs = append(discs, disc.Mass.Digits(disc.Unit))
	}
	return said + ": " + strings.Join(discs, " + ") + " a side"
}
