package tier

import "math"

// smooth is the share of the logistic scale over which a posterior hardly bends:
// weights that far apart integrate it as well as weights at every point, since the
// error of the trapezium rule falls with exp(−2π²·scale/distance).
const smooth = 0.6

// spread adds normal noise of a variance, as time does, to a posterior that is
// smooth on a scale.
func (g *grid) spread(variance, scale float64) {
	t := variance / (g.step * g.step)
	switch {
	case t <= 0:
		return
	case t < 1:
		// The sampled curve would be wrong below one step: three weights a side
		// match the second, fourth and sixth moments exactly.
		w3 := (15*t*t*t - 15*t*t + 4*t) / 720
		w2 := (3*t*t-t)/24 - 6*w3
		w1 := t/2 - 4*w2 - 9*w3
		g.begin(1-2*(w1+w2+w3), 3)
		g.both(1, w1)
		g.both(2, w2)
		g.both(3, w3)
		g.finish(3)
	default:
		g.bell(t, max(1, int(min(math.Sqrt(t), smooth*scale/g.step))))
	}
}

// bell weighs by a normal curve of variance t steps², at every stride-th point.
func (g *grid) bell(t float64, stride int) {
	n := int(math.Ceil(6 * math.Sqrt(t) / float64(stride)))
	g.begin(1, n*stride)
	w := math.Exp(-float64(stride*stride) / (2 * t))
	ratio, factor := w*w*w, w*w // from one weight to the next, as in weigh
	for j := 1; j <= n && j*stride < len(g.p); j++ {
		g.both(j*stride, w)
		w *= ratio
		ratio *= factor
	}
	g.finish(n * stride)
}

// begin starts a convolution that reaches so many points to either side, with
// the weight of the point itself.
func (g *grid) begin(weight float64, reach int) {
	clear(g.next[max(0, g.from-reach):min(len(g.p), g.to+reach)])
	add(g.next[g.from:g.to], g.p[g.from:g.to], weight)
}

// both adds the grid, moved by so many points to either side.
func (g *grid) both(by int, weight float64) {
	if to := min(g.to+by, len(g.p)); to > g.from+by {
		add(g.next[g.from+by:to], g.p[g.from:to-by], weight)
	}
	if from := max(g.from-by, 0); from < g.to-by {
		add(g.next[from:g.to-by], g.p[from+by:g.to], weight)
	}
}

func add(to, from []float64, weight float64) {
	for i, x := range from[:len(to)] {
		to[i] += weight * x
	}
}

// finish takes the convolution over. The weights below one step may leave a
// faint negative where the curve ends.
func (g *grid) finish(reach int) {
	g.p, g.next = g.next, g.p
	g.from, g.to = max(0, g.from-reach), min(len(g.p), g.to+reach)
	live, sum := g.p[g.from:g.to], 0.0
	for i, p := range live {
		live[i] = max(p, 0)
		sum += live[i]
	}
	g.scale(sum)
}
