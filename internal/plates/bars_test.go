package plates

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/mass"
)

func gymBars(t *testing.T) *Bars {
	t.Helper()
	bar := func(key string, m float64, kind string, count int) Bar {
		return Bar{Key: key, Name: key, Mass: kg(m), Unit: mass.KG, Kind: kind, Count: count}
	}
	bars, err := NewBars([]Bar{
		bar("men", 20, Barbell, 6), bar("women", 15, LightBarbell, 4), bar("youth", 10, Technique, 1), bar("stick", 5, Technique, 0),
		bar("log", 60, "log", 1), bar("small log", 35, "log", 1),
	}, Stock{Plates: []Plate{kgPlate(20, 2), kgPlate(5, 1), kgPlate(2, 1)}})
	require.NoError(t, err)
	return bars
}

func TestBarsTakeALighterBar(t *testing.T) {
	for _, c := range []struct {
		name   string
		key    string
		target float64
		bar    string
		total  float64
		under  bool
	}{
		{"the lifter's own bar when it fits", "men", 20, "men", 20, false},
		{"the one that hits it", "men", 19, "women", 19, false},
		{"the lightest of two equally near", "men", 14.5, "youth", 14, false}, // or the women's bar alone
		{"a bar that the gym has none of stays away", "men", 7, "youth", 10, true},
		{"an own bar that is the lightest", "youth", 8, "youth", 10, true},
		{"a log for a log", "log", 49, "small log", 49, false},
		{"no log so light", "log", 20, "small log", 35, true},
		{"own bar alone is nearest", "men", 19.9, "men", 20, true}, // 10 + 2×5 is no nearer
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := gymBars(t).Loadable(c.key, kg(c.target), Nearest)
			require.NoError(t, err)
			assert.Equal(t, c.bar, got.Bar.Key)
			assert.Equal(t, kg(c.total), got.Total)
			assert.Equal(t, c.under, got.Under)
		})
	}
	_, err := gymBars(t).Loadable("axle", kg(50), Nearest)
	assert.ErrorContains(t, err, `"axle"`)
}

func TestBarsFromFloor(t *testing.T) {
	got, err := gymBars(t).FromFloor().Loadable("men", kg(60), Nearest)
	require.NoError(t, err)
	assert.True(t, got.Blocks, "the stock has no disc of full diameter")
}
