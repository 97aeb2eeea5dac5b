package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/desk"
	"windlass/internal/gym"
)

func TestABoutNamesItsUnit(t *testing.T) {
	for _, row := range []struct {
		measure gym.Measure
		want    string
	}{
		{gym.ByReps, "Push × 140"}, {gym.ByDistance, "Push × 140 m"}, {gym.ByTime, "Push × 140 s"}, {gym.ByCalories, "Push × 140 cal"},
	} {
		assert.Equal(t, row.want, desk.BoutWork(desk.BoutRow{What: "Push", Reps: 140, Measure: row.measure}))
	}
}
