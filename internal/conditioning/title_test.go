package conditioning

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/gym"
)

func TestReadTitle(t *testing.T) {
	for _, row := range []struct {
		text string
		want gym.Workout
	}{
		// As this program writes them.
		{"AMRAP 12 min", gym.Workout{Format: gym.AMRAP, Seconds: 720}},
		{"EMOM 10 min", gym.Workout{Format: gym.EMOM, Seconds: 600}},
		{"For time, 3 rounds, cap 9 min", gym.Workout{Format: gym.ForTime, Cap: 540}},
		{"For time, 21-15-9", gym.Workout{Format: gym.ForTime}},
		{"Chipper, cap 20 min", gym.Workout{Format: gym.Chipper, Cap: 1200}},
		{"8 × 40 s work, 20 s rest", gym.Workout{Format: gym.Intervals}},
		{"5 sets, 90 s rest", gym.Workout{Format: gym.PlainSets}},
		{"for time 21-15-9 cap 10:00", gym.Workout{Format: gym.ForTime, Cap: 600}},
		{"intervals 8 x 0:40 rest 0:20", gym.Workout{Format: gym.Intervals}},
		// As coaches do.
		{"12 min AMRAP", gym.Workout{Format: gym.AMRAP, Seconds: 720}},
		{"amrap 12", gym.Workout{Format: gym.AMRAP, Seconds: 720}},
		{"EMOM 10min", gym.Workout{Format: gym.EMOM, Seconds: 600}},
		{"21-15-9", gym.Workout{Format: gym.ForTime}},
		{"fortime 21-15-9", gym.Workout{Format: gym.ForTime}}, // the rep list says it
		{"5 rounds", gym.Workout{Format: gym.ForTime}},
		{"Wednesday: 5 rounds for time", gym.Workout{Format: gym.ForTime}},
		{"AMRAP with a vest", gym.Workout{Format: gym.AMRAP}},
		// Names.
		{"", gym.Workout{}},
		{"Monday", gym.Workout{}},
		{"Week 3 day 2", gym.Workout{}},
		{"W3D2", gym.Workout{}},
		{"2026-03-02 evening", gym.Workout{}},
		{"Session 12", gym.Workout{}},
		{"from the park", gym.Workout{}},
	} {
		got, err := ReadTitle(row.text, nil)
		require.NoError(t, err, row.text)
		assert.Equal(t, row.want, got, row.text)
	}
	c, _ := catalogue(t)
	for _, free := range []string{"AMRAP 10 min: 10 burpee; 5 Bar", "EMOM 10 min: 5 rounds", "Wednesday: 5 rounds for time", "AMRAP 10 min: hard and fast"} {
		_, err := ReadTitle(free, finder(c.Movements))
		require.NoError(t, err, free)
	}
	line, err := ReadTitle("amrap 12:00: 10 swing, 15 burpee", nil)
	require.NoError(t, err)
	assert.Len(t, line.Items, 2, "a whole line brings its movements")
}

func TestReadTitleRefuses(t *testing.T) {
	nobody := func(string) (gym.Movement, bool) { return gym.Movement{}, false }
	for _, row := range []struct {
		text, why string
		err       error
	}{
		{"Foo bar 12", `"foo bar" with a number is none of amrap`, ErrTitle},
		{"Foo bar 12:00", "write one of them, or a name without the number", ErrTitle},
		{"AMRPA 12", "nearest: amrap", ErrTitle},
		{"amrp", "nearest: amrap", ErrTitle},
		{"EMOMM 10", "nearest: emom", ErrTitle},
		{"fortime with friends", "nearest: for time", ErrTitle},
		{"chiper, cap 20 min", "nearest: chipper", ErrTitle},
		{"AMRAP 900 min", "over 2:00:00", ErrLength},
		{"amrap 12:00: 10 flying carpet", `"flying carpet" is not in the catalogue`, nil},
		{"AMRAP 10 min: 10 Foo; 5 Bar", `"Foo" is not in the catalogue`, ErrMovement},
	} {
		_, err := ReadTitle(row.text, nobody)
		require.Error(t, err, row.text)
		assert.ErrorContains(t, err, row.why)
		if row.err != nil {
			assert.ErrorIs(t, err, row.err, row.text)
		}
	}
}

// Whatever head this program writes, its format, length and cap come back.
func TestHeadsAreTitles(t *testing.T) {
	c, _ := catalogue(t)
	rapid.Check(t, func(t *rapid.T) {
		w := drawWorkout(t, c.Movements)
		got, err := ReadTitle(Head(w), nil)
		require.NoError(t, err)
		assert.Equal(t, []any{w.Format, w.Seconds, w.Cap}, []any{got.Format, got.Seconds, got.Cap}, Head(w))
	})
}

func FuzzReadTitle(f *testing.F) {
	for _, text := range []string{"AMRAP 12 min", "Foo bar 12", "for time 21-15-9 cap 10:00", "8 × 40 s work", "Week 3", "amrap 12:00: 5 a", "x", ":"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		w, err := ReadTitle(text, nil)
		if err != nil {
			return
		}
		_, known := rules[w.Format]
		require.Equal(t, w.Format != "", known)
		require.True(t, w.Seconds >= 0 && w.Seconds <= longest && w.Cap >= 0 && w.Cap <= longest)
	})
}
