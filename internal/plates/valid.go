package plates

import (
	"errors"
	"fmt"

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
	tidy := s.tidy()
	switch n := len(tidy); {
	case n == 0:
		return fmt.Errorf("use stock: %w: it has no pair of plates; add at least one", ErrStock)
	case n > MaxKinds:
		return fmt.Errorf("use stock: %w: %d different plates are more than %d", ErrStock, n, MaxKinds)
	}
	for _, p := range tidy { // a plate that was listed twice counts together
		if err := p.Valid(); err != nil {
			return err
		}
	}
	return nil
}
