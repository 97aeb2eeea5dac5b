package plates

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/mass"
)

func queue(t *testing.T, loads *Loads, totals ...float64) Queue {
	t.Helper()
	q := Queue{Loads: loads}
	for _, total := range totals {
		loading, err := loads.Loadable(kg(total), Nearest)
		require.NoError(t, err)
		require.Equal(t, kg(total), loading.Total)
		q.Sets = append(q.Sets, loading)
	}
	return q
}

func TestCheck(t *testing.T) {
	bars := func(plates ...Plate) (men, women *Loads) {
		all, err := NewBars([]Bar{
			bar20(), {Key: "15", Name: "light bar", Mass: kg(15), Unit: mass.KG, Kind: LightBarbell, Count: 1},
		}, Stock{Plates: plates})
		require.NoError(t, err)
		men, _ = all.Loads("20")
		women, _ = all.Loads("15")
		return men, women
	}

	t.Run("enough for all", func(t *testing.T) {
		men, _ := bars(kgPlate(20, 2))
		assert.Empty(t, Check([]Queue{queue(t, men, 60, 60), queue(t, men, 60, 20)}))
		assert.Empty(t, Check(nil))
	})

	t.Run("the same loads out of other plates", func(t *testing.T) {
		men, _ := bars(kgPlate(20, 2), kgPlate(10, 2))
		got := Check([]Queue{queue(t, men, 20, 60), queue(t, men, 20, 60), queue(t, men, 20, 60)})
		require.Len(t, got, 1)
		assert.Equal(t, 1, got[0].Set)
		assert.Equal(t, "20 kg", got[0].Disc.String())
		assert.Equal(t, 3, got[0].Need)
		assert.Equal(t, 2, got[0].Have)
		assert.True(t, got[0].Loadable())
		assert.Equal(t, []string{"10 kg", "10 kg"}, faces(got[0].Ways[0].Loadings[2].PerSide))
	})

	t.Run("a swap between a heavy and a light bar", func(t *testing.T) {
		// 65 on the 20 and 60 on the 15 want a 2.5 each; the other way about,
		// 40 and 50 of plates want none.
		men, women := bars(kgPlate(20, 2), kgPlate(5, 1), kgPlate(2.5, 1))
		got := Check([]Queue{queue(t, men, 65), queue(t, women, 60)})
		require.Len(t, got, 1)
		assert.Equal(t, "2.5 kg", got[0].Disc.String())
		assert.False(t, got[0].Loadable())
		way := got[0].Ways[0]
		assert.Equal(t, Swap, way.Out)
		assert.Equal(t, []int{0, 1}, way.Bars)
		assert.Equal(t, []string{"20 kg"}, faces(way.Loadings[0].PerSide))
		assert.Equal(t, []string{"20 kg", "5 kg"}, faces(way.Loadings[1].PerSide))
	})

	t.Run("another load or a wait", func(t *testing.T) {
		men, _ := bars(kgPlate(20, 2), kgPlate(1.25, 1))
		got := Check([]Queue{queue(t, men, 62.5), queue(t, men, 62.5), {Loads: men}})
		require.Len(t, got, 1)
		assert.Equal(t, "1.25 kg", got[0].Disc.String())
		require.Len(t, got[0].Ways, 2)
		reload, wait := got[0].Ways[0], got[0].Ways[1]
		assert.Equal(t, Reload, reload.Out)
		assert.Equal(t, []int{0}, reload.Bars)
		assert.Equal(t, kg(60), reload.Loadings[0].Total)
		assert.Equal(t, kg(2.5), reload.Off)
		assert.Equal(t, Wait, wait.Out)
		assert.Zero(t, wait.Loadings[0])
		assert.Equal(t, kg(62.5), wait.Loadings[1].Total)
	})

	t.Run("small changes of two bars where one is not enough", func(t *testing.T) {
		men, _ := bars(kgPlate(20, 3), kgPlate(1.25, 1))
		got := Check([]Queue{queue(t, men, 62.5), queue(t, men, 62.5), queue(t, men, 62.5)})
		require.Len(t, got, 1)
		reload := got[0].Ways[0]
		assert.Equal(t, Reload, reload.Out)
		assert.Equal(t, []int{1, 2}, reload.Bars)
		assert.Equal(t, kg(5), reload.Off)
		assert.Equal(t, kg(62.5), reload.Loadings[0].Total)
		assert.Equal(t, kg(60), reload.Loadings[1].Total)
	})

	t.Run("names the heaviest of plates equally missed", func(t *testing.T) {
		men, _ := bars(kgPlate(20, 1), kgPlate(5, 1))
		got := Check([]Queue{queue(t, men, 70), queue(t, men, 70)})
		require.Len(t, got, 1)
		assert.Equal(t, "20 kg", got[0].Disc.String())
	})

	t.Run("no swap between equal bars, strange bars or with an idle one", func(t *testing.T) {
		all, err := NewBars([]Bar{
			bar20(), {Key: "log", Name: "log", Mass: kg(15), Unit: mass.KG, Kind: "log", Count: 1},
		}, Stock{Plates: []Plate{kgPlate(20, 2), kgPlate(5, 1), kgPlate(2.5, 1)}})
		require.NoError(t, err)
		men, _ := all.Loads("20")
		log, _ := all.Loads("log")
		for _, queues := range [][]Queue{
			{queue(t, men, 65), queue(t, men, 65)},
			{queue(t, men, 65), queue(t, log, 60)}, // between barbells this is mended by a swap
			{queue(t, men, 65), queue(t, men, 65), {Loads: log, Sets: []Loading{{}}}},
		} {
			for _, way := range Check(queues)[0].Ways {
				assert.NotEqual(t, Swap, way.Out)
			}
		}
	})

	t.Run("no swap for a load that the other bar cannot make", func(t *testing.T) {
		men, women := bars(kgPlate(20, 3), kgPlate(1.25, 1)) // 15 kg and pairs never make 62.5
		got := Check([]Queue{queue(t, men, 62.5), queue(t, women, 57.5)})
		require.Len(t, got, 1)
		assert.NotEqual(t, Swap, got[0].Ways[0].Out)
	})

	t.Run("two must wait", func(t *testing.T) {
		men, _ := bars(kgPlate(20, 1))
		got := Check([]Queue{queue(t, men, 60), queue(t, men, 60), queue(t, men, 60)})
		require.Len(t, got, 1)
		require.Len(t, got[0].Ways, 1)
		assert.Equal(t, []int{0, 1}, got[0].Ways[0].Bars)
	})
}

// Plates of all sizes make a deal as hard as a riddle: the search says no when
// it has looked long enough, and never makes a deal up.
func TestShareGivesUp(t *testing.T) {
	loads := newLoads(t, bar20(), Stock{Plates: []Plate{
		kgPlate(25, 4), kgPlate(20, 4), kgPlate(16, 2), kgPlate(15, 2), kgPlate(13, 4), kgPlate(10, 2), kgPlate(6, 2), kgPlate(4, 3), kgPlate(2, 2),
	}})
	_, ok := newDealer(loads.grids[0]).share([]int{52, 64, 19, 22, 34, 43, 36, 17})
	assert.False(t, ok)
}

// bruteShare tries every stack of every bar, the plates of the bars before gone.
func bruteShare(every [][]Disc, base mass.Mass, stock map[Disc]int, totals []mass.Mass) bool {
	if len(totals) == 0 {
		return true
	}
	for _, side := range every {
		if weigh(base, side) == totals[0] && take(stock, side) {
			ok := bruteShare(every, base, stock, totals[1:])
			for _, d := range side {
				stock[d]++
			}
			if ok {
				return true
			}
		}
	}
	return false
}

func take(stock map[Disc]int, side []Disc) bool {
	for i, d := range side {
		if stock[d]--; stock[d] < 0 {
			for _, back := range side[:i+1] {
				stock[back]++
			}
			return false
		}
	}
	return true
}

func counted(stock Stock) map[Disc]int {
	have := map[Disc]int{}
	for _, p := range stock.Plates {
		have[p.Disc()] += p.Pairs
	}
	return have
}

func TestCheckAgainstEveryDeal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		stock, loads, every := drawn(t, 4, 3)
		totals := drawTotals(t, every, loads.Lightest(), 3)
		var queues []Queue
		all := counted(stock)
		planned := true
		for _, total := range totals {
			loading, err := loads.Loadable(total, Nearest)
			require.NoError(t, err)
			queues = append(queues, Queue{Loads: loads, Sets: []Loading{loading}})
			planned = planned && take(all, loading.PerSide)
		}
		clashes := Check(queues)
		require.Equal(t, !planned, len(clashes) == 1)
		if planned {
			return
		}
		clash := clashes[0]
		assert.Equal(t, counted(stock)[clash.Disc], clash.Have)
		assert.Equal(t, bruteShare(every, loads.Lightest(), counted(stock), totals), clash.Loadable())
		for _, way := range clash.Ways {
			checkWay(t, stock, loads, totals, way)
		}
		checkReload(t, every, stock, loads, totals, clash)
	})
}

// checkWay holds a way out against the stock and against what it says it changes.
func checkWay(t require.TestingT, stock Stock, loads *Loads, totals []mass.Mass, way Way) {
	left := counted(stock)
	off := mass.Mass(0)
	for i, loading := range way.Loadings {
		require.True(t, take(left, loading.PerSide), "the stock does not have it")
		changed := slices.Contains(way.Bars, i)
		switch {
		case !changed:
			require.Equal(t, totals[i], loading.Total)
		case way.Out == Wait:
			require.Zero(t, loading)
			continue
		}
		off += apart(totals[i], loading.Total)
		require.Equal(t, loading.Total, weigh(loads.Lightest(), loading.PerSide))
	}
	if way.Out == Reload {
		require.Equal(t, off, way.Off)
	}
}

// checkReload tries every other load of every bar within reach.
func checkReload(t require.TestingT, every [][]Disc, stock Stock, loads *Loads, totals []mass.Mass, clash Clash) {
	least := mass.Mass(-1)
	for i, total := range totals {
		tried := loads.Between(total-total/reloadReach, total+total/reloadReach)
		if len(tried) > 12 {
			return // the search looks at the nearest dozen only
		}
		for _, other := range tried {
			changed := slices.Clone(totals)
			changed[i] = other
			if off := apart(other, total); (least < 0 || off < least) && bruteShare(every, loads.Lightest(), counted(stock), changed) {
				least = off
			}
		}
	}
	if clash.Loadable() {
		return
	}
	reload := slices.IndexFunc(clash.Ways, func(w Way) bool { return w.Out == Reload })
	if least >= 0 {
		require.GreaterOrEqual(t, reload, 0)
		require.Equal(t, least, clash.Ways[reload].Off)
	} else if reload >= 0 {
		require.Greater(t, len(clash.Ways[reload].Bars), 1)
	}
}

// Eight bars at nine sets, more than the heap holds at the heavy end.
func BenchmarkCheck(b *testing.B) {
	stock := kgStock()
	loads := newLoads(b, bar20(), stock)
	var queues []Queue
	for i := range 8 {
		seq, err := loads.Sequence(climbTargets(kg(120+12.5*float64(i))), Nearest)
		require.NoError(b, err)
		q := Queue{Loads: loads}
		for _, s := range seq.Steps {
			q.Sets = append(q.Sets, s.Loading)
		}
		queues = append(queues, q)
	}
	for b.Loop() {
		Check(queues)
	}
}
