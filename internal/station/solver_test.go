package station

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
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
	assert.GreaterOrEqual(t, best, 90)
}
