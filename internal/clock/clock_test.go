package clock_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"windlass/internal/clock"
	"windlass/internal/gym"
)

var noon = time.Date(2026, 3, 9, 12, 0, 0, 0, time.UTC)

// after is an instant some seconds after noon.
func after(s float64) time.Time { return noon.Add(time.Duration(s * float64(time.Second))) }

func TestDigits(t *testing.T) {
	for _, row := range []struct {
		d        time.Duration
		up, down string
	}{
		{0, "00:00", "00:00"},
		{time.Nanosecond, "00:00", "00:01"},
		{999 * time.Millisecond, "00:00", "00:01"},
		{time.Second, "00:01", "00:01"},
		{59*time.Second + 1, "00:59", "01:00"},
		{20 * time.Minute, "20:00", "20:00"},
		{100*time.Minute + 5*time.Second, "100:05", "100:05"},
		{-time.Second, "00:00", "00:00"},
	} {
		assert.Equal(t, row.up, clock.Up(row.d), "%s up", row.d)
		assert.Equal(t, row.down, clock.Down(row.d), "%s down", row.d)
	}
}

func TestToSecond(t *testing.T) {
	climbs := gym.Class{Clock: gym.Run{}.Start(after(0.25))}
	works := climbs
	works.Workout = gym.Run{}.Start(after(10.4))
	for _, row := range []struct {
		name  string
		class gym.Class
		now   float64
		left  time.Duration
	}{
		{"the wall clock without a class", gym.Class{}, 0.3, 700 * time.Millisecond},
		{"on the second, the whole next one", gym.Class{}, 5, time.Second},
		{"the climb's own second", climbs, 1.3, 950 * time.Millisecond},
		{"the conditioning goes before the climb", works, 12.2, 200 * time.Millisecond},
		{"a climb that is held", gym.Class{Clock: climbs.Clock.Hold(after(3.5))}, 4.1, 900 * time.Millisecond},
	} {
		assert.InDelta(t, row.left, clock.ToSecond(row.class, after(row.now)), float64(time.Microsecond), row.name)
	}
}

// The steady clock of a desk started at noon; the class began 10 s later.
func TestCorrected(t *testing.T) {
	run := gym.Run{}.Start(after(10))
	was := clock.Instant{Wall: noon}
	at := func(wall, steady float64) clock.Instant {
		return clock.Instant{Wall: after(wall), Steady: time.Duration(steady * float64(time.Second))}
	}
	for _, row := range []struct {
		name         string
		is           clock.Instant
		throughSleep bool
		jump         time.Duration
		done         bool
		shows        time.Duration // at is
	}{
		{"no jump", at(100, 100), true, 0, false, 90 * time.Second},
		{"within the grain", at(100.09, 100), true, 0, false, 90*time.Second + 90*time.Millisecond},
		{"set back an hour", at(100-3600, 100), true, -time.Hour, true, 90 * time.Second},
		{"set back, steady clock sleeps", at(100-3600, 100), false, -time.Hour, true, 90 * time.Second},
		{"set forward an hour", at(100+3600, 100), true, time.Hour, true, 90 * time.Second},
		{"forward or asleep: believed", at(160, 100), false, time.Minute, false, 150 * time.Second},
		{"asleep, and the steady clock counted it", at(160, 160), true, 0, false, 150 * time.Second},
		{"bent little by little", at(600.15, 600), true, 150 * time.Millisecond, true, 590 * time.Second},
	} {
		c := clock.Corrected(run, was, row.is, row.throughSleep)
		assert.Equal(t, row.jump, c.Jump, row.name)
		assert.Equal(t, row.done, c.Done, row.name)
		assert.Equal(t, row.shows, c.Run.Elapsed(row.is.Wall), row.name)
		if !row.done {
			assert.Equal(t, run, c.Run, row.name)
		}
	}
}

func TestCorrectedLeavesAHeldClock(t *testing.T) {
	held := gym.Run{}.Start(noon).Hold(after(75))
	c := clock.Corrected(held, clock.Instant{Wall: after(80)}, clock.Instant{Wall: after(-80), Steady: time.Second}, true)
	assert.Equal(t, -161*time.Second, c.Jump)
	assert.False(t, c.Done)
	assert.Equal(t, 75*time.Second, c.Run.Elapsed(after(-80)))
}

// However often the system clock jumps, a corrected class shows the steady time.
func TestCorrectedFollowsTheSteadyClock(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		was := clock.Instant{Wall: noon}
		run := gym.Run{}.Start(noon)
		offset := time.Duration(0)
		for range rapid.IntRange(1, 20).Draw(t, "looks") {
			steady := was.Steady + time.Duration(rapid.IntRange(0, 10_000).Draw(t, "ms"))*time.Millisecond
			if rapid.Bool().Draw(t, "jumps") {
				offset += time.Duration(rapid.IntRange(-1_000_000, 1_000_000).Draw(t, "jump")) * time.Millisecond
			}
			is := clock.Instant{Wall: noon.Add(steady + offset), Steady: steady}
			c := clock.Corrected(run, was, is, true)
			if c.Done {
				run, was = c.Run, is
			}
			assert.InDelta(t, steady.Seconds(), run.Elapsed(is.Wall).Seconds(), clock.Tolerance.Seconds())
		}
	})
}
