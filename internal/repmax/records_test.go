package repmax_test

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/repmax"
)

func result(id string, reps int, load mass.Mass, on day.Date) gym.Result {
	return gym.Result{ID: gym.ID(id), Athlete: "a", Lift: "squat", Reps: reps, Load: load, Unit: mass.KG, On: on, Source: gym.Tested}
}

func TestRecordsKeepTheBest(t *testing.T) {
	pound := result("pound", 5, 225*mass.Pound, 30)
	pound.Unit = mass.LB
	voided := result("voided", 5, kg(200), 20)
	voided.Void = &gym.Void{Reason: "wrong athlete"}
	records := repmax.NewRecords([]gym.Result{
		result("first", 5, kg(100), 10),
		result("tie", 5, kg(100), 11),
		voided,
		pound,
		result("lighter", 5, kg(102), 40),
		result("triple", 3, kg(110), 12),
	}, nil)

	five, ok := records.Of("a", "squat", 5)
	require.True(t, ok)
	assert.Equal(t, pound, five, "225 lb is 102.06 kg; the unit and the date come along")
	assert.Equal(t, []gym.Result{result("triple", 3, kg(110), 12), pound}, records.Known("a", "squat"), "fewest reps first")
	_, ok = records.Of("a", "squat", 1)
	assert.False(t, ok)
	assert.Empty(t, records.Known("b", "squat"))
}

func TestRecordsOfEqualLoadsKeepTheEarliest(t *testing.T) {
	noon := time.Date(2026, 3, 9, 12, 0, 0, 0, time.UTC)
	late, soon := result("late", 1, kg(140), 10), result("soon", 1, kg(140), 10)
	late.Made, soon.Made = noon.Add(time.Hour), noon
	for _, log := range [][]gym.Result{{late, soon}, {soon, late}} {
		best, _ := repmax.NewRecords(log, nil).Of("a", "squat", 1)
		assert.Equal(t, gym.ID("soon"), best.ID)
	}
}

func TestBetterByMeasure(t *testing.T) {
	amount := func(x float64) gym.Result { return gym.Result{Amount: x} }
	for _, row := range []struct {
		by   gym.Measure
		a, b gym.Result
		want bool
	}{
		{gym.ByLoad, gym.Result{Load: kg(101)}, gym.Result{Load: kg(100)}, true},
		{gym.ByLoad, gym.Result{Load: kg(100)}, gym.Result{Load: kg(100)}, false}, // a tie is not better
		{gym.ByReps, amount(12), amount(11), true},
		{gym.ByDistance, amount(30), amount(40), false},
		{gym.ByHold, amount(61), amount(60), true},
		{gym.ByTime, amount(59), amount(60), true}, // fixed work: less is better
		{gym.ByTime, amount(60), amount(60), false},
		{gym.ByTime, gym.Result{Load: kg(200)}, amount(60), false}, // no time is not a short time
		{gym.ByTime, amount(60), gym.Result{Load: kg(200)}, true},
	} {
		assert.Equal(t, row.want, repmax.Better(row.a, row.b, row.by), "%+v", row)
	}
}

func TestRecordsCountLiftsByTheirMeasure(t *testing.T) {
	run := func(id string, seconds float64, on day.Date) gym.Result {
		return gym.Result{ID: gym.ID(id), Athlete: "a", Lift: "yoke", Reps: 1, Amount: seconds, On: on}
	}
	records := repmax.NewRecords([]gym.Result{run("slow", 15, 1), run("fast", 12, 2), run("again", 12, 3)},
		[]gym.Lift{{Key: "yoke", Measure: gym.ByTime}})
	best, ok := records.Of("a", "yoke", 1)
	require.True(t, ok)
	assert.Equal(t, gym.ID("fast"), best.ID)
}

func drawLog(t *rapid.T) []gym.Result {
	log := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) gym.Result {
		r := result("", rapid.IntRange(1, 5).Draw(t, "reps"), kg(float64(rapid.IntRange(40, 60).Draw(t, "load"))), day.Date(rapid.IntRange(1, 9).Draw(t, "on")))
		r.Athlete = rapid.SampledFrom([]gym.ID{"a", "b"}).Draw(t, "athlete")
		if rapid.IntRange(0, 4).Draw(t, "voided") == 0 {
			r.Void = &gym.Void{}
		}
		return r
	}), 0, 40).Draw(t, "log")
	for i := range log {
		log[i].ID = gym.ID(fmt.Sprintf("%03d", i))
	}
	return log
}

// Brute force: the record is the result that no other beats, and whose equals
// are all later, whatever the order of the log.
func TestRecordsAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		log := drawLog(t)
		records := repmax.NewRecords(rapid.Permutation(log).Draw(t, "order"), nil)
		for _, r := range log {
			if r.Void != nil {
				continue
			}
			best, ok := records.Of(r.Athlete, r.Lift, r.Reps)
			require.True(t, ok)
			assert.Nil(t, best.Void)
			assert.GreaterOrEqual(t, best.Load, r.Load)
			if best.Load == r.Load {
				assert.LessOrEqual(t, best.On, r.On, "a tie keeps the earlier")
			}
		}
	})
}

func BenchmarkNewRecords(b *testing.B) {
	log := make([]gym.Result, 100_000)
	for i := range log {
		log[i] = result(fmt.Sprint(i), 1+i%5, kg(float64(60+i%97)), day.Date(i/100+1))
		log[i].Athlete = gym.ID(fmt.Sprint(i % 1000))
	}
	for b.Loop() {
		repmax.NewRecords(log, nil)
	}
}
