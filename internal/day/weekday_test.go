package day_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/day"
)

func TestParseWeekday(t *testing.T) {
	tests := []struct {
		text string
		want day.Weekday
	}{
		{"mo", day.Monday},
		{"Tue", day.Tuesday},
		{"tues", day.Tuesday},
		{"WEDNESDAY", day.Wednesday},
		{" thurs ", day.Thursday},
		{"fri", day.Friday},
		{"sa", day.Saturday},
		{"su", day.Sunday},
	}
	for _, tt := range tests {
		w, err := day.ParseWeekday(tt.text)
		require.NoError(t, err)
		assert.Equal(t, tt.want, w, tt.text)
	}
	for _, text := range []string{"", "m", "t", "s", "mondays", "noday", "1"} {
		_, err := day.ParseWeekday(text)
		assert.ErrorContains(t, err, "it is none; write one like mon or Thursday", text)
	}
}

func TestParseWeekdays(t *testing.T) {
	tests := []struct {
		text, want string
	}{
		{"", ""},
		{"mon,tue,thu", "Mon, Tue, Thu"},
		{"thu; mon  tue", "Mon, Tue, Thu"}, // in any order, with any sign between
		{"sat,sat,", "Sat"},                // twice is once
	}
	for _, tt := range tests {
		s, err := day.ParseWeekdays(tt.text)
		require.NoError(t, err)
		assert.Equal(t, tt.want, s.String(), tt.text)
	}
	_, err := day.ParseWeekdays("mon,xyz")
	assert.ErrorContains(t, err, `read weekday "xyz"`)
}

func TestWeekdaysAreASet(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		days := rapid.SliceOf(rapid.IntRange(-3, 9)).Draw(t, "days")
		in := map[int]bool{}
		var s day.Weekdays
		for _, d := range days {
			s |= day.WeekdaysOf(day.Weekday(d))
			in[d] = d >= 0 && d <= 6 // the rest are no days
		}
		n := 0
		for d := -3; d <= 9; d++ {
			if s.Has(day.Weekday(d)) != in[d] {
				t.Fatalf("%v: day %d is wrong", s, d)
			}
			if in[d] {
				n++
			}
		}
		back, err := day.ParseWeekdays(s.String())
		if err != nil || back != s || s.Len() != n || len(s.List()) != n {
			t.Fatalf("%v came back as %v: %v", s, back, err)
		}
	})
}

func TestWeekdayNames(t *testing.T) {
	assert.Equal(t, "Monday", day.Monday.String())
	assert.Equal(t, "Sun", day.Sunday.Short())
	assert.Equal(t, "Sunday", day.Weekday(-1).String(), "a week goes round")
	assert.Equal(t, "Monday", day.Weekday(7).String())
}

func TestClock(t *testing.T) {
	for text, want := range map[string]day.Clock{
		"17:30": day.ClockOf(17, 30), "6:15": day.ClockOf(6, 15), "06:15": 375, "00:00": 0, "23:59": 1439,
	} {
		c, err := day.ParseClock(text)
		require.NoError(t, err)
		assert.Equal(t, want, c, text)
		back, err := day.ParseClock(c.String())
		require.NoError(t, err)
		assert.Equal(t, want, back)
		assert.Equal(t, c, day.ClockOf(c.Hour(), c.Minute()))
	}
	for _, text := range []string{"", "24:00", "17:60", "17", "17.30", "5:30 pm", "-1:00", "17:30:00"} {
		_, err := day.ParseClock(text)
		assert.ErrorContains(t, err, "write one like 17:30", text)
	}
}
