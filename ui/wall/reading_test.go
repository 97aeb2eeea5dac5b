package wall

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/ui/look"
)

func TestTheCoachLearnsHowLongTheWallTakes(t *testing.T) {
	h := newHall(t, 0)
	v, _ := h.show(look.Dark(), full, inch65)
	assert.Equal(t, "No class runs on the wall.", v.Reading())
	h = newHall(t, 36)
	h.until(15 * time.Minute)
	v, _ = h.show(look.Dark(), full, inch65)
	assert.Contains(t, v.Reading(), fmt.Sprintf("36 lifters at 8 m on this screen: %d pages, %.0f s a round. With the farthest reader at 6 m, or a screen a third larger: ", len(v.fit.pages), v.fit.round().Seconds()))
	v, _ = h.show(look.Dark(), full, 0)
	assert.Contains(t, v.Reading(), "does not say how large it is")
	v, _ = h.show(look.Dark(), full, 150)
	assert.Contains(t, v.Reading(), "too far")
}

func TestAFewLiftersDoNotWait(t *testing.T) {
	h := newHall(t, 6)
	h.until(15 * time.Minute)
	v, _ := h.show(look.Dark(), full, inch65)
	assert.Equal(t, "6 lifters at 8 m on this screen: one page, nobody waits.", v.Reading())
}

// What the coach sets is seen at once, and not at the next rung.
func TestANearerReaderIsHeededAtOnce(t *testing.T) {
	h := newHall(t, 36)
	h.until(90 * time.Second)
	require.NoError(t, h.HoldClock(h.class))
	v, _ := h.show(look.Dark(), full, inch65)
	far := len(v.fit.pages)
	h.settings(func(s *gym.Settings) { s.Viewer = 4 })
	v.Show(h.state(), h.now)
	assert.Less(t, len(v.fit.pages), far)
	assert.Contains(t, v.Reading(), "36 lifters at 4 m")
}
