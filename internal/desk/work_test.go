package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
)

// The record and the floor give the same answer to the same question, and each says
// for how much its load is.
func TestRecordAndFloorAgree(t *testing.T) {
	b, c, a := withWorkout(t, gym.Workout{Format: gym.ForTime, Rounds: 4, Items: []gym.Item{{Movement: swing, Amount: 30}}})
	row := b.BoutSheet(c)[0]
	amount, ok := b.WorkToday(a.ID, swing)
	require.True(t, ok)
	assert.Equal(t, row.Reps, amount)
	today, err := b.Advise(a.ID, swing, amount)
	require.NoError(t, err)
	assert.Equal(t, row.Load, today.Decision.Load)
	assert.Contains(t, row.Why, " for 120 reps")
	usual := b.swing(a)
	assert.Contains(t, usual.Decision.Suggestion.Why, " for a usual bout of 40 reps")
	assert.Greater(t, usual.Decision.Load, today.Decision.Load, "or the two could not be told apart")
	_, ok = b.WorkToday(a.ID, "burpee")
	assert.False(t, ok)
}

func TestWorkText(t *testing.T) {
	for _, row := range []struct {
		measure gym.Measure
		amount  int
		want    string
	}{
		{gym.ByReps, 80, "80 reps"},
		{"", 1, "1 rep"},
		{gym.ByDistance, 140, "140 m"},
		{gym.ByHold, 45, "45 s"},
		{gym.ByReps, 0, "a usual bout of 40 reps"},
	} {
		assert.Equal(t, row.want, desk.WorkText(gym.Movement{Measure: row.measure, ReferenceReps: 40}, row.amount))
	}
	assert.Empty(t, desk.WorkText(gym.Movement{}, 0))
}
