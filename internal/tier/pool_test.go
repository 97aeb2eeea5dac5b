package tier

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
	"pgregory.net/rapid"

	"windlass/internal/day"
)

// equations are a normal distribution of many numbers by its information, filled in
// and solved densely with gonum.
type equations struct {
	left  *mat.SymDense
	right *mat.VecDense
}

func newEquations(n int) *equations {
	return &equations{mat.NewSymDense(n, nil), mat.NewVecDense(n, nil)}
}

// say adds that Σ x·number is y, with a precision.
func (e *equations) say(y, precision float64, at []int, x []float64) {
	for i, a := range at {
		e.right.SetVec(a, e.right.AtVec(a)+precision*x[i]*y)
		for j, b := range at {
			if b >= a {
				e.left.SetSym(a, b, e.left.At(a, b)+precision*x[i]*x[j])
			}
		}
	}
}

func (e *equations) solve(t require.TestingT) (mean *mat.VecDense, covariance *mat.Dense) {
	mean, covariance = &mat.VecDense{}, &mat.Dense{}
	require.NoError(t, mean.SolveVec(e.left, e.right))
	require.NoError(t, covariance.Inverse(e.left))
	return mean, covariance
}

// drawForms makes the forms of some athletes, with a break of ten weeks in each.
func drawForms(p *pool, n int) {
	for range n {
		f := &form{class: unknownAthlete}
		var c Calendar
		for _, on := range []day.Date{100, 121, 149, 163, 233, 240, 261, 282} {
			c.Mark(on)
		}
		f.cut(&c)
		p.forms = append(p.forms, f)
	}
}

// drawMessages makes messages of athletes at movements, of which some say nothing.
func drawMessages(t *rapid.T, p *pool, movements []int) {
	for _, f := range p.forms {
		for _, m := range movements {
			msg := message{form: f, class: ownLinked, terms: [terms]term{
				{m, 1}, {standardM, 1}, {ownSlope, rapid.Float64Range(-0.5, 0.5).Draw(t, "strength")},
			}}
			for k := range f.size() {
				if rapid.Bool().Draw(t, "said") {
					msg.said = append(msg.said, saying{
						stretch: k, y: rapid.Float64Range(-0.5, 0.5).Draw(t, "y"), precision: rapid.Float64Range(10, 400).Draw(t, "precision"),
					})
				}
			}
			p.messages = append(p.messages, msg)
		}
	}
}

// With the variances given, the pool's effects and forms are the best linear
// unbiased predictions: the same as from Henderson's mixed model equations of
// everything at once, a random walk of every form and the own difference of every
// pair among it (Henderson 1975, Biometrics 31:423; quoted from memory).
func TestPoolEqualsMixedModelEquations(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, h := newPool(), DefaultHabits()
		movements := []int{p.add(ofMovement), p.add(ofMovement), p.add(ofMovement)}
		drawForms(p, 3)
		drawMessages(t, p, movements)
		at := len(p.effects)
		starts := map[*form]int{}
		for _, f := range p.forms {
			starts[f], at = at, at+f.size()
		}
		e := newEquations(at + len(p.messages))
		for i := range p.effects {
			e.say(0, 1/p.classes[p.effects[i].class].now, []int{i}, []float64{1})
		}
		for f, k := range starts {
			e.say(0, 1/p.classes[f.class].now, []int{k}, []float64{1})
			for i, gap := range f.gaps {
				e.say(0, 1/h.wander(gap), []int{k + i, k + i + 1}, []float64{-1, 1})
			}
		}
		for i, m := range p.messages {
			own := at + i
			e.say(0, 1/p.classes[m.class].now, []int{own}, []float64{1})
			for _, s := range m.said {
				numbers, x := []int{own, starts[m.form] + s.stretch}, []float64{1, 1}
				for _, term := range m.terms {
					numbers, x = append(numbers, term.effect), append(x, term.x)
				}
				e.say(s.y, s.precision, numbers, x)
			}
		}
		for range 1500 {
			p.sweepForms(h)
			for k := range terms {
				p.sweep(k)
			}
		}
		p.sweepForms(h)
		want, _ := e.solve(t)
		for i := range p.effects {
			assert.InDelta(t, want.AtVec(i), p.effects[i].mean, 1e-6)
		}
		for f, k := range starts {
			for i, mean := range f.mean {
				assert.InDelta(t, want.AtVec(k+i), mean, 1e-6)
			}
		}
	})
}

// A form as all pairs but one tell it is what the others alone tell, with the same
// spread of every stretch and of every change.
func TestWithoutLeavesOnePairOut(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, h := newPool(), DefaultHabits()
		drawForms(p, 1)
		drawMessages(t, p, []int{p.add(ofMovement), p.add(ofMovement), p.add(ofMovement)})
		p.sweepForms(h)
		f := p.forms[0]
		e := newEquations(f.size() + len(p.messages))
		e.say(0, 1/p.classes[f.class].now, []int{0}, []float64{1})
		for i, gap := range f.gaps {
			e.say(0, 1/h.wander(gap), []int{i, i + 1}, []float64{-1, 1})
		}
		for i, m := range p.messages {
			own := f.size() + i
			e.say(0, 1/p.classes[m.class].now, []int{own}, []float64{1})
			for _, s := range m.said {
				if i > 0 {
					e.say(s.y, s.precision, []int{s.stretch, own}, []float64{1, 1})
				}
			}
		}
		mean, covariance := e.solve(t)
		var g gauss
		p.without(&g, &p.messages[0])
		for i := range f.size() {
			assert.InDelta(t, mean.AtVec(i), g.mean[i], 1e-8)
			assert.InDelta(t, covariance.At(i, i), g.variance(i, i), 1e-8)
			for j := range i {
				change := covariance.At(i, i) + covariance.At(j, j) - 2*covariance.At(i, j)
				assert.InDelta(t, change, g.variance(j, i), 1e-8)
			}
		}
	})
}

// A pair's prior does not hear its own message.
func TestPredictLeavesTheOwnMessageOut(t *testing.T) {
	p := newPool()
	drawForms(p, 1)
	m := message{
		form: p.forms[0], class: ownOther, terms: [terms]term{{p.add(ofMovement), 1}, {standardW, 1}, {generalSlope, 0}},
		said: []saying{{stretch: 0, y: 0.4, precision: 100}},
	}
	p.messages = []message{m}
	p.fit(DefaultHabits())
	mean, _ := p.predict(&p.messages[0])
	assert.InDelta(t, 0, mean, 1e-4) // the fit stops when nothing shows
	silent := m
	silent.said = nil
	mean, _ = p.predict(&silent)
	assert.Greater(t, mean, 0.02) // another pair at that movement hears it
}
