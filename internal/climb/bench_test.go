package climb_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// Forty lifters on one bar and a usual stock, all climbs solved anew as after
// every call in a class.
func BenchmarkFortyLifters(b *testing.B) {
	var stock plates.Stock
	for _, x := range []float64{25, 20, 15, 10, 5, 2.5, 1.25} {
		stock.Plates = append(stock.Plates, plates.Plate{Mass: kg(x), Unit: mass.KG, Pairs: 6, Full: x >= 10})
	}
	for _, x := range []mass.Mass{45, 25, 10, 5, 2} {
		stock.Plates = append(stock.Plates, plates.Plate{Mass: x * mass.Pound, Unit: mass.LB, Pairs: 4})
	}
	loads, err := plates.NewLoads(plates.Bar{Key: "bar", Name: "Bar", Mass: kg(20), Unit: mass.KG, Kind: plates.Barbell, Count: 1}, stock)
	require.NoError(b, err)
	plan, r := nine(), rig(loads)
	calls := []gym.Call{{Rung: 5, Kind: gym.ClimbCall}, {Rung: 6, Kind: gym.ClimbCall}}
	for b.Loop() {
		for i := range 40 {
			if _, err := climb.Build(plan, gym.Lifter{Reps: 5, Base: kg(60 + 3.5*float64(i)), Calls: calls}, r); err != nil {
				b.Fatal(err)
			}
		}
	}
}
