package tier

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"windlass/internal/day"
)

func calendarOf(days ...day.Date) *Calendar {
	var c Calendar
	for _, on := range days {
		c.Mark(on)
	}
	return &c
}

// A stretch is six weeks long, ends with a break, and is short while the break is
// made good.
func TestCut(t *testing.T) {
	for _, row := range []struct {
		name   string
		days   []day.Date
		starts []day.Date
	}{
		{"nothing", nil, nil},
		{"one day", []day.Date{100}, []day.Date{100}},
		{"six weeks", []day.Date{100, 110, 120, 130, 141, 142, 150}, []day.Date{100, 142}},
		{"a break", []day.Date{100, 110, 180, 187, 194, 201, 208, 229}, []day.Date{100, 180, 194, 208}},
		{"three weeks away are no break", []day.Date{100, 121}, []day.Date{100}},
	} {
		t.Run(row.name, func(t *testing.T) {
			var f form
			f.cut(calendarOf(row.days...))
			assert.Equal(t, row.starts, f.starts)
			assert.Len(t, f.gaps, max(0, len(row.starts)-1))
		})
	}
}

// Every day belongs to the latest stretch begun, and no stretch is without a day.
func TestStretchOfADay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := calendarOf()
		for _, on := range rapid.SliceOfN(rapid.IntRange(1, 4000), 1, 60).Draw(t, "days") {
			c.Mark(day.Date(on))
		}
		var f form
		f.cut(c)
		at := 0
		for _, on := range c.days {
			k := f.of(on)
			assert.True(t, k == at || k == at+1, "%d after %d", k, at)
			at = k
		}
		assert.Equal(t, f.size()-1, at)
		assert.Zero(t, f.of(c.days[0]-10))
	})
}
