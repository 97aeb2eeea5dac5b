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

// Every branch of calls through the nine rungs for a five of 140 kg, worked by
// hand in steps of 2.5 kg: 42, 70, 84, 98, 112, 126, 133, 137.2 kg, and at most
// 142.8 kg. Common practice, no source.
func TestNineRungsEveryBranch(t *testing.T) {
	const way = "42.5x5 70x3 85x5 97.5x5 112.5x2 "
	const up = "42.5x5+ 70x3+ 85x5+ 97.5x5+ 112.5x2+ "
	for _, row := range []struct{ calls, path, outcome string }{
		{"", way + "125x1 132.5x1/125x5 137.5x1/132.5x5 142.5x5/137.5x5", "pending"},
		{"settle", up + "125x1+ 125x5! off off", "125x5 in rung 7"},
		{"settle,climb", up + "125x1+ 125x5+ off off", "125x5 in rung 7"},
		{"settle,missed", up + "125x1+ 125x5- 112.5x5! off", "112.5x5 in rung 8"},
		{"settle,missed,missed", up + "125x1+ 125x5- 112.5x5- 97.5x5=", "97.5x5 in rung 4"},
		{"missed", up + "125x1- 112.5x5! off off", "112.5x5 in rung 7"},
		{"missed,missed", up + "125x1- 112.5x5- 97.5x5= off", "97.5x5 in rung 4"},
		{"climb", up + "125x1+ 132.5x1 137.5x1/132.5x5 142.5x5/137.5x5", "pending"},
		{"climb,settle", up + "125x1+ 132.5x1+ 132.5x5! off", "132.5x5 in rung 8"},
		{"climb,settle,missed", up + "125x1+ 132.5x1+ 132.5x5- 125x5!", "125x5 in rung 9"},
		{"climb,missed", up + "125x1+ 132.5x1- 125x5! off", "125x5 in rung 8"},
		{"climb,climb", up + "125x1+ 132.5x1+ 137.5x1 142.5x5/137.5x5", "pending"},
		{"climb,climb,settle", up + "125x1+ 132.5x1+ 137.5x1+ 137.5x5!", "137.5x5 in rung 9"},
		{"climb,climb,settle,missed", up + "125x1+ 132.5x1+ 137.5x1+ 137.5x5-", "nothing"},
		{"climb,climb,missed", up + "125x1+ 132.5x1+ 137.5x1- 132.5x5!", "132.5x5 in rung 9"},
		{"climb,climb,climb", up + "125x1+ 132.5x1+ 137.5x1+ 142.5x5", "142.5x5 in rung 9"},
		{"climb,climb,climb,climb", up + "125x1+ 132.5x1+ 137.5x1+ 142.5x5+", "142.5x5 in rung 9"},
		{"climb,climb,climb,missed", up + "125x1+ 132.5x1+ 137.5x1+ 142.5x5-", "nothing"},
	} {
		t.Run(row.calls, func(t *testing.T) {
			p := build(t, nine(), lifter(t, 5, kg(140), row.calls), rig(steps(2.5)))
			assert.Equal(t, row.path, line(p))
			assert.Equal(t, row.outcome, outcome(p.Outcome))
			assert.Equal(t, climb.Lines{Heavy: kg(126), Record: kg(140), Ceiling: kg(142.8)}, p.Lines)
		})
	}
}

// On a day of singles the top singles are rep maxes themselves: a settle needs
// no second single, and a miss keeps what was lifted before.
func TestNineRungsOnADayOfSingles(t *testing.T) {
	const up = "42.5x5+ 70x3+ 85x1+ 97.5x1+ 112.5x2+ "
	for _, row := range []struct{ calls, path, outcome string }{
		{"settle", up + "125x1+ 125x1= off off", "125x1 in rung 6"},
		{"missed", up + "125x1- 112.5x1! off off", "112.5x1 in rung 7"},
		{"climb,climb,settle", up + "125x1+ 132.5x1+ 137.5x1+ 137.5x1=", "137.5x1 in rung 8"},
		{"climb,climb,missed", up + "125x1+ 132.5x1+ 137.5x1- 132.5x1=", "132.5x1 in rung 7"},
		{"climb,climb,climb,missed", up + "125x1+ 132.5x1+ 137.5x1+ 142.5x1-", "137.5x1 in rung 8"},
		{"climb,climb,climb,climb", up + "125x1+ 132.5x1+ 137.5x1+ 142.5x1+", "142.5x1 in rung 9"},
	} {
		t.Run(row.calls, func(t *testing.T) {
			p := build(t, nine(), lifter(t, 1, kg(140), row.calls), rig(steps(2.5)))
			assert.Equal(t, row.path, line(p))
			assert.Equal(t, row.outcome, outcome(p.Outcome))
		})
	}
}

func TestClockAndPercentagesAreAsTyped(t *testing.T) {
	plan := nine()
	plan.Rungs[3].Percent = 71.234567
	plan.Rungs[3].Until, plan.Rungs[4].At = 361, 361
	p := build(t, plan, lifter(t, 5, kg(140), "climb"), rig(steps(2.5)))
	for i, s := range p.Steps {
		assert.Equal(t, plan.Rungs[i], s.Rung)
	}
}

func TestCallsAreHonouredLateAndCorrected(t *testing.T) {
	l := lifter(t, 5, kg(140), "")
	l.Calls = []gym.Call{{Rung: 6, Kind: gym.SettleCall}}
	assert.Equal(t, "42.5x5+ 70x3+ 85x5+ 97.5x5+ 112.5x2+ 125x1+ 132.5x1+ 132.5x5! off", line(build(t, nine(), l, rig(steps(2.5)))),
		"whoever settles at 95 has lifted 90")
	l.Calls = append(l.Calls, gym.Call{Rung: 6, Kind: gym.ClimbCall})
	assert.Equal(t, "42.5x5+ 70x3+ 85x5+ 97.5x5+ 112.5x2+ 125x1+ 132.5x1+ 137.5x1 142.5x5/137.5x5", line(build(t, nine(), l, rig(steps(2.5)))),
		"the last call for a rung counts")
	l.Calls = []gym.Call{{Rung: -1, Kind: gym.SettleCall}, {Rung: 99, Kind: gym.MissedCall}, {Rung: 5, Kind: gym.HardCall}}
	assert.Equal(t, "42.5x5+ 70x3+ 85x5+ 97.5x5+ 112.5x2+ 125x1+ 132.5x1 137.5x1/132.5x5 142.5x5/137.5x5", line(build(t, nine(), l, rig(steps(2.5)))),
		"a call for a rung that is not there is none; hard means climb where there is a base")
}

func TestLateComerJoinsAtARung(t *testing.T) {
	l := lifter(t, 5, kg(140), "")
	l.Joined = 4
	assert.Equal(t, "skipped skipped skipped skipped 112.5x2 125x1 132.5x1/125x5 137.5x1/132.5x5 142.5x5/137.5x5", line(build(t, nine(), l, rig(steps(2.5)))))
	l.Joined = 6
	l.Calls = []gym.Call{{Rung: 5, Kind: gym.SettleCall}, {Rung: 6, Kind: gym.MissedCall}}
	p := build(t, nine(), l, rig(steps(2.5)))
	assert.Equal(t, "skipped skipped skipped skipped skipped skipped 132.5x1- 125x5! off", line(p), "a call from before joining is none")
}

func TestMissedLoadIsNotTakenAgain(t *testing.T) {
	p := build(t, nine(), lifter(t, 5, kg(104), "climb,missed"), rig(steps(20)))
	assert.Equal(t, "40x5+ 60x3+ 60x5+ 80x5+ 80x2+ 100x1+ 100x1- 80x5= off", line(p),
		"95 and 90 % of 104 kg are the same 100 kg: one lower is 80 kg, which was lifted for five")
}

func TestUnderAndOverTheRack(t *testing.T) {
	p := build(t, nine(), lifter(t, 5, kg(40), ""), rig(steps(2.5)))
	assert.True(t, p.Steps[0].Under, "30 % is 12 kg")
	assert.Equal(t, kg(20), p.Steps[0].Load)
	assert.InDelta(t, 50, p.Steps[0].Percent, 1e-9, "the percentage is of what is lifted")
	assert.False(t, p.Steps[1].Under)

	p = build(t, nine(), lifter(t, 5, kg(320), ""), rig(steps(2.5)))
	assert.True(t, p.Steps[7].Short, "98 % is 313.6 kg")
	assert.Equal(t, kg(300), p.Steps[7].Load)
	require.NotNil(t, p.Attempt)
	assert.True(t, p.Attempt.Short)
	assert.Equal(t, "The gym cannot load more than the record: 300 kg is its heaviest. A pair of 15 kg would mend it.", p.Attempt.Note(mass.KG),
		"of 10 to 13.2 kg a side")
}

func TestRounding(t *testing.T) {
	for _, row := range []struct {
		way  plates.Rounding
		want string
	}{
		{plates.Nearest, "42.5x5 70x3 85x5 97.5x5 112.5x2 125x1"},
		{plates.Down, "40x5 70x3 82.5x5 97.5x5 110x2 125x1"},
		{plates.Up, "42.5x5 70x3 85x5 100x5 112.5x2 125x1"},
		{"", "42.5x5 70x3 85x5 97.5x5 112.5x2 125x1"},
	} {
		r := climb.Rig{Rack: steps(2.5), Rounding: row.way}
		p := build(t, nine(), lifter(t, 5, kg(140), ""), r)
		assert.Contains(t, line(p), row.want+" 132.5x1/125x5", "top rungs go to the nearest, whatever the setting: %q", row.way)
	}
}

func TestEquallyNearTakesTheLighter(t *testing.T) {
	p := build(t, nine(), lifter(t, 5, kg(137.5), ""), rig(steps(2.5)))
	assert.Equal(t, kg(40), p.Steps[0].Load, "30 % is 41.25 kg, between 40 and 42.5")
}

func TestTopRungsReachTheHeavyLine(t *testing.T) {
	at := func(rack climb.Whole) mass.Mass {
		return build(t, nine(), lifter(t, 5, kg(100), ""), rig(rack)).Steps[5].Load
	}
	assert.Equal(t, kg(90.9), at(climb.Whole{kg(89.5), kg(90.9), kg(101)}), "89.5 is nearer to 90 and under the line; 90.9 is within 1 %")
	assert.Equal(t, kg(91), at(climb.Whole{kg(89.5), kg(91), kg(101)}), "1 % itself is within")
	assert.Equal(t, kg(89.5), at(climb.Whole{kg(89.5), kg(91.1), kg(101)}), "beyond 1 % the nearest stands")
	assert.Equal(t, kg(90), at(climb.Whole{kg(89.5), kg(90), kg(101)}))
}

// A climb of a coach's own may end on a single, or without an attempt.
func TestClimbsThatEndOtherwise(t *testing.T) {
	plan := nine()
	plan.Rungs = plan.Rungs[:8]
	plan.Rungs[6].Reps = 0
	l := lifter(t, 5, kg(140), "climb,climb,climb")
	p := build(t, plan, l, rig(steps(2.5)))
	assert.Nil(t, p.Attempt, "98 % is no attempt")
	assert.Equal(t, "132.5x5 in rung 7", outcome(p.Outcome), "the last top rung with the day's reps")

	plan.Rungs[6].Reps = 1
	assert.Equal(t, "nothing", outcome(build(t, plan, l, rig(steps(2.5))).Outcome), "singles are no five")
}

func TestOwes(t *testing.T) {
	p := build(t, nine(), lifter(t, 5, kg(140), "climb"), rig(steps(2.5)))
	for _, row := range []struct {
		at, rung int
		ok       bool
	}{
		{-1, 0, false}, {4, 0, false}, {5, 0, false}, {6, 6, true}, {7, 6, true}, {8, 7, true}, {9, 0, false},
	} {
		rung, kinds, ok := p.Owes(row.at)
		assert.Equal(t, row.ok, ok, "at rung %d", row.at+1)
		if ok {
			assert.Equal(t, row.rung, rung, "at rung %d", row.at+1)
			assert.Equal(t, []gym.CallKind{gym.ClimbCall, gym.SettleCall, gym.MissedCall}, kinds)
		}
	}
	p = build(t, nine(), lifter(t, 5, kg(140), ""), rig(steps(2.5)))
	_, _, ok := p.Owes(4)
	assert.False(t, ok, "no call below the top zone")
	rung, _, ok := p.Owes(5)
	assert.True(t, ok)
	assert.Equal(t, 5, rung)
	p = build(t, nine(), lifter(t, 5, kg(140), "settle"), rig(steps(2.5)))
	rung, _, ok = p.Owes(6)
	assert.True(t, ok, "the settle set can still be missed")
	assert.Equal(t, 6, rung)
	_, _, ok = p.Owes(7)
	assert.False(t, ok, "done")
	p = build(t, nine(), gym.Lifter{Reps: 5, Start: kg(40)}, rig(steps(2.5)))
	_, kinds, ok := p.Owes(0)
	assert.True(t, ok)
	assert.Equal(t, []gym.CallKind{gym.EasyCall, gym.FairCall, gym.HardCall, gym.MissedCall}, kinds)
}

func TestBuildRefuses(t *testing.T) {
	good := lifter(t, 5, kg(140), "")
	with := func(change func(*gym.Lifter)) gym.Lifter {
		l := good
		change(&l)
		return l
	}
	for _, row := range []struct {
		name   string
		plan   gym.ClimbPlan
		lifter gym.Lifter
		rack   climb.Rack
		is     error
		says   string
	}{
		{"no rungs", gym.ClimbPlan{Name: "none", HeavyLine: 90, Ceiling: 102}, good, steps(2.5), climb.ErrPlan, "no rungs"},
		{"nothing to start from", nine(), with(func(l *gym.Lifter) { l.Base = 0 }), steps(2.5), climb.ErrNoStart, "first load"},
		{"empty rack", nine(), good, climb.Whole{}, plates.ErrStock, "empty rack"},
		{"no reps", nine(), with(func(l *gym.Lifter) { l.Reps = 0 }), steps(2.5), nil, "0 reps"},
		{"too many reps", nine(), with(func(l *gym.Lifter) { l.Reps = 21 }), steps(2.5), nil, "21 reps"},
		{"joins after the end", nine(), with(func(l *gym.Lifter) { l.Joined = 9 }), steps(2.5), nil, "rung 10"},
		{"absurd base", nine(), with(func(l *gym.Lifter) { l.Base = mass.Max + 1 }), steps(2.5), nil, "base"},
	} {
		_, err := climb.Build(row.plan, row.lifter, rig(row.rack))
		require.Error(t, err, row.name)
		assert.ErrorContains(t, err, row.says, row.name)
		if row.is != nil {
			assert.ErrorIs(t, err, row.is, row.name)
		}
	}
}

// An exception takes the place of the plan's load at its rung alone, also where it
// is the attempt or what a lifter settles at.
func TestExceptionsTakeThePlaceOfPlannedLoads(t *testing.T) {
	plan, err := climb.Generate(20)
	require.NoError(t, err)
	l := gym.Lifter{Reps: 3, Base: 100 * mass.Kilogram}
	rig := climb.Rig{Rack: climb.Whole(kilos(1, 200))}
	before, err := climb.Build(plan, l, rig)
	require.NoError(t, err)
	last := len(plan.Rungs) - 1
	l = l.Except(gym.Exception{Rung: 4, Load: 68 * mass.Kilogram}).Except(gym.Exception{Rung: last, Load: 101 * mass.Kilogram})
	l = l.Except(gym.Exception{Rung: 99, Load: mass.Kilogram})
	after, err := climb.Build(plan, l, rig)
	require.NoError(t, err)
	for i := range plan.Rungs {
		want := before.Steps[i].Load
		switch i {
		case 4:
			want = 68 * mass.Kilogram
		case last:
			want = 101 * mass.Kilogram
		}
		assert.Equal(t, want, after.Steps[i].Load, "rung %d", i+1)
	}
	assert.Equal(t, 101*mass.Kilogram, after.Attempt.Load)
	l.Calls = []gym.Call{{Rung: 4, Kind: gym.SettleCall}}
	settled, err := climb.Build(plan, l, rig)
	require.NoError(t, err)
	assert.Equal(t, 68*mass.Kilogram, settled.Outcome.Load)
}

// An exception for the last rung is called no lightest load over the record, and what
// stays under the record is no attempt.
func TestAnExceptionAtTheLastRungIsChosen(t *testing.T) {
	plan := nine() // up to 102 %, which is its ceiling
	last := len(plan.Rungs) - 1
	for _, row := range []struct {
		load float64
		note string
	}{
		{101, ""},
		{105, "105 kg was chosen for the last rung, over the ceiling by 2.9 %."},
	} {
		l := gym.Lifter{Reps: 3, Base: kg(100)}.Except(gym.Exception{Rung: last, Load: kg(row.load)})
		p := build(t, plan, l, rig(climb.Whole(kilos(1, 200))))
		require.NotNil(t, p.Attempt)
		assert.Equal(t, row.note, p.Attempt.Note(mass.KG))
	}
	for _, load := range []float64{90, 100} {
		l := gym.Lifter{Reps: 3, Base: kg(100)}.Except(gym.Exception{Rung: last, Load: kg(load)})
		assert.Nil(t, build(t, plan, l, rig(climb.Whole(kilos(1, 200)))).Attempt)
	}
}

// kilos is every whole kilogram of a range.
func kilos(from, to int) (all []mass.Mass) {
	for n := from; n <= to; n++ {
		all = append(all, mass.Mass(n)*mass.Kilogram)
	}
	return all
}
