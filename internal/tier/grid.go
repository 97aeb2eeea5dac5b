package tier

import (
	"math"

	"windlass/internal/gym"
)

const (
	// fineness is the widest step, as a share of the logistic scale. What a grid
	// holds is smooth on that scale, and the error of the trapezium rule falls with
	// exp(−2π²·scale/step): a finer step would buy nothing.
	fineness = 0.4
	// leastPoints and mostPoints are the fewest and the most points of a grid.
	leastPoints, mostPoints = 31, 241
	// reach is how many standard deviations of the prior the grid extends to each
	// side; the normal curve leaves 8e-11 outside.
	reach = 6.5
	// faint is a chance that no answer would notice.
	faint = 1e-12
)

// grid is a distribution of the capacity c on evenly spaced points. The
// trapezium rule on a smooth curve that vanishes at both ends converges faster
// than any power of the step, which is why so few points are exact.
type grid struct {
	low, step float64   // c of the first point; distance of the points
	p, next   []float64 // chances, adding up to 1; room for one convolution
	from, to  int       // the points outside have no chance worth a name
}

func newGrid() *grid { return &grid{} }

// normal sets the grid to a normal distribution, to be weighed by logistic curves
// of a scale.
func (g *grid) normal(mean, sd, scale float64) {
	half := reach * sd
	n := min(max(leastPoints, int(2*half/(fineness*scale))+2), mostPoints)
	g.p, g.next = zeros(g.p, n), zeros(g.next, n)
	g.low, g.step = mean-half, 2*half/float64(n-1)
	g.from, g.to = 0, n
	for i := range g.p {
		g.p[i] = 1
	}
	g.weigh(mean, sd)
}

// weigh multiplies by a normal curve. It goes to both sides from the live point
// nearest to the mean: begun at an end, a narrow curve far off would be nothing
// everywhere.
func (g *grid) weigh(mean, sd float64) {
	peak := min(max(int((mean-g.low)/g.step), g.from), g.to-1)
	z, d := (g.at(peak)-mean)/sd, g.step/sd
	g.scale(taper(g.p[peak:g.to], 1, z, d) + taper(g.p[g.from:peak], -1, z-d, -d))
}

// taper multiplies points by a normal curve, in their order or from the last to
// the first, and returns their sum. The first to be met stands at z, the others d
// apart. Neighbouring values of a normal curve have a ratio that itself changes by
// a constant factor, so a side costs three exponentials.
func taper(points []float64, way int, z, d float64) (sum float64) {
	w, ratio, factor := math.Exp(-z*z/2), math.Exp(-z*d-d*d/2), math.Exp(-d*d)
	at := 0
	if way < 0 {
		at = len(points) - 1
	}
	for ; at >= 0 && at < len(points); at += way {
		points[at] *= w
		sum += points[at]
		w *= ratio
		ratio *= factor
	}
	return sum
}

func (g *grid) at(i int) float64 { return g.low + float64(i)*g.step }

// scale makes chances that add up to a sum add up to 1, and leaves faint ends
// aside.
func (g *grid) scale(sum float64) {
	if sum <= 0 {
		return
	}
	for g.p[g.from] < faint*sum {
		g.from++
	}
	for g.p[g.to-1] < faint*sum {
		g.to--
	}
	inv := 1 / sum
	live := g.p[g.from:g.to]
	for i := range live {
		live[i] *= inv
	}
}

// odds returns exp(−(c−d)/scale) at the first live point and its factor from one
// point to the next: a whole grid of logistic curves costs two exponentials. A
// demand far off the grid is held where the numbers stay finite.
func (g *grid) odds(demand, scale float64) (first, factor float64) {
	u := (g.at(g.from) - demand) / scale
	return math.Exp(-min(max(u, -600), 600)), math.Exp(-g.step / scale)
}

// observe weighs the grid by the likelihood of an outcome at a demand, and
// returns the chance that the grid had given to that outcome.
func (g *grid) observe(h *Habits, o gym.Outcome, demand float64) float64 {
	e, factor := g.odds(demand, h.Scale)
	k := math.Exp(-h.Slow / h.Scale)
	live, sum := g.p[g.from:g.to], 0.0
	for i := range live {
		live[i] *= (1-lapse)*likelihood(o, e, k) + lapse/3
		sum += live[i]
		e *= factor
	}
	g.scale(sum)
	return sum
}

// choose weighs the grid by what a chosen load says. A load far off the grid
// says no more than one at its edge.
func (g *grid) choose(h *Habits, demand float64) {
	g.weigh(min(max(demand+h.Over, g.at(g.from)), g.at(g.to-1)), h.Choice)
}

// hold returns the chance that a demand is held.
func (g *grid) hold(h *Habits, demand float64) float64 {
	e, factor := g.odds(demand, h.Scale)
	sum := 0.0
	for _, p := range g.p[g.from:g.to] {
		sum += p / (1 + e)
		e *= factor
	}
	return (1-lapse)*sum + lapse/3
}

// moments returns the mean and the variance.
func (g *grid) moments() (mean, variance float64) {
	live := g.p[g.from:g.to]
	for i, p := range live {
		mean += p * float64(i)
	}
	for i, p := range live {
		variance += p * (float64(i) - mean) * (float64(i) - mean)
	}
	return g.at(g.from) + mean*g.step, variance * g.step * g.step
}

// below returns the chance that the capacity is under a demand. Half of a point
// lies to each side of it.
func (g *grid) below(demand float64) float64 {
	x := (demand-g.low)/g.step + 0.5
	n := min(max(int(x), g.from), g.to)
	sum := 0.0
	for _, p := range g.p[g.from:n] {
		sum += p
	}
	if n < g.to && x > float64(n) {
		sum += (x - float64(n)) * g.p[n]
	}
	return sum
}
