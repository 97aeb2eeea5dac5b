package plates

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/mass"
)

func TestHugeStockStaysExact(t *testing.T) {
	// Plates weighed to the gram: no two share a round grid.
	stock := Stock{Plates: []Plate{kgPlate(24.987, 40), kgPlate(20.011, 40), kgPlate(9.996, 40), kgPlate(5.003, 40), lbPlate(44.973, 40)}}
	got, err := newLoads(t, bar20(), stock).Loadable(20*mass.Kilogram+2*(kg(24.987)+kg(20.011)+kg(5.003)+lb(44.973)), Nearest)
	require.NoError(t, err)
	assert.Equal(t, []string{"24.987 kg", "44.973 lb", "20.011 kg", "5.003 kg"}, faces(got.PerSide))
}

func BenchmarkNewLoads(b *testing.B) {
	stock := bigStock()
	for b.Loop() {
		if _, err := NewLoads(bar20(), stock); err != nil {
			b.Fatal(err)
		}
	}
}

// Forty lifters with ten rungs each, on a heap of kilograms and pounds.
func BenchmarkLoadable400(b *testing.B) {
	loads := newLoads(b, bar20(), bigStock())
	for b.Loop() {
		for i := range mass.Mass(400) {
			if _, err := loads.Loadable(kg(30)+i*(mass.Kilogram*61/100), Nearest); err != nil {
				b.Fatal(err)
			}
		}
	}
}

func bigStock() Stock {
	return Stock{Plates: []Plate{
		kgPlate(25, 16), kgPlate(20, 16), kgPlate(15, 8), kgPlate(10, 16), kgPlate(5, 16), kgPlate(2.5, 16), kgPlate(1.25, 8), kgPlate(0.5, 4),
		lbPlate(45, 16), lbPlate(35, 8), lbPlate(25, 16), lbPlate(10, 16), lbPlate(5, 16), lbPlate(2.5, 16),
	}, Collar: kg(0.2)}
}
