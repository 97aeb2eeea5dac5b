package plates

import (
	"testing"

	"pgregory.net/rapid"

	"windlass/internal/mass"
)

// The brute force of these tests knows nothing of grids: it tries every number
// of pairs of every plate.

func kg(x float64) mass.Mass { return mass.Mass(x*1000) * mass.Gram }
func lb(x float64) mass.Mass { return mass.Mass(x*1000) * (mass.Pound / 1000) }

func kgPlate(x float64, pairs int) Plate { return Plate{Mass: kg(x), Unit: mass.KG, Pairs: pairs} }
func lbPlate(x float64, pairs int) Plate { return Plate{Mass: lb(x), Unit: mass.LB, Pairs: pairs} }

func bar20() Bar {
	return Bar{Key: "20", Name: "bar", Mass: kg(20), Unit: mass.KG, Kind: Barbell, Count: 4}
}

func newLoads(t testing.TB, bar Bar, stock Stock) *Loads {
	t.Helper()
	l, err := NewLoads(bar, stock)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// everyStack lists every side that a stock can make, heaviest inside.
func everyStack(stock Stock) [][]Disc {
	sides := [][]Disc{{}}
	for _, p := range stock.tidy() {
		var more [][]Disc
		for _, side := range sides {
			for n := 0; n <= p.Pairs; n++ {
				next := append([]Disc{}, side...)
				for range n {
					next = append(next, p.Disc())
				}
				more = append(more, next)
			}
		}
		sides = more
	}
	return sides
}

func weigh(base mass.Mass, side []Disc) mass.Mass {
	for _, d := range side {
		base += 2 * d.Mass
	}
	return base
}

func hasFull(side []Disc) bool {
	for _, d := range side {
		if d.Full {
			return true
		}
	}
	return false
}

// Real plates, and plates of whole kilograms close together: these make the
// same load in many ways, of which the one with the heaviest disc is often not
// the leanest.
var (
	realPlates = []Plate{
		kgPlate(25, 0), kgPlate(20, 0), kgPlate(15, 0), kgPlate(10, 0), kgPlate(5, 0), kgPlate(2.5, 0), kgPlate(1.25, 0),
		kgPlate(0.5, 0), kgPlate(7, 0), lbPlate(45, 0), lbPlate(35, 0), lbPlate(25, 0), lbPlate(10, 0), lbPlate(5, 0),
		lbPlate(2.5, 0), lbPlate(1.25, 0), lbPlate(0.125, 0),
	}
	closePlates = []Plate{
		kgPlate(9, 0), kgPlate(8, 0), kgPlate(7, 0), kgPlate(5, 0), kgPlate(4, 0), kgPlate(3, 0), kgPlate(1, 0), lbPlate(5, 0), lbPlate(3, 0),
	}
)

// drawStock makes a short stock, mixed in units more often than not.
func drawStock(t *rapid.T, kinds, pairs int) Stock {
	sold := rapid.SampledFrom([][]Plate{realPlates, closePlates}).Draw(t, "sold")
	var stock Stock
	for range rapid.IntRange(1, kinds).Draw(t, "kinds") {
		p := rapid.SampledFrom(sold).Draw(t, "plate")
		p.Full = rapid.Bool().Draw(t, "full")
		p.Pairs = rapid.IntRange(1, pairs).Draw(t, "pairs")
		stock.Plates = append(stock.Plates, p)
	}
	stock.Collar = rapid.SampledFrom([]mass.Mass{0, kg(2.5), kg(0.2)}).Draw(t, "collar")
	return stock
}

// drawn is a random stock on a 20 kg bar, with every side that it makes.
func drawn(t *rapid.T, kinds, pairs int) (Stock, *Loads, [][]Disc) {
	stock := drawStock(t, kinds, pairs)
	loads, err := NewLoads(bar20(), stock)
	if err != nil {
		t.Fatal(err)
	}
	return stock, loads, everyStack(stock)
}
