package station

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/mass"
	"windlass/internal/plates"
)

func TestSolveAgainstEverySeat(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		seed := rapid.Uint64().Draw(t, "seed")
		lifters := rapid.IntRange(1, 6).Draw(t, "lifters")
		b := randomClass(t, seed, lifters, rapid.IntRange(1, 3).Draw(t, "stations"), rapid.IntRange(1, 3).Draw(t, "windows"))
		checkAgainstEverySeat(t, b)
	})
}

func TestSolveEightOnThreeAgainstEverySeat(t *testing.T) {
	for seed := range uint64(24) {
		t.Run(fmt.Sprint(seed), func(t *testing.T) {
			checkAgainstEverySeat(t, randomClass(t, seed, 8, 3, 3))
		})
	}
}

func checkAgainstEverySeat(t require.TestingT, b *brute) {
	solver := b.solver(t)
	got, err := solver.Solve(b.lifters)
	require.NoError(t, err)
	least := b.least(t)
	require.Equal(t, least, planCost(got))
	checkPlan(t, b, got)

	q := solver.ask(b.lifters, keepShown)
	traded := q.plan(q.search())
	checkPlan(t, b, traded)
	require.False(t, planCost(traded).below(least), "better than the best")
}

// The search of large classes is no proof, so its quality is measured on classes
// that are small enough for one: bars, lifts, fixed seats and full stations mixed
// as no real class mixes them. It was best in 94 of 100 when this was written.
func TestSearchIsNearlyAlwaysBest(t *testing.T) {
	best := 0
	for seed := range uint64(100) {
		b := randomClass(t, seed, 8, 3, 3)
		q := b.solver(t).ask(b.lifters, keepShown)
		if planCost(q.plan(q.exhaust())) == planCost(q.plan(q.search())) {
			best++
		}
	}
	t.Logf("best in %d of 100", best)
	assert.GreaterOrEqual(t, best, 94)
}

func TestSpreadPartsTheClassInOrder(t *testing.T) {
	stations, windows, lifters := bigClass(t)
	solver, err := New(stations, windows, UsualPace())
	require.NoError(t, err)
	q := solver.ask(lifters, keepQuick)
	forth, _ := q.byBar()
	s := q.spread(forth)
	assert.Zero(t, s[q.standing()])
	next := 0
	for _, at := range forth {
		for i := range s[at].each() {
			assert.Equal(t, next, i, "neighbours in load")
			next++
		}
	}
	assert.Equal(t, len(lifters), next)
}

// After trading, no single trade is left that helps.
func TestTradeGoesToTheEnd(t *testing.T) {
	stations, windows, lifters := bigClass(t)
	stations, lifters = stations[:5], lifters[:20]
	solver, err := New(stations, windows, Pace{Rep: 3})
	require.NoError(t, err)
	for seed := range uint64(10) {
		for i, seat := range rand.New(rand.NewPCG(seed, 0)).Perm(len(lifters)) {
			lifters[i].Seat = seat % len(stations)
		}
		q := solver.ask(lifters, keepQuick)
		checkTraded(t, q, q.trade(q.seated()))
	}
}

func checkTraded(t *testing.T, q *question, s seats) {
	for i := range s {
		for j := range i {
			now := q.cost(s[i], i).plus(q.cost(s[j], j))
			for _, trade := range q.trades(s, i, j) {
				if q.fits(trade[0], i) && q.fits(trade[1], j) {
					require.False(t, q.cost(trade[0], i).plus(q.cost(trade[1], j)).below(now), "stations %d and %d", i, j)
				}
			}
		}
	}
}

func TestSolveKeepsTheStrongAndTheLightApart(t *testing.T) {
	solver := room(t, 2, 2, 120, 120)
	var lifters []Lifter
	for _, top := range []float64{40, 80, 45, 85} {
		lifters = append(lifters, Lifter{Bar: "20", Seat: None, Sets: []Set{{kg(top - 20), 5}, {kg(top), 3}}})
	}
	plan, err := solver.Solve(lifters)
	require.NoError(t, err)
	assert.True(t, plan.Keeps())
	assert.Equal(t, plan.Seats[0], plan.Seats[2])
	assert.Equal(t, plan.Seats[1], plan.Seats[3])
	assert.NotEqual(t, plan.Seats[0], plan.Seats[1])
}

func TestOnlyFixedSeatsBindSolve(t *testing.T) {
	solver := room(t, 2, 2, 120)
	at := func(seat int, load float64, fixed bool) Lifter {
		return Lifter{Bar: "20", Seat: seat, Fixed: fixed, Sets: []Set{{kg(load), 1}}}
	}
	plan, err := solver.Solve([]Lifter{at(0, 40, true), at(0, 80, true), at(1, 40, false), at(1, 80, false)})
	require.NoError(t, err)
	assert.Equal(t, []int{0, 0, 1, 1}, plan.Seats)

	plan, err = solver.Solve([]Lifter{at(0, 40, false), at(0, 80, false), at(1, 40, false), at(1, 80, false)})
	require.NoError(t, err)
	assert.Equal(t, plan.Seats[0], plan.Seats[2])
	assert.Equal(t, plan.Seats[1], plan.Seats[3])

	plan, err = solver.Solve([]Lifter{at(None, 40, true), at(None, 80, true)})
	require.NoError(t, err)
	assert.Empty(t, plan.Standing, "fixed to nothing is free")
}

func TestImproveAndJoinAgainstSolve(t *testing.T) {
	for seed := range uint64(30) {
		b := randomClass(t, seed, 8, 3, 3)
		solver := b.solver(t)
		solved, err := solver.Solve(b.lifters)
		require.NoError(t, err)

		improved, err := solver.Improve(b.lifters)
		require.NoError(t, err)
		checkPlan(t, b, improved)
		assert.False(t, planCost(improved).below(planCost(solved)))

		for i, seat := range solved.Seats {
			if !b.lifters[i].Fixed {
				b.lifters[i].Seat = seat
			}
		}
		stay, err := solver.Improve(b.lifters)
		require.NoError(t, err)
		assert.Equal(t, planCost(solved), planCost(stay), "nothing to trade in the best seats")
		checkJoin(t, b, solver, solved)
	}
}

// checkJoin takes a lifter away and lets them come back.
func checkJoin(t *testing.T, b *brute, solver *Solver, solved Plan) {
	const who = 3
	if b.lifters[who].Fixed {
		return
	}
	b.lifters[who].Seat = None
	joined, err := solver.Join(b.lifters, who)
	require.NoError(t, err)
	checkPlan(t, b, joined)
	for i := range b.lifters {
		if i != who {
			assert.Equal(t, solved.Seats[i], joined.Seats[i], "the others stay")
		}
	}
	assert.False(t, planCost(solved).below(planCost(joined)), "their old seat is still there")
}

func ExampleSolver_Solve() {
	loads, err := plates.NewLoads(plates.Bar{Key: "bar", Name: "bar", Mass: 20 * mass.Kilogram, Unit: mass.KG},
		plates.Stock{Plates: []plates.Plate{{Mass: 20 * mass.Kilogram, Unit: mass.KG, Pairs: 3}, {Mass: 10 * mass.Kilogram, Unit: mass.KG, Pairs: 2}}})
	if err != nil {
		fmt.Println(err)
		return
	}
	rack := Station{Name: "left", Loads: loads, Places: 2}
	other := Station{Name: "right", Loads: loads, Places: 2}
	solver, err := New([]Station{rack, other}, []int{90}, UsualPace())
	if err != nil {
		fmt.Println(err)
		return
	}
	var class []Lifter
	for _, load := range []mass.Mass{60, 80, 60, 100} {
		class = append(class, Lifter{Bar: "bar", Lift: "squat", Seat: None, Sets: []Set{{Load: load * mass.Kilogram, Reps: 5}}})
	}
	plan, err := solver.Solve(class)
	fmt.Println(plan.Seats, plan.Moves, "moves", plan.Keeps(), err)
	// Output: [1 0 1 0] 8 moves true <nil>
}
