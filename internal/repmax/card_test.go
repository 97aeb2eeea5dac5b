package repmax_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/repmax"
)

// steps is a gym that loads a 20 kg bar in steps of so much.
func steps(step mass.Mass) repmax.Down {
	return func(limit mass.Mass) (mass.Mass, bool) {
		if limit < kg(20) {
			return 0, false
		}
		return kg(20) + (limit-kg(20))/step*step, true
	}
}

func known(results ...gym.Result) []gym.Result { return results }

func TestCard(t *testing.T) {
	wanted := []int{5, 3, 1}
	for _, row := range []struct {
		name  string
		known []gym.Result
		loads []float64
		from  []int // 0 for a known number
	}{
		{
			"all known: nothing is touched", known(result("1", 1, kg(141), 1), result("3", 3, kg(131), 1), result("5", 5, kg(120.3), 1)),
			[]float64{120.3, 131, 141},
			[]int{0, 0, 0},
		},
		{
			"from the 1RM: 130.5 and 139.5, rounded down", known(result("1", 1, kg(150), 1)),
			[]float64{130, 137.5, 150},
			[]int{1, 1, 0},
		},
		{
			"from the 5RM: 100/0.87×0.93 = 106.9 and 114.9", known(result("5", 5, kg(100), 1)),
			[]float64{100, 105, 112.5},
			[]int{0, 5, 5},
		},
		{
			"an estimate on a plate is not rounded away", known(result("1", 1, kg(100), 1)),
			[]float64{85, 92.5, 100},
			[]int{1, 1, 0},
		},
		{
			"the 3 stands nearer to the 1 than the 5 does", known(result("3", 3, kg(93), 1), result("5", 5, kg(80), 1)),
			[]float64{80, 93, 100},
			[]int{0, 0, 3},
		},
		{
			"equally near: the heavier estimate, 95.5/0.87×0.93 = 102.1, but not over the 1RM", known(result("1", 1, kg(100), 1), result("5", 5, kg(95.5), 1)),
			[]float64{95.5, 100, 100},
			[]int{0, 5, 0},
		},
		{
			"equally near: the heavier estimate is the 1RM's", known(result("1", 1, kg(100), 1), result("5", 5, kg(80), 1)),
			[]float64{80, 92.5, 100},
			[]int{0, 1, 0},
		},
		{
			"a record for more reps is proof: 78×0.93 = 72.5 is under it", known(result("1", 1, kg(78), 1), result("4", 4, kg(76), 1)),
			[]float64{72.5, 77.5, 78},
			[]int{4, 4, 0},
		},
		{
			"out of the curve's reach: nothing", known(result("15", 15, kg(60), 1)),
			[]float64{0, 0, 0},
			[]int{0, 0, 0},
		},
		{"nothing known", nil, []float64{0, 0, 0}, []int{0, 0, 0}},
	} {
		t.Run(row.name, func(t *testing.T) {
			card := repmax.NewCard(row.known, wanted, repmax.Handbook(), steps(kg(2.5)))
			require.Len(t, card.Entries, len(wanted))
			for i, e := range card.Entries {
				assert.Equal(t, wanted[i], e.Reps)
				assert.Equal(t, kg(row.loads[i]), e.Load, "%dRM", e.Reps)
				assert.Equal(t, row.from[i], e.From, "%dRM", e.Reps)
				assert.Equal(t, row.from[i] > 0, e.Source == gym.Estimate, "%dRM", e.Reps)
				assert.Equal(t, row.loads[i] > 0, e.Known(), "%dRM", e.Reps)
			}
		})
	}
}

func TestCardKeepsUnitDateAndEvidence(t *testing.T) {
	single := result("r1", 1, 315*mass.Pound, 42)
	single.Unit, single.Source = mass.LB, gym.Reported
	card := repmax.NewCard(known(single), []int{1, 5}, repmax.Handbook(), steps(kg(2.5)))
	assert.Equal(t, repmax.Entry{Reps: 1, Load: 315 * mass.Pound, Unit: mass.LB, Source: gym.Reported, On: 42, Result: "r1"}, card.Entry(1))
	assert.Equal(t, repmax.Entry{Reps: 5, Load: kg(122.5), Unit: mass.LB, Source: gym.Estimate, On: 42, Result: "r1", From: 1}, card.Entry(5))
	assert.False(t, card.Entry(3).Known(), "a rep count the card was not asked for")
}

func TestCardUnderTheBar(t *testing.T) {
	e := repmax.NewCard(known(result("r1", 1, kg(22), 1)), []int{5}, repmax.Handbook(), steps(kg(2.5))).Entry(5)
	assert.True(t, e.Under, "19.14 kg is less than the bar")
	assert.Equal(t, kg(19.14), e.Load)
}

func TestCardOffersToRaise(t *testing.T) {
	card := repmax.NewCard(known(result("r1", 1, kg(145), 1), result("r3", 3, kg(140), 2), result("r5", 5, kg(142.5), 3)), []int{5, 3, 1}, repmax.Handbook(), steps(kg(2.5)))
	require.Len(t, card.Raises, 1)
	r := card.Raises[0]
	assert.Equal(t, gym.ID("r3"), r.Record.ID)
	assert.Equal(t, gym.ID("r5"), r.Proof.ID)
	assert.Equal(t, "The 5RM of 142.5 kg is over the 3RM of 140 kg. A load for 5 reps is proof for 3: raise the 3RM to 142.5 kg?", r.Why())
	row := r.Row()
	assert.Empty(t, row.ID, "whoever writes it names it")
	row.ID = "new"
	require.NoError(t, row.Valid())
	assert.Equal(t, result("new", 3, kg(142.5), 3), row)
	assert.Equal(t, kg(140), card.Entry(3).Load, "offered, not done")
}

func TestCardDoesNotRaiseOnATie(t *testing.T) {
	assert.Empty(t, repmax.NewCard(known(result("r3", 3, kg(140), 2), result("r5", 5, kg(140), 3)), nil, repmax.Handbook(), steps(kg(2.5))).Raises)
}

// What a card promises, for any records and any gym.
func TestCardPromises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		log := drawLog(t)
		known := repmax.NewRecords(log, nil).Known("a", "squat")
		down := steps(kg(rapid.SampledFrom([]float64{0.5, 1, 2.5, 5, 10}).Draw(t, "step")))
		c := rapid.SampledFrom(repmax.Curves()).Draw(t, "curve")
		card := repmax.NewCard(known, []int{1, 2, 3, 4, 5, 6, 8, 10}, c, down)
		for _, e := range card.Entries {
			checkEntry(t, e, known, down)
		}
		if len(known) > 0 {
			assert.True(t, card.Entry(1).Known(), "every curve reaches one rep from five")
		}
	})
}

func checkEntry(t *rapid.T, e repmax.Entry, known []gym.Result, down repmax.Down) {
	overtaken := false
	for _, r := range known {
		if r.Reps == e.Reps {
			assert.Equal(t, r.Load, e.Load, "a known number is kept")
			assert.Equal(t, gym.Tested, e.Source)
			return
		}
		if r.Reps > e.Reps {
			assert.GreaterOrEqual(t, e.Load, r.Load, "a record for more reps is proof")
			overtaken = overtaken || r.Load == e.Load
		}
	}
	if e.Known() && !overtaken {
		loadable, ok := down(e.Load)
		assert.True(t, ok)
		assert.Equal(t, loadable, e.Load, "an estimate can be loaded")
	}
}
