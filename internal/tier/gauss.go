package tier

import "math"

// gauss is a normal distribution of a few numbers by its information: the matrix
// is the inverse of their covariance, of which the lower triangle is kept. After
// factor it is the matrix's Cholesky root, and the vector half of the solution.
type gauss struct {
	n             int
	matrix, right []float64
	mean, work    []float64
}

func (g *gauss) reset(n int) {
	g.n = n
	g.matrix, g.right = zeros(g.matrix, n*n), zeros(g.right, n)
	g.mean, g.work = zeros(g.mean, n), zeros(g.work, n)
}

func (g *gauss) copy(from *gauss) {
	g.reset(from.n)
	copy(g.matrix, from.matrix)
	copy(g.right, from.right)
}

// zeros returns so many zeros, in the same place if there is room.
func zeros(in []float64, n int) []float64 {
	if cap(in) < n {
		return make([]float64, n)
	}
	in = in[:n]
	clear(in)
	return in
}

// chain says that j differs from i by noise of a variance; from nothing when they
// are the same.
func (g *gauss) chain(i, j int, variance float64) {
	p := 1 / variance
	g.matrix[j*g.n+j] += p
	if i != j {
		g.matrix[i*g.n+i] += p
		g.matrix[j*g.n+i] -= p
	}
}

// tell adds what a pair says, whose own difference has a variance; a sign of −1
// takes it away again. It returns the square of what is said over its covariance.
func (g *gauss) tell(said []saying, offset, own, sign float64) float64 {
	var w, wr, square float64
	for _, s := range said {
		r := s.y - offset
		w, wr, square = w+s.precision, wr+s.precision*r, square+s.precision*r*r
		g.matrix[s.stretch*(g.n+1)] += sign * s.precision
		g.right[s.stretch] += sign * s.precision * r
	}
	share := 1 / (w + 1/own)
	for a, s := range said {
		row := g.matrix[s.stretch*g.n:]
		for _, t := range said[:a+1] {
			row[t.stretch] -= sign * s.precision * t.precision * share
		}
		g.right[s.stretch] -= sign * s.precision * wr * share
	}
	return square - wr*wr*share
}

// factor solves for the mean. It returns the square of the right side over the
// matrix.
func (g *gauss) factor() (square float64) {
	for i := range g.n {
		row := g.matrix[i*g.n : i*g.n+i+1]
		for j := range i {
			g.pivot(row, j)
		}
		sum, r := row[i], g.right[i]
		for k, x := range row[:i] {
			sum -= x * x
			r -= x * g.work[k]
		}
		row[i] = math.Sqrt(max(sum, tiny))
		g.work[i] = r / row[i]
		square += g.work[i] * g.work[i]
	}
	copy(g.mean, g.work)
	for i := g.n - 1; i >= 0; i-- {
		row := g.matrix[i*g.n : i*g.n+i+1]
		g.mean[i] /= row[i]
		for k, x := range row[:i] {
			g.mean[k] -= x * g.mean[i]
		}
	}
	return square
}

// logDet returns the log of the matrix's determinant, after factor.
func (g *gauss) logDet() (sum float64) {
	for i := range g.n {
		sum += 2 * math.Log(g.matrix[i*(g.n+1)])
	}
	return sum
}

// tiny keeps a root real where rounding would not.
const tiny = 1e-12

func (g *gauss) pivot(row []float64, j int) {
	other := g.matrix[j*g.n : j*g.n+j+1]
	sum := row[j]
	for k, x := range other[:j] {
		sum -= x * row[k]
	}
	row[j] = sum / other[j]
}

// variance returns that of a number i, or of the difference of j to it, after factor.
func (g *gauss) variance(i, j int) float64 {
	work := g.work
	clear(work)
	work[i] = 1
	if j != i {
		work[j] = -1
	}
	sum := 0.0
	for k := min(i, j); k < g.n; k++ {
		row := g.matrix[k*g.n : k*g.n+k+1]
		for l := min(i, j); l < k; l++ {
			work[k] -= row[l] * work[l]
		}
		work[k] /= row[k]
		sum += work[k] * work[k]
	}
	return sum
}
