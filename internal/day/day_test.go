package day_test

import (
	"fmt"
	"testing"
	"time"
	_ "time/tzdata" // zones on every machine

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/day"
)

func parsed(t *testing.T, text string) day.Date {
	t.Helper()
	d, err := day.Parse(text)
	require.NoError(t, err)
	return d
}

// ISO 8601: Monday is day 1. The rows were computed by an independent calendar.
func TestWeekdayOfDates(t *testing.T) {
	tests := []struct {
		date string
		iso  int
	}{
		{"2005-01-01", 6},
		{"2008-12-29", 1},
		{"2009-12-31", 4},
		{"2010-01-03", 7},
		{"2010-01-04", 1},
		{"2015-12-28", 1},
		{"2020-12-31", 4},
		{"2021-01-03", 7},
		{"2024-12-30", 1},
		{"2026-12-31", 4},
		{"2027-01-03", 7},
		{"2032-12-31", 5},
	}
	for _, tt := range tests {
		d := parsed(t, tt.date)
		assert.Equal(t, tt.iso, int(d.Weekday())+1, tt.date)
		assert.Equal(t, tt.date, d.String())
	}
}

func TestParseRefuses(t *testing.T) {
	for _, text := range []string{
		"", " ", "2026-3-9", "2026-02-30", "2025-02-29", "2026-13-01", "2026-00-10", "26-03-09",
		"09.03.2026", "03/09/2026", "2026-03-09T10:00", "2026-03-09 ", "today", "1969-12-31", "0026-03-09",
	} {
		d, err := day.Parse(text)
		assert.ErrorContains(t, err, fmt.Sprintf("read date %q: ", text))
		assert.ErrorContains(t, err, "2026-03-09", "it shows how")
		assert.Equal(t, day.None, d)
	}
	assert.NotEqual(t, day.None, parsed(t, "1970-01-01"))
	assert.Equal(t, "2028-02-29", parsed(t, "2028-02-29").String(), "a leap day")
}

func TestWriting(t *testing.T) {
	d := parsed(t, "2026-03-09")
	assert.Equal(t, "9 Mar", d.Short())
	assert.Equal(t, "Monday 9 March 2026", d.Long())
	for _, text := range []string{day.None.String(), day.None.Short(), day.None.Long()} {
		assert.Empty(t, text, "no date has no text")
	}
}

func TestDayOfAnInstantIsThatOfItsZone(t *testing.T) {
	east := time.FixedZone("east", 13*3600)
	late := time.Date(2026, time.March, 8, 23, 30, 0, 0, time.UTC)
	assert.Equal(t, "2026-03-08", day.From(late).String())
	assert.Equal(t, "2026-03-09", day.From(late.In(east)).String())
	assert.Equal(t, day.Of(2026, time.March, 1), day.Of(2026, time.February, 29), "days carry over")
}

func TestClassHourKeepsItsPlaceWhenClocksChange(t *testing.T) {
	zone, err := time.LoadLocation("Europe/Berlin")
	require.NoError(t, err)
	// Clocks go forward on the last Sunday of March (Directive 2000/84/EC, from memory).
	at := parsed(t, "2026-03-29").At(day.ClockOf(17, 30), zone)
	assert.Equal(t, "2026-03-29T17:30:00+02:00", at.Format(time.RFC3339))
	assert.Equal(t, "2026-03-28T17:30:00+01:00", parsed(t, "2026-03-28").At(day.ClockOf(17, 30), zone).Format(time.RFC3339))
}

// Counting days agrees with Julian day numbers by the algorithm of Fliegel and
// Van Flandern, CACM 11(10), 1968, page 657 (from memory).
func TestCountingDays(t *testing.T) {
	julian := func(y, m, d int) int {
		return d - 32075 + 1461*(y+4800+(m-14)/12)/4 + 367*(m-2-(m-14)/12*12)/12 - 3*((y+4900+(m-14)/12)/100)/4
	}
	// A day that many almanacs print: noon of 1 January 2000 is 2 451 545.
	require.Equal(t, 2_451_545, julian(2000, 1, 1))
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(0, 50_000).Draw(t, "days")
		d := day.Of(1970, time.January, 1).Add(n)
		back, err := day.Parse(d.String())
		if err != nil || back != d {
			t.Fatalf("%s came back as %s: %v", d, back, err)
		}
		civil := d.Time()
		number := julian(civil.Year(), int(civil.Month()), civil.Day())
		if got := number - julian(1970, 1, 1); got != n || d.Since(day.Of(1970, time.January, 1)) != n {
			t.Fatalf("%s is day %d, not %d", d, got, n)
		}
		// Julian day 0 was a Monday.
		if day.Weekday(number%7) != d.Weekday() {
			t.Fatalf("%s is no %s", d, d.Weekday())
		}
	})
}

func FuzzParse(f *testing.F) {
	for _, seed := range []string{"2026-03-09", "2026-02-30", "1969-12-31", "9999-12-31", "2026-3-9", "", "２０２６-03-09"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		d, err := day.Parse(text)
		if err != nil {
			require.Equal(t, day.None, d)
			return
		}
		require.Equal(t, text, d.String())
		require.Greater(t, d, day.None)
	})
}
