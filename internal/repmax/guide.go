package repmax

import (
	"fmt"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Guide is a first guess at a lift nobody has tested, taken from a related one.
// Ratios between lifts scatter widely, so it is a range and never an estimate:
// it tells where to begin, not what to expect.
type Guide struct {
	Related   gym.LiftKey
	Low, High mass.Mass // of the 1RM
	Source    string    // of the ratio
}

// NewGuide guesses the 1RM of lift from the 1RM of its related lift. It reports
// false when the catalogue gives no ratio for the lift or the 1RM is not known.
func NewGuide(lift gym.Lift, related mass.Mass) (Guide, bool) {
	low, high := lift.RatioLow, lift.RatioHigh
	if lift.Related == "" || low <= 0 || high < low || related <= 0 {
		return Guide{}, false
	}
	g := Guide{lift.Related, related.Scale(low), related.Scale(high), lift.Source}
	return g, g.Low > 0 && g.High > 0
}

// Start returns the first load of a climb that has to find the rep max: half of
// the low end, rounded down, or the lightest load of the gym. Half is common
// practice, no source.
func (g Guide) Start(down Down, lightest mass.Mass) mass.Mass {
	if load, ok := down(g.Low / 2); ok {
		return load
	}
	return lightest
}

// Why says where the guess comes from.
func (g Guide) Why(u mass.Unit) string {
	return fmt.Sprintf("A guide only: %s to %s, by the usual ratio to %s (%s).", g.Low.In(u), g.High.In(u), g.Related, g.Source)
}
