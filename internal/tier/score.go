package tier

import (
	"math"
	"slices"
)

// Forecast is a chance that was given, and whether the event came.
type Forecast struct {
	Chance float64
	Came   bool
}

// Score says how well chances were given: the Brier score and its three parts
// (Murphy 1973, J Appl Meteorol 12:595), Brier = Reliability − Resolution +
// Uncertainty when every bin holds equal chances. Calibration is the mean
// distance between chance and frequency over the bins, weighted by their size.
type Score struct {
	N                                           int
	Base                                        float64 // how often the event came
	Brier, Reliability, Resolution, Uncertainty float64
	Calibration                                 float64
}

// ScoreOf scores forecasts in so many bins of equal width; 0 bins puts only
// equal chances together. No forecasts give the zero Score.
func ScoreOf(forecasts []Forecast, bins int) Score {
	s := Score{N: len(forecasts)}
	if s.N == 0 {
		return s
	}
	n := float64(s.N)
	for _, f := range forecasts {
		s.Brier += square(f.Chance-came(f)) / n
		s.Base += came(f) / n
	}
	s.Uncertainty = s.Base * (1 - s.Base)
	for _, bin := range binned(forecasts, bins) {
		size := float64(len(bin))
		chance, rate := 0.0, 0.0
		for _, f := range bin {
			chance += f.Chance / size
			rate += came(f) / size
		}
		s.Reliability += size / n * square(chance-rate)
		s.Resolution += size / n * square(rate-s.Base)
		s.Calibration += size / n * math.Abs(chance-rate)
	}
	return s
}

func binned(forecasts []Forecast, bins int) [][]Forecast {
	groups := map[float64][]Forecast{}
	for _, f := range forecasts {
		key := f.Chance
		if bins > 0 {
			key = math.Min(math.Floor(f.Chance*float64(bins)), float64(bins-1))
		}
		groups[key] = append(groups[key], f)
	}
	keys := make([]float64, 0, len(groups))
	for key := range groups {
		keys = append(keys, key)
	}
	slices.Sort(keys) // sums of floats depend on their order
	rows := make([][]Forecast, len(keys))
	for i, key := range keys {
		rows[i] = groups[key]
	}
	return rows
}

func came(f Forecast) float64 {
	if f.Came {
		return 1
	}
	return 0
}

func square(x float64) float64 { return x * x }
