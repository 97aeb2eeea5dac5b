package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
)

func TestCardKeepsWhatWasEnteredAndEstimatesTheRest(t *testing.T) {
	b := newBench(t)
	b.plan()
	a := b.join("Ada Brook")
	b.log(a, "back-squat", "5x225lb")
	card := b.RecordCard(a.ID)
	require.Equal(t, []int{5, 3, 1}, card.Counts)
	require.Len(t, card.Lifts, 2, "the two lifts of the plan")
	squat := card.Lifts[0]
	assert.True(t, squat.Wanted)
	five := squat.Cells[0]
	assert.Equal(t, gym.Tested, five.Source)
	assert.Equal(t, "225 lb", five.Load.In(five.Unit), "as it was entered")
	one := squat.Cells[2]
	assert.Equal(t, gym.Estimate, one.Source)
	assert.Equal(t, 5, one.From)
	// The handbook's table: 225 lb are 102.058 kg, and 5 reps are 87 % of the 1RM,
	// so 117.31 kg, of which the gym can load 115 kg.
	assert.Equal(t, "115 kg", one.Load.In(one.Unit), "in the gym's unit: nobody entered it in pounds")
	bench := card.Lifts[1]
	assert.False(t, bench.Cells[0].Known())
	assert.Empty(t, b.RecordCard("nobody").Lifts)
}

func TestCardShowsLiftsOfNoPlanAfterThoseOfIt(t *testing.T) {
	b := newBench(t)
	b.plan()
	a := b.join("Ada Brook")
	b.log(a, "front-squat", "8x60")
	b.log(a, "deadlift", "1x120")
	var names []string
	for _, l := range b.RecordCard(a.ID).Lifts {
		names = append(names, l.Lift.Name)
	}
	assert.Equal(t, []string{"Back squat", "Bench press", "Deadlift", "Front squat"}, names)
	front := b.RecordCard(a.ID).Lifts[3]
	require.Len(t, front.Other, 1, "an eight is on no column of the card")
	assert.Equal(t, 8, front.Other[0].Reps)
}

func TestRaiseIsOfferedAndTaken(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	b.log(a, "back-squat", "3x100")
	b.log(a, "back-squat", "5x110")
	raises := b.RecordCard(a.ID).Lifts[0].Raises
	require.Len(t, raises, 1)
	require.NoError(t, b.Raise(raises[0]))
	lift := b.RecordCard(a.ID).Lifts[0]
	assert.Empty(t, lift.Raises)
	assert.Equal(t, "110 kg", lift.Cells[1].Load.String())
	assert.Equal(t, gym.Tested, lift.Cells[1].Source, "it was lifted in front of the coach, if for more reps")
}

func TestReadEntrySaysWhatItMeans(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	b.log(a, "back-squat", "5x140")
	read := func(text string) (desk.Reading, error) {
		return b.ReadEntry(desk.Entry{Athlete: a.ID, Lift: "back-squat", Text: text, On: b.Today(), Source: gym.Tested})
	}
	cases := []struct {
		text, says string
		raises     bool
	}{
		{"5x142.5", "5 × 142.5 kg: a new 5RM, 2.5 kg (1.8 %) over 140 kg.", true},
		{"5x140", "5 × 140 kg: equals the 5RM of 9 Mar. A tie raises nothing.", false},
		{"5x130", "5 × 130 kg: 10 kg under the 5RM of 140 kg, which stays.", false},
		{"1x150", "1 × 150 kg: the first 1RM.", true},
	}
	for _, c := range cases {
		r, err := read(c.text)
		require.NoError(t, err, c.text)
		assert.Equal(t, c.says, r.Says)
		assert.Equal(t, c.raises, r.Raises, c.text)
	}
	assert.Len(t, b.History(a.ID, ""), 1, "reading logs nothing")
	for _, bad := range []string{"", "140", "5x", "0x100", "21x100", "5x2000"} {
		_, err := read(bad)
		assert.Error(t, err, bad)
	}
}

// An improbable entry is doubted by what the floor goes by, an estimate in place of a
// record included.
func TestReadEntryDoubts(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	b.log(a, "back-squat", "5x140")
	for _, row := range []struct{ text, doubt string }{
		{"5x175", ""},
		{"5x177.5", "177.5 kg is 127 % of 140 kg, what is known so far."},
		{"5x8", "8 kg is less than the lightest that can be lifted here, 20 kg."},
		{"1x165", ""},
		{"1x250", "what is known so far."}, // of the estimate
	} {
		r, err := b.ReadEntry(desk.Entry{Athlete: a.ID, Lift: "back-squat", Text: row.text, On: b.Today(), Source: gym.Tested})
		require.NoError(t, err, row.text)
		assert.Contains(t, r.Doubt, row.doubt, row.text)
		assert.Equal(t, row.doubt == "", r.Doubt == "", row.text)
	}
}

func TestHistoryAndTrend(t *testing.T) {
	b := newBench(t)
	a := b.join("Ada Brook")
	b.log(a, "back-squat", "5x100")
	b.now = b.now.AddDate(0, 0, 7)
	wrong := b.log(a, "back-squat", "5x180")
	b.now = b.now.AddDate(0, 0, 7)
	b.log(a, "back-squat", "5x105")
	b.log(a, "back-squat", "1x120")
	b.log(a, "bench-press", "5x60")
	require.NoError(t, b.VoidResult(wrong.Result.ID, "wrong bar"))
	history := b.History(a.ID, "back-squat")
	require.Len(t, history, 4, "voided ones stay readable")
	assert.Equal(t, "wrong bar", history[2].Void.Reason, "newest first")
	trend := b.Trend(a.ID, "back-squat")
	assert.Len(t, trend.Results, 3)
	assert.Equal(t, 5, trend.Reps, "fives were logged most")
	require.Len(t, trend.Best, 2)
	assert.Equal(t, "105 kg", trend.Best[1].Load.String())
}
