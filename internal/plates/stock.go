// Package plates says what can be on a bar.
//
// Most callers need [NewLoads], which knows every load of one bar with one
// stock, and [Loads.Loadable], which picks the one for a target. The package
// promises exact answers: kilograms and pounds mix without rounding, a short
// stock is searched whole, and between equal loads the fewest plates win. It
// does not know about lifters, classes or clocks; see package station.
package plates

import (
	"slices"

	"windlass/internal/mass"
)

// Kinds of bar that stand in for one another when a load is too light. Any
// other kind ("axle", "log", …) is only replaced by its own kind.
const (
	Barbell      = "barbell"
	LightBarbell = "light barbell"
	Technique    = "technique"
)

// Bar is a bar of the gym, or anything loaded like one.
type Bar struct {
	Key   string    `json:"key"`   // short and lasting, unique in the gym
	Name  string    `json:"name"`  // as the coach reads it
	Mass  mass.Mass `json:"mass"`  // without collars
	Unit  mass.Unit `json:"unit"`  // what its mass is written in
	Kind  string    `json:"kind"`  // a free slug: "barbell", "axle", "log", …
	Count int       `json:"count"` // how many the gym owns
}

// Plate is one sort of plate and how many pairs of it there are.
type Plate struct {
	Mass  mass.Mass `json:"mass"` // of one plate
	Unit  mass.Unit `json:"unit"` // what is printed on it
	Pairs int       `json:"pairs"`
	Full  bool      `json:"full"` // of full diameter, 450 mm: lifts from the floor want one
}

// Disc returns one plate of the sort.
func (p Plate) Disc() Disc { return Disc{Mass: p.Mass, Unit: p.Unit, Full: p.Full} }

// Disc is one plate on one side of a bar.
type Disc struct {
	Mass mass.Mass `json:"mass"`
	Unit mass.Unit `json:"unit"`
	Full bool      `json:"full"`
}

// String writes the mass as it is printed on the disc: "45 lb".
func (d Disc) String() string { return d.Mass.Exact(d.Unit) }

// before orders discs as they stand on a bar, from the inside: heavy before
// light, then full diameter before small, then kilograms before pounds.
func (d Disc) before(e Disc) bool {
	if d.Mass != e.Mass {
		return d.Mass > e.Mass
	}
	if d.Full != e.Full {
		return d.Full
	}
	return d.Unit == mass.KG && e.Unit == mass.LB
}

// Stock is the plates that may go on a bar, and the collars that hold them.
type Stock struct {
	Plates []Plate   `json:"plates"`
	Collar mass.Mass `json:"collar"` // of one collar; two are on the bar whenever it is lifted
}

// tidy returns the plates in the order of the bar, the same disc once, those
// without a pair left out.
func (s Stock) tidy() []Plate {
	sorted := slices.Clone(s.Plates)
	slices.SortStableFunc(sorted, func(p, q Plate) int {
		switch {
		case p.Disc().before(q.Disc()):
			return -1
		case q.Disc().before(p.Disc()):
			return 1
		}
		return 0
	})
	var tidy []Plate
	for _, p := range sorted {
		last := len(tidy) - 1
		switch {
		case p.Pairs <= 0:
		case last >= 0 && tidy[last].Disc() == p.Disc():
			tidy[last].Pairs += p.Pairs
		default:
			tidy = append(tidy, p)
		}
	}
	return tidy
}
