package wall

import (
	"context"
	"slices"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// Who waits until all stations have lifted is told so beside the load, in the rungs
// for which the coach decided it.
func TestWhoLiftsLastIsToldSo(t *testing.T) {
	h := newHall(t, 6)
	c, _ := h.Class(h.class)
	c.Lifters = slices.Clone(c.Lifters)
	for i := range c.Lifters { // any of them may stand on the first page
		c.Lifters[i] = c.Lifters[i].Except(gym.Exception{Rung: 0, Last: true})
	}
	require.NoError(t, h.file.Write(context.Background(), gym.PutClass{Class: c}))
	v, w := h.show(look.Dark(), fyne.NewSize(1920, 1080), inch27)
	told := func() (n int) {
		for _, text := range uitest.Read(w) {
			if strings.HasSuffix(text, " last") {
				n++
			}
		}
		return n
	}
	assert.Positive(t, told())
	h.look(w, "last")

	c.Clock = c.Clock.Start(h.now)
	c.Stage = gym.Climbing
	require.NoError(t, h.file.Write(context.Background(), gym.PutClass{Class: c}))
	h.now = h.now.Add(61 * time.Second)
	v.Show(h.state(), h.now)
	assert.Equal(t, 0, told(), "the rung after it")
}
