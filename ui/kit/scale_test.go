package kit

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func TestTicksAreRoundNumbers(t *testing.T) {
	for _, c := range []struct {
		name      string
		low, high float64
		n         int
		want      []float64
	}{
		{"loads", 97.5, 142.5, 5, []float64{80, 100, 120, 140, 160}},
		{"a narrow range", 100, 101, 5, []float64{100, 100.2, 100.4, 100.6, 100.8, 101}},
		{"around zero", -3, 4, 4, []float64{-4, -2, 0, 2, 4}},
		{"one value only", 100, 100, 4, []float64{99, 99.5, 100, 100.5, 101}},
		{"no value", math.NaN(), math.NaN(), 4, []float64{0, 0.5, 1}},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.InDeltaSlice(t, c.want, newScale(c.low, c.high, c.n, 100).ticks(), 1e-9)
		})
	}
}

// Any scale holds its values between its ends, has few ticks, steps of 1, 2 or 5,
// and maps back and forth.
func TestScale(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		low := rapid.Float64Range(-1e6, 1e6).Draw(r, "low")
		high := low + rapid.Float64Range(1e-3, 1e6).Draw(r, "over")
		n := rapid.IntRange(2, 10).Draw(r, "ticks")
		s := newScale(low, high, n, 500)
		ticks := s.ticks()
		if s.from > low+1e-9*math.Abs(low) || s.to < high-1e-9*math.Abs(high) {
			r.Fatalf("%v…%v does not hold %v…%v", s.from, s.to, low, high)
		}
		if len(ticks) > n+1 || len(ticks) < 2 {
			r.Fatalf("%d ticks", len(ticks))
		}
		digit := s.step / math.Pow(10, math.Floor(math.Log10(s.step)*(1+1e-12)+1e-9))
		if math.Abs(digit-1) > 1e-6 && math.Abs(digit-2) > 1e-6 && math.Abs(digit-5) > 1e-6 {
			r.Fatalf("step %v", s.step)
		}
		at := rapid.Float32Range(0, 500).Draw(r, "at")
		if back := s.at(s.value(at)); math.Abs(float64(back-at)) > 0.01 {
			r.Fatalf("%v came back as %v", at, back)
		}
	})
}
