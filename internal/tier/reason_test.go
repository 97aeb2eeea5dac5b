package tier

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/gym"
)

// A load that is not proposed never reads as if it were likely enough.
func TestAChanceUnderTheWantedOneReadsSo(t *testing.T) {
	for _, row := range []struct {
		chance float64
		want   string
	}{{0.7499, "74 %"}, {0.75, "75 %"}, {0.29, "29 %"}, {0.58, "58 %"}, {0.996, "99 %"}, {1, "100 %"}, {0, "0 %"}} {
		assert.Equal(t, row.want, Percent(row.chance))
	}
	said := verdict(Suggestion{Load: kg(80), Next: kg(100), Above: 0.7499, Bound: ByChance}, ask(march), rack, kg(80))
	assert.Equal(t, "100 kg has a chance of 74 % of being held, less than the 75 % wanted: stay on 80 kg", said)
}

// Whatever a coach sets in whole per cent, a chance under it is written under it.
func TestPercentKeepsTheOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		whole := rapid.IntRange(1, 99).Draw(t, "wanted")
		under := math.Nextafter(float64(whole)/100, 0) - rapid.Float64Range(1e-10, 0.5).Draw(t, "less")
		require.NotEqual(t, wanted(float64(whole)/100), Percent(under))
	})
}

// A suggestion names the bout it is for, for another bout has another.
func TestAReasonNamesTheBout(t *testing.T) {
	m := modelOf(Prior{math.Log(24), 0.2}, went{12, gym.Held, 3})
	a := ask(march.Add(5))
	a.Work = "80 reps"
	s, err := m.Suggest(a)
	require.NoError(t, err)
	assert.Equal(t, "12 kg held on 3 March; no more than one implement above the heaviest held: take 16 kg for 80 reps", s.Why)
}

func TestAReasonAfterAStop(t *testing.T) {
	a := ask(march)
	a.Work = "40 reps"
	said := verdict(Suggestion{Load: kg(16), Bound: ByStop}, a, rack, kg(16))
	assert.Equal(t, "the last bout was stopped: take at most 16 kg for 40 reps", said)
}
