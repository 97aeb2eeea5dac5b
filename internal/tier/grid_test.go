package tier

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/integrate/quad"
	"pgregory.net/rapid"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// dense is the same posterior by Gauss–Legendre quadrature with gonum: another
// rule, other points, other code, and time by an integral over all pairs.
type dense struct {
	x, w, f []float64
}

func newDense(p Prior, from, to float64) *dense {
	const n = 1500 // two points within the narrowest kernel
	d := &dense{make([]float64, n), make([]float64, n), make([]float64, n)}
	quad.Legendre{}.FixedLocations(d.x, d.w, from, to)
	for i, x := range d.x {
		d.f[i] = math.Exp(-square((x-p.Mean)/p.SD) / 2)
	}
	return d
}

func (d *dense) total(g func(x float64) float64) float64 {
	sum := 0.0
	for i, x := range d.x {
		sum += d.w[i] * d.f[i] * g(x)
	}
	return sum
}

func (d *dense) mean(g func(x float64) float64) float64 {
	return d.total(g) / d.total(func(float64) float64 { return 1 })
}

func (d *dense) diffuse(shift, variance float64) {
	if variance == 0 {
		return
	}
	next := make([]float64, len(d.f))
	for i, y := range d.x {
		next[i] = d.total(func(x float64) float64 {
			z := square(y-x-shift) / (2 * variance)
			if z > 40 {
				return 0
			}
			return math.Exp(-z)
		})
	}
	d.f = next
}

// ordered is the ordered logit from its definition.
func ordered(h Habits, o gym.Outcome, margin float64) float64 {
	held := 1 / (1 + math.Exp(-margin/h.Scale))
	upTo := 1 / (1 + math.Exp(-(margin+h.Slow)/h.Scale))
	p := map[gym.Outcome]float64{gym.Held: held, gym.Slowed: upTo - held, gym.Stopped: 1 - upTo}[o]
	return 0.99*p + 0.01/3
}

func TestPosteriorEqualsQuadrature(t *testing.T) {
	type bout struct {
		kg   float64
		reps int
		o    gym.Outcome
		on   day.Date
	}
	bouts := []bout{
		{16, 40, gym.Held, 100},
		{20, 40, gym.Held, 114},
		{24, 30, gym.Slowed, 135},
		{20, 60, gym.Held, 136},
		{24, 50, gym.Stopped, 164},
		{20, 40, gym.Held, 164},
		{24, 20, gym.Held, 199},
	}
	for _, row := range []struct {
		name string
		p    Prior
		h    Habits
	}{
		{"linked", Prior{math.Log(22), 0.20}, DefaultHabits()},
		{"not linked", Prior{math.Log(22), 0.35}, DefaultHabits()},
		{"a coach's eye", Prior{math.Log(19), 0.30}, Habits{Scale: 0.14, Slow: 0.3, Reps: 0.22, Drift: 0.02, Growth: 0.004, Choice: 0.35, Over: 0.1}},
		{"sharp", Prior{math.Log(25), 0.25}, Habits{Scale: 0.07, Slow: 0.12, Reps: 0.08, Drift: 0.02}},
	} {
		t.Run(row.name, func(t *testing.T) {
			m := New(row.p, Rack{Usual: 40, Confidence: 1}, row.h, nil) // nothing is ever advised
			d := newDense(row.p, row.p.Mean-7*row.p.SD, row.p.Mean+7*row.p.SD)
			at, last := bouts[0].on, 0.0
			for _, b := range bouts {
				m.Observe(gym.Bout{Load: mass.Of(b.kg, mass.KG), Reps: b.reps, Outcome: b.o, On: b.on})
				weeks := float64(b.on-at) / 7
				d.diffuse(row.h.Growth*weeks, (row.h.Drift*row.h.Drift+row.h.Form*row.h.Form)*weeks)
				demand := math.Log(b.kg) + row.h.Reps*math.Log(float64(b.reps)/40)
				for i, x := range d.x {
					if row.h.Choice > 0 && b.kg != last {
						d.f[i] *= math.Exp(-square((x-demand-row.h.Over)/row.h.Choice) / 2)
					}
					d.f[i] *= ordered(row.h, b.o, x-demand)
				}
				at, last = b.on, b.kg
			}
			mean, sd := m.Capacity()
			wantMean := d.mean(func(x float64) float64 { return x })
			assert.InDelta(t, wantMean, mean, 1e-6)
			assert.InDelta(t, math.Sqrt(d.mean(func(x float64) float64 { return square(x - wantMean) })), sd, 1e-6)
			for _, kg := range []float64{8, 16, 20, 24, 28, 40} {
				for _, reps := range []int{15, 40, 90} {
					demand := math.Log(kg) + row.h.Reps*math.Log(float64(reps)/40)
					want := d.mean(func(x float64) float64 { return ordered(row.h, gym.Held, x-demand) })
					assert.InDelta(t, want, m.Hold(mass.Of(kg, mass.KG), reps), 1e-6, "%g kg, %d reps", kg, reps)
					want = d.mean(func(x float64) float64 { return came(Forecast{Came: x < demand}) })
					assert.InDelta(t, want, m.TooHeavy(mass.Of(kg, mass.KG), reps), 0.01, "%g kg, %d reps", kg, reps)
				}
			}
		})
	}
}

// The grid's shortcut through odds says the same as the ordered logit spelt out.
func TestLikelihoodIsTheOrderedLogit(t *testing.T) {
	h := DefaultHabits()
	for margin := -1.0; margin <= 1; margin += 0.05 {
		held, slowed, stopped := h.chances(margin)
		e, k := math.Exp(-margin/h.Scale), math.Exp(-h.Slow/h.Scale)
		assert.InDelta(t, held, likelihood(gym.Held, e, k), 1e-12)
		assert.InDelta(t, slowed, likelihood(gym.Slowed, e, k), 1e-12)
		assert.InDelta(t, stopped, likelihood(gym.Stopped, e, k), 1e-12)
	}
}

// Fitted chances of an ordered logit of the housing data (1681 people; Venables
// and Ripley, Modern Applied Statistics with S, MASS::polr in R 4.2.2). Low, medium
// and high stand for stopped, slowed and held: margin = η − θ2, Slow = θ2 − θ1.
func TestChancesOfTheHousingData(t *testing.T) {
	const lowMedium, mediumHigh = -0.496135344, 0.690708290
	const influenceHigh, terrace, contactHigh = 1.288819064, -1.091014908, 0.360284150
	h := Habits{Scale: 1, Slow: mediumHigh - lowMedium}
	for _, row := range []struct {
		eta               float64
		low, medium, high float64
	}{
		{0, 0.378449306, 0.287675165, 0.333875529}, // low influence, tower, low contact
		{influenceHigh + terrace + contactHigh, 0.258414869, 0.274691618, 0.466893513},
	} {
		held, slowed, stopped := h.chances(row.eta - mediumHigh)
		assert.InDelta(t, row.low, stopped, 1e-8)
		assert.InDelta(t, row.medium, slowed, 1e-8)
		assert.InDelta(t, row.high, held, 1e-8)
	}
}

// The same data's log likelihood at R's estimates, cell by cell.
func TestLogLikelihoodOfTheHousingData(t *testing.T) {
	influence := []float64{0, 0.566393739, 1.288819064}
	house := []float64{0, -0.572350146, -0.366186566, -1.091014908} // tower, apartment, atrium, terrace
	contact := []float64{0, 0.360284150}
	const lowMedium, mediumHigh = -0.496135344, 0.690708290
	cells := [2][4][3][3]float64{
		{
			{{21, 21, 28}, {34, 22, 36}, {10, 11, 36}},
			{{61, 23, 17}, {43, 35, 40}, {26, 18, 54}},
			{{13, 9, 10}, {8, 8, 12}, {6, 7, 9}},
			{{18, 6, 7}, {15, 13, 13}, {7, 5, 11}},
		},
		{
			{{14, 19, 37}, {17, 23, 40}, {3, 5, 23}},
			{{78, 46, 43}, {48, 45, 86}, {15, 25, 62}},
			{{20, 23, 20}, {10, 22, 24}, {7, 10, 21}},
			{{57, 23, 13}, {31, 21, 13}, {5, 6, 13}},
		},
	}
	h := Habits{Scale: 1, Slow: mediumHigh - lowMedium}
	sum, n := 0.0, 0.0
	for c, houses := range cells {
		for b, influences := range houses {
			for a, counts := range influences {
				held, slowed, stopped := h.chances(influence[a] + house[b] + contact[c] - mediumHigh)
				sum += counts[0]*math.Log(stopped) + counts[1]*math.Log(slowed) + counts[2]*math.Log(held)
				n += counts[0] + counts[1] + counts[2]
			}
		}
	}
	require.Equal(t, 1681.0, n)
	assert.InDelta(t, -1739.57464953, sum, 1e-6)
}

// Time keeps the mean and adds exactly its variance, however short or long.
func TestSpreadAddsItsVariance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := newGrid()
		sd := rapid.Float64Range(0.1, 0.4).Draw(t, "sd")
		g.normal(3, sd, 0.1)
		added := square(rapid.Float64Range(0.001, 0.25).Draw(t, "spread") * sd)
		_, before := g.moments()
		g.spread(added, 0.1)
		mean, after := g.moments()
		assert.InDelta(t, 3, mean, 1e-9)
		assert.InEpsilon(t, before+added, after, 1e-6)
	})
}

// A choice that is far off everything known, as by a slip of the hand, moves the
// grid to its edge and leaves chances that add up to 1.
func TestAChoiceFarOffLeavesChances(t *testing.T) {
	h := DefaultHabits()
	h.Choice = 0.18
	for _, kg := range []float64{0.01, 1000} {
		m := New(Prior{math.Log(20), 1.2}, Rack{Usual: 40, Confidence: 1}, h, nil)
		m.Observe(gym.Bout{Load: mass.Of(kg, mass.KG), Reps: 40, Outcome: gym.Held, On: 100})
		sum := 0.0
		for _, p := range m.grid.p[m.grid.from:m.grid.to] {
			sum += p
		}
		assert.InDelta(t, 1, sum, 1e-9, "%g kg", kg)
		mean, sd := m.Capacity()
		assert.InDelta(t, math.Log(kg), mean, 2, "%g kg", kg)
		assert.Positive(t, sd)
	}
}

// A step of the grid allocates nothing.
func TestGridStepsDoNotAllocate(t *testing.T) {
	g, h := newGrid(), Habits{Scale: 0.1, Slow: 0.2, Drift: 0.02, Choice: 0.3}
	g.normal(3, 0.2, 0.1)
	bout := trial{load: 3, outcome: gym.Held, choice: true, confidence: 1, since: span{weeks: 2, trained: 2}}
	assert.Zero(t, testing.AllocsPerRun(100, func() { g.live(&h, &bout) }))
}

// Loads and priors far from each other leave finite chances that add up to 1.
func FuzzObserve(f *testing.F) {
	f.Add(3.0, 0.2, 20.0, 40, byte(0), 7)
	f.Add(0.0, 0.35, 1000.0, 10000, byte(2), 4000)
	f.Add(7.0, 0.05, 0.01, 1, byte(1), 0)
	f.Fuzz(func(t *testing.T, mean, sd, kg float64, reps int, outcome byte, days int) {
		if !(sd > 0.01 && sd < 1) || !(math.Abs(mean) < 8) || days < 0 || days > 10000 {
			t.Skip()
		}
		o := []gym.Outcome{gym.Held, gym.Slowed, gym.Stopped}[outcome%3]
		m := New(Prior{mean, sd}, Rack{Usual: 40}, DefaultHabits(), nil)
		b := gym.Bout{Load: mass.Of(kg, mass.KG), Reps: reps, Outcome: o, On: 1}
		m.Observe(b)
		b.On += day.Date(days)
		m.Observe(b)
		sum := 0.0
		for _, p := range m.grid.p[m.grid.from:m.grid.to] {
			require.False(t, p < 0 || math.IsNaN(p))
			sum += p
		}
		require.InDelta(t, 1, sum, 1e-9)
		hold := m.Hold(20*mass.Kilogram, 40)
		require.True(t, hold >= 0 && hold <= 1, "%g", hold)
	})
}
