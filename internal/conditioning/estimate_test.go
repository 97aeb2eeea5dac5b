package conditioning

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/gym"
)

func estimate(t require.TestingT, line string, p Pace) Duration {
	_, find := catalogue(t)
	w, err := Parse(line, find)
	require.NoError(t, err)
	d, err := Estimate(w, find, p)
	require.NoError(t, err)
	return d
}

// Five rounds of 5 power cleans, 8 pull-ups, 6 dumbbell thrusters and 10 burpees
// took trained people 12 ± 3 minutes (Smith, Bellissimo and Amorim 2025, Front
// Physiol 15:1511961, abstract).
func TestMeasuredMixedWorkout(t *testing.T) {
	d := estimate(t, "for time 5 rounds: 5 barbell-power-clean, 8 pull-up, 6 dumbbell-thruster, 10 burpee", DefaultPace())
	assert.Equal(t, 145, d.Usual.Reps)
	assert.InDelta(t, 12*60, d.Usual.Seconds, 3*60)
	perRep := float64(d.Usual.Seconds) / 145
	assert.True(t, perRep > 3.7 && perRep < 6.2, "%.2f s a rep is outside the measured 3.7 to 6.2", perRep)
	assert.Less(t, d.Fast.Seconds, d.Usual.Seconds)
	assert.Less(t, d.Usual.Seconds, d.Slow.Seconds)
	t.Logf("%s; usual %s", d.Minutes(), clock(d.Usual.Seconds))
}

// A burpee takes 3.2 to 3.7 s in a test of three minutes (from memory: Podstawski
// et al. 2019, unsure), so the catalogue's seconds, with fatigue, belong near it.
func TestBurpeesInThreeMinutes(t *testing.T) {
	d := estimate(t, "amrap 3:00: 1 burpee", Pace{Factor: 1, Spread: 0.25})
	assert.InDelta(t, 52, d.Usual.Reps, 8)
}

// Power on a rowing ergometer from its pace, and back.
func TestRowing(t *testing.T) {
	for _, row := range []struct{ split, watts float64 }{
		{85, 569.917},
		{90, 480.110},
		{95, 408.223},
		{100, 350.000},
		{105, 302.343},
		{110, 262.960},
		{115, 230.131},
		{120, 202.546},
		{125, 179.200},
		{130, 159.308},
		{135, 142.255},
		{140, 127.551},
		{150, 103.704},
		{151.829, 100},
		{132.635, 150},
		{120.507, 200},
		{111.869, 250},
		{105.273, 300},
		{95.647, 400},
	} {
		assert.InEpsilon(t, row.watts, RowWatts(row.split), 2e-5)
		assert.InDelta(t, row.split, RowSplit(row.watts), 1e-3)
	}
	assert.InEpsilon(t, 8, RowWatts(60)/RowWatts(120), 1e-12) // eight times the watts halve the split
	for _, x := range []float64{0, -5, math.NaN()} {
		assert.Zero(t, RowWatts(x))
		assert.Zero(t, RowSplit(x))
	}
}

// Two kilometres at the table's splits take the table's times.
func TestRowingTimes(t *testing.T) {
	_, find := catalogue(t)
	row, _ := find("row-metres")
	row.Seconds = 120. / 500
	w := gym.Workout{Format: gym.ForTime, Rounds: 1, Items: []gym.Item{do(2000, row.Key)}}
	d, err := Estimate(w, finder([]gym.Movement{row}), DefaultPace())
	require.NoError(t, err)
	assert.Equal(t, 8*60, d.Usual.Seconds) // a pace is held: it does not tire
}

// Work-to-rest ratios of interval training: 10 s of all-out work at 1:12 to 1:20
// wants 120 to 200 s of rest (Haff and Triplett 2016, table 3.6).
func TestRestGuides(t *testing.T) {
	for _, row := range []struct {
		work, low, high int
		ok              bool
	}{
		{10, 12, 20, true},
		{5, 12, 20, true},
		{15, 3, 5, true},
		{30, 3, 5, true},
		{60, 3, 4, true},
		{180, 3, 4, true},
		{300, 1, 3, true},
		{4, 0, 0, false},
		{12, 0, 0, false},
		{45, 0, 0, false},
	} {
		g, ok := guideFor(row.work)
		assert.Equal(t, row.ok, ok, row.work)
		assert.Equal(t, []int{row.low, row.high}, []int{g.low, g.high}, row.work)
	}
	w := wholes["intervals"]
	w.Work = 10
	for rest, want := range map[int]string{119: "shorter", 120: "", 200: "", 201: "longer"} {
		w.Rest = rest
		if want == "" {
			assert.Empty(t, RestAdvice(w))
		} else {
			assert.Contains(t, RestAdvice(w), want)
			assert.Contains(t, RestAdvice(w), "2:00 to 3:20")
		}
	}
	assert.Empty(t, RestAdvice(wholes["amrap"]))
}

func TestFixedLengths(t *testing.T) {
	for line, want := range map[string]int{
		"emom 12:00: 15 kettlebell-swing, rest":             720,
		"intervals 8 x 0:20 rest 1:00: 5 bike-calories":     8*20 + 7*60,
		"amrap 7:00: 10 burpee":                             420,
		"for time 30 rounds cap 10:00: 30 barbell-thruster": 600,
	} {
		d := estimate(t, line, DefaultPace())
		assert.Equal(t, want, d.Usual.Seconds, line)
		assert.Equal(t, want, d.Slow.Seconds, line)
	}
	assert.True(t, estimate(t, "for time 30 rounds cap 10:00: 30 barbell-thruster", DefaultPace()).Fast.Capped)
	assert.Equal(t, 90, estimate(t, "emom 12:00: 15 kettlebell-swing, rest", DefaultPace()).Usual.Reps)
}

func TestEstimateRefuses(t *testing.T) {
	_, err := Estimate(wholes["amrap"], nil, DefaultPace())
	assert.ErrorIs(t, err, ErrMovement)
	_, err = Estimate(gym.Workout{Format: "x"}, nil, DefaultPace())
	assert.ErrorIs(t, err, ErrFormat)
	d, err := Estimate(gym.Workout{}, nil, DefaultPace())
	assert.NoError(t, err)
	assert.Zero(t, d)
}

// The closed form of tiring is the integral of a pace that falls off from 1 to
// 1 + Fatigue, summed up here in small steps.
func TestTiredIsAnIntegral(t *testing.T) {
	tempo := tempo{pace: DefaultPace()}
	for _, fresh := range []float64{0, 60, 412, 1800} {
		const steps = 20000
		sum := 0.0
		for i := range steps {
			at := fresh * (float64(i) + 0.5) / steps
			sum += fresh / steps * (1 + 0.8*(1-math.Exp(-at/240)))
		}
		assert.InDelta(t, sum, tempo.tired(fresh), 1e-5*math.Max(1, fresh))
	}
}

// More of anything takes longer, and a slower athlete takes longer.
func TestEstimateGrows(t *testing.T) {
	c, find := catalogue(t)
	rapid.Check(t, func(t *rapid.T) {
		w := drawWorkout(t, c.Movements)
		w.Cap = 0
		a, err := Estimate(w, find, DefaultPace())
		require.NoError(t, err)
		assert.LessOrEqual(t, a.Fast.Seconds, a.Usual.Seconds)
		assert.LessOrEqual(t, a.Usual.Seconds, a.Slow.Seconds)
		assert.GreaterOrEqual(t, a.Fast.Rounds, a.Slow.Rounds)
		w.Items = append(w.Items, w.Items[0])
		b, err := Estimate(w, find, DefaultPace())
		require.NoError(t, err)
		assert.GreaterOrEqual(t, b.Usual.Seconds, a.Usual.Seconds)
	})
}

// Scores drawn with a known factor and spread give them back.
func TestCalibrate(t *testing.T) {
	_, find := catalogue(t)
	r := rand.New(rand.NewPCG(2, 2))
	var scores []Logged
	timed, amrap := wholes["rounds"], wholes["amrap"]
	plan, err := planOf(amrap, find)
	require.NoError(t, err)
	for range 400 {
		own := 1.2 * math.Exp(0.2*r.NormFloat64())
		uncapped := timed
		uncapped.Cap = 0
		d, err := Estimate(uncapped, find, Pace{Factor: own, Fatigue: 0.8, Fade: 4, ChangeOver: 4})
		require.NoError(t, err)
		scores = append(scores, Logged{uncapped, Score{Kind: ByTime, Seconds: d.Usual.Seconds}})
		done := plan.at(DefaultPace(), own)
		whole := int(done.Rounds)
		scores = append(scores, Logged{amrap, Score{Kind: ByRounds, Rounds: whole, Reps: done.Reps - 210*whole}})
	}
	p, err := Calibrate(DefaultPace(), scores, find)
	require.NoError(t, err)
	assert.InEpsilon(t, 1.2, p.Factor, 0.03)
	assert.InDelta(t, 0.2, p.Spread, 0.02)
	assert.Equal(t, 800, p.Scores)
}

// A gym so slow that half of it meets the cap is told as slow as it is: the reps
// at the cap are those that the same athlete does in an AMRAP of that length.
func TestCalibrateHeedsScoresAtTheCap(t *testing.T) {
	_, find := catalogue(t)
	r := rand.New(rand.NewPCG(5, 2))
	w, capped := wholes["chipper"], 0
	w.Cap = 480
	plan, err := planOf(gym.Workout{Format: gym.AMRAP, Seconds: w.Cap, Items: w.Items}, find)
	require.NoError(t, err)
	var scores []Logged
	for range 400 {
		own := 1.3 * math.Exp(0.2*r.NormFloat64())
		d, err := Estimate(w, find, Pace{Factor: own, Fatigue: 0.8, Fade: 4, ChangeOver: 4})
		require.NoError(t, err)
		score := Score{Kind: ByTime, Seconds: d.Usual.Seconds}
		if d.Usual.Capped {
			score = Score{Kind: ByTime, Capped: true, Reps: plan.at(DefaultPace(), own).Reps}
			capped++
		}
		scores = append(scores, Logged{w, score})
	}
	require.Greater(t, capped, 100)
	p, err := Calibrate(DefaultPace(), scores, find)
	require.NoError(t, err)
	assert.InEpsilon(t, 1.3, p.Factor, 0.03)
	assert.Equal(t, 400, p.Scores)
}

func TestCalibrateHeedsFewScoresLess(t *testing.T) {
	_, find := catalogue(t)
	slow := Logged{wholes["rep list"], Score{Kind: ByTime, Seconds: 3000}}
	one, err := Calibrate(DefaultPace(), []Logged{slow}, find)
	require.NoError(t, err)
	two, err := Calibrate(DefaultPace(), []Logged{slow, slow}, find)
	require.NoError(t, err)
	assert.True(t, 1 < one.Factor && one.Factor < two.Factor)
	same, err := Calibrate(DefaultPace(), []Logged{
		{wholes["emom"], Score{Kind: ByReps, Reps: 90}}, {wholes["rounds"], Score{Kind: ByTime, Capped: true, Reps: 3}}, {wholes["amrap"], Score{Kind: ByRounds}},
	}, find)
	require.NoError(t, err)
	assert.Equal(t, DefaultPace(), same)
	_, err = Calibrate(DefaultPace(), []Logged{slow, {wholes["emom"], Score{Kind: ByTime}}}, find)
	assert.ErrorIs(t, err, ErrKind)
	assert.ErrorContains(t, err, "score 2")
}

// A row of 300 m takes 75 s at the catalogue's pace, which is more than a minute
// and than 20 s of work.
func TestSlotsThatAreTooShortAreSaid(t *testing.T) {
	_, find := catalogue(t)
	emom := gym.Workout{Format: gym.EMOM, Seconds: 600, Items: []gym.Item{do(10, "burpee"), do(300, "row-metres"), {}}}
	assert.Equal(t, "Row takes a usual athlete 1:15 when fresh, longer than the minute has.", SlotAdvice(emom, find, DefaultPace()))
	assert.Equal(t, "One movement a minute, in turn.", TurnsNote(emom))
	emom.Items[1].Amount = 200
	assert.Empty(t, SlotAdvice(emom, find, DefaultPace()))
	intervals := gym.Workout{Format: gym.Intervals, Rounds: 6, Work: 20, Items: []gym.Item{do(10, "burpee"), do(0, "row-metres")}}
	assert.Contains(t, SlotAdvice(intervals, find, DefaultPace()), "longer than the work has")
	assert.Equal(t, "One movement a round, in turn.", TurnsNote(intervals))
	intervals.Items = intervals.Items[1:]
	assert.Empty(t, SlotAdvice(intervals, find, DefaultPace()), "as much as possible")
	assert.Empty(t, TurnsNote(intervals), "there is one movement only")
	assert.Empty(t, SlotAdvice(wholes["rounds"], find, DefaultPace())+TurnsNote(wholes["rounds"]))
}
