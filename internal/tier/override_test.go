package tier

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
)

func TestDecide(t *testing.T) {
	const swing = gym.MovementKey("swing")
	at := func(d int) time.Time { return time.Date(2026, 3, d, 9, 0, 0, 0, time.UTC) }
	load := gym.Override{Movement: swing, Load: kg(12), From: march, Made: at(1)}
	later := gym.Override{Movement: swing, Tier: gym.Full, From: march, Made: at(2)}
	all := gym.Override{Tier: gym.Light, From: march, Made: at(3)}
	back := gym.Override{Share: 0.7, From: march, Until: march.Add(13), Made: at(1)}
	ended := gym.Override{Movement: swing, Load: kg(36), From: march, Until: march.Add(1), Made: at(4)}
	void := gym.Override{Movement: swing, Load: kg(36), From: march, Made: at(4), Void: &gym.Void{}}
	other := gym.Override{Movement: "thruster", Load: kg(36), From: march, Made: at(4)}
	feather := gym.Override{Share: 0.1, From: march, Made: at(5)}
	for _, row := range []struct {
		name string
		says []gym.Override
		load float64
		tier gym.Tier
		by   int
	}{
		{"none", nil, 20, gym.Mid, 0},
		{"none that holds", []gym.Override{ended, void, other}, 20, gym.Mid, 0},
		{"a load", []gym.Override{load}, 12, gym.Below, 1},
		{"the later one", []gym.Override{later, load}, 24, gym.Full, 1},
		{"the movement's before all", []gym.Override{load, all}, 12, gym.Below, 1},
		{"all in either order", []gym.Override{all, load}, 12, gym.Below, 1},
		{"for all movements", []gym.Override{all}, 16, gym.Light, 1},
		{"a share of the suggestion", []gym.Override{back}, 12, gym.Below, 1},      // 14 kg is not owned
		{"a share of what was set", []gym.Override{back, later}, 16, gym.Light, 2}, // 16.8 kg
		{"no lighter than the gym owns", []gym.Override{feather}, 8, gym.Below, 1},
	} {
		t.Run(row.name, func(t *testing.T) {
			s := Suggestion{Load: kg(20), Tier: gym.Mid}
			d := Decide(s, rack, swing, march.Add(10), row.says)
			assert.Equal(t, kg(row.load), d.Load)
			assert.Equal(t, row.tier, d.Tier)
			assert.Len(t, d.By, row.by)
			assert.Equal(t, s, d.Suggestion)
		})
	}
}

// The shares are 100 % less the cuts of the guidelines named in ComebackSource.
func TestComeback(t *testing.T) {
	weeks, err := Comeback("ann", march, 4)
	require.NoError(t, err)
	for i, cut := range []float64{0.5, 0.3, 0.2, 0.1} {
		o := weeks[i]
		assert.NoError(t, o.Valid())
		assert.InDelta(t, 1-cut, o.Share, 1e-12)
		assert.True(t, o.Holds("swing", march.Add(7*i)) && o.Holds("row", march.Add(7*i+6)))
		assert.False(t, o.Holds("swing", march.Add(7*i+7)))
	}
	for _, n := range []int{0, 5} {
		_, err = Comeback("ann", march, n)
		assert.ErrorContains(t, err, "1 to 4")
	}
}
