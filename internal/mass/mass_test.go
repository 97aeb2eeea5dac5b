package mass_test

import (
	"fmt"
	"math"
	"math/big"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/mass"
)

// International yard and pound agreement of 1 July 1959, as in NIST Special
// Publication 811, appendix B: 1 lb = 0.453 592 37 kg exactly.
func TestPoundIsExact(t *testing.T) {
	kg := new(big.Rat).SetInt64(int64(mass.Kilogram))
	lb := new(big.Rat).SetInt64(int64(mass.Pound))
	assert.Equal(t, "45359237/100000000", new(big.Rat).Quo(lb, kg).String())
	assert.Zero(t, mass.Pound%8, "half a quarter pound is whole nanograms")
}

// Exact conversions of the usual plates and bar loads in lb, from the agreement
// of 1959 by arithmetic.
func TestPublishedPounds(t *testing.T) {
	tests := []struct{ lb, kg string }{
		{"1", "0.45359237"},
		{"2.5", "1.133980925"},
		{"5", "2.26796185"},
		{"10", "4.5359237"},
		{"25", "11.33980925"},
		{"35", "15.87573295"},
		{"45", "20.41165665"},
		{"55", "24.94758035"},
		{"100", "45.359237"},
		{"135", "61.23496995"},
		{"225", "102.05828325"},
		{"315", "142.88159655"},
		{"405", "183.70490985"},
		{"495", "224.52822315"},
	}
	for _, tt := range tests {
		lb, unit, err := mass.Parse(tt.lb, mass.LB)
		require.NoError(t, err)
		assert.Equal(t, mass.LB, unit)
		kg, _, err := mass.Parse(tt.kg, mass.KG)
		require.NoError(t, err)
		assert.Equal(t, kg, lb, "%s lb", tt.lb)
		assert.Equal(t, tt.lb+" lb", lb.In(mass.LB))
	}
}

// kg in lb to six decimals, computed from the agreement of 1959.
func TestPublishedKilograms(t *testing.T) {
	for kg, lb := range map[string]float64{
		"1.25": 2.755778, "2.5": 5.511557, "5": 11.023113, "10": 22.046226,
		"15": 33.069339, "20": 44.092452, "25": 55.115566, "100": 220.462262,
	} {
		m, _, err := mass.Parse(kg, mass.KG)
		require.NoError(t, err)
		assert.InDelta(t, lb, m.Ratio(mass.Pound), 0.5e-6, "%s kg", kg)
	}
}

// The trap of mixed gyms: a 20 kg bar with four 45 lb plates is not 225 lb.
func TestMixedPlatesAddExactly(t *testing.T) {
	sum := 20*mass.Kilogram + 4*45*mass.Pound
	exact, _, err := mass.Parse("101.6466266", mass.KG)
	require.NoError(t, err)
	assert.Equal(t, exact, sum)
	assert.Equal(t, "224.09 lb", sum.In(mass.LB))
	assert.InDelta(t, 224.0925, sum.Ratio(mass.Pound), 0.5e-4)
}

func TestPrint(t *testing.T) {
	tests := []struct {
		m    mass.Mass
		unit mass.Unit
		want string
	}{
		{0, mass.KG, "0 kg"},
		{100 * mass.Kilogram, mass.KG, "100 kg"},          // no zeros after the point
		{102_500 * mass.Gram, mass.KG, "102.5 kg"},        // one decimal
		{1250 * mass.Gram, mass.KG, "1.25 kg"},            // two
		{1134 * mass.Gram, mass.KG, "1.13 kg"},            // never more
		{1135 * mass.Gram, mass.KG, "1.14 kg"},            // half goes up
		{999_999 * mass.Gram, mass.KG, "1000 kg"},         // and carries
		{mass.Pound / 4, mass.LB, "0.25 lb"},              // a quarter-pound plate
		{20 * mass.Kilogram, mass.LB, "44.09 lb"},         // in the reader's unit
		{-2500 * mass.Gram, mass.KG, "-2.5 kg"},           // a difference
		{-1, mass.KG, "0 kg"},                             // nothing has no sign
		{40 * mass.Kilogram, mass.Unit("stone"), "40 kg"}, // an unknown unit counts as kg
	}
	for _, tt := range tests {
		assert.Equal(t, tt.want, tt.m.In(tt.unit), "%d ng", int64(tt.m))
	}
	assert.Equal(t, "142.5 kg", (142_500 * mass.Gram).String())
	assert.Equal(t, "142.5", (142_500 * mass.Gram).Digits(mass.KG))
}

func TestMassesOfModels(t *testing.T) {
	tests := []struct {
		x    float64
		unit mass.Unit
		want mass.Mass
	}{
		{102.5, mass.KG, 102_500 * mass.Gram},
		{185, mass.LB, 185 * mass.Pound},
		{1000, mass.KG, mass.Max},
		{1000.001, mass.KG, 0}, // beyond belief
		{-1, mass.KG, 0},
		{math.NaN(), mass.KG, 0},
		{math.Inf(1), mass.KG, 0},
		{math.Inf(-1), mass.LB, 0},
	}
	for _, tt := range tests {
		assert.Equal(t, tt.want, mass.Of(tt.x, tt.unit), "%g %s", tt.x, tt.unit)
	}
	assert.Equal(t, 90*mass.Kilogram, (100 * mass.Kilogram).Scale(0.9))
	assert.Zero(t, (100 * mass.Kilogram).Scale(math.NaN()))
	assert.InDelta(t, 0.9, (90 * mass.Kilogram).Ratio(100*mass.Kilogram), 0)
	assert.Zero(t, mass.Kilogram.Ratio(0))
	assert.InDelta(t, 102.5, (102_500 * mass.Gram).Kilograms(), 0)
}

func TestUnits(t *testing.T) {
	assert.True(t, mass.KG.Valid())
	assert.True(t, mass.LB.Valid())
	assert.False(t, mass.Unit("").Valid())
	assert.Equal(t, mass.Kilogram, mass.Unit("").One())
	for text, want := range map[string]mass.Unit{"kg": mass.KG, " KGS ": mass.KG, "lbs": mass.LB, "Pounds": mass.LB, "#": mass.LB} {
		u, err := mass.ParseUnit(text)
		require.NoError(t, err)
		assert.Equal(t, want, u, text)
	}
	_, err := mass.ParseUnit("stone")
	assert.EqualError(t, err, `read unit "stone": it is not kg or lb`)
}

// What a coach typed is what every screen shows, in both units.
func TestTypedDigitsStay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		unit := rapid.SampledFrom([]mass.Unit{mass.KG, mass.LB}).Draw(t, "unit")
		hundredths := rapid.Int64Range(0, 100_000).Draw(t, "hundredths")
		m := mass.Mass(hundredths) * unit.One() / 100
		text := m.In(unit)
		back, read, err := mass.Parse(text, mass.KG)
		if err != nil || back != m || read != unit {
			t.Fatalf("%s came back as %s: %v", text, back.In(read), err)
		}
		if again := back.In(unit); again != text {
			t.Fatalf("%s is printed as %s", text, again)
		}
	})
}

func ExampleParse() {
	m, unit, err := mass.Parse("185 lb", mass.KG)
	fmt.Println(m.In(unit), "=", m.In(mass.KG), err)
	_, _, err = mass.Parse("heavy", mass.KG)
	fmt.Println(err)
	// Output:
	// 185 lb = 83.91 kg <nil>
	// read load "heavy": not a mass: it has no number; write one like 102.5 kg or 225 lb
}

func ExampleMass_In() {
	onBar := 20*mass.Kilogram + 2*45*mass.Pound + 2*mass.Pound/4
	fmt.Println(onBar.In(mass.KG), "or", onBar.In(mass.LB))
	// Output: 61.05 kg or 134.59 lb
}

func ExampleMass_Scale() {
	record := 140 * mass.Kilogram
	fmt.Println("heavy from", record.Scale(0.9))
	// Output: heavy from 126 kg
}

func TestExact(t *testing.T) {
	for _, text := range []string{"0.125 lb", "0.25 lb", "45 lb", "2.5 kg", "0 kg", "999.999999 kg", "1000 kg", "0.000001 kg", "101.646627 kg"} {
		m, unit, err := mass.Parse(text, mass.KG)
		require.NoError(t, err)
		assert.Equal(t, text, m.Exact(unit))
	}
	assert.Equal(t, "1 kg", (mass.Kilogram - 1).Exact(mass.KG), "a nanogram is no decimal of six")
	assert.Equal(t, "-0.125 lb", (-mass.Pound / 8).Exact(mass.LB))
	rapid.Check(t, func(rt *rapid.T) {
		unit := rapid.SampledFrom([]mass.Unit{mass.KG, mass.LB}).Draw(rt, "unit")
		// What six decimals can say comes back as it was; Max is 2204.6 lb.
		digits := fmt.Sprintf("%d.%06d", rapid.IntRange(0, 999).Draw(rt, "whole"), rapid.IntRange(0, 999_999).Draw(rt, "part"))
		m, _, err := mass.Parse(digits, unit)
		require.NoError(rt, err)
		again, read, err := mass.Parse(m.Exact(unit), mass.KG)
		require.NoError(rt, err)
		require.Equal(rt, unit, read)
		require.Equal(rt, m, again)
	})
}
