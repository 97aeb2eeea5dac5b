package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
)

// The handbook's table of percent and repetitions: a 5RM is 87 % and a 3RM 93 %
// of the 1RM. Epley: 1RM = w·(1 + r/30), so 225 lb × 5 is 262.5 lb.
func TestRepmax(t *testing.T) {
	assert.Equal(t, []repmaxLine{{1, "160.92 kg", 1}, {3, "149.66 kg", 0.93}, {5, "140 kg", 0.87}}, read[[]repmaxLine](t, "repmax", "-from", "5x140kg"))
	epley := read[[]repmaxLine](t, "repmax", "-from", "5 x 225 lb", "-to", "1", "-curve", "Epley")
	assert.Equal(t, []repmaxLine{{1, "262.5 lb", 1}}, epley)
	assert.Contains(t, do(t, "repmax", "-from", "5x140", "-to", "1"), "160.92 kg")
}

// The first row is the example of the IWF's rules: 25 + 15 + 2.5 a side with bar
// and collars is 110 kg. The second is a 20 kg bar with four 45 lb plates,
// 20 + 4 × 20.411 656 65 = 101.646 626 6 kg by the pound of 1959.
func TestPlates(t *testing.T) {
	tests := []struct {
		args []string
		want stacked
	}{
		{[]string{"-target", "110kg", "-bar", "20kg", "-collar", "2.5kg", "-pairs", "25kg*1,15kg*1,2.5kg*1"}, stacked{"110 kg", []string{"25 kg", "15 kg", "2.5 kg"}, false}},
		{[]string{"-target", "101.6kg", "-pairs", "45lb*3"}, stacked{"101.65 kg", []string{"45 lb", "45 lb"}, false}},
		{[]string{"-target", "225lb", "-bar", "45lb", "-pairs", "45lb*4"}, stacked{"225 lb", []string{"45 lb", "45 lb"}, false}},
		{[]string{"-target", "300kg", "-pairs", "25kg*1"}, stacked{"70 kg", []string{"25 kg"}, true}},
		{[]string{"-target", "20kg"}, stacked{"20 kg", []string{}, false}},
		// Greedy would take 25 first and never make 80.
		{[]string{"-target", "80kg", "-pairs", "25kg*1,15kg*2"}, stacked{"80 kg", []string{"15 kg", "15 kg"}, false}},
		{[]string{"-target", "79kg", "-pairs", "25kg*1,15kg*2", "-round", "down"}, stacked{"70 kg", []string{"25 kg"}, false}},
		{[]string{"-target", "79kg", "-pairs", "25kg*1,15kg*2", "-round", "up"}, stacked{"80 kg", []string{"15 kg", "15 kg"}, false}},
	}
	for _, tt := range tests {
		assert.Equal(t, tt.want, read[stacked](t, append([]string{"plates"}, tt.args...)...), tt.args)
	}
	db := gymFile(t)
	log := read[stacked](t, "-db", db, "plates", "-stock", "gym", "-bar", "log", "-target", "60kg")
	assert.Equal(t, "60 kg", log.Load, "the gym's log is 30 kg")
	assert.Equal(t, "60 kg", read[stacked](t, "-db", db, "plates", "-stock", "gym", "-target", "60kg").Load)
}

// Three sets by hand. From the bare bar the 20 goes on and stays: a pair of 20
// (2 moves), another pair (2), a pair of 1.25 (2).
func TestSequence(t *testing.T) {
	s := read[sequenced](t, "sequence", "-targets", "60kg,100kg,102.5kg", "-pairs", "20kg*2,1.25kg*1")
	assert.Equal(t, sequenced{6, []stackStep{
		{Load: "60 kg", PerSide: []string{"20 kg"}},
		{Load: "100 kg", PerSide: []string{"20 kg", "20 kg"}},
		{Load: "102.5 kg", PerSide: []string{"20 kg", "20 kg", "1.25 kg"}},
	}}, s)
	// Two 10s first would cost no more now and save two moves later.
	spare := read[sequenced](t, "sequence", "-targets", "40kg,60kg", "-pairs", "20kg*1,10kg*2")
	assert.Equal(t, 4, spare.Moves)
	assert.Equal(t, []string{"10 kg", "10 kg"}, spare.Steps[1].PerSide)
}

// The heaviest plate is always inside (common practice, no source), and -h says so.
// By hand, with the 20 outside of 10 and 5, ten moves would do.
func TestSequenceKeepsTheHeaviestInside(t *testing.T) {
	s := read[sequenced](t, "sequence", "-targets", "50kg,100kg,60kg", "-pairs", "20kg*2,10kg*1,5kg*2")
	assert.Equal(t, 14, s.Moves)
	assert.Contains(t, do(t, "sequence", "-h"), "heaviest plates inside")
}

// What the plates cannot make is said, as plates says it: 20 kg, eight pairs of 25
// and the pairs of everything else.
func TestSequenceSaysWhatIsTooHeavy(t *testing.T) {
	s := read[sequenced](t, "sequence", "-targets", "60kg,100kg", "-pairs", "20kg*1,10kg*1")
	assert.Equal(t, []bool{false, true}, []bool{s.Steps[0].Short, s.Steps[1].Short})
	assert.Equal(t, "80 kg", s.Steps[1].Load)
	text := do(t, "sequence", "-targets", "60kg,1000kg")
	assert.Contains(t, text, "2. 637 kg: a side ")
	assert.Equal(t, 1, strings.Count(text, "that is all that the plates make"))
}

// nineRungs is a climb of twenty minutes from common practice, no source.
const nineRungs = `at,until,percent,reps,zone
00:00,01:00,30,5,light
01:00,02:00,50,3,light
02:00,04:00,60,day,working
04:00,06:00,70,day,working
06:00,08:00,80,2,working
08:00,11:00,90,1,top
11:00,14:00,95,1,top
14:00,17:00,98,1,top
17:00,20:00,102,day,top
`

// A climb that a coach types in keeps its clock and its percentages, and of 100 kg
// the percentages are the kilograms.
func TestClimbFromATemplate(t *testing.T) {
	template := file(t, "nine.csv", nineRungs)
	c := read[climbed](t, "climb", "-record", "100kg", "-reps", "3", "-template", template, "-pairs", "25kg*2,10kg*2,5kg*2,2.5kg*1,1kg*3,0.5kg*2")
	assert.Equal(t, "100 kg", c.Base)
	assert.Equal(t, linesLine{"90 kg", "100 kg", "102 kg"}, c.Lines)
	var loads, at []string
	var reps []int
	for _, r := range c.Rungs {
		loads, at, reps = append(loads, r.Load), append(at, r.At), append(reps, r.Reps)
		assert.InDelta(t, r.Percent, r.LoadPercent, 0.01)
	}
	assert.Equal(t, []string{"30 kg", "50 kg", "60 kg", "70 kg", "80 kg", "90 kg", "95 kg", "98 kg", "102 kg"}, loads)
	assert.Equal(t, []string{"00:00", "01:00", "02:00", "04:00", "06:00", "08:00", "11:00", "14:00", "17:00"}, at)
	assert.Equal(t, []int{5, 3, 3, 3, 2, 1, 1, 1, 3}, reps)

	settled := read[climbed](t, "climb", "-record", "100kg", "-reps", "3", "-template", template, "-calls", "climb,settle")
	last := settled.Rungs[7]
	assert.Equal(t, "95 kg", last.Load, "the day's set at the load that was lifted last")
	assert.Equal(t, 3, last.Reps)
	assert.Empty(t, settled.Rungs[8].Load, "and nothing after it")

	piped := ask(t, nineRungs, "climb", "-record", "100kg", "-reps", "3", "-template", "-")
	assert.Equal(t, done, piped.status, piped.err)
	assert.Contains(t, piped.out, "102 kg")
}

func TestClimbSpeaksTheReadersUnit(t *testing.T) {
	c := read[climbed](t, "climb", "-record", "225lb", "-bar", "45lb", "-pairs", "45lb*2,25lb*1,10lb*2,5lb*2,2.5lb*2")
	assert.Equal(t, "225 lb", c.Base)
	assert.Equal(t, "225 lb", c.Lines.Record)
	assert.Equal(t, "102.06 kg", read[climbed](t, "climb", "-record", "225lb", "-unit", "kg").Base, "225 × 0.453 592 37")
}

// Lifters of the gym: one with a record, one whose lift is done with stones, and
// one who reads in pounds.
func TestClimbOfAnAthlete(t *testing.T) {
	db := gymFile(t)
	c := read[climbed](t, "-db", db, "climb", "-athlete", "goran matovich", "-lift", "stone over bar")
	require.NotEmpty(t, c.Rungs)
	for _, r := range c.Rungs {
		assert.Empty(t, r.PerSide, "stones carry no plates")
	}
	c = read[climbed](t, "-db", db, "climb", "-athlete", "matteo ferrandi", "-lift", "bench")
	assert.Contains(t, c.Base, " lb")
	assert.Contains(t, []gym.Source{gym.Tested, gym.Reported, gym.Estimate}, c.Source)
	a := ask(t, "", "-db", db, "climb", "-athlete", "hana okazumi", "-lift", "bench press")
	assert.Equal(t, refused, a.status)
	assert.Contains(t, a.err, "log a rep max")
}
