package tier

import (
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
		{121, 142, span{weeks: 3, trained: 3}},          // three weeks off cost nothing
		{121, 149, span{weeks: 4, owing: 1}},            // a longer gap trained nothing
		{121, 184, span{weeks: 9, owing: 6}},            // first day back
		{184, 191, span{1, 1, 6, 4}},                    // a week makes two good
		{191, 212, span{weeks: 3, trained: 3, owed: 4}}, // all made good
		{50, 107, span{weeks: 57. / 7, trained: 1}},     // before the first day
	} {
		got := c.between(row.from, row.to)
		assert.InDeltaSlice(t, []float64{row.want.weeks, row.want.trained, row.want.owed, row.want.owing},
			[]float64{got.weeks, got.trained, got.owed, got.owing}, 1e-12, "%v to %v", row.from, row.to)
	}
	var empty Calendar
	got := empty.between(10, 24)
	assert.Equal(t, 2.0, got.weeks)
	assert.InDelta(t, 2, got.trained, 1e-9)
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
