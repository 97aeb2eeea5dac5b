package floor_test

import (
	"fmt"
	"slices"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/ui/look"
)

// BenchmarkCall is one key on a full floor: the verb, its transaction on the disk,
// the board, what no longer works out, and the laying out of what changed. Every
// call is one that was never made before; where all are made, the clock goes on to
// the next rung, and a class that is through makes room for another.
func BenchmarkCall(b *testing.B) {
	benchmarkCalls(b, func(i int) fyne.KeyName { return fyne.KeyC })
}

// BenchmarkMissed is the same where every third lifter misses.
func BenchmarkMissed(b *testing.B) {
	benchmarkCalls(b, func(i int) fyne.KeyName {
		if i%3 == 0 {
			return fyne.KeyM
		}
		return fyne.KeyC
	})
}

func benchmarkCalls(b *testing.B, key func(i int) fyne.KeyName) {
	for _, lifters := range []int{30, 40} {
		b.Run(fmt.Sprint(lifters), func(b *testing.B) {
			calls(b, func(b *testing.B) *hall { return runningHall(b, lifters) }, key)
		})
	}
}

// calls makes one call after the other.
func calls(b *testing.B, running func(*testing.B) *hall, key func(i int) fyne.KeyName) {
	h, i := running(b), 0
	for b.Loop() {
		b.StopTimer()
		if !h.owing() {
			h = running(b)
			require.True(b, h.owing())
		}
		before := h.callsMade()
		b.StartTimer()
		h.press(key(i))
		i++
		b.StopTimer()
		require.Equal(b, before+1, h.callsMade(), "the key made a call")
		b.StartTimer()
	}
}

// BenchmarkCallShort is a call where plates run out and a way out is shown.
func BenchmarkCallShort(b *testing.B) {
	scarce := func(b *testing.B) *hall {
		h := runningHall(b, 40)
		e := h.Book().Equipment
		e.Stock.Plates = slices.Clone(e.Stock.Plates)
		for i := range e.Stock.Plates {
			e.Stock.Plates[i].Pairs = (e.Stock.Plates[i].Pairs + 2) / 3
		}
		require.NoError(b, h.KeepEquipment(e))
		c, _ := h.LiveClass()
		require.NotEmpty(b, h.Boards().Shortages(h.Boards().Board(c), 0), "the class is short of plates")
		return h
	}
	calls(b, scarce, func(int) fyne.KeyName { return fyne.KeyC })
}

// BenchmarkTick is one second of the clock on the same floor.
func BenchmarkTick(b *testing.B) {
	h := runningHall(b, 30)
	for b.Loop() {
		h.now = h.now.Add(time.Second)
		h.room.Tick(h.now)
	}
}

// BenchmarkCheckIn is a lifter checked in and out again beside all others.
func BenchmarkCheckIn(b *testing.B) {
	for _, lifters := range []int{30, 40} {
		b.Run(fmt.Sprint(lifters), func(b *testing.B) {
			h := newHall(b, look.Dark())
			c := h.crowd(lifters)
			h.room.Show(c.ID)
			i := 0
			for b.Loop() {
				who := h.Book().Athletes[i%lifters].ID
				i++
				require.NoError(b, h.CheckOut(c.ID, who))
				require.NoError(b, h.CheckIn(c.ID, who))
			}
		})
	}
}

// runningHall is a hall whose climb has come to its top rungs.
func runningHall(b *testing.B, lifters int) *hall {
	b.Helper()
	h := newHall(b, look.Dark())
	c := h.crowd(lifters)
	h.room.Show(c.ID)
	require.NoError(b, h.StartWith(c.ID, h.Book().Athletes[4].ID, gym.Effort{Load: 40e12}))
	require.NoError(b, h.StartClock(c.ID))
	h.now = h.now.Add(12 * time.Minute)
	h.room.Tick(h.now)
	return h
}

// owing goes on to the next moment at which a climb or a miss is asked for; false
// when the climb is over.
func (h *hall) owing() bool {
	finder := h.Book().Athletes[4].Name
	for {
		c, _ := h.LiveClass()
		who, _, ok := h.asked()
		m := h.Boards().Board(c).At(h.now)
		switch {
		case ok && who != finder:
			return true
		case ok:
			h.press(fyne.KeyF)
		case m.Finished:
			return false
		default:
			h.now = h.now.Add(m.LeftIn)
			h.room.Tick(h.now)
		}
	}
}

func (h *hall) callsMade() (n int) {
	c, _ := h.LiveClass()
	for _, l := range c.Lifters {
		n += len(l.Calls)
	}
	return n
}
