package tier

import (
	"math"
	"slices"

	"windlass/internal/day"
)

const (
	// stretch is how many days of training share one form, and short how many
	// do while a break is made good.
	stretch, short = 42, 14
	// pause is a gap, in days, that begins a new stretch.
	pause = 28
	// mostStretches is about how many stretches a long log is cut into.
	mostStretches = 16
)

// form is how an athlete stands against what is expected of them, as far as all
// of their movements share it: a difference of log capacity, over the growth and the
// loss that anybody would have. It is the same within a stretch of training. Before
// the log it is normal about 0 in the first stretch, and about the one before in every
// later one, with a variance that grows with the weeks between and with what a break
// may have cost. Every pair of the athlete says what its own bouts tell of each stretch;
// a pair's prior heeds what all pairs but itself say.
type form struct {
	class  int        // of the variance it begins with
	starts []day.Date // first day of each stretch; none without a log
	gaps   []span     // from the middle of the stretch before, for each but the first
	info   gauss      // what the log says, with the prior
	mean   []float64
	spread float64 // variance of the first stretch
}

// cut divides an athlete's days into stretches.
func (f *form) cut(c *Calendar) {
	f.starts, f.gaps = f.starts[:0], f.gaps[:0]
	if len(c.days) == 0 {
		return
	}
	long := max(stretch, c.days[len(c.days)-1].Since(c.days[0])/mostStretches)
	var middle day.Date
	for i := 0; i < len(c.days); {
		end := c.stretchFrom(i, long)
		at := c.days[(i+end)/2]
		if len(f.starts) > 0 {
			f.gaps = append(f.gaps, c.between(middle, at))
		}
		f.starts = append(f.starts, c.days[i])
		middle, i = at, end
	}
}

// stretchFrom returns the index after the last day of the stretch that begins
// with one.
func (c *Calendar) stretchFrom(i, long int) int {
	if c.states[i].owed > 0 {
		long = short
	}
	j := i + 1
	for j < len(c.days) && c.days[j].Since(c.days[i]) < long && c.days[j].Since(c.days[j-1]) <= pause {
		j++
	}
	return j
}

// of returns the stretch of a day: the latest begun, or the first.
func (f *form) of(on day.Date) int {
	i, found := slices.BinarySearch(f.starts, on)
	if found {
		return i
	}
	return max(0, i-1)
}

// size is the number of stretches; an athlete without a log has one.
func (f *form) size() int { return max(1, len(f.starts)) }

// begin sets g to what is thought of a form before anybody said anything, and
// returns the log of its covariance's determinant.
func (f *form) begin(g *gauss, h Habits, variance float64) (logDet float64) {
	g.reset(f.size())
	g.chain(0, 0, variance)
	logDet = math.Log(variance)
	for k, gap := range f.gaps {
		v := h.wander(gap)
		g.chain(k, k+1, v)
		logDet += math.Log(v)
	}
	return logDet
}
