package wall

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/ui/look"
)

func TestHowLongSomebodyWaits(t *testing.T) {
	assert.Equal(t, 20*time.Second, waitIn(time.Minute), "a third of the rung")
	assert.Equal(t, 30*time.Second, waitIn(3*time.Minute), "half a minute at most")
	assert.Equal(t, 30*time.Second, waitIn(0), "nobody lifts")
}

// Pages stand as long as reading them takes, share what time is left, and never
// stand longer than the usual turn.
func TestPagesStandAsLongAsTheyAreRead(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lines := rapid.SliceOfN(rapid.IntRange(0, 12), 1, 20).Draw(t, "lines")
		round := time.Duration(rapid.IntRange(1, 60).Draw(t, "seconds")) * time.Second
		stands := standing(lines, round)
		require.Len(t, stands, len(lines))
		least := time.Duration(0)
		for i, s := range stands {
			reading := settle + time.Duration(lines[i])*perName
			least += reading
			assert.GreaterOrEqual(t, s, reading)
			assert.LessOrEqual(t, s, max(reading, Turn))
		}
		assert.LessOrEqual(t, sum(stands), max(round, least))
	})
}

// Every page comes once a round and stands for its time, before the first instant
// as well: a clock may be set back.
func TestPagesTakeTurns(t *testing.T) {
	stands := []time.Duration{3 * time.Second, 4 * time.Second, 2 * time.Second}
	for _, row := range []struct {
		since time.Duration
		page  int
	}{{0, 0}, {2999 * time.Millisecond, 0}, {3 * time.Second, 1}, {7 * time.Second, 2}, {9 * time.Second, 0}, {16 * time.Second, 2}, {-time.Second, 2}} {
		assert.Equal(t, row.page, turnAt(stands, row.since), "after %s", row.since)
	}
	assert.Zero(t, turnAt(nil, time.Hour))
	assert.Zero(t, turnAt(stands[:1], time.Hour))
}

// A rung that ends does not send the round back to its beginning: who stood first
// on the page is on the one that follows.
func TestTheRoundGoesOnInTheNextRung(t *testing.T) {
	h := newHall(t, 36)
	h.until(90 * time.Second)
	v, _ := h.show(look.Dark(), full, inch65)
	for v.drawn.turn < 2 {
		h.now = h.now.Add(time.Second)
		v.Tick(h.now)
	}
	head := v.fit.pages[v.drawn.turn][0][0]
	rung := v.drawn.scene.Climb.Present
	h.until(13 * time.Minute)
	v.Tick(h.now)
	require.NotEqual(t, rung, v.drawn.scene.Climb.Present)
	shown := false
	for _, c := range v.fit.pages[v.drawn.turn] {
		for _, p := range c {
			shown = shown || p.station == head.station && head.from >= p.from && head.from < p.to
		}
	}
	assert.True(t, shown, "%v is on page %d of %v", head, v.drawn.turn, v.fit.pages)
}

// A clock that is shown faster leaves as long to read.
func TestPagesTurnInTheReadersTime(t *testing.T) {
	h := newHall(t, 36)
	v, _ := h.show(look.Dark(), full, inch65)
	v.SetSpeed(60)
	require.Greater(t, len(v.fit.pages), 1)
	stands := v.fit.stands[0]
	v.Tick(h.now.Add(2 * stands)) // of the fast clock: little for a reader
	assert.Equal(t, 0, v.drawn.turn)
	v.Tick(h.now.Add(61 * stands))
	assert.Equal(t, 1, v.drawn.turn)
}
