package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
)

func TestParseAmount(t *testing.T) {
	cases := []struct {
		text string
		by   gym.Measure
		want float64
		says string
	}{
		{"62.5", gym.ByTime, 62.5, "1:02.5"},
		{"1:02,5", gym.ByTime, 62.5, "1:02.5"}, // a decimal comma
		{"45 s", gym.ByHold, 45, "45 s"},
		{"2:00", gym.ByHold, 120, "2:00"},
		{" 60 m ", gym.ByDistance, 60, "60 m"},
		{"31", gym.ByReps, 31, "31 reps"},
	}
	for _, c := range cases {
		got, err := desk.ParseAmount(c.text, c.by)
		require.NoError(t, err, c.text)
		assert.InDelta(t, c.want, got, 1e-9, c.text)
		assert.Equal(t, c.says, desk.AmountText(got, c.by), c.text)
	}
	bad := []struct {
		text string
		by   gym.Measure
		why  string
	}{
		{"", gym.ByTime, "not a number"},
		{"5x100", gym.ByTime, "not what this lift"},
		{"60 s", gym.ByDistance, "not what this lift"},
		{"1:30", gym.ByDistance, "minutes do not fit"},
		{"1:75", gym.ByTime, "60 seconds"},
		{"0", gym.ByTime, "that little"},
		{"-5", gym.ByTime, "not a number"},
		{"30.5", gym.ByReps, "whole"},
		{"90000", gym.ByTime, "that much"},
		{"NaN", gym.ByTime, "not what this lift"},
		{"5", gym.ByLoad, "no amount"},
	}
	for _, c := range bad {
		_, err := desk.ParseAmount(c.text, c.by)
		assert.ErrorContains(t, err, c.why, c.text)
	}
}

// What is written is read back the same, and nothing that is typed stops the
// program.
func FuzzParseAmount(f *testing.F) {
	for _, seed := range []string{"1:02.5", "45 s", "60 m", "31", ":", "1:1:1", "9999999999999999999", "٣"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, by := range []gym.Measure{gym.ByReps, gym.ByDistance, gym.ByTime, gym.ByHold, gym.ByCalories} {
			amount, err := desk.ParseAmount(text, by)
			if err != nil || amount < 0.01 {
				continue
			}
			again, err := desk.ParseAmount(desk.AmountText(amount, by), by)
			require.NoError(t, err, "%q of %q", desk.AmountText(amount, by), text)
			assert.InDelta(t, amount, again, 0.0051, text)
		}
	})
}

// Less time is the better one, and a lift counted by time has no rep max.
func TestEntryOfALiftCountedByTime(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	b.log(a, "yoke-run", "31.5")
	read := func(text string) desk.Reading {
		r, err := b.ReadEntry(desk.Entry{Athlete: a.ID, Lift: "yoke-run", Text: text, On: b.Today(), Source: gym.Tested})
		require.NoError(t, err)
		return r
	}
	assert.Equal(t, "29 s: a new record after 31.5 s.", read("29").Says)
	assert.Equal(t, "33 s: not better than the record of 31.5 s, which stays.", read("33").Says)
	assert.Equal(t, "31.5 s: equals the record of 9 Mar. A tie raises nothing.", read("31.5").Says)
	card := b.RecordCard(a.ID)
	require.Len(t, card.Lifts[0].Best, 1)
	assert.False(t, card.Lifts[0].Cells[0].Kept)
}
