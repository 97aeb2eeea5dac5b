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

// A finder without calls stays at the present rung: a late call is about the last
// load that is known and brings the next one now, not a record of fictions.
func TestAFinderGoesOnWhenTheCallComes(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	a := b.come(c.ID, "Ines Bergh", gym.StandardM, "back-squat", "")
	require.ErrorContains(t, b.StartClock(c.ID), "type a first load")
	require.NoError(t, b.StartWith(c.ID, a.ID, gym.Effort{Load: 40 * mass.Kilogram}))
	assert.GreaterOrEqual(t, b.seatOf(c.ID, a).Station, 0, "whoever has a number has a station")
	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(4 * time.Minute) // the fourth rung, and no answer yet
	board := b.Boards().Board(mustClass(t, b.Desk, c.ID))
	row, _ := board.Lifter(a.ID)
	m := board.At(b.now)
	owed, ok := board.Owes(row, m)
	require.True(t, ok)
	assert.Equal(t, 40*mass.Kilogram, row.Sets[owed.Asked].Load, "the question is about what was lifted")
	assert.True(t, row.Shown(m).HasNow, "there is a load to lift")
	assert.NotEmpty(t, row.Shown(m).Now.Discs)

	require.NoError(t, b.Call(c.ID, a.ID, gym.EasyCall))
	calls := b.seatOf(c.ID, a).Calls
	require.Len(t, calls, 1)
	assert.Equal(t, m.Rung-1, calls[0].Rung)
	board = b.Boards().Board(mustClass(t, b.Desk, c.ID))
	row, _ = board.Lifter(a.ID)
	assert.Equal(t, 45*mass.Kilogram, row.Shown(m).Now.Load, "40 kg and 15 %, with the plates of a working rung")

	b.now = b.now.Add(time.Hour)
	require.NoError(t, b.Call(c.ID, a.ID, gym.MissedCall))
	p := b.Proposals(mustClass(t, b.Desk, c.ID))
	require.Len(t, p, 1)
	assert.Equal(t, "3x40 kg", p[0].Text, "nothing that nobody called is prefilled")
}

func TestOnlyTheCallsThatAreAskedCount(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	finder := b.come(c.ID, "Ines Bergh", gym.StandardM, "back-squat", "")
	climber := b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	require.NoError(t, b.StartWith(c.ID, finder.ID, gym.Effort{Load: 40 * mass.Kilogram}))
	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(13 * time.Minute)
	for _, kind := range []gym.CallKind{gym.ClimbCall, gym.SettleCall} {
		require.ErrorContains(t, b.Call(c.ID, finder.ID, kind), "choose easy, fair, hard or missed")
	}
	for _, kind := range []gym.CallKind{gym.EasyCall, gym.FairCall, gym.HardCall, "jump"} {
		require.ErrorContains(t, b.Call(c.ID, climber.ID, kind), "choose climb, settle or missed")
	}
	assert.Empty(t, b.seatOf(c.ID, finder).Calls)
	assert.Empty(t, b.seatOf(c.ID, climber).Calls)
	require.NoError(t, b.Call(c.ID, finder.ID, gym.HardCall))
	require.NoError(t, b.Call(c.ID, climber.ID, gym.SettleCall))
}
