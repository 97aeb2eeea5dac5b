package station

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/mass"
	"windlass/internal/plates"
)

func TestSecondsOfATurn(t *testing.T) {
	// By hand: five reps at 3 s, a pair and a pair more at 6 s a disc, 8 s to
	// change over.
	two := UsualPace()
	assert.Equal(t, 15+2*6+8, two.seconds(5, 4), "two load the bar, a side each")
	alone := two
	alone.SidesAtOnce = false
	assert.Equal(t, 15+4*6+8, alone.seconds(5, 4))
}

func TestPlanTurnByTurn(t *testing.T) {
	solver := room(t, 1, 2, 60, 60)
	lifters := []Lifter{
		{Name: "strong", Bar: "20", Lift: "squat", Seat: 0, Sets: []Set{{kg(60), 3}, {kg(80), 1}}},
		{Name: "late", Bar: "20", Lift: "squat", Seat: 0, Sets: []Set{{}, {kg(61), 2}}},
	}
	plan, err := solver.Judge(lifters)
	require.NoError(t, err)
	require.True(t, plan.Keeps())
	g := plan.Groups[0]
	assert.Equal(t, []int{1, 0}, g.Lifters, "lightest first, in every window")

	type line struct {
		lifter, window int
		side           string
		moves, seconds int
	}
	var got []line
	for _, turn := range g.Turns {
		got = append(got, line{turn.Lifter, turn.Window, fmt.Sprint(turn.PerSide), turn.Moves, turn.Seconds})
	}
	assert.Equal(t, []line{
		{0, 0, "[20 kg]", 2, 9 + 6 + 8},
		{1, 1, "[20 kg]", 0, 6 + 8}, // 61 kg is nearest 60
		{0, 1, "[20 kg 10 kg]", 2, 3 + 6 + 8},
	}, got)
	assert.Equal(t, []Window{{23, 60}, {31, 60}}, g.Windows)
	assert.Equal(t, 4, plan.Moves)
}

func TestPlanStartsFromWhatIsOnTheBar(t *testing.T) {
	twenty := plates.Disc{Mass: kg(20), Unit: mass.KG}
	solver, err := New([]Station{{Name: "rack", Loads: smallLoads(t), Places: 1, On: []plates.Disc{twenty}}}, []int{60}, UsualPace())
	require.NoError(t, err)
	plan, err := solver.Solve([]Lifter{{Bar: "20", Seat: None, Sets: []Set{{kg(60), 1}}}})
	require.NoError(t, err)
	assert.Zero(t, plan.Moves)
}

func TestPlanMarksLoadsBeyondTheBarAndThePlates(t *testing.T) {
	plan, err := room(t, 1, 1, 60, 60).Solve([]Lifter{{Bar: "20", Seat: None, Sets: []Set{{kg(15), 5}, {kg(300), 1}}}})
	require.NoError(t, err)
	assert.True(t, plan.Groups[0].Turns[0].Under)
	assert.Equal(t, kg(20), plan.Groups[0].Turns[0].Total)
	assert.True(t, plan.Groups[0].Turns[1].Short)
}

func TestStandingReasons(t *testing.T) {
	lifters := []Lifter{
		{Name: "sits", Bar: "20", Lift: "squat", Seat: 0, Fixed: true},
		{Name: "other lift", Bar: "20", Lift: "press", Seat: None},
		{Name: "no such bar", Bar: "log", Lift: "press", Seat: None},
		{Name: "wants the taken bar", Bar: "20", Lift: "press", Seat: 0, Fixed: true},
		{Name: "not seated", Bar: "20", Lift: "squat", Seat: None},
	}
	for i := range lifters {
		lifters[i].Sets = []Set{{kg(20), 1}}
	}
	plan, err := room(t, 1, 2, 600).Judge(lifters)
	require.NoError(t, err)
	assert.False(t, plan.Keeps())
	assert.Equal(t, []int{0, None, None, None, None}, plan.Seats)
	assert.ElementsMatch(t, []Standing{{1, NoPlace}, {2, NoBar}, {3, Refused}, {4, Unseated}}, plan.Standing)
}
