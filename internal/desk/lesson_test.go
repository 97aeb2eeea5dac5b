package desk_test

import (
	"testing"
	"time"

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
	_, err = b.Advise(a.ID, swing, 0)
	require.NoError(t, err)
	assert.Nil(t, b.NextLesson(), "the coach may be logging still")
	b.learnInALull()
	b.agreesWithAFreshStart(a)
	assert.Nil(t, b.NextLesson(), "nothing is left to learn")
}

// lull is longer than a desk waits for the next row to be logged.
const lull = 10 * time.Second

// learnInALull lets the desk learn what was logged, as the window does.
func (b *bench) learnInALull() {
	b.t.Helper()
	b.now = b.now.Add(lull)
	lesson := b.NextLesson()
	require.NotNil(b.t, lesson)
	require.NoError(b.t, lesson.Learn(b.t.Context()))
	b.TakeLesson(lesson)
}

// agreesWithAFreshStart checks that there is one answer for one log: the running
// desk's, that of a desk opened on the same file, and that of the command line.
func (b *bench) agreesWithAFreshStart(athletes ...gym.Athlete) {
	b.t.Helper()
	fresh := b.reopened()
	standing, err := b.StandingOn(b.t.Context(), b.Today())
	require.NoError(b.t, err)
	for _, a := range athletes {
		got, err := b.Advise(a.ID, swing, 60)
		require.NoError(b.t, err)
		want, err := fresh.Advise(a.ID, swing, 60)
		require.NoError(b.t, err)
		assert.InDelta(b.t, want.Hold, got.Hold, 1e-9, a.Name)
		assert.Equal(b.t, want.Decision.Suggestion.Why, got.Decision.Suggestion.Why, a.Name)
		m, err := standing.Model(a.ID, swing, b.Today())
		require.NoError(b.t, err)
		assert.InDelta(b.t, m.Hold(got.Decision.Load, 60), got.Hold, 1e-9, a.Name)
	}
}

// What a class logs speaks of those who were not in it as well. While its rows come
// one after the other no other load changes; in the lull after them the running desk
// learns what a desk would that starts on the file.
func TestTheDeskLearnsFromAClassAsAFreshStartDoes(t *testing.T) {
	b, c, away := withWorkout(t, gym.Workout{Format: gym.ForTime, Reps: []int{21, 15, 9}, Items: []gym.Item{{Movement: swing}}})
	people := []gym.Athlete{away}
	for i := range 16 {
		people = append(people, b.come(c.ID, "Lifter "+string(rune('A'+i)), gym.StandardM, "back-squat", "3x100"))
	}
	b.learnInALull()
	before, err := b.Advise(away.ID, swing, 60)
	require.NoError(t, err)
	for _, a := range people[1:] {
		b.now = b.now.Add(2 * time.Second)
		require.NoError(t, b.LogBout(c.ID, a.ID, swing, 20*mass.Kilogram, gym.Stopped))
		require.Nil(t, b.NextLesson(), "the coach is logging")
	}
	during, err := b.Advise(away.ID, swing, 60)
	require.NoError(t, err)
	assert.Equal(t, before.Hold, during.Hold)
	b.learnInALull()
	after, err := b.Advise(away.ID, swing, 60)
	require.NoError(t, err)
	assert.NotEqual(t, before.Decision.Suggestion.Why, after.Decision.Suggestion.Why, "20 kg was too heavy for all others")
	b.agreesWithAFreshStart(people...)

	b.log(people[1], "back-squat", "1x180")
	_, err = b.Undo()
	require.NoError(t, err)
	b.log(people[2], "deadlift", "1x220")
	b.learnInALull()
	b.agreesWithAFreshStart(people...)
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
	b.now = b.now.Add(lull)
	assert.Nil(t, b.NextLesson())
	b.log(a, "back-squat", "5x100")
	assert.Nil(t, b.NextLesson(), "a class's results do not each cost one")
	b.now = b.now.Add(lull)
	learn()

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
