package tier

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"windlass/internal/gym"
)

// drawTrial makes a bout near a capacity of 3.
func drawTrial(t *rapid.T) trial {
	return trial{
		load:    rapid.Float64Range(2.6, 3.4).Draw(t, "load"),
		outcome: rapid.SampledFrom([]gym.Outcome{gym.Held, gym.Slowed, gym.Stopped}).Draw(t, "outcome"),
		choice:  rapid.Bool().Draw(t, "choice"), confidence: 1, heavier: 9,
	}
}

// After one bout a belief has the moments of the grid, and gives the same chance.
func TestBeliefAfterOneBoutIsTheGrid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sd := rapid.Float64Range(0.1, 0.4).Draw(t, "sd")
		h := Habits{Scale: rapid.Float64Range(0.08, 0.28).Draw(t, "scale"), Slow: 0.2, Choice: 0.3, Over: 0.1}
		g, b, bout := newGrid(), belief{3, sd * sd}, drawTrial(t)
		g.normal(3, sd, h.Scale)
		assert.InDelta(t, g.live(&h, &bout), b.live(&h, &bout), 1e-3)
		mean, variance := g.moments()
		assert.InDelta(t, mean, b.mean, 3e-3)
		assert.InEpsilon(t, variance, b.variance, 0.03)
		assert.InDelta(t, g.hold(&h, 2.9), b.hold(&h, 2.9), 0.04)
	})
}

// Over a log of somebody with a capacity of 3 a belief stays near the grid: it is a
// normal curve, and the posterior nearly one.
func TestBeliefStaysNearTheGrid(t *testing.T) {
	h := Habits{Scale: 0.1, Slow: 0.2, Drift: 0.01, Form: 0.01}
	rapid.Check(t, func(t *rapid.T) {
		g, b := newGrid(), belief{3, 0.09}
		g.normal(3, 0.3, h.Scale)
		for range rapid.IntRange(1, 20).Draw(t, "bouts") {
			bout := drawTrial(t)
			bout.outcome = gym.Held
			if over := bout.load + rapid.Float64Range(-0.2, 0.2).Draw(t, "luck") - 3; over > 0.2 {
				bout.outcome = gym.Stopped
			} else if over > 0 {
				bout.outcome = gym.Slowed
			}
			bout.since = span{weeks: 2, trained: 2}
			g.live(&h, &bout)
			b.live(&h, &bout)
		}
		mean, _ := g.moments()
		assert.InDelta(t, mean, b.mean, 0.06)
		assert.InDelta(t, g.hold(&h, 2.9), b.hold(&h, 2.9), 0.1)
	})
}
