package plates

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/mass"
)

// The reference is every stack of the stock, tried one by one.
func TestLoadsAgainstEveryStack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, loads, every := drawn(t, 6, 3)
		if rapid.Bool().Draw(t, "floor") {
			loads = loads.FromFloor()
		}
		heaviest := weigh(loads.Lightest(), every[len(every)-1])
		assert.Equal(t, heaviest, loads.Heaviest())

		target := loads.Lightest() + mass.Mass(rapid.Int64Range(0, int64(heaviest-loads.Lightest()+kg(5))).Draw(t, "target"))
		if rapid.Bool().Draw(t, "on a load") {
			target = weigh(loads.Lightest(), rapid.SampledFrom(every).Draw(t, "side"))
		}
		for _, round := range []Rounding{Nearest, Down, Up} {
			got, err := loads.Loadable(target, round)
			require.NoError(t, err)
			checkLoading(t, loads, every, got)
			assert.Equal(t, wanted(every, loads.Lightest(), target, round), got.Total, "%s of %d", round, target)
			assert.Equal(t, target > heaviest, got.Short)
		}
	})
}

func wanted(every [][]Disc, base, target mass.Mass, round Rounding) mass.Mass {
	below, above := base, mass.Mass(-1)
	for _, side := range every {
		m := weigh(base, side)
		if m <= target {
			below = max(below, m)
		}
		if m >= target && (above < 0 || m < above) {
			above = m
		}
	}
	if above >= 0 && (round == Up || round == Nearest && above-target < target-below) {
		return above
	}
	return below
}

// checkLoading holds a loading against the promises: it weighs what it says, is
// in the order of the bar, is one of the stock's stacks, and no stack of the
// same load is better.
func checkLoading(t require.TestingT, loads *Loads, every [][]Disc, got Loading) {
	require.Equal(t, got.Total, weigh(loads.Lightest(), got.PerSide))
	for i := 1; i < len(got.PerSide); i++ {
		require.False(t, got.PerSide[i].before(got.PerSide[i-1]), "%v", got.PerSide)
	}
	fewest, full, owned := never, false, false
	for _, side := range every {
		if weigh(loads.Lightest(), side) != got.Total {
			continue
		}
		owned = owned || slices.Equal(side, got.PerSide)
		if hasFull(side) && loads.floor && !full {
			full, fewest = true, never
		}
		if !full || hasFull(side) {
			fewest = min(fewest, len(side))
		}
	}
	require.True(t, owned, "%v is not in the stock", got.PerSide)
	require.Len(t, got.PerSide, fewest)
	require.Equal(t, loads.floor && !full, got.Blocks)
}
