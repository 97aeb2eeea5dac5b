package desk_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/conditioning"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// quickRounds is an AMRAP of 20 swings and 10 burpees.
var quickRounds = gym.Workout{Format: gym.AMRAP, Seconds: 720, Items: []gym.Item{
	{Movement: "kettlebell-swing", Amount: 20}, {Movement: "burpee", Amount: 10},
}}

// The reps of an AMRAP are the gym's own pace's, not the catalogue's.
func TestRepsOfAnAMRAPFollowTheGymsPace(t *testing.T) {
	b, c, a := withWorkout(t, quickRounds)
	find := func(name string) (gym.Movement, bool) { return b.Movement(gym.MovementKey(name)) }
	usual := func(p conditioning.Pace) int {
		e, err := conditioning.Estimate(quickRounds, find, p)
		require.NoError(t, err)
		return 20 * int(e.Usual.Rounds+0.5)
	}
	assert.Equal(t, usual(conditioning.DefaultPace()), b.BoutSheet(c)[0].Reps)
	for i := range 12 { // a slow gym: three rounds each
		slow := b.come(c.ID, "Slow "+string(rune('A'+i)), gym.StandardM, "back-squat", "3x100")
		require.NoError(t, b.SetScore(c.ID, slow.ID, "3+0"))
	}
	require.Greater(t, b.Pace().Factor, 1.2)
	rows := b.BoutSheet(mustClass(t, b.Desk, c.ID))
	assert.Equal(t, a.ID, rows[0].Athlete)
	assert.Equal(t, usual(b.Pace()), rows[0].Reps)
	assert.Less(t, rows[0].Reps, usual(conditioning.DefaultPace()))
	assert.Equal(t, 60, rows[len(rows)-1].Reps, "three rounds of 20, by the athlete's own score")
}

// The athlete's own score says how much was done, whether it comes before the bout
// or after it.
func TestRepsOfAnAMRAPFollowTheScore(t *testing.T) {
	b, c, a := withWorkout(t, quickRounds)
	require.NoError(t, b.SetScore(c.ID, a.ID, "5+12"))
	row := b.BoutSheet(mustClass(t, b.Desk, c.ID))[0]
	assert.Equal(t, 112, row.Reps, "5 × 20, and 12 of the next 20")
	require.NoError(t, b.LogBout(c.ID, a.ID, "kettlebell-swing", 24*mass.Kilogram, gym.Held))
	row = b.BoutSheet(mustClass(t, b.Desk, c.ID))[0]
	assert.Equal(t, []any{112, "5+12", gym.Held}, []any{row.Logged.Reps, row.Logged.Score, row.Logged.Outcome})

	require.NoError(t, b.SetScore(c.ID, a.ID, "6+25"))
	row = b.BoutSheet(mustClass(t, b.Desk, c.ID))[0]
	assert.Equal(t, []any{140, "6+25", gym.Held}, []any{row.Logged.Reps, row.Logged.Score, row.Logged.Outcome}, "6 × 20, and all of the next 20")
	assert.Len(t, b.BoutsOf(a.ID, "kettlebell-swing"), 1, "the bout before is void")
	_, err := b.Undo()
	require.NoError(t, err)
	row = b.BoutSheet(mustClass(t, b.Desk, c.ID))[0]
	assert.Equal(t, []any{112, "5+12", "5+12"}, []any{row.Logged.Reps, row.Logged.Score, row.Score}, "one step takes all of it back")
}

// What the Floor suggests is what is suggested for the same movement and reps
// anywhere.
func TestTheSheetAsksWhatAdviseAsks(t *testing.T) {
	b, c, a := withWorkout(t, quickRounds)
	other := b.come(c.ID, "Bo Ito", gym.StandardM, "back-squat", "3x100")
	require.NoError(t, b.SetScore(c.ID, other.ID, "2+0"))
	rows := b.BoutSheet(mustClass(t, b.Desk, c.ID))
	require.Len(t, rows, 2)
	advice, err := b.Advise(a.ID, rows[0].Movement, rows[0].Reps)
	require.NoError(t, err)
	assert.Equal(t, []any{advice.Decision.Load, advice.Unit}, []any{rows[0].Load, rows[0].Unit})
	assert.InDelta(t, advice.Hold, b.HoldAt(rows[0], rows[0].Load), 1e-6)
	assert.Equal(t, fmt.Sprintf("%s has a chance of %.0f %% of being held.", rows[0].Load.In(mass.KG), math.Floor(100*advice.Hold)), b.BoutChance(rows[0], rows[0].Load))
	assert.Equal(t, 40, rows[1].Reps, "what was done, not what was asked")
}

func TestScoresThatDoNotFit(t *testing.T) {
	b, c, a := withWorkout(t, gym.Workout{Format: gym.ForTime, Rounds: 3, Cap: 900, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 10}}})
	require.ErrorIs(t, b.SetScore(c.ID, a.ID, "28:15"), conditioning.ErrFit)
	require.ErrorContains(t, b.SetScore(c.ID, a.ID, "28:15"), "past the cap of 15:00; write the reps done by then, as in cap 85")
	require.ErrorContains(t, b.SetScore(c.ID, a.ID, "cap 30"), "write the time")
	assert.Empty(t, b.seatOf(c.ID, a).Score)
	require.NoError(t, b.SetScore(c.ID, a.ID, "cap 25"))
	assert.Equal(t, 25, b.BoutSheet(mustClass(t, b.Desk, c.ID))[0].Reps, "what was done by the cap")

	assert.Contains(t, b.DoubtScore(c.ID, a.ID, "0:05"), "A fast athlete takes about")
	assert.Empty(t, b.DoubtScore(c.ID, a.ID, "2:00"))
	assert.Empty(t, b.DoubtScore(c.ID, a.ID, "fast"), "what cannot be kept is not asked about")
}

func TestLoadsOfBouts(t *testing.T) {
	b, c, a := withWorkout(t, gym.Workout{Format: gym.ForTime, Rounds: 3, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 10}}})
	err := b.LogBout(c.ID, a.ID, "kettlebell-swing", 500*mass.Kilogram, gym.Held)
	require.ErrorIs(t, err, conditioning.ErrLoad)
	row := b.BoutSheet(c)[0]
	assert.Empty(t, b.StrangeLoad(row, row.Load))
	assert.Equal(t, "The gym owns no kettlebell of 13 kg.", b.StrangeLoad(row, 13*mass.Kilogram))
	assert.Greater(t, b.HoldAt(row, 13*mass.Kilogram), b.HoldAt(row, row.Load))
	require.NoError(t, b.LogBout(c.ID, a.ID, "kettlebell-swing", 13*mass.Kilogram, gym.Held))
	row = b.BoutSheet(c)[0]
	assert.Equal(t, 13*mass.Kilogram, row.Logged.Load, "kept")
	assert.NotEmpty(t, b.StrangeLoad(row, row.Load), "and marked")
}

// A load stands in the unit that is marked on the implement, whatever the athlete
// reads.
func TestLoadsStandAsTheyAreMarked(t *testing.T) {
	b, c, a := withWorkout(t, gym.Workout{Format: gym.ForTime, Rounds: 3, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 10}}})
	a.Unit = mass.LB
	require.NoError(t, b.KeepAthlete(a))
	row := b.BoutSheet(c)[0]
	assert.Equal(t, mass.KG, row.Unit)
	require.NoError(t, b.LogBout(c.ID, a.ID, "kettlebell-swing", row.Load, gym.Held))
	assert.Equal(t, mass.KG, b.BoutSheet(c)[0].Logged.Unit)
}
