package tier

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/gym"
	"windlass/internal/mass"
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
	atMostFull := gym.Override{Tier: gym.Full, From: march, Made: at(6)}
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
		{"for all movements, heavier than suggested", []gym.Override{atMostFull}, 20, gym.Mid, 0},
		{"the same, and a share", []gym.Override{atMostFull, back}, 12, gym.Below, 1},
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

// A tier for every movement caps: it never makes a load heavier, whatever is
// suggested, and what it leaves is a load the gym owns.
func TestATierForAllNeverRaisesALoad(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := Rack{Owned: rapid.SampledFrom([][]mass.Mass{bells, {kg(10), kg(18), kg(30)}}).Draw(t, "owned"), Tiers: threes}
		s := Suggestion{Load: rapid.SampledFrom(r.Owned).Draw(t, "suggested")}
		of := rapid.SampledFrom([]gym.Tier{gym.Full, gym.Mid, gym.Light}).Draw(t, "tier")
		d := Decide(s, r, "swing", march, []gym.Override{{Tier: of, From: march}})
		require.LessOrEqual(t, d.Load, s.Load)
		require.Contains(t, r.Owned, d.Load)
		require.Equal(t, d.Load != s.Load, len(d.By) == 1, "it speaks where it changes something")
		require.True(t, d.Load <= threes.Of(of) || d.Load == r.Owned[0], "over the tier only where the gym owns nothing lighter")
	})
}

// One tier for a movement that lacks it says nothing.
func TestATierThatAMovementLacks(t *testing.T) {
	r := Rack{Owned: bells, Tiers: gym.TierLoads{Full: kg(24)}}
	d := Decide(Suggestion{Load: kg(20)}, r, "swing", march, []gym.Override{{Movement: "swing", Tier: gym.Mid, From: march}})
	assert.Equal(t, kg(20), d.Load)
}
