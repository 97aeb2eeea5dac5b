package repmax_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/internal/repmax"
)

// Front squat over back squat 0.85 by one coach's list and 0.78 by the means of
// Gullett et al., J Strength Cond Res 2009;23(1):284-292 (48.5 / 61.8 kg).
func frontSquat() gym.Lift {
	return gym.Lift{Key: "front-squat", Related: "back-squat", RatioLow: 0.78, RatioHigh: 0.85, Source: "coaches' lists"}
}

func TestGuide(t *testing.T) {
	g, ok := repmax.NewGuide(frontSquat(), kg(100))
	require.True(t, ok)
	assert.Equal(t, kg(78), g.Low)
	assert.Equal(t, kg(85), g.High)
	assert.Equal(t, "A guide only: 78 kg to 85 kg, by the usual ratio to back-squat (coaches' lists).", g.Why("kg"))
	assert.Equal(t, kg(37.5), g.Start(steps(kg(2.5)), kg(20)), "half of 78 kg, rounded down")
}

func TestGuideStartsWithTheBarAtLeast(t *testing.T) {
	g, ok := repmax.NewGuide(frontSquat(), kg(30))
	require.True(t, ok)
	assert.Equal(t, kg(20), g.Start(steps(kg(2.5)), kg(20)))
}

func TestNoGuide(t *testing.T) {
	for name, lift := range map[string]gym.Lift{
		"no related lift":   {RatioLow: 0.8, RatioHigh: 0.9},
		"no ratio":          {Related: "back-squat"},
		"ratio upside down": {Related: "back-squat", RatioLow: 0.9, RatioHigh: 0.8},
	} {
		_, ok := repmax.NewGuide(lift, kg(100))
		assert.False(t, ok, name)
	}
	_, ok := repmax.NewGuide(frontSquat(), 0)
	assert.False(t, ok, "the related lift is unknown too")
}
