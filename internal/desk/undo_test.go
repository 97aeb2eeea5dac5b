package desk_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
)

func TestAWalkInIsOneStep(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	before := *b.open().Book()
	id, err := b.WalkIn(c.ID, "Dov Quist")
	require.NoError(t, err)
	_, here := b.Athlete(id)
	require.True(t, here)
	label, err := b.Undo()
	require.NoError(t, err)
	assert.Equal(t, "check Dov Quist in as new", label)
	assert.Equal(t, before, *b.open().Book(), "nobody is left behind")

	_, err = b.Redo()
	require.NoError(t, err)
	a, here := b.Athlete(id)
	require.True(t, here)
	assert.Equal(t, gym.Active, a.Status)
	assert.Equal(t, "Dov Quist", a.Name)
	assert.Len(t, mustClass(t, b.Desk, c.ID).Lifters, 1)
}

// Who has done something since stays: their results are never erased.
func TestAWalkInWithAResultStays(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	id, err := b.WalkIn(c.ID, "Dov Quist")
	require.NoError(t, err)
	_, err = b.LogResult(c.ID, id, "60")
	require.NoError(t, err)
	for range 2 {
		_, err = b.Undo()
		require.NoError(t, err)
	}
	a, here := b.Athlete(id)
	require.True(t, here)
	assert.Equal(t, gym.Archived, a.Status)
	assert.Empty(t, mustClass(t, b.Desk, c.ID).Lifters)
}

// A result that is taken back is void from the moment of taking it back.
func TestAResultIsVoidSinceItWasTakenBack(t *testing.T) {
	b, c, ilse, _ := classOfTwo(t)
	_, err := b.LogResult(c.ID, ilse.ID, "102.5")
	require.NoError(t, err)
	b.now = b.now.Add(7 * time.Minute)
	_, err = b.Undo()
	require.NoError(t, err)
	results := b.Results(ilse.ID)
	last := results[len(results)-1]
	require.NotNil(t, last.Void)
	assert.True(t, b.now.Equal(last.Void.At), "%s", last.Void.At)
}

// What undo says names whose it is.
func TestStepsNameWhomTheyAreAbout(t *testing.T) {
	b, c, ilse, _ := classOfTwo(t)
	b.now = b.now.Add(19 * time.Minute)
	for want, verb := range map[string]func() error{
		"call climb for Ilse Varga":                     func() error { return b.Call(c.ID, ilse.ID, gym.ClimbCall) },
		"log 102.5 kg as Back squat 3RM for Ilse Varga": func() error { _, err := b.LogResult(c.ID, ilse.ID, "102.5"); return err },
		"log that nothing counted for Ilse Varga":       func() error { return b.LogNothing(c.ID, ilse.ID) },
		"check out Ilse Varga":                          func() error { return b.CheckOut(c.ID, ilse.ID) },
		"set the number of Ilse Varga":                  func() error { return b.CountFrom(c.ID, ilse.ID, gym.Effort{Load: 90e9}) },
		"move Ilse Varga":                               func() error { return b.MoveTrack("", b.Today(), ilse.ID) },
		"set Ilse Varga to paused":                      func() error { return b.SetStatus(gym.Paused, ilse.ID) },
		"note restriction of Ilse Varga": func() error {
			return b.KeepRestriction(gym.Restriction{ID: "r", Athlete: ilse.ID, Text: "knee", From: b.Today()})
		},
		"change what " + b.Track(powerlifting).Name + " lifts": func() error { return b.KeepPiece(c.ID, gym.Piece{Track: powerlifting, Lift: "deadlift", Reps: 5}) },
	} {
		require.NoError(t, verb(), want)
		label, err := b.Undo()
		require.NoError(t, err, want)
		assert.Equal(t, want, label)
	}
}

// Finishing is taken back as anything else; the clocks stay held where they were.
func TestFinishingIsTakenBack(t *testing.T) {
	b, c, _, _ := classOfTwo(t)
	b.now = b.now.Add(5 * time.Minute)
	require.NoError(t, b.FinishClass(c.ID))
	b.now = b.now.Add(time.Minute)
	label, err := b.Undo()
	require.NoError(t, err)
	assert.Equal(t, "finish Morning", label)
	c = mustClass(t, b.reopened(), c.ID)
	assert.Equal(t, gym.Climbing, c.Stage)
	assert.True(t, c.Finished.IsZero())
	assert.False(t, c.Clock.Running)
	assert.Equal(t, 5*time.Minute, c.Clock.Elapsed(b.now))

	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(time.Minute)
	_, err = b.Redo()
	require.NoError(t, err)
	c = mustClass(t, b.reopened(), c.ID)
	assert.Equal(t, gym.Finished, c.Stage)
	assert.False(t, c.Clock.Running, "a finished class has no clock that runs")
	assert.Equal(t, 6*time.Minute, c.Clock.Elapsed(b.now))

	require.NoError(t, b.ReopenClass(c.ID))
	label, err = b.Undo()
	require.NoError(t, err)
	assert.Equal(t, "open again Morning", label)
	assert.Equal(t, gym.Finished, mustClass(t, b.Desk, c.ID).Stage)
}

// A class whose results were voided stays when its opening is taken back, and then
// the class before it cannot be opened beside it.
func TestFinishingStaysWhileAnotherClassIsOpen(t *testing.T) {
	b, c, ilse, _ := classOfTwo(t)
	require.NoError(t, b.FinishClass(c.ID))
	b.now = b.now.Add(24 * time.Hour)
	next, err := b.OpenClass(gym.Slot{Name: "Evening"})
	require.NoError(t, err)
	require.NoError(t, b.KeepPiece(next.ID, gym.Piece{Track: powerlifting, Lift: "back-squat", Reps: 3}))
	require.NoError(t, b.CheckIn(next.ID, ilse.ID))
	_, err = b.LogResult(next.ID, ilse.ID, "90")
	require.NoError(t, err)
	for range 4 { // the result, the check-in, the lift, the opening
		_, err = b.Undo()
		require.NoError(t, err)
	}
	_, err = b.Undo()
	require.ErrorIs(t, err, desk.ErrRunning)
	assert.Equal(t, gym.Finished, mustClass(t, b.Desk, c.ID).Stage)
	assert.Equal(t, "finish Morning", b.CanUndo(), "it can still be taken back later")
}

// Taking a check-in back leaves what is thought of the conditioning's course, as it
// leaves its clock.
func TestUndoLeavesTheCourseOfTheConditioning(t *testing.T) {
	b, c, ilse, _ := classOfTwo(t)
	b.now = b.now.Add(19 * time.Minute)
	require.NoError(t, b.KeepPiece(c.ID, gym.Piece{
		Track: powerlifting, Lift: "back-squat", Reps: 3,
		Workout: gym.Workout{Format: gym.ForTime, Rounds: 5, Items: []gym.Item{{Movement: "air-squat", Amount: 20}}},
	}))
	require.NoError(t, b.CheckOut(c.ID, ilse.ID))
	require.NoError(t, b.StartConditioning(c.ID))
	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(time.Minute)
	require.NoError(t, b.MoveOn(c.ID, powerlifting, false))
	before := mustClass(t, b.Desk, c.ID)
	require.NotEmpty(t, before.Ahead)
	require.NotZero(t, before.Pace)
	label, err := b.Undo()
	require.NoError(t, err)
	require.Equal(t, "check out Ilse Varga", label)
	after := mustClass(t, b.reopened(), c.ID)
	assert.Equal(t, before.Ahead, after.Ahead)
	assert.Equal(t, before.Pace, after.Pace)
}
