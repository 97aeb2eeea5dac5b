package desk_test

import (
	"context"
	"math/rand/v2"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

func kilos(n float64) mass.Mass { return mass.Of(n, mass.KG) }

func TestEquipmentThatCannotBeIsRefused(t *testing.T) {
	b := newBench(t)
	bar := func(change func(*plates.Bar)) func() error {
		return func() error {
			own := plates.Bar{Name: "Axle", Mass: kilos(12), Unit: mass.KG, Kind: "axle", Count: 1}
			change(&own)
			_, err := b.KeepBar(own)
			return err
		}
	}
	plate := func(p plates.Plate) func() error {
		return func() error { _, err := b.KeepPlates(-1, p); return err }
	}
	station := func(at int, s gym.Station) func() error {
		return func() error { _, err := b.KeepStation(at, s); return err }
	}
	tests := map[string]func() error{
		"it has no name":                       bar(func(b *plates.Bar) { b.Name = "  " }),
		"another has that name already":        bar(func(b *plates.Bar) { b.Name = "20 KG bar" }),
		"its mass must be over 0":              bar(func(b *plates.Bar) { b.Mass = 0 }),
		"the count -1 is negative":             bar(func(b *plates.Bar) { b.Count = -1 }),
		"25 kg plates of that diameter are in": plate(plates.Plate{Mass: kilos(25), Unit: mass.KG, Pairs: 1, Full: true}),
		"300 pairs is not between":             plate(plates.Plate{Mass: kilos(15), Unit: mass.KG, Pairs: 300}),
		"one must be from 0 to 10 kg":          func() error { return b.KeepCollar(kilos(11)) },
		`the gym has no bar "gone"`:            station(0, gym.Station{Name: "Rack 1", Bar: "gone"}),
		`"rack 2": another has that name`:      station(0, gym.Station{Name: "Rack 2 ", Bar: "bar-20"}),
		"it stands at Rack 1, Rack 2":          func() error { return b.DropBar("bar-20") },
		"the stock has none of that number":    func() error { return b.DropPlates(99) },
		"it is used by":                        func() error { return b.DropImplement("kettlebell") },
		`is not a key; write small letters`:    func() error { return b.KeepImplement(gym.Implement{Kind: "Big Stone", Unit: mass.KG}) },
		"the gym has that kind already":        func() error { _, err := b.AddImplement("Kettlebell", mass.KG); return err },
		"0 kg is not between nothing and 1000 kg": func() error {
			return b.KeepImplement(gym.Implement{Kind: "stone", Unit: mass.KG, Masses: []mass.Mass{0}})
		},
		"remove station: there is none of that nu": func() error { return b.DropStation(7) },
	}
	before := b.Book().Equipment
	for want, do := range tests {
		assert.ErrorContains(t, do(), want)
		assert.Equal(t, before, b.Book().Equipment, want)
	}
	assert.Empty(t, b.CanUndo())
}

func TestEquipmentIsKeptAndTakenBack(t *testing.T) {
	b := newBench(t)
	before := b.Book().Equipment
	key, err := b.KeepBar(plates.Bar{Name: " Fat Axle ", Mass: 45 * mass.Pound, Unit: mass.LB, Kind: "axle", Count: 2})
	require.NoError(t, err)
	assert.Equal(t, "fat-axle", key)
	at, err := b.KeepPlates(-1, plates.Plate{Mass: 45 * mass.Pound, Unit: mass.LB, Pairs: 4, Full: true})
	require.NoError(t, err)
	assert.Equal(t, 1, at, "45 lb lies between 25 kg and 20 kg")
	at, err = b.KeepStation(-1, gym.Station{Name: "Platform", Bar: key})
	require.NoError(t, err)
	assert.Equal(t, 2, at)
	require.NoError(t, b.KeepImplement(gym.Implement{Kind: "kettlebell", Unit: mass.KG, Masses: []mass.Mass{kilos(24), kilos(8), kilos(24)}}))
	assert.Equal(t, []mass.Mass{kilos(8), kilos(24)}, b.Book().Equipment.Implement("kettlebell"))

	assert.Equal(t, b.Book().Equipment, b.reopened().Book().Equipment, "all of it is on the disk")
	for range 4 {
		_, err := b.Undo()
		require.NoError(t, err)
	}
	assert.Equal(t, before, b.Book().Equipment)
}

func TestAPlateThatMovesInTheStockIsFollowed(t *testing.T) {
	b := newBench(t)
	at, err := b.KeepPlates(0, plates.Plate{Mass: kilos(15), Unit: mass.KG, Pairs: 2, Full: true}) // was 25 kg
	require.NoError(t, err)
	assert.Equal(t, 1, at)
	assert.Equal(t, kilos(20), b.Book().Equipment.Stock.Plates[0].Mass)
}

func TestNoStationGoesWhileAClassIsOnTheFloor(t *testing.T) {
	b := newBench(t)
	_, err := b.OpenFreeClass()
	require.NoError(t, err)
	assert.ErrorContains(t, b.DropStation(0), "finish the class first")
}

// The stock of the bench is 8 pairs of 25, 20, 10, 5, 2.5 and 1.25 kg: with all
// of it the bar carries 20 + 2·8·63.75 = 1040 kg, over the 1000 kg that the
// program believes.
func TestReach(t *testing.T) {
	b := newBench(t)
	r, err := b.ReachOf("bar-20")
	require.NoError(t, err)
	assert.Equal(t, kilos(20), r.Lightest)
	assert.Equal(t, kilos(1000), r.Heaviest)
	assert.Equal(t, kilos(2.5), r.Step)
	assert.Equal(t, []string{"From 20 kg to 1000 kg, the most that is reckoned with", "In steps of 2.5 kg all the way"}, r.Lines())
	_, err = b.KeepPlates(-1, plates.Plate{Mass: 45 * mass.Pound, Unit: mass.LB, Pairs: 8, Full: true})
	require.NoError(t, err)
	r, err = b.ReachOf("bar-20")
	require.NoError(t, err)
	assert.Equal(t, "Smallest step 0.03 kg", r.Lines()[1], "kilograms and pounds mix")
	_, err = b.ReachOf("gone")
	assert.ErrorContains(t, err, `the gym has no bar "gone"`)
}

// Brute force over every subset of a small stock.
func TestReachAgreesWithEverySubset(t *testing.T) {
	base := smallGym(t)
	rapid.Check(t, func(t *rapid.T) {
		var stock []plates.Plate
		sums := map[mass.Mass]bool{kilos(20): true}
		for _, m := range rapid.SliceOfNDistinct(rapid.IntRange(1, 40), 1, 4, rapid.ID).Draw(t, "half kilograms") {
			p := plates.Plate{Mass: mass.Mass(m) * mass.Kilogram / 2, Unit: mass.KG, Pairs: rapid.IntRange(1, 3).Draw(t, "pairs")}
			stock = append(stock, p)
			next := map[mass.Mass]bool{}
			for sum := range sums {
				for n := range p.Pairs + 1 {
					next[sum+mass.Mass(2*n)*p.Mass] = true
				}
			}
			sums = next
		}
		book := base
		book.Equipment.Stock.Plates = stock
		r := reach(t, book)
		lightest, heaviest, step := kilos(20), mass.Mass(0), mass.Mass(0)
		for a := range sums {
			heaviest = max(heaviest, a)
			for c := range sums {
				if c > a && (step == 0 || c-a < step) {
					step = c - a
				}
			}
		}
		if r.Lightest != lightest || r.Heaviest != heaviest || r.Step != step {
			t.Fatalf("got %+v, want %s, %s, %s", r, lightest, heaviest, step)
		}
		for from := range sums {
			to := from
			for sums[to+step] {
				to += step
			}
			if to-from > r.To-r.From {
				t.Fatalf("%s to %s is longer than %s to %s", from, to, r.From, r.To)
			}
		}
		for m := r.From; m <= r.To; m += step {
			if !sums[m] {
				t.Fatalf("%s is no load", m)
			}
		}
	})
}

func TestTrialSaysWhatIsOnTheBar(t *testing.T) {
	b := newBench(t)
	for target, want := range map[float64]string{
		101:  "100 kg, the nearest load: 20 + 20 a side",
		20:   "20 kg: the bar alone",
		72.5: "72.5 kg: 25 + 1.25 a side",
	} {
		got, err := b.TryLoad("bar-20", kilos(target))
		require.NoError(t, err)
		assert.Equal(t, want, got.Text)
	}
	_, err := b.TryLoad("bar-20", kilos(10))
	assert.ErrorIs(t, err, plates.ErrUnderBar)
}

func TestMassesAreReadAsTheyAreWritten(t *testing.T) {
	got, err := desk.ReadMasses("8; 12.5 kg\n 53 lb,", mass.KG)
	require.NoError(t, err)
	assert.Equal(t, []mass.Mass{kilos(8), kilos(12.5), 53 * mass.Pound}, got)
	assert.Equal(t, "8, 12.5, 53 lb", desk.MassesText(got, mass.KG), "24.04 kg would not be the same")
	_, err = desk.ReadMasses("8, heavy", mass.KG)
	assert.ErrorIs(t, err, mass.ErrNotMass)
}

func TestBarKinds(t *testing.T) {
	b := newBench(t)
	kinds := b.BarKinds()
	assert.Equal(t, plates.Barbell, kinds[0].Kind, "most lifts are done with a barbell")
	assert.Greater(t, kinds[0].Lifts, 20)
	for _, k := range kinds {
		assert.NotEqual(t, "sandbag", k.Kind, "a sandbag is lifted whole")
	}
}

func reach(t *rapid.T, book gym.Book) desk.Reach {
	d, err := desk.Open(context.Background(), shelf{book}, func() time.Time { return monday }, rand.NewChaCha8([32]byte{1}))
	if err != nil {
		t.Fatal(err)
	}
	r, err := d.ReachOf("bar-20")
	if err != nil {
		t.Fatal(err)
	}
	return r
}
