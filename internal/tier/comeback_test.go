package tier

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/gym"
)

// The shares are 100 % less the cuts of the guidelines named in ComebackSource; a
// fifth week goes on as the fourth, for the guidance has none.
func TestComebackShares(t *testing.T) {
	shares, err := ComebackShares(5)
	require.NoError(t, err)
	for i, cut := range []float64{0.5, 0.3, 0.2, 0.1, 0.1} {
		assert.InDelta(t, 1-cut, shares[i], 1e-12)
	}
	for _, n := range []int{0, MostComeback + 1} {
		_, err = ComebackShares(n)
		assert.ErrorContains(t, err, "1 to 26")
		_, err = Comeback("ann", march, make([]float64, n))
		assert.ErrorContains(t, err, "1 to 26")
	}
}

// Every day of every week has the week's share, and no day before or after has one.
func TestComebackHoldsDayByDay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		shares := rapid.SliceOfN(rapid.SampledFrom([]float64{0.5, 0.7, 0.9}), 1, MostComeback).Draw(t, "shares")
		overrides, err := Comeback("ann", march, shares)
		require.NoError(t, err)
		for _, o := range overrides {
			require.NoError(t, o.Valid())
		}
		for i := -1; i <= 7*len(shares); i++ {
			var held []float64
			for _, o := range overrides {
				if o.Holds("swing", march.Add(i)) {
					held = append(held, o.Share)
				}
			}
			var want []float64
			if i >= 0 && i < 7*len(shares) {
				want = []float64{shares[i/7]}
			}
			require.Equal(t, want, held, "day %d", i)
		}
	})
}

func TestWeeksOfOneShareAreOne(t *testing.T) {
	overrides, err := Comeback("ann", march, []float64{0.5, 0.8, 0.8})
	require.NoError(t, err)
	require.Len(t, overrides, 2)
	assert.Equal(t, "back from a break, week 1 of 3", overrides[0].Reason)
	assert.Equal(t, "back from a break, weeks 2 to 3 of 3", overrides[1].Reason)
}

func TestSteps(t *testing.T) {
	made := time.Date(2026, 3, 1, 9, 0, 0, 0, time.UTC)
	of := func(id gym.ID, change func(*gym.Override)) gym.Override {
		o := gym.Override{ID: id, Athlete: "ann", Share: 0.5, From: march, Made: made}
		change(&o)
		return o
	}
	first := of("1", func(*gym.Override) {})
	second := of("2", func(o *gym.Override) { o.From, o.Made = march.Add(7), made.Add(time.Millisecond) })
	void := of("3", func(o *gym.Override) { o.From, o.Void = march.Add(7), &gym.Void{At: made.Add(time.Hour)} })
	later := of("4", func(o *gym.Override) { o.Made = made.Add(time.Minute) })
	tier := of("5", func(o *gym.Override) { o.Share, o.Tier = 0, gym.Mid })
	other := of("6", func(o *gym.Override) { o.Athlete = "bo" })
	assert.Equal(t, [][]gym.Override{{first, second}, {void}, {later}, {tier}, {other}},
		Steps([]gym.Override{second, first, void, later, tier, other}))
	assert.Empty(t, Steps(nil))
}
