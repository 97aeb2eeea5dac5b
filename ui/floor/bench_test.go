package floor_test

import (
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/ui/look"
)

// BenchmarkCall is one key on the floor of thirty lifters: the verb, its
// transaction on the disk, the board and the drawing of what changed.
func BenchmarkCall(b *testing.B) {
	h := runningHall(b)
	for b.Loop() {
		h.press(fyne.KeyC)
	}
}

// BenchmarkTick is one second of the clock on the same floor.
func BenchmarkTick(b *testing.B) {
	h := runningHall(b)
	for b.Loop() {
		h.now = h.now.Add(time.Second)
		h.room.Tick(h.now)
	}
}

// BenchmarkCheckIn is a lifter checked in and out again beside twenty-nine others.
func BenchmarkCheckIn(b *testing.B) {
	h := newHall(b, look.Dark())
	c := h.thirty()
	h.room.Show(c.ID)
	last := h.Book().Athletes[29].ID
	for b.Loop() {
		require.NoError(b, h.CheckOut(c.ID, last))
		require.NoError(b, h.CheckIn(c.ID, last))
	}
}

func runningHall(b *testing.B) *hall {
	b.Helper()
	h := newHall(b, look.Dark())
	c := h.thirty()
	h.room.Show(c.ID)
	require.NoError(b, h.StartWith(c.ID, h.Book().Athletes[4].ID, gym.Effort{Load: 40e12}))
	require.NoError(b, h.StartClock(c.ID))
	h.now = h.now.Add(12 * time.Minute)
	h.room.Tick(h.now)
	return h
}
