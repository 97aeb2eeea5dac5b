package desk_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/clock"
	"windlass/internal/gym"
)

func TestResumedSaysTheTrueTime(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	assert.Empty(t, b.Resumed(mustClass(t, b.Desk, c.ID)))
	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(8 * time.Minute)
	again := b.reopened()
	assert.Equal(t, "Open class went on while this window was closed: rung 6 runs, the clock is at 08:00.", again.Resumed(mustClass(t, again, c.ID)))
	b.now = b.now.Add(time.Hour)
	assert.Contains(t, again.Resumed(mustClass(t, again, c.ID)), "ended while this window was closed")
	require.NoError(t, b.SetClock(c.ID, 5*time.Minute))
	require.NoError(t, b.HoldClock(c.ID))
	assert.Equal(t, "Open class is held at 05:00.", b.Resumed(mustClass(t, b.Desk, c.ID)))
}

// A machine's two clocks part when somebody sets the date and hour. Set back, the
// class's clock is put right; a jump forward may be sleep, through which the class
// went on, so it is only told.
func TestClassClockOutlivesACorrectedSystemClock(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	look := func(steady time.Duration) string {
		said, err := b.Mind(clock.Instant{Wall: b.now, Steady: steady})
		require.NoError(t, err)
		return said
	}
	shown := func() time.Duration { return mustClass(t, b.Desk, c.ID).Clock.Elapsed(b.now) }
	assert.Empty(t, look(0))
	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(2 * time.Minute)
	assert.Empty(t, look(2*time.Minute), "two clocks that agree need no word")

	b.now = b.now.Add(time.Minute - time.Hour) // a minute passes, and somebody sets the clock back an hour
	assert.Equal(t, "The system clock went back by 1h0m0s; the class's clock was put right.", look(3*time.Minute))
	assert.Equal(t, 3*time.Minute, shown())
	again := b.reopened()
	assert.Equal(t, 3*time.Minute, mustClass(t, again, c.ID).Clock.Elapsed(b.now), "on the disk, too, for the wall")

	b.now = b.now.Add(30*time.Minute + time.Minute)
	assert.Contains(t, look(4*time.Minute), "30m0s")
	assert.Equal(t, 34*time.Minute, shown(), "what may have been sleep is believed")
	b.now = b.now.Add(300 * time.Millisecond)
	assert.Empty(t, look(4*time.Minute), "a third of a second is nothing to a coach")
}

// The clock of a test has no steady reading; then the wall clock is believed.
func TestMindClockWithoutASteadyReading(t *testing.T) {
	b, _ := hall(t)
	for range 3 {
		said, err := b.MindClock(b.now)
		require.NoError(t, err)
		assert.Empty(t, said)
		b.now = b.now.Add(24 * time.Hour)
	}
}

func TestNextRungAndBack(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	require.ErrorContains(t, b.NextRung(c.ID), "has not started")
	require.ErrorContains(t, b.RungBefore(c.ID), "has not started")
	require.NoError(t, b.StartClock(c.ID))
	require.NoError(t, b.NextRung(c.ID))
	assert.Equal(t, time.Minute, mustClass(t, b.Desk, c.ID).Clock.Elapsed(b.now))
	require.NoError(t, b.RungBefore(c.ID))
	assert.Zero(t, mustClass(t, b.Desk, c.ID).Clock.Elapsed(b.now))
}
