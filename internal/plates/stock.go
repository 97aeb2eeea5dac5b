// Package plates says what can be on a bar.
//
// Most callers need [NewLoads], which knows every load of one bar with one
// stock, and [Loads.Loadable], which picks the one for a target. The package
// promises exact answers: kilograms and pounds mix without rounding, a short
// stock is searched whole, and between equal loads the fewest plates win. It
// does not know about lifters, classes or clocks; see package station.
package plates

import (
	"errors"
	"fmt"
	"slices"

	"windlass/internal/mass"
)

// ErrStock marks a bar, a plate or a stock that cannot be: no mass, a negative
// count, a unit that is not one, or nothing at all.
var ErrStock = errors.New("not a usable stock")

// Limits of belief. A gym with more is a slip of the hand.
const (
	MaxPairs  = 200                 // pairs of one plate
	MaxPlate  = 100 * mass.Kilogram // one plate; the heaviest sold are 50 kg and 100 lb
	MaxBar    = 200 * mass.Kilogram // one bar, yokes and frames included
	MaxKinds  = 32                  // different plates in one stock
	MaxCollar = 10 * mass.Kilogram  // one collar
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
func (d Disc) String() string { return d.Mass.In(d.Unit) }

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

// Valid returns an error wrapping [ErrStock] that names what is wrong with b.
func (b Bar) Valid() error {
	switch {
	case b.Mass <= 0 || b.Mass > MaxBar:
		return fmt.Errorf("use bar %q of %s: %w: its mass must be over 0 and at most %s", b.Name, b.Mass, ErrStock, MaxBar)
	case !b.Unit.Valid():
		return fmt.Errorf("use bar %q: %w: unit %q is not kg or lb", b.Name, ErrStock, b.Unit)
	case b.Count < 0:
		return fmt.Errorf("use bar %q: %w: the count %d is negative", b.Name, ErrStock, b.Count)
	}
	return nil
}

// Valid returns an error wrapping [ErrStock] that names what is wrong with p.
func (p Plate) Valid() error {
	switch {
	case !p.Unit.Valid():
		return fmt.Errorf("use plate: %w: unit %q is not kg or lb", ErrStock, p.Unit)
	case p.Mass <= 0 || p.Mass > MaxPlate:
		return fmt.Errorf("use plate %s: %w: its mass must be over 0 and at most %s", p.Disc(), ErrStock, MaxPlate.In(p.Unit))
	case p.Mass%p.grain() != 0:
		return fmt.Errorf("use plate %s: %w: its mass is finer than a thousandth of its unit", p.Disc(), ErrStock)
	case p.Pairs < 0 || p.Pairs > MaxPairs:
		return fmt.Errorf("use plate %s: %w: %d pairs is not between 0 and %d", p.Disc(), ErrStock, p.Pairs, MaxPairs)
	}
	return nil
}

// grain is the finest step of a plate's face: a gram or a thousandth of a
// pound. It keeps every sum of one unit on a grid of a size that can be held.
func (p Plate) grain() mass.Mass { return p.Unit.One() / 1000 }

// Valid returns an error wrapping [ErrStock] that names the first thing wrong
// with s. A stock without a single pair of plates is wrong too.
func (s Stock) Valid() error {
	if s.Collar < 0 || s.Collar > MaxCollar {
		return fmt.Errorf("use collars of %s: %w: one must be from 0 to %s", s.Collar, ErrStock, MaxCollar)
	}
	for _, p := range s.Plates {
		if err := p.Valid(); err != nil {
			return err
		}
	}
	switch n := len(s.tidy()); {
	case n == 0:
		return fmt.Errorf("use stock: %w: it has no pair of plates; add at least one", ErrStock)
	case n > MaxKinds:
		return fmt.Errorf("use stock: %w: %d different plates are more than %d", ErrStock, n, MaxKinds)
	}
	return nil
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
