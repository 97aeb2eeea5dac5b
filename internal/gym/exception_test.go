package gym_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

func TestExceptionsStandForTheirRung(t *testing.T) {
	var l gym.Lifter
	first := l.Except(gym.Exception{Rung: 3, Load: 100 * mass.Kilogram})
	both := first.Except(gym.Exception{Rung: 5, Last: true})
	assert.Equal(t, 100*mass.Kilogram, both.Exception(3).Load)
	assert.True(t, both.Exception(5).Last)
	assert.Equal(t, gym.Exception{Rung: 4}, both.Exception(4), "nothing was decided")
	later := both.Except(gym.Exception{Rung: 3, Load: 95 * mass.Kilogram})
	assert.Equal(t, 95*mass.Kilogram, later.Exception(3).Load, "the later one counts")
	assert.Len(t, later.Exceptions, 2)
	assert.Empty(t, first.Except(gym.Exception{Rung: 3}).Exceptions, "taken back")
	assert.Len(t, first.Exceptions, 1, "and the lifter of before is as it was")
}
