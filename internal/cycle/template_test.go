package cycle_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/cycle"
	"windlass/internal/gym"
)

var builtIn = []string{"powerlifting", "strongman", "weightlifting"}

// The built-in tracks keep every rule, for every length and wave.
func TestBuiltInTracksKeepEveryRule(t *testing.T) {
	b := builtInBook(t)
	for _, wave := range everyWave {
		for n := cycle.MinWeeks; n <= cycle.MaxWeeks; n++ {
			t.Run(fmt.Sprintf("%s %d", wave, n), func(t *testing.T) {
				c := makeCycle(t, b, n, wave, builtIn...)
				require.Empty(t, told(cycle.Check(c, b)))
			})
		}
	}
}

// A wave of one track beside those of others, over the weeks that they share.
func TestBuiltInTracksKeepEveryRuleWithMixedWaves(t *testing.T) {
	b := builtInBook(t)
	for n := cycle.MinWeeks; n <= cycle.MaxWeeks; n++ {
		s := cycle.Spec{ID: "c", Name: "Mixed", Start: aMonday, Weeks: n}
		for i, key := range builtIn {
			s.Tracks = append(s.Tracks, cycle.TrackSpec{Track: gym.ID(key), Template: key, Wave: everyWave[i]})
		}
		c, err := cycle.Make(s, b)
		require.NoError(t, err)
		require.Empty(t, told(cycle.Check(c, b)), "%d weeks", n)
	}
}

func TestBuiltInTracksAreWhole(t *testing.T) {
	b := builtInBook(t)
	c := makeCycle(t, b, 12, gym.RollingWave, builtIn...)
	for _, p := range c.Tracks {
		lifts, tested, percent := map[gym.LiftKey]bool{}, map[gym.LiftKey]bool{}, 0
		for _, d := range p.Days {
			if d.Kind != gym.MainDay {
				continue
			}
			lifts[d.Main.Lift] = true
			percent += len(d.Main.Scheme)
			if c.Weeks[d.Week-1] == gym.TestWeek {
				tested[d.Main.Lift] = true
				assert.Equal(t, 1, d.Main.Reps)
				assert.Empty(t, d.Main.Scheme)
				continue
			}
			assert.NotEmpty(t, d.WarmUp)
			assert.False(t, d.Second.Empty())
			assert.False(t, d.Workout.Empty())
			assert.NotEmpty(t, d.Finisher)
		}
		assert.Len(t, tested, 4, p.Track)
		switch p.Track {
		case "powerlifting":
			assert.Equal(t, 4, p.MainDays)
			assert.Len(t, lifts, 4)
		case "strongman":
			assert.Equal(t, 4, p.MainDays)
			assert.Greater(t, len(lifts), len(tested), "some lifts are never tested")
		case "weightlifting":
			assert.Equal(t, 5, p.MainDays)
			assert.Positive(t, percent, "snatch and clean and jerk work by percentages")
		}
	}
}
