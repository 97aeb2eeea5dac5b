package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
)

// 75 % of a tested 5RM of 120 kg is 90 kg.
func TestSecondLiftLoadsComeFromTheRecords(t *testing.T) {
	b := newBench(t)
	ada, bo := b.join("Ada Brook"), b.join("Bo Quist")
	b.log(ada, "back-squat", "5x120")
	s := b.WithSecond(gym.SecondLift{}, "back-squat")
	rows := b.SecondLoadsOn(powerlifting, day.From(monday), s)
	require.Len(t, rows, 2)
	assert.Equal(t, "90 kg", rows[0].Load)
	assert.Empty(t, rows[1].Load)
	assert.Contains(t, rows[1].Why, "no 5RM of Back squat is known")
	assert.Equal(t, bo.Name, rows[1].Name)
	assert.Equal(t, "Loads known for 1 of 2 athletes.", desk.SecondSummary(rows))
	assert.Empty(t, b.SecondLoadsOn("no such track", day.From(monday), s))
}

func TestLengthsOfAWorkout(t *testing.T) {
	b := newBench(t)
	// An EMOM lasts as long as it is written, for everybody.
	w := b.WithMovement(b.WithFormat(gym.Workout{}, gym.EMOM), 0, "burpee")
	l := b.WorkoutLengths(w)
	require.NoError(t, l.Fault)
	assert.Equal(t, "12:00", l.Usual)
	assert.Equal(t, "12:00", l.Slow)
	assert.Contains(t, l.Note, "catalogue's pace", "the gym has no scores yet")
	// A fast athlete needs less for the same than a slow one.
	w = b.WithMovement(gym.Workout{}, 0, "burpee")
	l = b.WorkoutLengths(w)
	assert.Less(t, l.Fast, l.Slow)
	assert.Error(t, b.WorkoutLengths(gym.Workout{Format: gym.AMRAP, Items: w.Items}).Fault, "no length")
	assert.Equal(t, desk.Lengths{}, b.WorkoutLengths(gym.Workout{}))
}

func TestDayLinesTellAllFiveParts(t *testing.T) {
	b := newBench(t)
	c := b.planned(8)
	lines := b.DayLines(b.dayOf(c, 1, day.Monday))
	all := map[string]bool{}
	for _, l := range lines {
		for _, part := range []string{"Warm-up: ", "Main lift: ", "Second lift: ", "Conditioning: ", "Finisher: "} {
			if len(l) > len(part) && l[:len(part)] == part {
				all[part] = true
			}
		}
	}
	assert.Len(t, all, 5, "%v", lines)
}
