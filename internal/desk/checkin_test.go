package desk_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

func TestLateComerJoinsAtThePresentRung(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	require.NoError(t, b.StartClock(c.ID))
	b.now = b.now.Add(6 * time.Minute)
	late := b.come(c.ID, "Bo Ito", gym.StandardM, "back-squat", "3x100")
	assert.Equal(t, 4, b.seatOf(c.ID, late).Joined)
}

func TestArrivals(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	ada := b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	bo := b.join("Bo Ito")
	gone := b.join("Cleo Ash")
	require.NoError(t, b.SetStatus(gym.Archived, gone.ID))
	require.NoError(t, b.KeepRestriction(gym.Restriction{ID: b.NewID(), Athlete: bo.ID, Text: "sore knee", Region: gym.Lower, From: b.Today()}))
	open := mustClass(t, b.Desk, c.ID)
	rows := b.Arrivals(open, b.ExpectedIn(open))
	require.Len(t, rows, 2, "who has left is not listed")
	assert.True(t, rows[0].Here)
	assert.Equal(t, "Ada Lund", rows[0].Athlete.Name)
	assert.Equal(t, "sore knee", rows[1].Note)
	rows = desk.Matching(rows, "it bo")
	require.Len(t, rows, 1)
	assert.Equal(t, bo.ID, rows[0].Athlete.ID)
	id, err := b.WalkIn(c.ID, "Dov Quist")
	require.NoError(t, err)
	assert.Equal(t, gym.LiftKey("back-squat"), b.seatOf(c.ID, gym.Athlete{ID: id, Name: "Dov"}).Lift)
	_, err = b.WalkIn(c.ID, "ada lund")
	require.ErrorContains(t, err, "another athlete has that name")
	require.NoError(t, b.CheckOut(c.ID, ada.ID))
}

// Sixteen weeks and five per cent are common practice, no source.
func TestStaleBaseIsLoweredOnlyWhenTheCoachSays(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	a := b.join("Ada Lund")
	_, err := b.EnterResult(desk.Entry{Athlete: a.ID, Lift: "back-squat", Text: "3x100", On: b.Today().Add(-7 * 20), Source: gym.Tested})
	require.NoError(t, err)
	require.NoError(t, b.CheckIn(c.ID, a.ID))
	s, ok := b.Standing(mustClass(t, b.Desk, c.ID), a.ID)
	require.True(t, ok)
	assert.Equal(t, "From 100 kg, the record", s.Number)
	assert.Equal(t, "It is 20 weeks old: climb from 95 kg, 5 % less?", s.Offer)
	require.NoError(t, b.LowerBase(c.ID, a.ID))
	s, _ = b.Standing(mustClass(t, b.Desk, c.ID), a.ID)
	assert.Equal(t, "95 kg", s.Lifter.Base.String())
	assert.Empty(t, s.Offer, "an offer that was taken is not made again")
	require.NoError(t, b.CountFrom(c.ID, a.ID, gym.Effort{Load: 97500 * mass.Gram}))
	s, _ = b.Standing(mustClass(t, b.Desk, c.ID), a.ID)
	assert.Equal(t, "From 97.5 kg, as reported", s.Number)
}
