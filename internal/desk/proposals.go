package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

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
