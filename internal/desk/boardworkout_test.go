package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
)

func TestWorkoutTitles(t *testing.T) {
	for _, row := range []struct {
		w    gym.Workout
		want string
	}{
		{gym.Workout{Format: gym.AMRAP, Seconds: 720}, "AMRAP 12 min"},
		{gym.Workout{Format: gym.EMOM, Seconds: 600}, "EMOM 10 min"},
		{gym.Workout{Format: gym.ForTime, Rounds: 3, Cap: 540}, "For time, 3 rounds, cap 9 min"},
		{gym.Workout{Format: gym.ForTime, Rounds: 1}, "For time, 1 round"},
		{gym.Workout{Format: gym.ForTime, Reps: []int{21, 15, 9}}, "For time, 21-15-9"},
		{gym.Workout{Format: gym.Chipper, Cap: 1200}, "Chipper, cap 20 min"},
		{gym.Workout{Format: gym.Intervals, Rounds: 8, Work: 40, Rest: 20}, "8 × 40 s work, 20 s rest"},
		{gym.Workout{Format: gym.PlainSets, Rounds: 5, Rest: 90}, "5 sets, 90 s rest"},
		{gym.Workout{Format: gym.Intervals, Rounds: 4, Work: 150, Rest: 60}, "4 × 2:30 min work, 1 min rest"},
	} {
		assert.Equal(t, row.want, desk.WorkoutTitle(row.w))
	}
}

func TestTracksThatDoTheSameShareAWorkout(t *testing.T) {
	book := smallGym(t)
	book.Tracks = append(book.Tracks, gym.Track{ID: "b", Name: "Strongman"}, gym.Track{ID: "c", Name: "Weightlifting"})
	swings := gym.Workout{Format: gym.ForTime, Reps: []int{21, 15, 9}, Items: []gym.Item{{Movement: "kettlebell-swing"}}}
	other := gym.Workout{Format: gym.EMOM, Seconds: 600, Items: []gym.Item{{Movement: "wall-ball", Amount: 15}, {}}}
	board := desk.NewBoards(&book).Board(gym.Class{Pieces: []gym.Piece{{Track: powerlifting, Workout: swings}, {Track: "b", Workout: swings}, {Track: "c", Workout: other}}})
	require.Len(t, board.Workouts, 2)
	assert.Equal(t, []string{"Powerlifting", "Strongman"}, board.Workouts[0].Tracks)
	assert.Equal(t, []desk.BoardItem{{Name: "Kettlebell swing", Amount: "21-15-9", Loads: []desk.BoardTiers{
		{Standard: gym.StandardM, Full: "24 kg", Mid: "20 kg", Light: "16 kg"}, {Standard: gym.StandardW, Full: "16 kg", Mid: "12 kg", Light: "8 kg"},
	}}}, board.Workouts[0].Items)
	assert.Equal(t, "Rest", board.Workouts[1].Items[1].Name)
}

// withWorkout is a class of one with a conditioning part.
func withWorkout(t *testing.T, w gym.Workout) (*bench, gym.Class, gym.Athlete) {
	t.Helper()
	b, c := hall(t)
	require.NoError(t, b.KeepPiece(c.ID, gym.Piece{Track: powerlifting, Lift: "back-squat", Reps: 3, Workout: w}))
	a := b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	return b, mustClass(t, b.Desk, c.ID), a
}
