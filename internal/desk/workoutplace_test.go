package desk_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
)

// underWay is a class at its conditioning so many seconds into the work, and how to
// read its first workout.
func underWay(t *testing.T, w gym.Workout, seconds int) (*bench, gym.Class, func() string) {
	t.Helper()
	b, c, _ := withWorkout(t, w)
	require.NoError(t, b.StartConditioning(c.ID))
	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(clock.CountIn + time.Duration(seconds)*time.Second)
	return b, c, func() string {
		class := mustClass(t, b.Desk, c.ID)
		board := b.Boards().Board(class)
		return board.Workouts[0].UsualText(board.Workouts[0].At(class.Workout, b.now))
	}
}

var swings = []gym.Item{{Movement: "kettlebell-swing", Amount: 10}, {Movement: "burpee", Amount: 10}}

// No clock can see where anybody is: it says that it guesses, until the coach says
// it better.
func TestTheCoachMovesTheRoundOn(t *testing.T) {
	b, c, text := underWay(t, gym.Workout{Format: gym.ForTime, Rounds: 5, Items: swings}, 5)
	assert.Equal(t, "usual pace: round 1 of 5", text())
	for _, want := range []string{"about round 2 of 5", "about round 3 of 5", "about round 4 of 5", "about round 5 of 5", "about round 5 of 5"} {
		require.NoError(t, b.MoveOn(c.ID, powerlifting, false))
		assert.Equal(t, want, text())
	}
	require.NoError(t, b.MoveOn(c.ID, powerlifting, true))
	assert.Equal(t, "about round 4 of 5", text())
	b.now = b.now.Add(2 * time.Minute)
	assert.Equal(t, "about round 5 of 5", text(), "and it goes on from there at the usual pace")
	b.now = b.now.Add(20 * time.Minute)
	assert.Empty(t, text(), "a usual athlete would be done")
	require.NoError(t, b.MoveOn(c.ID, powerlifting, true))
	assert.Equal(t, "about round 5 of 5", text())
	for range 6 {
		require.NoError(t, b.MoveOn(c.ID, powerlifting, true))
	}
	assert.Equal(t, "about round 1 of 5", text())

	require.NoError(t, b.SetClock(c.ID, 0))
	assert.Empty(t, mustClass(t, b.Desk, c.ID).Ahead, "the clock begins anew")
}

func TestPlacesOfEveryFormat(t *testing.T) {
	chipper := append(append([]gym.Item{}, swings...), gym.Item{Movement: "sit-up", Amount: 30})
	for _, row := range []struct {
		w     gym.Workout
		first string
		then  string
	}{
		{gym.Workout{Format: gym.Chipper, Items: chipper}, "usual pace: 1 of 3", "about 2 of 3"},
		{gym.Workout{Format: gym.AMRAP, Seconds: 600, Items: swings}, "usual pace: round 1", "about round 2"},
		{gym.Workout{Format: gym.ForTime, Reps: []int{21, 15, 9}, Items: []gym.Item{{Movement: "kettlebell-swing"}}}, "usual pace: the 21s", "about the 15s"},
		{gym.Workout{Format: gym.PlainSets, Rounds: 4, Rest: 60, Items: swings}, "usual pace: set 1 of 4", "about set 2 of 4"},
	} {
		b, c, text := underWay(t, row.w, 3)
		assert.Equal(t, row.first, text())
		require.NoError(t, b.MoveOn(c.ID, powerlifting, false))
		assert.Equal(t, row.then, text())
	}
	b, c, text := underWay(t, gym.Workout{Format: gym.EMOM, Seconds: 600, Items: swings}, 3)
	assert.Empty(t, text(), "its own clock says it")
	assert.ErrorContains(t, b.MoveOn(c.ID, powerlifting, false), "its clock tells the round by itself")
}

// A quick class may be further in an AMRAP than is usual at its end.
func TestAnAMRAPGoesOnBeyondTheUsual(t *testing.T) {
	b, c, text := underWay(t, gym.Workout{Format: gym.AMRAP, Seconds: 600, Items: swings}, 590)
	usual := text()
	require.NoError(t, b.MoveOn(c.ID, powerlifting, false))
	assert.NotEmpty(t, text())
	assert.NotEqual(t, usual, text())
}

func TestMoveOnBeforeTheStart(t *testing.T) {
	b, c, _ := withWorkout(t, gym.Workout{Format: gym.AMRAP, Seconds: 600, Items: swings})
	assert.ErrorContains(t, b.MoveOn(c.ID, powerlifting, false), "start the clock first")
}

// The desk and the wall, which reads only the class, guess at one pace.
func TestTheWallGuessesAtTheGymsPace(t *testing.T) {
	b, c, _ := withWorkout(t, quickRounds)
	for i := range 12 {
		slow := b.come(c.ID, "Slow "+string(rune('A'+i)), gym.StandardM, "back-squat", "3x100")
		require.NoError(t, b.SetScore(c.ID, slow.ID, "3+0"))
	}
	require.NoError(t, b.StartConditioning(c.ID))
	class := mustClass(t, b.Desk, c.ID)
	assert.InDelta(t, b.Pace().Factor, class.Pace, 1e-9)
	book := b.Book()
	wall := desk.NewBoards(&gym.Book{Settings: book.Settings, Movements: book.Movements}).Board(class)
	assert.Equal(t, b.Boards().Board(class).Workouts[0].Course, wall.Workouts[0].Course)
}
