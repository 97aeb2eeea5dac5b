package climb_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

func drawPlan(t *rapid.T) gym.ClimbPlan {
	plan := gym.ClimbPlan{Name: "drawn", HeavyLine: rapid.Float64Range(70, 100).Draw(t, "heavy"), Ceiling: rapid.Float64Range(100.1, 110).Draw(t, "ceiling")}
	n := rapid.IntRange(1, 12).Draw(t, "rungs")
	percents := rapid.SliceOfN(rapid.Float64Range(20, plan.Ceiling), n, n).Draw(t, "percents")
	slices.Sort(percents)
	if rapid.Bool().Draw(t, "ends on the ceiling") {
		percents[n-1] = plan.Ceiling
	}
	light, top := rapid.IntRange(0, n).Draw(t, "light"), rapid.IntRange(0, n).Draw(t, "top")
	at := 0
	for i, p := range percents {
		r := gym.Rung{At: at, Until: at + rapid.IntRange(1, 200).Draw(t, "seconds"), Percent: p, Reps: rapid.IntRange(0, 5).Draw(t, "reps"), Zone: gym.WorkingZone}
		if i < light {
			r.Zone = gym.LightZone
		}
		if i >= max(top, light) {
			r.Zone = gym.TopZone
		}
		plan.Rungs, at = append(plan.Rungs, r), r.Until
	}
	return plan
}

// drawRack is a short stock in mixed units on a 20 kg bar, and every load that
// it makes.
func drawRack(t *rapid.T) (climb.Rack, []mass.Mass) {
	var stock plates.Stock
	for range rapid.IntRange(1, 6).Draw(t, "sorts") {
		p := plates.Plate{Unit: mass.KG, Mass: kg(rapid.SampledFrom([]float64{0.5, 1.25, 2.5, 5, 10, 20, 25}).Draw(t, "kg")), Pairs: rapid.IntRange(1, 4).Draw(t, "pairs")}
		if rapid.Bool().Draw(t, "pounds") {
			p.Unit, p.Mass = mass.LB, rapid.SampledFrom([]mass.Mass{5, 10, 25, 45}).Draw(t, "lb")*mass.Pound
		}
		stock.Plates = append(stock.Plates, p)
	}
	loads, err := plates.NewLoads(plates.Bar{Key: "bar", Name: "Bar", Mass: kg(20), Unit: mass.KG, Kind: plates.Barbell, Count: 1}, stock)
	require.NoError(t, err)
	return loads, everyLoad(kg(20), stock)
}

// everyLoad lists, by brute force, all that a stock makes on a bar.
func everyLoad(bar mass.Mass, stock plates.Stock) []mass.Mass {
	all := []mass.Mass{bar}
	for _, p := range stock.Plates {
		for range p.Pairs {
			for _, m := range slices.Clone(all) {
				all = append(all, m+2*p.Mass)
			}
			slices.Sort(all)
			all = slices.Compact(all)
		}
	}
	return slices.DeleteFunc(all, func(m mass.Mass) bool { return m > mass.Max })
}

func drawCalls(t *rapid.T, rungs int) []gym.Call {
	kinds := []gym.CallKind{gym.ClimbCall, gym.ClimbCall, gym.SettleCall, gym.MissedCall, gym.EasyCall, gym.FairCall, gym.HardCall}
	return rapid.SliceOfN(rapid.Custom(func(t *rapid.T) gym.Call {
		return gym.Call{Rung: rapid.IntRange(0, rungs).Draw(t, "rung"), Kind: rapid.SampledFrom(kinds).Draw(t, "call")}
	}), 0, 6).Draw(t, "calls")
}

func TestClimbsNeverFall(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		plan := drawPlan(t)
		rack, all := drawRack(t)
		r := climb.Rig{Rack: rack, Rounding: rapid.SampledFrom([]plates.Rounding{plates.Nearest, plates.Down, plates.Up}).Draw(t, "rounding"), Unit: mass.KG}
		base := kg(float64(rapid.IntRange(20, 600).Draw(t, "half kilos")) / 2)
		p, err := climb.Build(plan, gym.Lifter{Reps: rapid.IntRange(1, 10).Draw(t, "reps"), Base: base}, r)
		require.NoError(t, err)
		before := mass.Mass(0)
		for i, s := range p.Steps {
			assert.GreaterOrEqual(t, s.Load, before, "rung %d", i+1)
			assert.Contains(t, all, s.Load, "rung %d can be loaded", i+1)
			assert.InDelta(t, 100*float64(s.Load)/float64(base), s.Percent, 1e-9)
			if !s.Under && !(i == len(p.Steps)-1 && p.Attempt != nil) {
				assert.LessOrEqual(t, s.Load, p.Lines.Ceiling, "rung %d: only an attempt may be over the ceiling, and says so", i+1)
			}
			before = s.Load
		}
	})
}

func TestAttemptsAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		plan := drawPlan(t)
		rack, all := drawRack(t)
		base := kg(float64(rapid.IntRange(40, 400).Draw(t, "half kilos")) / 2)
		p, err := climb.Build(plan, gym.Lifter{Reps: 1, Base: base}, climb.Rig{Rack: rack, Unit: mass.KG})
		require.NoError(t, err)
		last := p.Steps[len(p.Steps)-1]
		if last.Rung.Percent < 100 {
			assert.Nil(t, p.Attempt)
			return
		}
		var over, within []mass.Mass
		for _, m := range all {
			if m > base {
				over = append(over, m)
			}
			if m > base && m <= p.Lines.Ceiling {
				within = append(within, m)
			}
		}
		require.NotNil(t, p.Attempt)
		assert.Equal(t, last.Load, p.Attempt.Load)
		assert.Equal(t, len(within) > 0, honest(*p.Attempt))
		switch {
		case len(within) > 0:
			assert.Contains(t, within, last.Load, "over the record and not over the ceiling")
			if last.Rung.Percent == plan.Ceiling {
				assert.Equal(t, slices.Max(within), last.Load, "the heaviest within")
			}
		case len(over) > 0:
			assert.Equal(t, slices.Min(over), last.Load, "the lightest over the record")
			assert.Positive(t, p.Attempt.Over)
		default:
			assert.True(t, p.Attempt.Short)
		}
		checkLacks(t, *p.Attempt, base, p.Lines.Ceiling, all)
	})
}

// checkLacks buys the plate and looks.
func checkLacks(t *rapid.T, a climb.Attempt, base, ceiling mass.Mass, all []mass.Mass) {
	if a.Lacks == 0 {
		return
	}
	assert.False(t, honest(a))
	assert.True(t, slices.ContainsFunc(all, func(m mass.Mass) bool {
		return m+2*a.Lacks > base && m+2*a.Lacks <= ceiling
	}), "a pair of %s brings an attempt within", a.Lacks)
}

func TestRungsAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		plan := drawPlan(t)
		rack, all := drawRack(t)
		base := kg(float64(rapid.IntRange(40, 400).Draw(t, "half kilos")) / 2)
		p, err := climb.Build(plan, gym.Lifter{Reps: 5, Base: base}, climb.Rig{Rack: rack, Rounding: plates.Nearest, Unit: mass.KG})
		require.NoError(t, err)
		for i, s := range p.Steps {
			target := mass.Of(base.Kilograms()*s.Rung.Percent/100, mass.KG)
			switch {
			case s.Rung.Percent >= 100:
			case s.Rung.Zone == gym.TopZone && slices.ContainsFunc(all, func(m mass.Mass) bool {
				return m >= p.Lines.Heavy && m <= p.Lines.Heavy+base/100 && s.Rung.Percent >= plan.HeavyLine
			}):
				assert.GreaterOrEqual(t, s.Load, p.Lines.Heavy, "rung %d is not under the heavy line when 1 %% reaches it", i+1)
			case s.Rung.Zone != gym.TopZone:
				for _, m := range all {
					if m <= p.Lines.Ceiling {
						assert.LessOrEqual(t, distance(s.Load, target), distance(m, target))
					}
				}
			}
		}
	})
}

// Whatever is called, in whatever order: a path has a step a rung, nothing heavier
// than planned, no more than one last set, and an outcome of the day's reps.
func TestPathsUnderAnyCalls(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		plan := drawPlan(t)
		rack, _ := drawRack(t)
		l := gym.Lifter{Reps: rapid.IntRange(1, 5).Draw(t, "reps"), Base: kg(100), Joined: rapid.IntRange(0, len(plan.Rungs)-1).Draw(t, "joined")}
		planned, err := climb.Build(plan, l, climb.Rig{Rack: rack, Unit: mass.KG})
		require.NoError(t, err)
		l.Calls = drawCalls(t, len(plan.Rungs))
		p, err := climb.Build(plan, l, climb.Rig{Rack: rack, Unit: mass.KG})
		require.NoError(t, err)
		require.Len(t, p.Steps, len(plan.Rungs))
		last := 0
		for i, s := range p.Steps {
			assert.LessOrEqual(t, s.Load, planned.Steps[i].Load, "rung %d", i+1)
			assert.Equal(t, i < l.Joined, s.State == climb.Skipped)
			assert.Equal(t, s.State == climb.Skipped || s.State == climb.Off, s.Load == 0)
			assert.Equal(t, s.State == climb.Open, len(s.Options) == 2)
			if s.State == climb.Settle || s.State == climb.Banked {
				last++
			}
		}
		assert.LessOrEqual(t, last, 1)
		if o := p.Outcome; o.Kind == climb.Counts {
			assert.Equal(t, l.Reps, o.Reps)
			assert.Equal(t, p.Steps[o.Rung].Load, o.Load)
			assert.Equal(t, l.Reps, p.Steps[o.Rung].Reps)
			assert.NotEqual(t, climb.Missed, p.Steps[o.Rung].State)
		}
	})
}

func TestFindingUnderAnyCalls(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		plan := drawPlan(t)
		rack, all := drawRack(t)
		l := gym.Lifter{Reps: 3, Start: kg(float64(rapid.IntRange(10, 100).Draw(t, "start"))), Calls: drawCalls(t, len(plan.Rungs))}
		p, err := climb.Build(plan, l, climb.Rig{Rack: rack, Unit: mass.KG})
		require.NoError(t, err)
		before, best := mass.Mass(0), mass.Mass(0)
		for i, s := range p.Steps {
			if s.Load == 0 {
				continue
			}
			assert.GreaterOrEqual(t, s.Load, before, "rung %d", i+1)
			assert.Contains(t, all, s.Load)
			if before > 0 {
				limit := max(before.Scale(1.30), nearest(all, before.Scale(1.15)))
				assert.LessOrEqual(t, s.Load, limit, "no leap")
			}
			before = s.Load
			if s.State == climb.Lifted {
				best = s.Load
				assert.True(t, slices.ContainsFunc(l.Calls, func(c gym.Call) bool { return c.Rung == i }), "only a call says so")
			}
		}
		if p.Outcome.Kind == climb.Counts {
			assert.Equal(t, best, p.Outcome.Load, "the heaviest set that was lifted")
		}
	})
}

func nearest(all []mass.Mass, target mass.Mass) mass.Mass {
	best := all[0]
	for _, m := range all {
		if distance(m, target) < distance(best, target) {
			best = m
		}
	}
	return best
}

func distance(a, b mass.Mass) mass.Mass { return max(a-b, b-a) }
