package exchange

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/gym"
)

func TestAmounts(t *testing.T) {
	for _, c := range []struct {
		text string
		by   gym.Measure
		want float64 // 0 for a refusal
	}{
		{"45", gym.ByTime, 45},
		{"45 s", gym.ByHold, 45},
		{"31,5 Sec", gym.ByTime, 31.5},
		{"1:02.5", gym.ByTime, 62.5},
		{"4:30 min", gym.ByTime, 270},
		{"2 min", gym.ByTime, 0}, // not two seconds
		{"200 m", gym.ByDistance, 200},
		{"1.5 km", gym.ByDistance, 0}, // not one and a half metres
		{"45 m", gym.ByTime, 0},       // minutes or metres: neither is seconds
		{"31 reps", gym.ByReps, 31},
		{"31 reps", gym.ByDistance, 0},
		{"18 cal", gym.ByCalories, 18},
		{"1:60", gym.ByTime, 0},
		{"0", gym.ByReps, 0},
		{"-3", gym.ByReps, 0},
		{"", gym.ByReps, 0},
	} {
		got, err := parseAmount(c.text, c.by)
		assert.InDelta(t, c.want, got, 0, "%q by %s", c.text, c.by)
		assert.Equal(t, c.want == 0, err != nil, "%q by %s: %v", c.text, c.by, err)
	}
}
