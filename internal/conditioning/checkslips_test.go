package conditioning

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/gym"
)

// What a slip of the hand makes of a workout is named with its cure.
func TestCheckNamesSlips(t *testing.T) {
	_, find := catalogue(t)
	for _, row := range []struct {
		w    gym.Workout
		want error
		text string
	}{
		{gym.Workout{Format: gym.Intervals, Rounds: 6, Work: 2400, Items: []gym.Item{do(0, "bike-calories")}}, ErrWork, "work of 40:00 is no interval; for 40 seconds write 0:40"},
		{gym.Workout{Format: gym.Intervals, Rounds: 7, Work: 1000, Rest: 60, Items: []gym.Item{do(0, "bike-calories")}}, ErrWork, "7 × 17:40 take 2:03:40, over 2:00:00"},
		{gym.Workout{Format: gym.Intervals, Rounds: 4, Work: 1200, Rest: 120, Items: []gym.Item{do(0, "bike-calories")}}, nil, ""},
		{gym.Workout{Format: gym.ForTime, Reps: []int{21, 15, 9}, Items: []gym.Item{do(0, "row-metres"), do(0, "burpee")}}, ErrReps, "the rep list would have Row of 21 m; write rounds with a distance"},
		{gym.Workout{Format: gym.ForTime, Reps: []int{21, 15, 9}, Items: []gym.Item{do(0, "row-calories"), do(0, "burpee")}}, nil, ""},
		{gym.Workout{Format: gym.ForTime, Reps: []int{500, 400, 300}, Items: []gym.Item{do(0, "row-metres")}}, nil, ""},
	} {
		err := Check(row.w, find)
		if row.want == nil {
			assert.NoError(t, err)
			continue
		}
		assert.ErrorIs(t, err, row.want)
		assert.ErrorContains(t, err, row.text)
	}
}
