package desk_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/climb"
	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

func TestQueueAsksLateCallsFirst(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	first := b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	second := b.come(c.ID, "Bo Ito", gym.StandardM, "back-squat", "3x140")
	require.NoError(t, b.StartClock(c.ID))
	at := func(minutes float64) (desk.Board, clock.Moment) {
		b.now = monday.Add(time.Duration(minutes * float64(time.Minute)))
		board := b.Boards().Board(mustClass(t, b.Desk, c.ID))
		return board, board.At(b.now)
	}
	board, m := at(10)
	assert.Empty(t, board.Queue(m), "no call is owed under the top rungs")
	board, m = at(13)
	require.Len(t, board.Queue(m), 2)
	begin, _ := board.NextCall(m, "")
	assert.Equal(t, first.ID, begin)
	require.NoError(t, b.Call(c.ID, first.ID, gym.ClimbCall))
	board, m = at(13.5)
	next, ok := board.NextCall(m, first.ID)
	require.True(t, ok)
	assert.Equal(t, second.ID, next)
	board, m = at(14.5)
	queue := board.Queue(m)
	require.Len(t, queue, 2)
	assert.Equal(t, second.ID, queue[0].Lifter.Athlete)
	assert.True(t, queue[0].Late)
	assert.Equal(t, 7, queue[0].Rung, "the eighth rung's call is honoured in the ninth")
	assert.False(t, queue[1].Late)
	row, _ := board.Lifter(second.ID)
	assert.Len(t, row.Shown(m).Now.Either, 2, "both numbers stand while the call is open")
	require.NoError(t, b.Call(c.ID, second.ID, gym.SettleCall))
	board, m = at(15)
	row, _ = board.Lifter(second.ID)
	assert.Equal(t, climb.Settle, row.Shown(m).Now.State)
	_, ok = board.NextCall(m, "")
	assert.True(t, ok)
}

func TestFinderOwesTheFirstAnswerThatIsMissing(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	a := b.come(c.ID, "Ines Bergh", gym.StandardM, "back-squat", "")
	require.ErrorContains(t, b.StartClock(c.ID), "type a first load")
	require.NoError(t, b.StartWith(c.ID, a.ID, gym.Effort{Load: 40 * mass.Kilogram}))
	assert.GreaterOrEqual(t, b.seatOf(c.ID, a).Station, 0, "whoever has a number has a station")
	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(4 * time.Minute) // the fourth rung, and no answer yet
	require.NoError(t, b.Call(c.ID, a.ID, gym.EasyCall))
	calls := b.seatOf(c.ID, a).Calls
	require.Len(t, calls, 1)
	assert.Equal(t, 0, calls[0].Rung)
}
