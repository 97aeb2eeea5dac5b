package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
)

func TestOwnWeekFollowsWishesAndHand(t *testing.T) {
	b := newBench(t)
	b.plan()
	a := b.join("Ada Brook")
	days := func() string {
		row := b.RosterRow(a.ID)
		return row.Days.String()
	}
	assert.Equal(t, "Mon, Tue", days(), "the track's own days")
	require.NoError(t, b.SetWishes(a.ID, day.WeekdaysOf(day.Wednesday, day.Friday), 0))
	assert.Equal(t, "Wed, Fri", days())
	assert.Contains(t, b.OwnWeek(a.ID).Week.Why, "Moved")
	require.NoError(t, b.SetWishes(a.ID, day.WeekdaysOf(day.Wednesday, day.Friday), 1))
	w := b.OwnWeek(a.ID)
	assert.Len(t, w.Week.Days, 1)
	assert.Len(t, w.Week.Dropped, 1)
	require.Error(t, b.SetWishes(a.ID, 0, 8))
	require.NoError(t, b.SetWishes(a.ID, 0, 0))
	require.NoError(t, b.SetHand(a.ID, day.Monday, day.Saturday))
	assert.Equal(t, "Tue, Sat", days())
	assert.Empty(t, b.OwnWeek(a.ID).Breaches)
	require.NoError(t, b.ClearHand(a.ID))
	assert.Equal(t, "Mon, Tue", days())
	_, err := b.Undo()
	require.NoError(t, err)
	assert.Equal(t, "Tue, Sat", days(), "what was set by hand comes back")
}

func TestHandDayOnATakenWeekdayGivesWay(t *testing.T) {
	b := newBench(t)
	b.plan()
	a := b.join("Ada Brook")
	require.NoError(t, b.SetHand(a.ID, day.Monday, day.Saturday))
	require.NoError(t, b.SetHand(a.ID, day.Tuesday, day.Saturday))
	after, _ := b.Athlete(a.ID)
	assert.Equal(t, []gym.HandDay{{Plan: day.Tuesday, On: day.Saturday}}, after.Hand)
}

func TestMoveEffectNamesWhatIsLacking(t *testing.T) {
	b := newBench(t)
	b.plan()
	a := b.NewAthlete("Ben Loose")
	require.NoError(t, b.AddAthlete(a, ""))
	e := b.MoveEffect(a, powerlifting, b.Today())
	assert.Len(t, e.After.Days, 2)
	assert.Equal(t, "Back squat 5RM, Bench press 5RM, Back squat 3RM, Bench press 3RM, Back squat 1RM, Bench press 1RM.", b.LacksText(e.Lacks))
}
