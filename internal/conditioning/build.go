package conditioning

import (
	"math"

	"windlass/internal/gym"
)

// Round numbers that coaches write, by what is counted.
var roundAmounts = map[gym.Measure][]int{
	gym.ByReps:     {3, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100},
	gym.ByDistance: {10, 20, 30, 40, 60, 100, 150, 200, 300, 400, 500, 800, 1000},
	gym.ByCalories: {5, 8, 10, 12, 15, 20, 25, 30, 40, 50},
	gym.ByHold:     {10, 15, 20, 30, 40, 45, 60},
}

// repLists are lists for two or three movements in turn (common practice).
var repLists = [][]int{{21, 15, 9}, {15, 12, 9}, {20, 15, 10, 5}, {10, 8, 6, 4, 2}, {2, 4, 6, 8, 10}, {5, 10, 15, 10, 5}}

// RoundAmount returns the number nearest to n that coaches write of a movement.
func RoundAmount(m gym.Movement, n int) int { return amountFor(m, float64(n)*m.Seconds) }

// amountFor returns the round number of a movement whose work takes about so many
// fresh seconds.
func amountFor(m gym.Movement, seconds float64) int {
	best := 0
	for _, n := range roundAmounts[m.Measure] {
		took := func(n int) float64 { return math.Abs(float64(n)*m.Seconds - seconds) }
		if best == 0 || took(n) < took(best) {
			best = n
		}
	}
	return best
}

// amountWithin returns the largest round number of a movement whose work takes at
// most so many fresh seconds, and 0 for none.
func amountWithin(m gym.Movement, seconds float64) int {
	most := 0
	for _, n := range roundAmounts[m.Measure] {
		if float64(n)*m.Seconds <= seconds {
			most = n
		}
	}
	return most
}

// build gives chosen movements their amounts, and the format its times, drawn so
// that the window is met more often than not. The amount of a minute of EMOM is one
// that a slow athlete has done before it is over, that of an interval one that fills
// a usual athlete's time of work; 0 is that none is.
func (c *composer) build(f gym.Format, movements []gym.Movement) gym.Workout {
	w := gym.Workout{Format: f}
	want := c.length()
	each := 20 + 5*float64(c.random.IntN(5)) // fresh seconds of an item in a pass
	amount := amountFor
	switch f {
	case gym.AMRAP:
		w.Seconds = wholeMinutes(want)
	case gym.EMOM:
		w.Seconds = wholeMinutes(want)
		each, amount = min(30+5*float64(c.random.IntN(3)), c.minute()), amountWithin
	case gym.Intervals:
		w.Work, w.Rest = c.workAndRest()
		w.Rounds = max(2, (want+w.Rest)/(w.Work+w.Rest))
		each, amount = float64(w.Work)/c.brief.Pace.Factor, amountWithin // the rest takes the tiredness away
	case gym.PlainSets:
		w.Rounds, w.Rest = 3+c.random.IntN(3), 60
	case gym.Chipper:
		each = c.work(want) / float64(len(movements))
		w.Cap = c.capFor(want)
	case gym.ForTime:
		w.Cap = c.capFor(want)
		if allReps(movements) && c.random.IntN(2) == 0 {
			w.Reps = pick(c.random, repLists)
		} else {
			w.Rounds = max(2, int(math.Round(c.work(want)/(each*float64(len(movements))))))
		}
	}
	for _, m := range movements {
		item := gym.Item{Movement: m.Key}
		if len(w.Reps) == 0 {
			item.Amount = amount(m, each)
		}
		w.Items = append(w.Items, item)
	}
	return w
}

// length draws how long a workout is to be, in seconds.
func (c *composer) length() int {
	return c.brief.Shortest + c.random.IntN(c.brief.Longest-c.brief.Shortest+1)
}

// work returns about how many fresh seconds fill a time, as people slow down.
func (c *composer) work(seconds int) float64 {
	p := c.brief.Pace
	return float64(seconds) / (p.Factor * (1 + p.Fatigue/2))
}

// minute returns about how many fresh seconds a slow athlete has done in a minute of
// EMOM.
func (c *composer) minute() float64 { return c.work(60) / math.Exp(c.brief.Pace.Spread) }

// capFor puts a cap where a slow athlete still gets most of it done.
func (c *composer) capFor(want int) int {
	return min(longest, wholeMinutes(int(float64(want)*math.Exp(c.brief.Pace.Spread))))
}

// workAndRest draws an interval inside the handbook's guide for its work.
func (c *composer) workAndRest() (work, rest int) {
	work = pick(c.random, []int{20, 30, 60})
	g, _ := guideFor(work)
	return work, work * g.low
}

// wholeMinutes rounds to the nearest minute, and never to none.
func wholeMinutes(seconds int) int { return max(1, (seconds+30)/60) * 60 }

func allReps(movements []gym.Movement) bool {
	for _, m := range movements {
		if m.Measure != gym.ByReps {
			return false
		}
	}
	return true
}
