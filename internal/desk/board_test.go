package desk_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/climb"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

func TestBoardLoadsAreOnTheBars(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "deadlift", 5)
	for i := range 8 {
		b.come(c.ID, fmt.Sprint("Lifter ", i), gym.StandardM, "deadlift", fmt.Sprintf("5x%d", 60+20*i))
	}
	board := b.Boards().Board(mustClass(t, b.Desk, c.ID))
	for _, l := range board.Lifters() {
		for i, s := range l.Sets {
			total := 20 * mass.Kilogram
			for _, d := range s.Discs {
				total += 2 * d.Mass
			}
			if s.Likely() > 0 {
				assert.Equal(t, s.Likely(), total, "%s at rung %d", l.Name, i+1)
			}
		}
	}
}

// Over 100 kg and up to 102 a gym whose smallest pair is 1.25 kg loads nothing.
func TestAnAttemptOverTheCeilingIsSaidBefore(t *testing.T) {
	b := newBench(t)
	plan, err := climb.Generate(20)
	require.NoError(t, err)
	c, err := b.OpenFreeClass()
	require.NoError(t, err)
	require.NoError(t, b.KeepClimb(c.ID, plan))
	b.lifts(c.ID, "back-squat", 3)
	a := b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	s, _ := b.Standing(mustClass(t, b.Desk, c.ID), a.ID)
	assert.Equal(t, "The lightest load over the record is 102.5 kg, over the ceiling by 0.5 %. A pair of 1 kg would mend it.", s.Attempt)
}

// The small plates are kept for top rungs, unless the coach lets light and working
// rungs take the nearest load of the whole stock; top rungs have all plates either way.
func TestSmallPlatesAreKeptForTopRungsWhereTheCoachSays(t *testing.T) {
	b, c := hall(t) // the starter owns pairs of 0.5 kg
	b.lifts(c.ID, "back-squat", 3)
	a := b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x101")
	loads := func() (texts []string) {
		row, ok := b.Boards().Board(mustClass(t, b.Desk, c.ID)).Lifter(a.ID)
		require.True(t, ok)
		for _, s := range row.Sets {
			texts = append(texts, s.Likely().Digits(mass.KG))
		}
		return texts
	}
	// 35, 45, 55, 62.5, 70, 77.5, 85, 90.5, 96.5 and 102 % of 101 kg.
	kept := []string{"35", "45", "55", "62.5", "70", "77.5", "85", "91.5", "97.5", "103"}
	assert.Equal(t, kept, loads())
	require.True(t, b.SmallPlates())
	require.NoError(t, b.KeepSmallOnTop(false))
	assert.Equal(t, []string{"35.5", "45.5", "55.5", "63", "70.5", "78.5", "86", "91.5", "97.5", "103"}, loads())
	_, err := b.Undo()
	require.NoError(t, err)
	assert.Equal(t, kept, loads())
}

// 70 % of a 5RM of 100 kg is 70 kg.
func TestSecondLoads(t *testing.T) {
	b, c := hall(t)
	require.NoError(t, b.KeepPiece(c.ID, gym.Piece{
		Track: powerlifting, Lift: "back-squat", Reps: 3,
		Second: gym.SecondLift{Lift: "front-squat", Sets: 4, Reps: 6, Percent: 70, OfReps: 5, OfLift: "back-squat"},
	}))
	b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "5x100")
	b.come(c.ID, "Bo Ito", gym.StandardM, "back-squat", "")
	rows := b.SecondLoads(mustClass(t, b.Desk, c.ID))
	require.Len(t, rows, 2)
	assert.Equal(t, desk.SecondLoad{Athlete: rows[0].Athlete, Name: "Ada Lund", Short: "Ada L.", Lift: "Front squat", Work: "4 × 6", Load: "70 kg", Why: "70 % of the 5RM, 100 kg"}, rows[0])
	assert.Empty(t, rows[1].Load)
	assert.Equal(t, "no 5RM of Back squat is known", rows[1].Why)
}

func TestWeighingWritesNothing(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	a := b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	before := len(b.Book().Results)
	v, err := b.Weigh(c.ID, a.ID, "102.5")
	require.NoError(t, err)
	assert.Equal(t, "102.5 kg is 102.5 % of the record of 100 kg: the record rises.", v.Why)
	_, err = b.Weigh(c.ID, a.ID, "5x120")
	require.ErrorContains(t, err, "3 reps")
	assert.Len(t, b.Book().Results, before)
}
