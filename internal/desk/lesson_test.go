package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// While a lesson is learnt beside it the desk says that it does not know yet; with
// the lesson taken it says what it would have learnt by itself, of bouts that were
// logged meanwhile too.
func TestALessonIsLearntBesideTheDesk(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	wrong := b.bout(a, 24*mass.Kilogram, gym.Stopped)
	b.bout(a, 16*mass.Kilogram, gym.Held)
	heard := desk.Topic(0)
	b.Listen(func(about desk.Topic) { heard |= about })
	lesson := b.NextLesson()
	require.NotNil(t, lesson)
	assert.Nil(t, b.NextLesson(), "one at a time")
	_, err := b.Advise(a.ID, swing, 0)
	require.ErrorIs(t, err, desk.ErrLearning)
	require.NoError(t, b.VoidBout(wrong.ID, "another athlete's row"))
	require.NoError(t, lesson.Learn(t.Context()))
	_, err = b.Advise(a.ID, swing, 0)
	require.ErrorIs(t, err, desk.ErrLearning, "it is not taken up yet")
	heard = 0
	b.TakeLesson(lesson)
	assert.Equal(t, desk.AboutBouts, heard)
	got, err := b.Advise(a.ID, swing, 0)
	require.NoError(t, err)
	want, err := b.reopened().Advise(a.ID, swing, 0)
	require.NoError(t, err)
	assert.Equal(t, want.Decision.Suggestion.Load, got.Decision.Suggestion.Load)
	assert.InDelta(t, want.Decision.Suggestion.Hold, got.Decision.Suggestion.Hold, 0.02, "what one bout taught of others waits for the next lesson")
	assert.Nil(t, b.NextLesson(), "nothing is left to learn")
}

// What a suggestion rests on calls for another lesson, and nothing else does.
func TestWhatCallsForALesson(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	b.bout(a, 16*mass.Kilogram, gym.Held)
	learn := func() {
		t.Helper()
		lesson := b.NextLesson()
		require.NotNil(t, lesson)
		require.NoError(t, lesson.Learn(t.Context()))
		b.TakeLesson(lesson)
	}
	learn()

	noted, _ := b.Athlete(a.ID)
	noted.Notes = "left knee"
	require.NoError(t, b.KeepAthlete(noted))
	require.NoError(t, b.ChangeSettings(func(s *gym.Settings) error { s.Dark = !s.Dark; return nil }))
	b.log(a, "back-squat", "5x100")
	assert.Nil(t, b.NextLesson())

	bo := b.join("Bo Quist")
	_, err := b.Advise(bo.ID, swing, 0)
	require.ErrorIs(t, err, desk.ErrLearning, "nobody has learnt of a new athlete")
	_, err = b.Advise(a.ID, swing, 0)
	require.NoError(t, err, "what is known of the others stands")
	learn()
	_, err = b.Advise(bo.ID, swing, 0)
	require.NoError(t, err)

	require.NoError(t, b.ChangeSettings(func(s *gym.Settings) error { s.Confidence = 0.9; return nil }))
	_, err = b.Advise(a.ID, swing, 0)
	require.ErrorIs(t, err, desk.ErrLearning, "every load may be another")
	going := b.NextLesson()
	require.NoError(t, going.Learn(t.Context()))
	require.NoError(t, b.ChangeSettings(func(s *gym.Settings) error { s.Confidence = 0.8; return nil }))
	b.TakeLesson(going)
	_, err = b.Advise(a.ID, swing, 0)
	require.ErrorIs(t, err, desk.ErrLearning, "that lesson was outdated")
	learn()
}
