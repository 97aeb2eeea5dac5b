package kit

import "math"

// scale maps values to a length on the screen, and knows where its ticks are.
type scale struct {
	from, to float64 // values at the two ends
	step     float64 // between ticks
	length   float32
}

// newScale returns a scale over the values low … high that begins and ends on a
// tick. Ticks are a 1, 2 or 5 times a power of ten apart, at most n + 1 of them.
func newScale(low, high float64, n int, length float32) scale {
	if !(high > low) { // also when either is not a number
		low, high = low-1, low+1
		if math.IsNaN(low) || math.IsInf(low, 0) {
			low, high = 0, 1
		}
	}
	// The first guess may have one tick too many, because both ends move outwards.
	for step := niceStep((high - low) / float64(n)); ; step = niceStep(step * 1.01) {
		from, to := math.Floor(low/step)*step, math.Ceil(high/step)*step
		if math.Round((to-from)/step) <= float64(n) {
			return scale{from: from, to: to, step: step, length: length}
		}
	}
}

// niceStep is the smallest 1, 2 or 5 times a power of ten that is at least x.
func niceStep(x float64) float64 {
	power := math.Pow(10, math.Floor(math.Log10(x)))
	for _, f := range []float64{1, 2, 5} {
		if f*power >= x*(1-1e-9) {
			return f * power
		}
	}
	return 10 * power
}

// ticks are the values at the ticks, ends included.
func (s scale) ticks() (all []float64) {
	n := int(math.Round((s.to - s.from) / s.step))
	for i := 0; i <= n; i++ {
		all = append(all, s.from+float64(i)*s.step)
	}
	return all
}

// at is the place of a value along the scale.
func (s scale) at(value float64) float32 {
	return s.length * float32((value-s.from)/(s.to-s.from))
}

// value is the value at a place along the scale.
func (s scale) value(at float32) float64 {
	return s.from + (s.to-s.from)*float64(at/s.length)
}
