package desk_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/climb"
	"windlass/internal/desk"
	"windlass/internal/gym"
)

// Whoever leaves, moves or calls in mid-climb: a set of the running rung whose load
// and station stay keeps the plates that lie on its bar, on the wall as on the desk.
func TestWhatIsOnABarStays(t *testing.T) {
	b := newBench(t)
	b.people(9)
	would := 0 // bars that a plan from the start would have changed
	rapid.Check(t, func(rt *rapid.T) {
		c := b.scarce(rt)
		require.NoError(rt, b.StartClock(c.ID))
		b.now = b.now.Add(time.Duration(rapid.IntRange(30, 19*60).Draw(rt, "seconds")) * time.Second)
		c = mustClass(b.t, b.Desk, c.ID)
		before := b.Boards().Board(c)
		rung := before.At(b.now).Rung
		who := c.Lifters[rapid.IntRange(0, len(c.Lifters)-1).Draw(rt, "who")].Athlete
		switch rapid.SampledFrom([]string{"leave", "move", "call"}).Draw(rt, "what") {
		case "leave":
			require.NoError(rt, b.CheckOut(c.ID, who))
		case "move":
			require.NoError(rt, b.MoveLifter(c.ID, who, rapid.IntRange(0, 1).Draw(rt, "to")))
		case "call":
			_ = b.Call(c.ID, who, gym.SettleCall) // refused in a rung that asks for none
		}
		c = mustClass(b.t, b.Desk, c.ID)
		after := desk.NewBoards(b.Book()).Board(c)
		assertStays(rt, before, after, rung)
		for i := range c.Lifters {
			c.Lifters[i].Laid = gym.Laid{}
		}
		would += changed(before, b.Boards().Board(c), rung)
	})
	assert.NotZero(t, would, "the property was put to the test")
}

func assertStays(rt *rapid.T, before, after desk.Board, rung int) {
	for _, was := range before.Lifters() {
		if now, ok := after.Lifter(was.Athlete); ok && sameSet(was, now, rung) {
			assert.Equal(rt, was.Sets[rung].Discs, now.Sets[rung].Discs, "%s in rung %d", was.Name, rung+1)
		}
	}
}

func changed(before, after desk.Board, rung int) (n int) {
	for _, was := range before.Lifters() {
		now, ok := after.Lifter(was.Athlete)
		if ok && sameSet(was, now, rung) && !assert.ObjectsAreEqual(was.Sets[rung].Discs, now.Sets[rung].Discs) {
			n++
		}
	}
	return n
}

// sameSet reports whether a lifter lifts the same at the same station.
func sameSet(was, now desk.BoardLifter, rung int) bool {
	a, b := was.Sets[rung], now.Sets[rung]
	return was.Station == now.Station && a.State != climb.Off && a.Likely() == b.Likely()
}
