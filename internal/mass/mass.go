// Package mass holds exact loads.
//
// A [Mass] is a whole number of nanograms, so kilograms, pounds and any mixture
// of plates add without rounding. Most callers need [Parse] and [Mass.In].
// The package promises that a load typed in pounds shows the same digits in
// pounds for ever. It does not know about bars or plates; see package plates.
package mass

import (
	"fmt"
	"math"
	"strings"
)

// Mass is a mass in nanograms. The zero value is no mass at all.
type Mass int64

// Exact units. The pound is that of the international yard and pound agreement
// of 1 July 1959, 0.453 592 37 kg (NIST Special Publication 811, appendix B).
const (
	Gram     Mass = 1_000_000_000
	Kilogram      = 1000 * Gram
	Pound    Mass = 453_592_370_000
)

// Max is the largest mass that the program believes: more is a slip of the hand.
const Max = 1000 * Kilogram

// Unit is what a reader counts loads in.
type Unit string

// The two units of the trade.
const (
	KG Unit = "kg"
	LB Unit = "lb"
)

// Valid reports whether u is one of the two units.
func (u Unit) Valid() bool { return u == KG || u == LB }

// One returns the mass of one u; an unknown unit counts as kilograms.
func (u Unit) One() Mass {
	if u == LB {
		return Pound
	}
	return Kilogram
}

// Kilograms returns m in kg as a float, for models and pictures only.
func (m Mass) Kilograms() float64 { return float64(m) / float64(Kilogram) }

// Of returns the mass nearest to x units, for results of models only: x carries
// a float's error, which a load that somebody typed must not; see [Parse]. It
// returns zero when x is not a number, is negative or is beyond [Max].
func Of(x float64, u Unit) Mass {
	ng := math.Round(x * float64(u.One()))
	if math.IsNaN(ng) || ng < 0 || ng > float64(Max) {
		return 0
	}
	return Mass(ng)
}

// Scale returns m times x to the nearest nanogram, under the rules of [Of].
func (m Mass) Scale(x float64) Mass { return Of(m.Kilograms()*x, KG) }

// Ratio returns m / of, and zero when of is zero.
func (m Mass) Ratio(of Mass) float64 {
	if of == 0 {
		return 0
	}
	return float64(m) / float64(of)
}

// In writes m in the given unit with at most two decimals and no trailing
// zeros, and the unit behind it: "102.5 kg".
func (m Mass) In(u Unit) string { return m.Digits(u) + " " + string(unitOr(u)) }

// Digits is [Mass.In] without the unit.
func (m Mass) Digits(u Unit) string {
	sign := ""
	if m < 0 {
		sign, m = "-", -m
	}
	hundredth := u.One() / 100
	n := (m + hundredth/2) / hundredth
	if n == 0 {
		return "0" // and never "-0"
	}
	s := fmt.Sprintf("%d.%02d", n/100, n%100)
	return sign + strings.TrimSuffix(strings.TrimRight(s, "0"), ".")
}

// Exact is [Mass.In] with up to six decimals, for the mass that is printed on a
// plate: "0.125 lb", of which two decimals would make another plate.
func (m Mass) Exact(u Unit) string {
	sign := ""
	if m < 0 {
		sign, m = "-", -m
	}
	const million = 1_000_000
	one := u.One()
	whole, part := m/one, (m%one*million+one/2)/one
	whole, part = whole+part/million, part%million
	s := fmt.Sprintf("%d.%06d", whole, part)
	return sign + strings.TrimSuffix(strings.TrimRight(s, "0"), ".") + " " + string(unitOr(u))
}

// String writes m in kilograms.
func (m Mass) String() string { return m.In(KG) }

func unitOr(u Unit) Unit {
	if u.Valid() {
		return u
	}
	return KG
}
