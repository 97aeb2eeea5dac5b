package plates

import (
	"fmt"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/internal/mass"
)

func faces(side []Disc) []string {
	text := []string{}
	for _, d := range side {
		text = append(text, d.String())
	}
	return text
}

func TestLoadable(t *testing.T) {
	sport := Stock{Plates: []Plate{
		kgPlate(25, 4), kgPlate(20, 1), kgPlate(15, 1), kgPlate(10, 1), kgPlate(5, 1), kgPlate(2.5, 1), kgPlate(1.25, 1),
	}}
	collared := sport
	collared.Collar = kg(2.5)
	pounds := Stock{Plates: []Plate{lbPlate(45, 4), lbPlate(25, 1), lbPlate(10, 2), lbPlate(5, 1), lbPlate(2.5, 1)}}
	bar45 := Bar{Name: "bar", Mass: lb(45), Unit: mass.LB}

	for _, c := range []struct {
		name   string
		bar    Bar
		stock  Stock
		target mass.Mass
		round  Rounding
		total  mass.Mass
		side   []string
		short  bool
	}{
		// A 25, a 15 and a 2.5 a side on bar and collars of 25 kg make 110 kg:
		// Dziepak 1997, by the rules of the IWF.
		{
			"the rule book's example", bar20(),
			Stock{Plates: []Plate{kgPlate(25, 1), kgPlate(15, 1), kgPlate(2.5, 1)}, Collar: kg(2.5)},
			kg(110), Nearest, kg(110),
			[]string{"25 kg", "15 kg", "2.5 kg"},
			false,
		},
		// IPF: bar and collars weigh 25 kg, discs down to 1.25 kg.
		{"bar and collars alone", bar20(), collared, kg(25), Nearest, kg(25), []string{}, false},
		{"odd half kilograms", bar20(), collared, kg(142.5), Nearest, kg(142.5), []string{"25 kg", "25 kg", "5 kg", "2.5 kg", "1.25 kg"}, false},
		// Exact pound of 1959: four 45 lb plates on a 20 kg bar are no 225 lb.
		{"four 45s on a 20 kg bar", bar20(), Stock{Plates: []Plate{lbPlate(45, 2)}}, kg(101.6), Nearest, 101_646_626_600_000, []string{"45 lb", "45 lb"}, false},
		// The classes of a pound gym: 135, 225, 315, 405 lb (common practice, no source).
		{"one a side", bar45, pounds, lb(135), Nearest, 61_234_969_950_000, []string{"45 lb"}, false},
		{"two a side", bar45, pounds, lb(225), Nearest, 102_058_283_250_000, []string{"45 lb", "45 lb"}, false},
		{"three a side", bar45, pounds, lb(315), Nearest, 142_881_596_550_000, []string{"45 lb", "45 lb", "45 lb"}, false},
		{"four a side", bar45, pounds, lb(405), Nearest, 183_704_909_850_000, []string{"45 lb", "45 lb", "45 lb", "45 lb"}, false},
		{
			"a walk from the top would take the 25", bar20(),
			Stock{Plates: []Plate{kgPlate(25, 1), kgPlate(20, 2), kgPlate(1, 1)}},
			kg(100), Nearest, kg(100),
			[]string{"20 kg", "20 kg"},
			false,
		},
		{"fewest plates for equal loads", bar20(), Stock{Plates: []Plate{kgPlate(15, 2), kgPlate(10, 3)}}, kg(80), Nearest, kg(80), []string{"15 kg", "15 kg"}, false},
		{
			"heaviest inside where the count is equal", bar20(),
			Stock{Plates: []Plate{kgPlate(25, 1), kgPlate(15, 2), kgPlate(5, 1)}},
			kg(80), Nearest, kg(80),
			[]string{"25 kg", "5 kg"},
			false,
		},
		{"down", bar20(), sport, kg(101.9), Down, kg(100), []string{"25 kg", "15 kg"}, false},
		{"up", bar20(), sport, kg(100.1), Up, kg(102.5), []string{"25 kg", "15 kg", "1.25 kg"}, false},
		{"halfway goes down", bar20(), sport, kg(101.25), Nearest, kg(100), []string{"25 kg", "15 kg"}, false},
		{"a gram over halfway goes up", bar20(), sport, kg(101.251), Nearest, kg(102.5), []string{"25 kg", "15 kg", "1.25 kg"}, false},
		{"more than all plates", bar20(), Stock{Plates: []Plate{kgPlate(20, 1)}}, kg(80), Up, kg(60), []string{"20 kg"}, true},
		{"exactly all plates", bar20(), Stock{Plates: []Plate{kgPlate(20, 1)}}, kg(60), Up, kg(60), []string{"20 kg"}, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := newLoads(t, c.bar, c.stock).Loadable(c.target, c.round)
			require.NoError(t, err)
			assert.Equal(t, c.total, got.Total)
			assert.Equal(t, c.side, faces(got.PerSide))
			assert.Equal(t, c.short, got.Short)
		})
	}
}

func TestLoadableRefuses(t *testing.T) {
	loads := newLoads(t, bar20(), Stock{Plates: []Plate{kgPlate(20, 1)}, Collar: kg(2.5)})
	_, err := loads.Loadable(kg(24.9), Nearest)
	require.ErrorIs(t, err, ErrUnderBar)
	assert.ErrorContains(t, err, "load 24.9 kg: lighter than the bar, which is 25 kg with its collars")

	_, err = loads.Loadable(kg(1000.1), Nearest)
	assert.ErrorContains(t, err, "over 1000 kg")
	_, err = loads.Loadable(kg(60), "sideways")
	assert.ErrorContains(t, err, `"sideways"`)
}

func TestNewLoadsRefuses(t *testing.T) {
	good := []Plate{kgPlate(20, 1)}
	for name, c := range map[string]struct {
		bar   Bar
		stock Stock
		says  string
	}{
		"no plates":        {bar20(), Stock{}, "no pair of plates"},
		"only empty pairs": {bar20(), Stock{Plates: []Plate{kgPlate(20, 0)}}, "no pair of plates"},
		"negative pairs":   {bar20(), Stock{Plates: []Plate{kgPlate(20, -1)}}, "-1 pairs"},
		"listed twice":     {bar20(), Stock{Plates: []Plate{kgPlate(20, 150), kgPlate(20, 150)}}, "300 pairs"},
		"too many kinds":   {bar20(), Stock{Plates: manyKinds()}, "33 different plates"},
		"negative bars":    {Bar{Name: "minus", Mass: kg(20), Unit: mass.KG, Count: -1}, Stock{Plates: good}, "count -1"},
		"bar without unit": {Bar{Name: "odd", Mass: kg(20)}, Stock{Plates: good}, `unit ""`},
		"no mass":          {bar20(), Stock{Plates: []Plate{kgPlate(0, 1)}}, "plate 0 kg"},
		"no unit":          {bar20(), Stock{Plates: []Plate{{Mass: kg(20), Pairs: 1}}}, `unit ""`},
		"a pound in kg":    {bar20(), Stock{Plates: []Plate{{Mass: lb(45), Unit: mass.KG, Pairs: 1}}}, "finer than"},
		"heavy collars":    {bar20(), Stock{Plates: good, Collar: kg(25)}, "collars of 25 kg"},
		"no bar":           {Bar{Name: "air", Unit: mass.KG}, Stock{Plates: good}, `bar "air" of 0 kg`},
		"heavy bar":        {Bar{Name: "beam", Mass: kg(300), Unit: mass.KG}, Stock{Plates: good}, "at most 200 kg"},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := NewLoads(c.bar, c.stock)
			require.ErrorIs(t, err, ErrStock)
			assert.ErrorContains(t, err, c.says)
		})
	}
}

func manyKinds() (plates []Plate) {
	for i := range MaxKinds + 1 {
		plates = append(plates, kgPlate(float64(i+1), 1))
	}
	return plates
}

func TestAtMostAndAtLeast(t *testing.T) {
	loads := newLoads(t, bar20(), Stock{Plates: []Plate{kgPlate(20, 1), kgPlate(2.5, 1)}})
	_, ok := loads.AtMost(kg(19.9))
	assert.False(t, ok, "the bar is over it")
	_, ok = loads.AtLeast(kg(65.1))
	assert.False(t, ok, "nothing is so heavy")
	above, ok := loads.AtLeast(kg(60) + 1)
	require.True(t, ok)
	assert.Equal(t, kg(65), above.Total, "strictly over 60 kg")
	below, ok := loads.AtMost(kg(60) - 1)
	require.True(t, ok)
	assert.Equal(t, kg(25), below.Total)
	assert.Equal(t, []mass.Mass{kg(20), kg(25), kg(60), kg(65)}, loads.Between(0, mass.Max))
	assert.Equal(t, []mass.Mass{kg(25), kg(60)}, loads.Between(kg(25), kg(60)))
}

func TestBetweenListsEveryLoad(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, loads, every := drawn(t, 5, 2)
		var want []mass.Mass
		for _, side := range every {
			want = append(want, weigh(loads.Lightest(), side))
		}
		slices.Sort(want)
		assert.Equal(t, slices.Compact(want), loads.Between(0, mass.Max))
	})
}

func TestLimits(t *testing.T) {
	// Nine pairs of 50 kg and a pair of 40 on the bar are a tonne, the limit of belief.
	loads := newLoads(t, bar20(), Stock{Plates: []Plate{kgPlate(50, 10), kgPlate(40, 2)}})
	got, err := loads.Loadable(mass.Max, Up)
	require.NoError(t, err)
	assert.Equal(t, mass.Max, got.Total)
	assert.False(t, got.Short)
	assert.Equal(t, mass.Max, loads.Heaviest(), "what is heavier is left out")

	_, ok := loads.amount(kg(120))
	assert.True(t, ok)
	_, ok = loads.amount(kg(121))
	assert.False(t, ok)
}

func TestFloorLifts(t *testing.T) {
	stock := Stock{Plates: []Plate{
		{Mass: kg(20), Unit: mass.KG, Pairs: 2, Full: true},
		{Mass: kg(10), Unit: mass.KG, Pairs: 1, Full: true},
		kgPlate(15, 1), kgPlate(5, 1), kgPlate(2.5, 1),
	}}
	for _, c := range []struct {
		name   string
		target mass.Mass
		side   []string
		blocks bool
	}{
		{"one full disc is enough", kg(60), []string{"20 kg"}, false},
		{"a full pair before fewer plates", kg(50), []string{"10 kg", "5 kg"}, false}, // not the 15 alone
		{"too light for a full pair", kg(30), []string{"5 kg"}, true},
		{"the bar alone", kg(20), []string{}, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			loads := newLoads(t, bar20(), stock).FromFloor()
			got, err := loads.Loadable(c.target, Nearest)
			require.NoError(t, err)
			assert.Equal(t, c.side, faces(got.PerSide))
			assert.Equal(t, c.blocks, got.Blocks)
		})
	}
}

func ExampleLoads_Loadable() {
	loads, err := NewLoads(Bar{Name: "bar", Mass: 20 * mass.Kilogram, Unit: mass.KG}, Stock{
		Plates: []Plate{
			{Mass: 25 * mass.Kilogram, Unit: mass.KG, Pairs: 4},
			{Mass: 10 * mass.Kilogram, Unit: mass.KG, Pairs: 1},
			{Mass: 45 * mass.Pound, Unit: mass.LB, Pairs: 2},
		},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	loading, err := loads.Loadable(130*mass.Kilogram, Nearest)
	fmt.Println(loading.Total, loading.PerSide, err)
	// Output: 130.82 kg [25 kg 45 lb 10 kg] <nil>
}
