package tier

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"windlass/internal/day"
)

func TestBetween(t *testing.T) {
	var c Calendar
	for _, on := range []day.Date{100, 107, 121, 184, 191} { // nine weeks off after 121
		c.Mark(on)
	}
	for _, row := range []struct {
		from, to day.Date
		want     span
	}{
		{100, 100, span{}},
		{121, 100, span{}},
		{100, 121, span{weeks: 3, trained: 3}},
		{121, 135, span{weeks: 2, trained: 2, before: 3}},                    // two weeks off cost nothing
		{121, 149, span{weeks: 4, before: 3, owing: 2}},                      // a longer gap trained nothing
		{121, 184, span{weeks: 9, before: 3, owing: 7}},                      // first day back
		{184, 191, span{weeks: 1, trained: 1, before: 3, owed: 7, owing: 5}}, // a week makes two good
		{191, 205, span{weeks: 2, trained: 2, before: 4, owed: 5, owing: 1}},
		{50, 107, span{weeks: 57. / 7, trained: 1}}, // before the first day
	} {
		got := c.between(row.from, row.to)
		assert.InDeltaSlice(t, []float64{row.want.weeks, row.want.trained, row.want.before, row.want.owed, row.want.owing},
			[]float64{got.weeks, got.trained, got.before, got.owed, got.owing}, 1e-12, "%v to %v", row.from, row.to)
	}
	var empty Calendar
	assert.Equal(t, span{weeks: 2, trained: 2}, empty.between(10, 24))
}

// Days may be marked in any order.
func TestMarkInAnyOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		days := rapid.SliceOfN(rapid.IntRange(1, 400), 1, 12).Draw(t, "days")
		var c, d Calendar
		for _, on := range days {
			c.Mark(day.Date(on))
		}
		for _, on := range rapid.Permutation(days).Draw(t, "order") {
			d.Mark(day.Date(on))
		}
		assert.Equal(t, c, d)
		d.Mark(500)
		d.Unmark(500)
		d.Unmark(501)
		assert.Equal(t, c, d)
	})
}

// Growth that eases off is an integral of a falling exponential, summed up here
// day by day.
func TestGrown(t *testing.T) {
	h := Habits{Growth: 0.01, Ease: 26}
	sum := 0.0
	const steps = 10000
	for i := range steps {
		week := 8 + 30*(float64(i)+0.5)/steps
		sum += 0.01 * math.Pow(0.5, week/26) * 30 / steps
	}
	assert.InDelta(t, sum, h.grown(span{before: 8, trained: 30}), 1e-9)
	h.Ease = 0
	assert.InDelta(t, 0.3, h.grown(span{before: 8, trained: 30}), 1e-12)
}
