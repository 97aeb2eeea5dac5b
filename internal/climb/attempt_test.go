package climb_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// Attempts at a record of 100 kg, ceiling 102.
func TestAttempt(t *testing.T) {
	for _, row := range []struct {
		name    string
		percent float64
		rack    climb.Whole
		want    climb.Attempt
		note    string
	}{
		{"the heaviest within the ceiling", 102, climb.Whole{kg(100), kg(101), kg(102), kg(102.5)}, climb.Attempt{Load: kg(102)}, ""},
		{"just over the record", 102, climb.Whole{kg(100), kg(100.25), kg(105)}, climb.Attempt{Load: kg(100.25)}, ""},
		{"a coach's own 101 is 101", 101, climb.Whole{kg(100), kg(101), kg(102)}, climb.Attempt{Load: kg(101)}, ""},
		{"nearest to 101 within", 101, climb.Whole{kg(100), kg(100.5), kg(101.25)}, climb.Attempt{Load: kg(101.25)}, ""},
		{"equally near: the lighter", 101, climb.Whole{kg(100), kg(100.5), kg(101.5)}, climb.Attempt{Load: kg(100.5)}, ""},
		{"the ceiling itself is within", 101, climb.Whole{kg(100), kg(102)}, climb.Attempt{Load: kg(102)}, ""},
		{"100 % still beats the record", 100, climb.Whole{kg(100), kg(101), kg(102)}, climb.Attempt{Load: kg(101)}, ""},
		{
			"nothing within: over the ceiling, and it says so; 100 + 2×1 kg", 102,
			climb.Whole{kg(95), kg(100), kg(105)},
			climb.Attempt{Load: kg(105), Over: 100 * 3.0 / 102, Lacks: kg(1)},
			"The lightest load over the record is 105 kg, over the ceiling by 2.9 %. A pair of 1 kg would mend it.",
		},
		{
			"nothing over the record; 80 + 2×10 is not over it, and no other pair is sold", 102,
			climb.Whole{kg(80)},
			climb.Attempt{Load: kg(80), Short: true},
			"The gym cannot load more than the record: 80 kg is its heaviest. No single pair of plates would mend it.",
		},
		{
			"nothing over the record; 97.5 + 2×2 kg", 102,
			climb.Whole{kg(97.5)},
			climb.Attempt{Load: kg(97.5), Short: true, Lacks: kg(2)},
			"The gym cannot load more than the record: 97.5 kg is its heaviest. A pair of 2 kg would mend it.",
		},
	} {
		t.Run(row.name, func(t *testing.T) {
			plan := nine()
			plan.Rungs[8].Percent = row.percent
			p := build(t, plan, lifter(t, 5, kg(100), "climb,climb,climb"), rig(row.rack))
			require.NotNil(t, p.Attempt)
			assert.InDelta(t, row.want.Over, p.Attempt.Over, 1e-9)
			row.want.Over = p.Attempt.Over
			assert.Equal(t, row.want, *p.Attempt)
			assert.Equal(t, row.want.Load, p.Steps[8].Load)
			assert.Equal(t, row.note, p.Attempt.Note(mass.KG))
			assert.Equal(t, row.note == "", honest(*p.Attempt))
			assert.Equal(t, row.want.Short, p.Steps[8].Short)
		})
	}
}

// honest is over the record and within the ceiling.
func honest(a climb.Attempt) bool { return !a.Short && a.Over == 0 }

func TestAttemptInPounds(t *testing.T) {
	var rack climb.Whole
	for m := 45 * mass.Pound; m <= 405*mass.Pound; m += 5 * mass.Pound {
		rack = append(rack, m)
	}
	l := lifter(t, 1, 95*mass.Pound, "climb,climb,climb")
	p := build(t, nine(), l, climb.Rig{Rack: rack, Rounding: plates.Nearest, Unit: mass.LB})
	require.NotNil(t, p.Attempt)
	assert.Equal(t, 100*mass.Pound, p.Attempt.Load)
	assert.Equal(t, mass.Pound/2, p.Attempt.Lacks, "up to 96.9 lb: 95 + 2×0.5; 1 lb a side would be 97")
	assert.Equal(t, "The lightest load over the record is 100 lb, over the ceiling by 3.2 %. A pair of 0.5 lb would mend it.", p.Attempt.Note(mass.LB))
}

func TestAttemptOnRealPlates(t *testing.T) {
	bar := plates.Bar{Key: "bar", Name: "Bar", Mass: kg(20), Unit: mass.KG, Kind: plates.Barbell, Count: 1}
	stock := plates.Stock{Plates: []plates.Plate{
		{Mass: kg(20), Unit: mass.KG, Pairs: 2, Full: true},
		{Mass: kg(10), Unit: mass.KG, Pairs: 1},
		{Mass: kg(5), Unit: mass.KG, Pairs: 1},
		{Mass: kg(2.5), Unit: mass.KG, Pairs: 1},
		{Mass: kg(1.25), Unit: mass.KG, Pairs: 1},
	}}
	loads, err := plates.NewLoads(bar, stock)
	require.NoError(t, err)
	p := build(t, nine(), lifter(t, 5, kg(60), "climb,climb,climb"), rig(loads))
	require.NotNil(t, p.Attempt)
	assert.Equal(t, kg(62.5), p.Attempt.Load)
	assert.InDelta(t, 100*(62.5/61.2-1), p.Attempt.Over, 1e-9, "of the ceiling, 61.2 kg")
	assert.Equal(t, kg(0.5), p.Attempt.Lacks, "61 kg is within 61.2")
}

// A rung at 109 % whose nearest load is over the ceiling of 110 must not stand in
// the way of an attempt within it.
func TestRungsFromTheRecordOnStayUnderTheCeiling(t *testing.T) {
	plan := gym.ClimbPlan{Name: "steep", HeavyLine: 90, Ceiling: 110, Rungs: []gym.Rung{
		{At: 0, Until: 60, Percent: 109, Reps: 1, Zone: gym.WorkingZone},
		{At: 60, Until: 120, Percent: 110, Zone: gym.TopZone},
	}}
	p := build(t, plan, gym.Lifter{Reps: 5, Base: kg(100)}, rig(climb.Whole{kg(101), kg(112)}))
	assert.Equal(t, "101x1 101x5", line(p))
	assert.True(t, honest(*p.Attempt))
}
