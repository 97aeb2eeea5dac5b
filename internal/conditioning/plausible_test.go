package conditioning

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

func TestCheckLoad(t *testing.T) {
	swing := gym.Movement{Name: "Kettlebell swing", Implement: "kettlebell", Loads: map[gym.Standard]gym.TierLoads{
		gym.StandardM: {Full: kg(24), Mid: kg(20), Light: kg(16)}, gym.StandardW: {Full: kg(16), Mid: kg(12), Light: kg(8)},
	}}
	owned := []mass.Mass{kg(8), kg(24), kg(48)}
	for load, ok := range map[float64]bool{8: true, 13: true, 68: true, 192: true, 193: false, 500: false} {
		err := CheckLoad(swing, owned, kg(load))
		assert.Equal(t, ok, err == nil, "%g kg", load)
		if err != nil {
			assert.ErrorIs(t, err, ErrLoad)
			assert.ErrorContains(t, err, "48 kg; check the decimal point and the unit")
		}
	}
	assert.Error(t, CheckLoad(swing, nil, kg(240)), "24,0 kg without its comma")
	assert.NoError(t, CheckLoad(gym.Movement{Name: "Pull-up"}, nil, kg(500)), "nothing is known of it")
}

func TestMissing(t *testing.T) {
	owned := []mass.Mass{kg(8), kg(24)}
	assert.False(t, Missing(owned, kg(24)))
	assert.True(t, Missing(owned, kg(23)))
	assert.False(t, Missing(nil, kg(23)))
}
