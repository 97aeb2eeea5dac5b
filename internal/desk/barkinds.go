package desk

import (
	"cmp"
	"slices"
	"strings"

	"windlass/internal/plates"
)

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
