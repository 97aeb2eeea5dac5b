package desk_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/climb"
	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// classOfTwo opens a class on back squat triples in which one lifter has a
// record of 100 kg, and starts its clock.
func classOfTwo(t *testing.T) (*bench, gym.Class, gym.Athlete, gym.Athlete) {
	t.Helper()
	b := newBench(t)
	ilse, omar := b.join("Ilse Varga"), b.join("Omar Lind")
	b.log(ilse, "back-squat", "3x100")
	b.log(omar, "back-squat", "3x140")
	plan, err := climb.Generate(20)
	require.NoError(t, err)
	c, err := b.OpenClass(gym.Slot{Name: "Morning", At: day.ClockOf(6, 0), Minutes: 60})
	require.NoError(t, err)
	require.NoError(t, b.KeepClimb(c.ID, plan))
	require.NoError(t, b.KeepPiece(c.ID, gym.Piece{Track: powerlifting, Lift: "back-squat", Reps: 3}))
	require.NoError(t, b.CheckIn(c.ID, ilse.ID))
	require.NoError(t, b.CheckIn(c.ID, omar.ID))
	require.NoError(t, b.StartClock(c.ID))
	c, _ = b.Class(c.ID)
	return b, c, ilse, omar
}

func TestClassIsCountedFromRecords(t *testing.T) {
	b, c, ilse, _ := classOfTwo(t)
	assert.Equal(t, "100 kg", c.Lifters[0].Base.String())
	assert.Equal(t, gym.Tested, c.Lifters[0].Source)
	require.ErrorContains(t, b.CheckIn(c.ID, ilse.ID), "checked in already")
	assert.Equal(t, c, mustClass(t, b.reopened(), c.ID), "the clock's state is on disk")
}

func TestHeldClockStandsAndGoesOn(t *testing.T) {
	b, c, _, _ := classOfTwo(t)
	b.now = b.now.Add(90 * time.Second)
	require.NoError(t, b.HoldClock(c.ID))
	b.now = b.now.Add(time.Hour)
	c = mustClass(t, b.Desk, c.ID)
	assert.Equal(t, 90*time.Second, c.Clock.Elapsed(b.now))
	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(30 * time.Second)
	assert.Equal(t, 2*time.Minute, mustClass(t, b.Desk, c.ID).Clock.Elapsed(b.now))
}

func TestUndoLeavesTheClockAlone(t *testing.T) {
	b, c, ilse, _ := classOfTwo(t)
	b.now = b.now.Add(19 * time.Minute)
	require.NoError(t, b.Call(c.ID, ilse.ID, gym.ClimbCall))
	require.NoError(t, b.HoldClock(c.ID))
	b.now = b.now.Add(time.Minute)
	_, err := b.Undo()
	require.NoError(t, err)
	c = mustClass(t, b.Desk, c.ID)
	assert.Empty(t, c.Lifters[0].Calls)
	assert.Equal(t, 19*time.Minute, c.Clock.Elapsed(b.now))
	assert.False(t, c.Clock.Running)
}

func TestBoardGivesLoadsOfEveryWindow(t *testing.T) {
	b, c, _, _ := classOfTwo(t)
	c.Lifters[0].Station, c.Lifters[1].Station, c.Lifters[1].Place = 0, 0, 1
	board := desk.NewBoards(b.Book()).Board(c)
	require.Len(t, board.Stations[0].Lifters, 2)
	for _, l := range board.Stations[0].Lifters {
		require.NoError(t, l.Fault)
		require.Len(t, l.Sets, len(c.Climb.Rungs))
		for i, s := range l.Sets {
			if s.Load == 0 {
				continue
			}
			total := 20.0
			for _, disc := range s.Discs {
				total += 2 * disc.Mass.Kilograms()
			}
			assert.InDelta(t, s.Load.Kilograms(), total, 1e-9, "%s, window %d: the discs are the load", l.Name, i+1)
		}
	}
	m := board.At(b.now.Add(30 * time.Second))
	assert.Equal(t, 0, m.Rung)
	assert.Equal(t, 30*time.Second, m.LeftIn)
	assert.True(t, board.At(b.now.Add(time.Hour)).Finished)
}

func TestResultOfTheDayRaisesOnlyWhenOver(t *testing.T) {
	b, c, ilse, omar := classOfTwo(t)
	b.now = b.now.Add(21 * time.Minute)
	v, err := b.LogResult(c.ID, ilse.ID, "102.5")
	require.NoError(t, err)
	assert.True(t, v.Raises)
	v, err = b.LogResult(c.ID, ilse.ID, "3x100")
	require.NoError(t, err, "entering again voids what was entered")
	assert.False(t, v.Raises, "a tie with the record before the class")
	r, _ := b.Record(ilse.ID, "back-squat", 3)
	assert.Equal(t, "100 kg", r.Load.String())
	_, err = b.LogResult(c.ID, omar.ID, "5x120")
	require.ErrorContains(t, err, "3 reps")
	_, err = b.LogResult(c.ID, omar.ID, "heavy")
	require.Error(t, err)
	require.NoError(t, b.LogNothing(c.ID, omar.ID))
	rows := b.Proposals(mustClass(t, b.Desk, c.ID))
	assert.Equal(t, "3x100 kg", rows[0].Text)
	assert.True(t, rows[1].Lifter.Missed)
}

func TestTwoClassesDoNotRunAtOnce(t *testing.T) {
	b, _, _, _ := classOfTwo(t)
	_, err := b.OpenClass(gym.Slot{ID: b.NewID(), Name: "Evening", At: day.ClockOf(17, 30), Minutes: 60})
	require.ErrorIs(t, err, desk.ErrRunning)
}

func TestClassWithoutLiftersDoesNotStart(t *testing.T) {
	b := newBench(t)
	c, err := b.OpenFreeClass()
	require.NoError(t, err)
	require.ErrorContains(t, b.StartClock(c.ID), "nobody is checked in")
}

func mustClass(t *testing.T, d *desk.Desk, id gym.ID) gym.Class {
	t.Helper()
	c, ok := d.Class(id)
	require.True(t, ok)
	return c
}

func TestADayByPercentagesHasLoadsAndNoClimb(t *testing.T) {
	b := newBench(t)
	a := b.join("Ilse Varga")
	b.log(a, "snatch", "1x80")
	c, err := b.OpenFreeClass()
	require.NoError(t, err)
	piece := gym.Piece{Track: powerlifting, Lift: "snatch", Reps: 2, Scheme: []gym.Sets{{Percent: 75, Sets: 4, Reps: 2}, {Percent: 85, Sets: 2, Reps: 1}}}
	require.NoError(t, b.KeepPiece(c.ID, piece))
	require.NoError(t, b.CheckIn(c.ID, a.ID))
	c = mustClass(t, b.Desk, c.ID)
	assert.Empty(t, c.Lifters[0].Lift, "nobody climbs to a rep max on such a day")
	rows := b.SecondLoads(c)
	require.Len(t, rows, 2)
	// 75 % of 80 kg is 60 kg and 85 % is 68 kg; the gym loads steps of 2.5 kg
	assert.Equal(t, []string{"4 × 2", "60 kg"}, []string{rows[0].Work, rows[0].Load})
	assert.Equal(t, []string{"2 × 1", "67.5 kg"}, []string{rows[1].Work, rows[1].Load})
	piece.Scheme = nil
	require.NoError(t, b.KeepPiece(c.ID, piece))
	assert.Equal(t, gym.LiftKey("snatch"), mustClass(t, b.Desk, c.ID).Lifters[0].Lift, "the coach makes a rep max of it")
}

func TestATypedNumberIsNoRecord(t *testing.T) {
	b, c, ilse, _ := classOfTwo(t)
	typed := gym.Effort{Reps: 3, Load: 120 * mass.Kilogram, Unit: mass.KG}
	require.NoError(t, b.CountFrom(c.ID, ilse.ID, typed))
	b.now = b.now.Add(21 * time.Minute)
	v, err := b.LogResult(c.ID, ilse.ID, "110")
	require.NoError(t, err)
	assert.True(t, v.Raises, "110 kg is over the record of 100 kg, though the climb was counted from 120 kg")
}
