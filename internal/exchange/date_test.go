package exchange

import (
	"strconv"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"github.com/xuri/excelize/v2"
	"pgregory.net/rapid"

	"windlass/internal/day"
)

func TestDates(t *testing.T) {
	for _, c := range []struct {
		text  string
		order DateOrder
		want  string // "" for a refusal
	}{
		{"2026-03-09", NoOrder, "2026-03-09"},
		{"2026-03-09", MonthFirst, "2026-03-09"}, // ISO 8601 has one order
		{"2026-03-09T18:30:00Z", NoOrder, "2026-03-09"},
		{"2026-03-09 18:30", NoOrder, "2026-03-09"},
		{"2026/3/9", NoOrder, "2026-03-09"},
		{"9 Mar 2026", NoOrder, "2026-03-09"},
		{"March 9th, 2026", NoOrder, "2026-03-09"},
		{"09-Mar-26", NoOrder, "2026-03-09"},
		{"09/03/2026", NoOrder, ""}, // two ways
		{"09.03.2026", NoOrder, ""},
		{"09/03/2026", DayFirst, "2026-03-09"},
		{"09/03/2026", MonthFirst, "2026-09-03"},
		{"9.3.26", DayFirst, "2026-03-09"},
		{"25/03/2026", NoOrder, "2026-03-25"}, // one way only
		{"03/25/2026", NoOrder, "2026-03-25"},
		{"05/05/2026", NoOrder, "2026-05-05"},
		{"03/25/2026", DayFirst, ""},
		{"2026-02-29", NoOrder, ""},
		{"2028-02-29", NoOrder, "2028-02-29"},
		{"2026-13-01", NoOrder, ""},
		{"March 2026", NoOrder, ""},
		{"46090", NoOrder, ""},                 // a workbook's number in a text
		{"June 9 2026", NoOrder, "2026-06-09"}, // four letters are no year
		{"Sept 9 2026", NoOrder, "2026-09-09"},
		{"3 OCT 2026", NoOrder, "2026-10-03"}, // a T that parts no time from a date
		{"1970-01-01", NoOrder, "1970-01-01"},
		{"31 December 1969", NoOrder, ""}, // which would be day.None
		{"1965-03-01", NoOrder, ""},
		{"yesterday", NoOrder, ""},
		{"0000-00-00", NoOrder, ""},
		{"2026-+3-09", NoOrder, ""},
	} {
		got, err := parseDate(c.text, c.order, day.None)
		assert.Equal(t, c.want, got.String(), "%s %s", c.text, c.order)
		assert.Equal(t, c.want == "", err != nil, "%s %s: %v", c.text, c.order, err)
	}
}

// Every day can be written in each order and read back.
func TestDatesInAnyOrder(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		d := day.Of(1970, 1, 1).Add(rapid.IntRange(0, 47_000).Draw(rt, "days"))
		for layout, order := range map[string]DateOrder{
			"2006-01-02": NoOrder, "2 January 2006": NoOrder, "Jan 2, 2006": NoOrder, "January 2 2006": NoOrder,
			"02/01/2006": DayFirst, "2.1.2006": DayFirst, "1/2/2006": MonthFirst,
		} {
			got, err := parseDate(d.Time().Format(layout), order, day.None)
			require.NoError(rt, err)
			require.Equal(rt, d, got, layout)
		}
		if got, err := parseDate(d.Time().Format("01/02/2006"), NoOrder, day.None); err == nil {
			require.Equal(rt, d, got, "with no order it is right or refused")
		}
	})
}

// Against the workbook library's own count of days.
func TestNumbersOfDays(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		n := rapid.IntRange(25_569, 73_000).Draw(rt, "number") // 1970 to 2099
		for epoch, date1904 := range map[day.Date]bool{epoch1900: false, epoch1904: true} {
			want, err := excelize.ExcelDateToTime(float64(n), date1904)
			require.NoError(rt, err)
			if want.After(time.Date(2100, 1, 1, 0, 0, 0, 0, time.UTC)) {
				continue
			}
			got, err := parseDate(strconv.Itoa(n)+".75", NoOrder, epoch)
			require.NoError(rt, err)
			require.Equal(rt, day.From(want), got)
		}
	})
	_, err := parseDate("7", NoOrder, epoch1900)
	assert.Error(t, err, "a small number is no date of a gym")
	_, err = parseDate("1e300", NoOrder, epoch1900)
	assert.Error(t, err)
}

func TestParseDateOrder(t *testing.T) {
	for text, want := range map[string]DateOrder{"": NoOrder, "day-first": DayFirst, "DMY": DayFirst, "mdy": MonthFirst, " month-first ": MonthFirst} {
		got, err := ParseDateOrder(text)
		require.NoError(t, err)
		assert.Equal(t, want, got)
	}
	_, err := ParseDateOrder("ymd")
	assert.ErrorContains(t, err, `"ymd"`)
}
