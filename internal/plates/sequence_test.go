package plates

import (
	"fmt"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/mass"
)

func TestSequence(t *testing.T) {
	stock := Stock{Plates: []Plate{kgPlate(25, 2), kgPlate(20, 2), kgPlate(15, 1), kgPlate(10, 2), kgPlate(5, 2), kgPlate(2.5, 1)}}
	for _, c := range []struct {
		name    string
		targets []float64
		sides   [][]string
		moves   int
	}{
		{"nothing to lift", nil, nil, 0},
		{"the bar alone costs nothing", []float64{20, 20}, [][]string{{}, {}}, 0},
		{"a pair is two moves", []float64{60}, [][]string{{"20 kg"}}, 2},
		// Not the 25 alone, which is the leanest stack of 70 kg: it would come
		// off behind nothing and cost the 20 as well.
		{"keeps the base", []float64{60, 65, 70}, [][]string{{"20 kg"}, {"20 kg", "2.5 kg"}, {"20 kg", "5 kg"}}, 8},
		// The 20 of 60 kg would have to come off: two tens are in the way of nothing.
		{"builds for what comes", []float64{40, 60, 70}, [][]string{{"10 kg"}, {"10 kg", "10 kg"}, {"10 kg", "10 kg", "5 kg"}}, 6},
		{"down again", []float64{100, 60}, [][]string{{"20 kg", "20 kg"}, {"20 kg"}}, 6},
	} {
		t.Run(c.name, func(t *testing.T) {
			var targets []mass.Mass
			for _, x := range c.targets {
				targets = append(targets, kg(x))
			}
			got, err := newLoads(t, bar20(), stock).Sequence(targets, Nearest)
			require.NoError(t, err)
			var sides [][]string
			for _, s := range got.Steps {
				sides = append(sides, faces(s.PerSide))
			}
			assert.Equal(t, c.sides, sides)
			assert.Equal(t, c.moves, got.Moves)
			assert.True(t, got.Least)
		})
	}
}

func TestSequenceRefuses(t *testing.T) {
	loads := newLoads(t, bar20(), Stock{Plates: []Plate{kgPlate(20, 1)}})
	_, err := loads.Sequence([]mass.Mass{kg(60), kg(10)}, Nearest)
	require.ErrorIs(t, err, ErrUnderBar)
	assert.ErrorContains(t, err, "order set 2")

	short, err := loads.Sequence([]mass.Mass{kg(100)}, Nearest)
	require.NoError(t, err)
	assert.True(t, short.Steps[0].Short)
}

func TestLeastIsClaimedOnlyWhenProved(t *testing.T) {
	loads := newLoads(t, bar20(), kgStock())
	// The bar alone has one stack, 100.4 kg has hundreds.
	sets := []mass.Mass{kg(20.4), kg(100.4)}
	assert.True(t, NewPlanner(loads, Thorough).Sequence(nil, sets).Least)
	assert.False(t, NewPlanner(loads, 8).Sequence(nil, sets).Least)
	assert.True(t, NewPlanner(loads, 8).Sequence(nil, sets[:1]).Least)
}

func TestSequenceFromALoadedBar(t *testing.T) {
	loads := newLoads(t, bar20(), Stock{Plates: []Plate{kgPlate(20, 1), kgPlate(10, 2), kgPlate(5, 1)}})
	planner := NewPlanner(loads, Thorough)
	ten := kgPlate(10, 1).Disc()

	got := planner.Sequence([]Disc{ten}, []mass.Mass{kg(60)})
	assert.Equal(t, []string{"10 kg", "10 kg"}, faces(got.Steps[0].PerSide))
	assert.Equal(t, 2, got.Moves)

	strange := planner.Sequence([]Disc{lbPlate(45, 1).Disc(), ten}, []mass.Mass{kg(60)})
	assert.Equal(t, 2*(2+1), strange.Moves, "a plate of nobody's comes off first")
}

func TestPlannerTakesTheNearestLoad(t *testing.T) {
	planner := NewPlanner(newLoads(t, bar20(), Stock{Plates: []Plate{kgPlate(20, 1), kgPlate(10, 1)}}), 8)
	got := planner.Sequence(nil, []mass.Mass{kg(15), kg(42), kg(100)})
	assert.Equal(t, kg(20), got.Steps[0].Total)
	assert.True(t, got.Steps[0].Under)
	assert.Equal(t, kg(40), got.Steps[1].Total)
	assert.False(t, got.Steps[1].Under || got.Steps[1].Short)
	assert.Equal(t, kg(80), got.Steps[2].Total)
	assert.True(t, got.Steps[2].Short)

	ends := planner.Sequence(nil, []mass.Mass{kg(20), kg(80)})
	assert.False(t, ends.Steps[0].Under, "the bar alone is what was asked for")
	assert.False(t, ends.Steps[1].Short, "so is everything")
}

// bruteMoves tries every stack of every set, one set after the other, and
// counts the moves with two stacks of plain discs in hand.
func bruteMoves(every [][]Disc, base mass.Mass, totals []mass.Mass) int {
	type reached struct {
		side  []Disc
		moves int
	}
	last := []reached{{}}
	for _, total := range totals {
		var next []reached
		for _, side := range every {
			if weigh(base, side) != total {
				continue
			}
			best := -1
			for _, r := range last {
				if m := r.moves + bruteChange(r.side, side); best < 0 || m < best {
					best = m
				}
			}
			next = append(next, reached{side, best})
		}
		last = next
	}
	return slices.MinFunc(last, func(a, b reached) int { return a.moves - b.moves }).moves
}

func bruteChange(from, to []Disc) int {
	bar := slices.Clone(from)
	moves := 0
	for len(bar) > len(to) || !slices.Equal(bar, to[:len(bar)]) {
		bar = bar[:len(bar)-1]
		moves++
	}
	return 2 * (moves + len(to) - len(bar))
}

func drawTotals(t *rapid.T, every [][]Disc, base mass.Mass, sets int) []mass.Mass {
	var totals []mass.Mass
	for range rapid.IntRange(1, sets).Draw(t, "sets") {
		totals = append(totals, weigh(base, rapid.SampledFrom(every).Draw(t, "side")))
	}
	if rapid.Bool().Draw(t, "rising") {
		slices.Sort(totals)
	}
	return totals
}

func TestSequenceAgainstEveryChoice(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, loads, every := drawn(t, 7, 2)
		for range 4 {
			checkSequence(t, loads, every, drawTotals(t, every, loads.Lightest(), 7))
		}
	})
}

func checkSequence(t *rapid.T, loads *Loads, every [][]Disc, totals []mass.Mass) {
	got, err := loads.Sequence(totals, Nearest)
	require.NoError(t, err)
	require.True(t, got.Least)
	require.Equal(t, bruteMoves(every, loads.Lightest(), totals), got.Moves)
	checkSteps(t, every, loads.Lightest(), totals, got)

	require.Equal(t, got.Moves, sum(NewPlanner(loads, Thorough).AppendMoves(nil, nil, totals)))
	few := NewPlanner(loads, 1).AppendMoves(nil, nil, totals)
	require.GreaterOrEqual(t, sum(few), got.Moves, "fewer ways to choose from are never better")
}

func sum(moves []int) (n int) {
	for _, m := range moves {
		n += m
	}
	return n
}

func checkSteps(t require.TestingT, every [][]Disc, base mass.Mass, totals []mass.Mass, got Sequence) {
	require.Len(t, got.Steps, len(totals))
	var on []Disc
	moves := 0
	for i, step := range got.Steps {
		require.Equal(t, totals[i], step.Total)
		require.Equal(t, totals[i], weigh(base, step.PerSide))
		require.True(t, slices.ContainsFunc(every, func(side []Disc) bool { return slices.Equal(side, step.PerSide) }))
		require.Equal(t, bruteChange(on, step.PerSide), step.Moves)
		moves += step.Moves
		on = step.PerSide
	}
	require.Equal(t, moves, got.Moves)
}

func TestSequenceOnTheFloorKeepsAFullDisc(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, loads, every := drawn(t, 4, 2)
		totals := drawTotals(t, every, loads.Lightest(), 4)
		got, err := loads.FromFloor().Sequence(totals, Nearest)
		require.NoError(t, err)
		for _, step := range got.Steps {
			canBeFull := slices.ContainsFunc(every, func(side []Disc) bool {
				return weigh(loads.Lightest(), side) == step.Total && hasFull(side)
			})
			assert.Equal(t, canBeFull, hasFull(step.PerSide))
			assert.Equal(t, !canBeFull, step.Blocks)
		}
	})
}

func TestChoicesBeyondTheLimitAreTheLeanest(t *testing.T) {
	loads := newLoads(t, bar20(), Stock{Plates: []Plate{kgPlate(20, 3), kgPlate(10, 3), kgPlate(5, 4), kgPlate(2.5, 4)}})
	a, ok := loads.amount(kg(80))
	require.True(t, ok)
	all := loads.choices(a, Thorough)
	assert.True(t, all.all)
	for keep := 1; keep < len(all.stacks); keep++ {
		some := loads.choices(a, keep)
		assert.False(t, some.all)
		assert.LessOrEqual(t, len(some.stacks), keep)
		longest := len(slices.MaxFunc(some.stacks, func(a, b stack) int { return len(a) - len(b) }))
		for _, s := range all.stacks {
			if len(s) < longest {
				assert.Contains(t, some.stacks, s)
			}
		}
	}
}

func BenchmarkSequenceClimb(b *testing.B) {
	for name, stock := range map[string]Stock{"kg": kgStock(), "mixed": bigStock()} {
		loads := newLoads(b, bar20(), stock)
		targets := climbTargets(kg(142.5))
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				if _, err := loads.Sequence(targets, Nearest); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// Five lifters on one bar, nine rungs, the loads of each rung rising: what one
// station asks again and again.
func BenchmarkMovesOfAStation(b *testing.B) {
	loads := newLoads(b, bar20(), bigStock())
	var sets []mass.Mass
	for rung := range 9 {
		for lifter := range 5 {
			target := climbTargets(kg(100 + 7*float64(lifter)))[rung]
			loading, err := loads.Loadable(target, Nearest)
			require.NoError(b, err)
			sets = append(sets, loading.Total)
		}
	}
	for _, keep := range []int{1, 4, 8, 16, 64} {
		planner := NewPlanner(loads, keep)
		b.Run(fmt.Sprint(keep), func(b *testing.B) {
			var moves []int
			for b.Loop() {
				moves = planner.AppendMoves(moves[:0], nil, sets)
			}
			b.ReportMetric(float64(sum(moves)), "moves")
		})
	}
}

func climbTargets(record mass.Mass) []mass.Mass {
	var targets []mass.Mass
	for _, percent := range []mass.Mass{35, 50, 60, 70, 80, 90, 95, 98, 102} {
		targets = append(targets, record*percent/100)
	}
	return targets
}

func kgStock() Stock {
	stock := bigStock()
	stock.Plates = slices.DeleteFunc(stock.Plates, func(p Plate) bool { return p.Unit == mass.LB })
	return stock
}
