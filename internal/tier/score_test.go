package tier

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// forecasts makes n equal forecasts, the first of which came true.
func forecasts(chance float64, n, came int) []Forecast {
	var rows []Forecast
	for i := range n {
		rows = append(rows, Forecast{chance, i < came})
	}
	return rows
}

// A worked example of the decomposition, computed by hand from Murphy's formula.
func TestBrierDecomposition(t *testing.T) {
	rows := append(append(forecasts(0.1, 5, 1), forecasts(0.4, 5, 2)...), forecasts(0.8, 10, 8)...)
	for _, bins := range []int{0, 10} {
		s := ScoreOf(rows, bins)
		assert.Equal(t, 20, s.N)
		assert.InDelta(t, 0.55, s.Base, 1e-12)
		assert.InDelta(t, 0.1825, s.Brier, 1e-12)
		assert.InDelta(t, 0.0025, s.Reliability, 1e-12)
		assert.InDelta(t, 0.0675, s.Resolution, 1e-12)
		assert.InDelta(t, 0.2475, s.Uncertainty, 1e-12)
		assert.InDelta(t, 0.025, s.Calibration, 1e-12) // a quarter of the rows is off by 0.1
	}
}

// y = 0, 1, 1, 0 with p = .1, .9, .8, .3 (from memory: an example in the manual
// of a well-known Python library for machine learning).
func TestBrierScore(t *testing.T) {
	s := ScoreOf([]Forecast{{0.1, false}, {0.9, true}, {0.8, true}, {0.3, false}}, 0)
	assert.InDelta(t, 0.0375, s.Brier, 1e-12)
	assert.Equal(t, Score{}, ScoreOf(nil, 10))
}

// With equal chances together, the parts add up to the whole.
func TestBrierPartsAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var rows []Forecast
		for range rapid.IntRange(1, 60).Draw(t, "n") {
			chance := float64(rapid.IntRange(0, 8).Draw(t, "chance")) / 8
			rows = append(rows, Forecast{chance, rapid.Bool().Draw(t, "came")})
		}
		s := ScoreOf(rows, 0)
		assert.InDelta(t, s.Brier, s.Reliability-s.Resolution+s.Uncertainty, 1e-9)
	})
}
