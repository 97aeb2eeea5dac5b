package gym_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"windlass/internal/gym"
)

var six = time.Date(2026, time.March, 9, 18, 0, 0, 0, time.UTC)

func TestClockThroughAClass(t *testing.T) {
	after := func(s int) time.Time { return six.Add(time.Duration(s) * time.Second) }
	var r gym.Run
	steps := []struct {
		what    string
		do      func(gym.Run) gym.Run
		at      int // seconds after six at which the clock is read
		shown   time.Duration
		running bool
	}{
		{"not started", func(r gym.Run) gym.Run { return r }, 5, 0, false},
		{"held before it started", func(r gym.Run) gym.Run { return r.Hold(after(5)) }, 9, 0, false},
		{"started at 10", func(r gym.Run) gym.Run { return r.Start(after(10)) }, 25, 15 * time.Second, true},
		{"started again at 30: goes on", func(r gym.Run) gym.Run { return r.Start(after(30)) }, 40, 30 * time.Second, true},
		{"held at 70", func(r gym.Run) gym.Run { return r.Hold(after(70)) }, 500, time.Minute, false},
		{"held twice", func(r gym.Run) gym.Run { return r.Hold(after(600)) }, 700, time.Minute, false},
		{"put to 2:00 while held", func(r gym.Run) gym.Run { return r.Set(2*time.Minute, after(700)) }, 800, 2 * time.Minute, false},
		{"started at 900", func(r gym.Run) gym.Run { return r.Start(after(900)) }, 930, 150 * time.Second, true},
		{"put to 5:00 while running", func(r gym.Run) gym.Run { return r.Set(5*time.Minute, after(930)) }, 931, 301 * time.Second, true},
		{"put under nothing", func(r gym.Run) gym.Run { return r.Set(-time.Minute, after(940)) }, 941, time.Second, true},
	}
	for i, s := range steps {
		r = s.do(r)
		assert.Equal(t, s.shown, r.Elapsed(after(s.at)), s.what)
		assert.Equal(t, s.running, r.Running, s.what)
		assert.Equal(t, i >= 2, r.Started(), s.what)
	}
}

func TestClockIsNeverNegative(t *testing.T) {
	r := gym.Run{}.Start(six)
	assert.Zero(t, r.Elapsed(six.Add(-time.Hour)), "the machine's clock went back")
	assert.Zero(t, r.Hold(six.Add(-time.Hour)).Elapsed(six))
	assert.Zero(t, gym.Run{Before: -time.Second}.Elapsed(six), "a file said so")
}

// A clock that is started and held at will shows the sum of its running times,
// kept here as a plain sum.
func TestClockAddsItsRunningTimes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		now, running := six, false
		var r gym.Run
		var sum time.Duration
		for range rapid.IntRange(1, 20).Draw(t, "steps") {
			wait := time.Duration(rapid.Int64Range(0, int64(time.Hour)).Draw(t, "wait"))
			now = now.Add(wait)
			if running {
				sum += wait
			}
			switch rapid.SampledFrom([]string{"start", "hold", "set"}).Draw(t, "step") {
			case "start":
				r, running = r.Start(now), true
			case "hold":
				r, running = r.Hold(now), false
			case "set":
				sum = time.Duration(rapid.Int64Range(0, int64(time.Hour)).Draw(t, "shown"))
				r = r.Set(sum, now)
			}
			if got := r.Elapsed(now); got != sum {
				t.Fatalf("the clock shows %s, not %s", got, sum)
			}
		}
	})
}

func TestClassFindsAPiece(t *testing.T) {
	c := gym.Class{Pieces: []gym.Piece{{Track: "power", Lift: "deadlift"}}}
	p, ok := c.Piece("power")
	assert.True(t, ok)
	assert.Equal(t, gym.LiftKey("deadlift"), p.Lift)
	_, ok = c.Piece("strongman")
	assert.False(t, ok)
}
