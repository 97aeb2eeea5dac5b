package gym_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

func TestEquipment(t *testing.T) {
	e := gym.Equipment{
		Bars: []plates.Bar{{Key: "long", Mass: 20 * mass.Kilogram}},
		Implements: []gym.Implement{
			{Kind: "kettlebell", Unit: mass.KG, Masses: []mass.Mass{8 * mass.Kilogram, 12 * mass.Kilogram}},
			{Kind: "box", Unit: mass.KG},
		},
	}
	assert.Equal(t, []mass.Mass{8 * mass.Kilogram, 12 * mass.Kilogram}, e.Implement("kettlebell"))
	assert.Empty(t, e.Implement("stone"))
	assert.True(t, e.Owns("box"), "it has no mass and is there")
	assert.True(t, e.Owns(""), "body weight")
	assert.False(t, e.Owns("stone"))
	bar, ok := e.Bar("long")
	assert.True(t, ok)
	assert.Equal(t, 20*mass.Kilogram, bar.Mass)
	_, ok = e.Bar("short")
	assert.False(t, ok)
}

// What can be handed out at once, by kind and load. That a sled is one thing at
// any load, and that bars are counted among the bars, is a rule of the trade
// (common practice, no source).
func TestPieces(t *testing.T) {
	kg := func(n int) mass.Mass { return mass.Mass(n) * mass.Kilogram }
	e := gym.Equipment{
		Bars: []plates.Bar{
			{Key: "a", Kind: plates.Barbell, Count: 8},
			{Key: "b", Kind: plates.LightBarbell, Count: 6},
			{Key: "c", Kind: plates.Technique, Count: 2},
			{Key: "d", Kind: "axle", Count: 3},
		},
		Implements: []gym.Implement{
			{Kind: "kettlebell", Masses: []mass.Mass{kg(8), kg(12)}, Each: map[mass.Mass]int{kg(8): 4}},
			{Kind: "sled", Masses: []mass.Mass{kg(20), kg(40)}, Total: 2},
			{Kind: "barbell", Masses: []mass.Mass{kg(20), kg(25)}},
			{Kind: "axle", Masses: []mass.Mass{kg(20)}, Total: 1},
			{Kind: "rower", Total: 5},
			{Kind: "box"},
		},
	}
	for _, row := range []struct {
		kind    string
		load    mass.Mass
		pool    mass.Mass
		n       int
		counted bool
	}{
		{"kettlebell", kg(8), kg(8), 4, true},
		{"kettlebell", kg(12), kg(12), 0, false}, // nobody counted them
		{"kettlebell", kg(10), kg(10), 0, true},  // no such mass
		{"sled", kg(20), 0, 2, true},
		{"sled", kg(55), 0, 2, true}, // loaded to anything
		{"barbell", kg(25), 0, 14, true},
		{"axle", kg(20), 0, 1, true}, // the coach's own count comes first
		{"rower", 0, 0, 5, true},
		{"box", 0, 0, 0, false},
		{"stone", kg(60), 0, 0, true}, // not owned
	} {
		pool := e.Pool(row.kind, row.load)
		assert.Equal(t, gym.Pool{Kind: row.kind, Mass: row.pool}, pool, "%s of %s", row.kind, row.load)
		n, counted := e.Pieces(pool)
		assert.Equal(t, row.n, n, "%s of %s", row.kind, row.load)
		assert.Equal(t, row.counted, counted, "%s of %s", row.kind, row.load)
	}
}

func TestMovementTakes(t *testing.T) {
	assert.Equal(t, 0, gym.Movement{}.Takes())
	assert.Equal(t, 1, gym.Movement{Implement: "kettlebell"}.Takes())
	assert.Equal(t, 2, gym.Movement{Implement: "kettlebell", Pair: true}.Takes())
}
