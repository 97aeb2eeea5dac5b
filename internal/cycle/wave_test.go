package cycle_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/cycle"
	"windlass/internal/gym"
)

var everyWave = []gym.WaveKind{gym.BlockWave, gym.RollingWave, gym.StepWave}

// Every wave for every length and number of lifts, against the promises that a
// coach makes of it. Common practice, no source.
func TestWaveKeepsItsPromises(t *testing.T) {
	counts := []int{5, 3, 1}
	for _, wave := range everyWave {
		for n := cycle.MinWeeks; n <= cycle.MaxWeeks; n++ {
			weeks, err := cycle.Weeks(wave, n)
			require.NoError(t, err)
			require.Len(t, weeks, n)
			for lifts := 2; lifts <= 6; lifts++ {
				t.Run(fmt.Sprintf("%s %d weeks %d lifts", wave, n, lifts), func(t *testing.T) {
					reps, err := cycle.Wave(wave, weeks, lifts, counts)
					require.NoError(t, err)
					require.Len(t, reps, n)
					checkWave(t, wave, weeks, reps, lifts)
				})
			}
		}
	}
}

func checkWave(t *testing.T, wave gym.WaveKind, weeks []gym.WeekKind, reps [][]int, lifts int) {
	t.Helper()
	for lift := range lifts {
		met := map[int]int{5: 0, 3: 0, 1: 0}
		reached := map[int]bool{}
		for w, kind := range weeks {
			n := reps[w][lift]
			reached[n] = true
			switch kind {
			case gym.TrainingWeek:
				require.Contains(t, met, n)
				met[n]++
			case gym.TestWeek:
				assert.Equal(t, 1, n, "the test week tests")
			default:
				assert.Zero(t, n, "a light week climbs to nothing")
			}
		}
		assert.LessOrEqual(t, max(met[5], met[3], met[1])-min(met[5], met[3], met[1]), 1, "exposures of lift %d: %v", lift, met)
		assert.True(t, reached[5] && reached[3] && reached[1], "lift %d reaches all its counts", lift)
	}
	for w, kind := range weeks {
		last := w == len(weeks)-1
		assert.Equal(t, last, kind == gym.TestWeek, "week %d", w+1)
		assert.Equal(t, !last && wave == gym.StepWave && (w+1)%4 == 0, kind == gym.LightWeek, "week %d", w+1)
		if kind == gym.TrainingWeek {
			mixed := reps[w][0] != reps[w][1]
			assert.Equal(t, wave != gym.BlockWave, mixed, "week %d mixes its counts: %v", w+1, reps[w])
		}
	}
}

// In the block wave the counts only ever fall, and all lifts go together.
func TestBlockWaveFalls(t *testing.T) {
	weeks, err := cycle.Weeks(gym.BlockWave, 12)
	require.NoError(t, err)
	reps, err := cycle.Wave(gym.BlockWave, weeks, 2, []int{5, 3, 1})
	require.NoError(t, err)
	var first []int
	for _, week := range reps {
		assert.Equal(t, week[0], week[1])
		first = append(first, week[0])
	}
	assert.Equal(t, []int{5, 5, 5, 5, 3, 3, 3, 3, 1, 1, 1, 1}, first)
}

// In the rolling wave each lift follows 5 → 3 → 1, one step after the one before.
func TestRollingWaveRolls(t *testing.T) {
	weeks, err := cycle.Weeks(gym.StepWave, 9)
	require.NoError(t, err)
	reps, err := cycle.Wave(gym.StepWave, weeks, 4, []int{5, 3, 1})
	require.NoError(t, err)
	assert.Equal(t, [][]int{
		{5, 3, 1, 5},
		{3, 1, 5, 3},
		{1, 5, 3, 1},
		{0, 0, 0, 0},
		{5, 3, 1, 5},
		{3, 1, 5, 3},
		{1, 5, 3, 1},
		{0, 0, 0, 0},
		{1, 1, 1, 1},
	}, reps)
}

func TestWaveRefuses(t *testing.T) {
	good, err := cycle.Weeks(gym.BlockWave, 3)
	require.NoError(t, err)
	for name, try := range map[string]func() error{
		"too short":    func() error { _, err := cycle.Weeks(gym.BlockWave, 2); return err },
		"too long":     func() error { _, err := cycle.Weeks(gym.BlockWave, 27); return err },
		"unknown wave": func() error { _, err := cycle.Weeks("zigzag", 12); return err },
		"no lifts":     func() error { _, err := cycle.Wave(gym.BlockWave, good, 0, []int{5}); return err },
		"no counts":    func() error { _, err := cycle.Wave(gym.BlockWave, good, 2, nil); return err },
		"wave of none": func() error { _, err := cycle.Wave("", good, 2, []int{5}); return err },
	} {
		assert.Error(t, try(), name)
	}
}
