package wall

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"windlass/ui/look"
)

func TestTheCoachLearnsHowLongTheWallTakes(t *testing.T) {
	h := newHall(t)
	v, _ := h.show(look.Dark(), full, inch65)
	assert.Equal(t, "No class runs on the wall.", v.Reading())
	h.lifters(36)
	h.until(15 * time.Minute)
	v, _ = h.show(look.Dark(), full, inch65)
	assert.Contains(t, v.Reading(), fmt.Sprintf("36 lifters at 8 m on this screen: %d pages, %.0f s a round. With the farthest reader at 6 m, or a screen a third larger: ", len(v.fit.pages), v.fit.round().Seconds()))
	v, _ = h.show(look.Dark(), full, 0)
	assert.Contains(t, v.Reading(), "does not say how large it is")
	v, _ = h.show(look.Dark(), full, 150)
	assert.Contains(t, v.Reading(), "too far")
}

func TestAFewLiftersDoNotWait(t *testing.T) {
	h := newHall(t)
	h.lifters(6)
	h.until(15 * time.Minute)
	v, _ := h.show(look.Dark(), full, inch65)
	assert.Equal(t, "6 lifters at 8 m on this screen: one page, nobody waits.", v.Reading())
}
