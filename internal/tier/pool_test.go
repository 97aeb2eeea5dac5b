package tier

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
	"pgregory.net/rapid"
)

// With the variances given, the pool's effects are the best linear unbiased
// predictions: the same as from Henderson's mixed model equations, solved densely
// with gonum (Henderson 1975, Biometrics 31:423; quoted from memory).
func TestPoolEqualsMixedModelEquations(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := newPool()
		for range 4 {
			p.add(knownAthlete)
		}
		for range 3 {
			p.add(ofMovement)
		}
		n := len(p.effects)
		left, right := mat.NewSymDense(n, nil), mat.NewVecDense(n, nil)
		for i, e := range p.effects {
			left.SetSym(i, i, 1/p.classes[e.class].now)
		}
		for a := range 4 {
			for m := range 3 {
				if rapid.IntRange(0, 3).Draw(t, "skip") == 0 {
					continue
				}
				msg := message{
					class:     ownLinked,
					terms:     [terms]term{{2 + a, 1}, {6 + m, 1}, {ownSlope, rapid.Float64Range(-0.5, 0.5).Draw(t, "strength")}},
					y:         rapid.Float64Range(-0.5, 0.5).Draw(t, "y"),
					precision: rapid.Float64Range(10, 400).Draw(t, "precision"),
				}
				p.messages = append(p.messages, msg)
				w := 1 / (1/msg.precision + p.classes[ownLinked].now)
				for i, s := range msg.terms {
					right.SetVec(s.effect, right.AtVec(s.effect)+w*s.x*msg.y)
					for _, u := range msg.terms[i:] {
						left.SetSym(s.effect, u.effect, left.At(s.effect, u.effect)+w*s.x*u.x)
					}
				}
			}
		}
		for range 3000 {
			for k := range terms {
				p.sweep(k)
			}
		}
		var want mat.VecDense
		require.NoError(t, want.SolveVec(left, right))
		for i, e := range p.effects {
			mean, _ := p.moments(e, 0, 0)
			assert.InDelta(t, want.AtVec(i), mean, 1e-6)
		}
	})
}

// A pair's prior does not hear its own message.
func TestPredictLeavesTheOwnMessageOut(t *testing.T) {
	p := newPool()
	athlete, movement := p.add(unknownAthlete), p.add(ofMovement)
	m := message{class: ownOther, terms: [terms]term{{athlete, 1}, {movement, 1}, {generalSlope, 0}}, y: 0.4, precision: 100}
	p.messages = []message{m}
	p.fit()
	mean, _ := p.predict(m)
	assert.InDelta(t, 0, mean, 1e-9)
	silent := m
	silent.precision = 0
	mean, _ = p.predict(silent)
	assert.Greater(t, mean, 0.2) // another pair of the athlete at that movement hears it
}
