package desk

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"windlass/internal/gym"
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

// BarKind is a kind of bar, and how many lifts of the catalogue are done with it.
type BarKind struct {
	Kind  string
	Lifts int
}

// BarKinds returns the kinds that lifts ask for or that the gym owns, those for
// the most lifts first.
func (d *Desk) BarKinds() []BarKind {
	lifts := map[string]int{plates.Barbell: 0, plates.LightBarbell: 0, plates.Technique: 0}
	for _, b := range d.book.Equipment.Bars {
		lifts[b.Kind] += 0
	}
	for _, l := range d.book.Lifts {
		if !l.Hidden && !d.liftedWhole(l.Bar) {
			lifts[l.Bar]++
		}
	}
	return rankKinds(lifts)
}

func rankKinds(lifts map[string]int) []BarKind {
	var kinds []BarKind
	for kind, n := range lifts {
		kinds = append(kinds, BarKind{kind, n})
	}
	slices.SortFunc(kinds, func(a, b BarKind) int {
		return cmp.Or(cmp.Compare(b.Lifts, a.Lifts), strings.Compare(a.Kind, b.Kind))
	})
	return kinds
}

// LiftKinds returns what a lift can be done with: every kind of bar and of
// implement, with the number of lifts in sight, those for the most first.
func (d *Desk) LiftKinds() []BarKind {
	lifts := map[string]int{}
	for _, b := range d.book.Equipment.Bars {
		lifts[b.Kind] = 0
	}
	for _, i := range d.book.Equipment.Implements {
		lifts[i.Kind] = 0
	}
	for _, l := range d.book.Lifts {
		if !l.Hidden {
			lifts[l.Bar]++
		}
	}
	delete(lifts, plates.LightBarbell) // lifts ask for a barbell, and who takes the light one follows from the athlete
	return rankKinds(lifts)
}

// liftedWhole reports whether a kind is one of implements and not of bars.
func (d *Desk) liftedWhole(kind string) bool {
	_, isBar := d.barOfKind(kind)
	return !isBar && kind != plates.Barbell && d.book.Equipment.Owns(kind)
}

func (d *Desk) barOfKind(kind string) (plates.Bar, bool) {
	for _, b := range d.book.Equipment.Bars {
		if b.Kind == kind {
			return b, true
		}
	}
	return plates.Bar{}, false
}

// usualPlates are those that a new sort of plates is proposed from, in the order
// in which gyms buy them; common practice, no source.
var usualPlates = map[mass.Unit][]float64{
	mass.KG: {20, 10, 5, 2.5, 25, 15, 1.25, 2, 1, 0.5, 1.5},
	mass.LB: {45, 25, 10, 5, 2.5, 35, 55, 1.25, 0.5},
}

// ProposePlates returns a sort of plates that the stock does not have yet.
func (d *Desk) ProposePlates() plates.Plate {
	unit := d.book.Settings.Unit
	p := plates.Plate{Mass: unit.One(), Unit: unit, Pairs: 1}
	for _, x := range usualPlates[unit] {
		p.Mass = mass.Of(x, unit)
		known := func(o plates.Plate) bool { return o.Mass == p.Mass && o.Unit == p.Unit }
		if !slices.ContainsFunc(d.book.Equipment.Stock.Plates, known) {
			break
		}
	}
	for slices.ContainsFunc(d.book.Equipment.Stock.Plates, func(o plates.Plate) bool { return o.Disc() == p.Disc() }) {
		p.Mass += unit.One() // the coach has every usual one
	}
	return p
}

// ProposeBar returns a new bar with a name that no other has.
func (d *Desk) ProposeBar() plates.Bar {
	b := plates.Bar{Mass: 20 * mass.Kilogram, Unit: mass.KG, Kind: plates.Barbell, Count: 1}
	if d.book.Settings.Unit == mass.LB {
		b.Mass, b.Unit = 45*mass.Pound, mass.LB
	}
	b.Name = freeName("New bar", d.book.Equipment.Bars, func(b plates.Bar) string { return b.Name })
	return b
}

// ProposeStation returns a new station with the gym's first bar.
func (d *Desk) ProposeStation() gym.Station {
	s := gym.Station{Name: freeName("Rack", d.book.Equipment.Stations, func(s gym.Station) string { return s.Name })}
	if len(d.book.Equipment.Bars) > 0 {
		s.Bar = d.book.Equipment.Bars[0].Key
	}
	return s
}

// freeName numbers a name until nothing has it.
func freeName[T any](base string, among []T, name func(T) string) string {
	candidate := base
	for n := 2; slices.ContainsFunc(among, func(t T) bool { return strings.EqualFold(name(t), candidate) }); n++ {
		candidate = fmt.Sprintf("%s %d", base, n)
	}
	return candidate
}

// ReadCount reads how many there are of something.
func ReadCount(text string) (int, error) {
	n, err := strconv.Atoi(strings.TrimSpace(text))
	if err != nil {
		return 0, fmt.Errorf("read number %q: it is not a whole number; write one like 4", text)
	}
	return n, nil
}

// ReadMasses reads masses with commas, semicolons or line ends between them. One
// without a unit counts in the given one; decimals stand behind a point.
//
//	masses = [ mass { ("," | ";" | line end) mass } ]
func ReadMasses(text string, without mass.Unit) ([]mass.Mass, error) {
	var all []mass.Mass
	for part := range strings.FieldsFuncSeq(text, func(r rune) bool { return strings.ContainsRune(",;\n", r) }) {
		if strings.TrimSpace(part) == "" {
			continue
		}
		m, _, err := mass.Parse(part, without)
		if err != nil {
			return nil, err
		}
		all = append(all, m)
	}
	return all, nil
}

// MassesText writes masses as [ReadMasses] reads them: "8, 12, 16". One that has
// no round figure in the unit is written in the other, so that nothing is lost.
func MassesText(masses []mass.Mass, unit mass.Unit) string {
	texts := make([]string, len(masses))
	for i, m := range masses {
		texts[i] = m.Digits(unit)
		if other := otherUnit(unit); !round(m, unit) && round(m, other) {
			texts[i] = m.In(other)
		}
	}
	return strings.Join(texts, ", ")
}

func otherUnit(u mass.Unit) mass.Unit {
	if u == mass.LB {
		return mass.KG
	}
	return mass.LB
}

// round reports whether two decimals write a mass exactly.
func round(m mass.Mass, u mass.Unit) bool { return m%(u.One()/100) == 0 }

// OwnImplement is a kind of implement, and how many movements in sight are done
// with it.
type OwnImplement struct {
	gym.Implement
	Movements int
}

// Range says how many masses there are: "11 from 20 to 120 kg".
func (i OwnImplement) Range() string {
	switch n := len(i.Masses); n {
	case 0:
		return "not lifted"
	case 1:
		return i.Masses[0].In(i.Unit)
	default:
		return fmt.Sprintf("%d from %s to %s", n, i.Masses[0].Digits(i.Unit), i.Masses[n-1].In(i.Unit))
	}
}

// Implements returns the gym's implements by kind.
func (d *Desk) Implements() []OwnImplement {
	var all []OwnImplement
	for _, i := range d.book.Equipment.Implements {
		all = append(all, OwnImplement{i, len(d.movementsWith(i.Kind))})
	}
	slices.SortFunc(all, func(a, b OwnImplement) int { return strings.Compare(a.Kind, b.Kind) })
	return all
}
