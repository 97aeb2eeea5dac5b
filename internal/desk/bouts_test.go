package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

func TestBoutsAreLoggedAndCorrected(t *testing.T) {
	b, c, a := withWorkout(t, gym.Workout{Format: gym.ForTime, Reps: []int{21, 15, 9}, Items: []gym.Item{{Movement: "kettlebell-swing"}, {Movement: "burpee"}}})
	rows := b.BoutSheet(c)
	require.Len(t, rows, 1, "a movement without a load has no bout")
	assert.Equal(t, 45, rows[0].Reps, "21 + 15 + 9")
	assert.Positive(t, rows[0].Load)
	assert.NotEmpty(t, rows[0].Why)
	at, more := desk.NextBout(rows, -1)
	assert.True(t, more)
	assert.Equal(t, 0, at)

	require.NoError(t, b.LogBout(c.ID, a.ID, "kettlebell-swing", 24*mass.Kilogram, gym.Stopped))
	require.NoError(t, b.LogBout(c.ID, a.ID, "kettlebell-swing", 24*mass.Kilogram, gym.Held))
	rows = b.BoutSheet(c)
	assert.Equal(t, gym.Held, rows[0].Logged.Outcome)
	assert.Equal(t, gym.Full, rows[0].Tier)
	_, more = desk.NextBout(rows, 0)
	assert.False(t, more)
	standing := 0
	for _, bout := range b.Bouts(a.ID) {
		if bout.Void == nil {
			standing++
		}
	}
	assert.Equal(t, 1, standing, "the bout entered again voids the one before")
	_, err := b.Undo()
	require.NoError(t, err)
	assert.Equal(t, gym.Stopped, b.BoutSheet(c)[0].Logged.Outcome)
	require.Error(t, b.LogBout(c.ID, a.ID, "kettlebell-swing", 0, gym.Held))
	require.Error(t, b.LogBout(c.ID, a.ID, "kettlebell-swing", 24*mass.Kilogram, "flew"))
}

func TestRepsOfABout(t *testing.T) {
	for _, row := range []struct {
		name string
		w    gym.Workout
		want int
	}{
		{"three rounds of ten", gym.Workout{Format: gym.ForTime, Rounds: 3, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 10}}}, 30},
		{"every third minute of twelve", gym.Workout{Format: gym.EMOM, Seconds: 720, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 15}, {Movement: "burpee", Amount: 10}, {}}}, 60},
		{"every second interval of eight", gym.Workout{Format: gym.Intervals, Rounds: 8, Work: 30, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 12}, {Movement: "burpee", Amount: 10}}}, 48},
		{"as many as possible is a usual bout", gym.Workout{Format: gym.Intervals, Rounds: 8, Work: 30, Items: []gym.Item{{Movement: "kettlebell-swing"}}}, 40},
	} {
		b, c, _ := withWorkout(t, row.w)
		assert.Equal(t, row.want, b.BoutSheet(c)[0].Reps, row.name)
	}
}

func TestScoresAreOfTheWorkoutsKind(t *testing.T) {
	b, c, a := withWorkout(t, gym.Workout{Format: gym.ForTime, Rounds: 3, Cap: 600, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 10}}})
	require.NoError(t, b.SetScore(c.ID, a.ID, "8:45"))
	assert.Equal(t, "8:45", b.seatOf(c.ID, a).Score)
	require.ErrorContains(t, b.SetScore(c.ID, a.ID, "heavy"), "write it as minutes and seconds, 8:45")
	assert.Equal(t, "8:45", b.seatOf(c.ID, a).Score)
	require.NoError(t, b.SetScore(c.ID, a.ID, " "))
	assert.Empty(t, b.seatOf(c.ID, a).Score)
}
