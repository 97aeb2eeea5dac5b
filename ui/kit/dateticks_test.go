package kit_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/day"
	"windlass/ui/kit"
)

func TestDateTicks(t *testing.T) {
	for _, row := range []struct {
		name     string
		from, to day.Date
		want     []string
	}{
		{"one day", day.Of(2026, time.November, 30), day.Of(2026, time.November, 30), []string{"30 Nov 2026"}},
		{"days", day.Of(2026, time.November, 2), day.Of(2026, time.November, 5), []string{"2 Nov 2026", "3 Nov", "4 Nov", "5 Nov"}},
		{"weeks within a month", day.Of(2026, time.November, 2), day.Of(2026, time.November, 30), []string{"2 Nov 2026", "9 Nov", "16 Nov", "23 Nov", "30 Nov"}},
		{"over the end of a year", day.Of(2026, time.December, 20), day.Of(2027, time.January, 20), []string{"20 Dec 2026", "27 Dec", "3 Jan 2027", "10 Jan", "17 Jan"}},
		{"months", day.Of(2026, time.August, 5), day.Of(2026, time.November, 30), []string{"1 Sep 2026", "1 Oct", "1 Nov"}},
		{"years", day.Of(2023, time.March, 5), day.Of(2026, time.November, 30), []string{"1 Jan 2024", "1 Jan 2025", "1 Jan 2026"}},
		{"the wrong way round", 5, 4, nil},
		{"no day", day.None, 4, nil},
	} {
		t.Run(row.name, func(t *testing.T) {
			var got []string
			for _, tick := range kit.DateTicks(row.from, row.to) {
				got = append(got, tick.Label)
			}
			assert.Equal(t, row.want, got)
		})
	}
}

// Whatever the days, an axis has a date, all are on it, they rise, and the years
// can be told.
func TestAnAxisAlwaysHasADate(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := day.Of(2000, time.January, 1).Add(rapid.IntRange(0, 20_000).Draw(t, "from"))
		to := from.Add(rapid.IntRange(0, 20_000).Draw(t, "days"))
		ticks := kit.DateTicks(from, to)
		require.NotEmpty(t, ticks)
		require.LessOrEqual(t, len(ticks), 6)
		for i, tick := range ticks {
			require.True(t, tick.X >= float64(from) && tick.X <= float64(to), tick)
			require.True(t, i == 0 || tick.X > ticks[i-1].X)
		}
		require.Contains(t, ticks[0].Label, day.Date(ticks[0].X).Time().Format("2006"))
	})
}
