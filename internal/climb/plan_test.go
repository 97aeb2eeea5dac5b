package climb_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/climb"
	"windlass/internal/gym"
)

func TestCheckNamesRungFaultAndMend(t *testing.T) {
	for _, row := range []struct {
		name   string
		change func(*gym.ClimbPlan)
		want   string
	}{
		{"gap", func(p *gym.ClimbPlan) { p.Rungs[2].At = 150 }, "rung 3 begins at 02:30 and leaves a gap of 30 s after 02:00; begin it at 02:00"},
		{"gap at the start", func(p *gym.ClimbPlan) { p.Rungs[0].At = 10 }, "rung 1 begins at 00:10 and leaves a gap of 10 s after 00:00; begin it at 00:00"},
		{"overlap", func(p *gym.ClimbPlan) { p.Rungs[2].At = 119 }, "rung 3 begins at 01:59 and overlaps what ends at 02:00; begin it at 02:00"},
		{"before the start", func(p *gym.ClimbPlan) { p.Rungs[0].At = -5 }, "rung 1 begins at -00:05 and overlaps what ends at 00:00; begin it at 00:00"},
		{"no length", func(p *gym.ClimbPlan) { p.Rungs[8].Until = 1020 }, "rung 9 lasts no time, from 17:00 to 17:00; end it later"},
		{"backwards", func(p *gym.ClimbPlan) { p.Rungs[8].Until = 900 }, "rung 9 ends at 15:00, before it begins at 17:00; end it later"},
		{"endless", func(p *gym.ClimbPlan) { p.Rungs[8].Until = 10801 }, "rung 9 ends at 180:01; end the climb by 180:00"},
		{"falling", func(p *gym.ClimbPlan) { p.Rungs[1].Percent = 25 }, "rung 2 falls from 30 % to 25 %; write 30 or more"},
		{"nothing", func(p *gym.ClimbPlan) { p.Rungs[0].Percent = 0 }, "rung 1 is at 0 %; write a percentage over 0"},
		{"not a number", func(p *gym.ClimbPlan) { p.Rungs[8].Percent = math.NaN() }, "rung 9 is at NaN %; write a percentage over 0"},
		{"over the ceiling", func(p *gym.ClimbPlan) { p.Rungs[8].Percent = 103 }, "rung 9 is at 103 %, over the ceiling of 102 %; lower it or raise the ceiling"},
		{"reps", func(p *gym.ClimbPlan) { p.Rungs[4].Reps = 21 }, "rung 5 asks for 21 reps; write 1 to 20, or the day's"},
		{"zone", func(p *gym.ClimbPlan) { p.Rungs[4].Zone = "hot" }, `rung 5 is in the zone "hot"; write light, working or top`},
		{"zone order", func(p *gym.ClimbPlan) { p.Rungs[6].Zone = gym.WorkingZone }, "rung 7 goes back from top to working; keep the order light, working, top"},
		{"heavy line", func(p *gym.ClimbPlan) { p.HeavyLine = 101 }, "the heavy line of 101 % is not over 0 and at most 100 %; write one such as 90"},
		{"ceiling", func(p *gym.ClimbPlan) { p.Ceiling = 121 }, "the ceiling of 121 % is not over 100 and at most 120 %; write one such as 102"},
	} {
		t.Run(row.name, func(t *testing.T) {
			plan := nine()
			row.change(&plan)
			faults := climb.Check(plan)
			require.Len(t, faults, 1)
			assert.Equal(t, row.want, faults[0].String())
			err := climb.Valid(plan)
			require.ErrorIs(t, err, climb.ErrPlan)
			assert.ErrorContains(t, err, row.want)
			_, err = climb.Build(plan, lifter(t, 5, kg(100), ""), rig(steps(2.5)))
			assert.ErrorIs(t, err, climb.ErrPlan)
		})
	}
}

func TestValid(t *testing.T) {
	require.NoError(t, climb.Valid(nine()))
	plan := nine()
	plan.Name = " "
	plan.Rungs[1].Percent = 10
	err := climb.Valid(plan)
	assert.ErrorContains(t, err, "rung 2 falls")
	assert.ErrorContains(t, err, "the name is empty")
	many := gym.ClimbPlan{HeavyLine: 90, Ceiling: 102}
	for i := range 61 {
		many.Rungs = append(many.Rungs, gym.Rung{At: i, Until: i + 1, Percent: 50, Reps: 1, Zone: gym.LightZone})
	}
	require.Len(t, climb.Check(many), 1)
	assert.Equal(t, "61 rungs are more than 60; take some out", climb.Check(many)[0].String())
}

// The built-in climbs, worked by hand from the rule in the comment of Generate.
func TestBuiltIns(t *testing.T) {
	want := map[string][]float64{
		"12 minutes": {35, 55, 70, 85, 93.5, 102},
		"16 minutes": {35, 45, 55, 70, 85, 90.5, 96.5, 102},
		"20 minutes": {35, 45, 55, 62.5, 70, 77.5, 85, 90.5, 96.5, 102},
		"25 minutes": {35, 45, 55, 61, 67, 73, 79, 85, 90, 93.5, 98, 102}, // 89.25 is lifted to the heavy line
	}
	plans := climb.BuiltIns()
	require.Len(t, plans, len(want))
	ids := map[gym.ID]bool{}
	for _, plan := range plans {
		require.NoError(t, climb.Valid(plan))
		var percents []float64
		for _, r := range plan.Rungs {
			percents = append(percents, r.Percent)
		}
		assert.Equal(t, want[plan.Name], percents, plan.Name)
		assert.True(t, plan.BuiltIn)
		assert.NotContains(t, ids, plan.ID)
		ids[plan.ID] = true
	}
	assert.Equal(t, gym.ID("00000000-0000-7000-8000-00000000000c"), plans[0].ID, "the same in every gym's file")
}

func TestGenerateFillsTheClock(t *testing.T) {
	for minutes := climb.MinMinutes; minutes <= climb.MaxMinutes; minutes++ {
		plan, err := climb.Generate(minutes)
		require.NoError(t, err)
		require.NoError(t, climb.Valid(plan), "%d minutes", minutes)
		last := plan.Rungs[len(plan.Rungs)-1]
		assert.Equal(t, 60*minutes, last.Until, "%d minutes", minutes)
		assert.InDelta(t, climb.Ceiling, last.Percent, 0)
		assert.Zero(t, last.Reps, "the last set is the day's")
		for _, r := range plan.Rungs {
			assert.Equal(t, map[gym.Zone]int{gym.LightZone: 60, gym.WorkingZone: 120, gym.TopZone: 180}[r.Zone], r.Until-r.At)
			if r.Zone == gym.TopZone {
				assert.GreaterOrEqual(t, r.Percent, climb.HeavyLine)
			}
		}
	}
	for _, minutes := range []int{climb.MinMinutes - 1, climb.MaxMinutes + 1, 0, -3} {
		_, err := climb.Generate(minutes)
		assert.ErrorIs(t, err, climb.ErrPlan)
	}
}
