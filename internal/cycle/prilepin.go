package cycle

import (
	"fmt"
	"math"

	"windlass/internal/gym"
)

// Band is one row of Prilepin's table: how a weightlifter's repetitions spread
// over a session at some share of the 1RM.
type Band struct {
	From, Below float64 // per cent of the 1RM, half open
	LeastReps   int     // in a set
	MostReps    int
	LeastTotal  int // in a session
	Optimal     int
	MostTotal   int
}

// Bands returns Prilepin's table, lightest first. Copies print its rows with
// holes and overlaps (55–65, 70–75 or 70–80, …); half-open bands leave none. Of
// the copies seen, two print 7 as the last row's optimum and two print 4.
func Bands() [4]Band {
	return [4]Band{
		{From: 0, Below: 70, LeastReps: 3, MostReps: 6, LeastTotal: 18, Optimal: 24, MostTotal: 30},
		{From: 70, Below: 80, LeastReps: 3, MostReps: 6, LeastTotal: 12, Optimal: 18, MostTotal: 24},
		{From: 80, Below: 90, LeastReps: 2, MostReps: 4, LeastTotal: 10, Optimal: 15, MostTotal: 20},
		{From: 90, Below: math.Inf(1), LeastReps: 1, MostReps: 2, LeastTotal: 4, Optimal: 7, MostTotal: 10},
	}
}

// BandOf returns the band of a percentage over 0.
func BandOf(percent float64) Band {
	bands := Bands()
	for _, b := range bands[:len(bands)-1] {
		if percent < b.Below {
			return b
		}
	}
	return bands[len(bands)-1]
}

func (b Band) String() string {
	switch {
	case b.From == 0:
		return fmt.Sprintf("under %g %%", b.Below)
	case math.IsInf(b.Below, 1):
		return fmt.Sprintf("%g %% and over", b.From)
	}
	return fmt.Sprintf("%g to under %g %%", b.From, b.Below)
}

// checkPrilepin holds a day's percentages of an Olympic lift against the table.
// The table speaks of sessions in one band. In a session over several, the
// shares of each band's total are added (common practice, no source).
func (t *trackCheck) checkPrilepin(c *cell) {
	if !c.main() || c.climbs() || c.lift == nil || c.lift.Pattern != gym.Olympic {
		return
	}
	var ofMost, ofLeast float64
	for _, s := range c.plan.Main.Scheme {
		b := BandOf(s.Percent)
		if s.Reps < b.LeastReps || s.Reps > b.MostReps {
			t.breach(RulePrilepin, c, fmt.Sprintf("Sets of %d at %g %%: Prilepin's table has %d to %d reps a set at %s.", s.Reps, s.Percent, b.LeastReps, b.MostReps, b),
				fmt.Sprintf("Write sets of %d to %d, or another percentage.", b.LeastReps, b.MostReps))
		}
		total := float64(s.Sets * s.Reps)
		ofMost += total / float64(b.MostTotal)
		ofLeast += total / float64(b.LeastTotal)
	}
	t.checkTotal(c, ofMost, ofLeast)
}

// roundOff keeps sums of shares such as 1/3 + 2/3 on the right side of 1.
const roundOff = 1e-9

func (t *trackCheck) checkTotal(c *cell, ofMost, ofLeast float64) {
	b := BandOf(heaviest(c.plan.Main))
	told := fmt.Sprintf("Prilepin's table has %d to %d reps a session at %s, best about %d.", b.LeastTotal, b.MostTotal, b, b.Optimal)
	switch {
	case ofMost > 1+roundOff:
		t.breach(RulePrilepin, c, fmt.Sprintf("%d reps are too many for one session. %s", totalReps(c.plan.Main), told), "Take sets away.")
	case ofLeast < 1-roundOff && t.kind(c) == gym.TrainingWeek:
		t.breach(RulePrilepin, c, fmt.Sprintf("%d reps are too few for one session. %s", totalReps(c.plan.Main), told),
			"Add sets, or make the week a light one.")
	}
}

func totalReps(m gym.MainLift) int {
	n := 0
	for _, s := range m.Scheme {
		n += s.Sets * s.Reps
	}
	return n
}
