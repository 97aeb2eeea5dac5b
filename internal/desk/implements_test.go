package desk_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

func TestImplementsAreAddedAndTakenOut(t *testing.T) {
	b := newBench(t)
	kind, err := b.AddImplement(" Fat Grip Dumbbell ", mass.LB)
	require.NoError(t, err)
	assert.Equal(t, "fat-grip-dumbbell", kind)
	_, err = b.AddImplement("…", mass.KG)
	require.ErrorContains(t, err, "it has no name")
	rows := b.Implements()
	at := slices.IndexFunc(rows, func(i desk.OwnImplement) bool { return i.Kind == kind })
	require.GreaterOrEqual(t, at, 0)
	assert.Zero(t, rows[at].Movements)
	assert.Equal(t, "not lifted", rows[at].Range())
	one := desk.OwnImplement{Implement: gym.Implement{Unit: mass.LB, Masses: []mass.Mass{45 * mass.Pound}}}
	assert.Equal(t, "45 lb", one.Range())
	one.Masses = append(one.Masses, 70*mass.Pound)
	assert.Equal(t, "2 from 45 to 70 lb", one.Range())
	bell := slices.IndexFunc(rows, func(i desk.OwnImplement) bool { return i.Kind == "kettlebell" })
	assert.Positive(t, rows[bell].Movements)
	require.NoError(t, b.DropImplement(kind))
	assert.Len(t, b.reopened().Implements(), len(rows)-1)
}

func TestImplementsAreCounted(t *testing.T) {
	b := newBench(t)
	counted := func(kind string) string {
		rows := b.reopened().Implements()
		return rows[slices.IndexFunc(rows, func(i desk.OwnImplement) bool { return i.Kind == kind })].Counted()
	}
	assert.Equal(t, "not counted", counted("kettlebell"), "what nobody counted is no single piece")
	require.NoError(t, b.KeepMasses("kettlebell", "16×6, 8×2, 12"))
	assert.Equal(t, "8 or more", counted("kettlebell"))
	require.NoError(t, b.KeepMasses("kettlebell", "16×6, 8×2, 12×4"))
	assert.Equal(t, "12 in all", counted("kettlebell"))
	assert.Equal(t, []mass.Mass{kilos(8), kilos(12), kilos(16)}, b.Book().Equipment.Implement("kettlebell"))

	require.NoError(t, b.KeepTotal("rower", "5"))
	assert.Equal(t, "5 in all", counted("rower"))
	require.NoError(t, b.KeepTotal("rower", " "))
	assert.Equal(t, "not counted", counted("rower"))
	require.NoError(t, b.KeepTotal("sled", "2"))
	require.NoError(t, b.KeepMasses("sled", "20×1, 40×1"), "counted by mass from now on")
	assert.Equal(t, "2 in all", counted("sled"))
}

func TestCountsThatCannotBeAreRefused(t *testing.T) {
	b := newBench(t)
	require.NoError(t, b.KeepMasses("kettlebell", "8×2, 12×4"))
	before := b.Book().Equipment
	for want, try := range map[string]func() error{
		"the gym has no such implement":          func() error { return b.KeepMasses("slam-bell", "8×2") },
		`"0" is no count of 8 kg`:                func() error { return b.KeepMasses("kettlebell", "8×0") },
		"its masses are counted one by one":      func() error { return b.KeepTotal("kettlebell", "6") },
		"keep slam ball: 0 is no number of them": func() error { return b.KeepTotal("slam-ball", "0") },
		"-3 is no number of them":                func() error { return b.KeepTotal("rower", "-3") },
		"5000 is no number of them":              func() error { return b.KeepTotal("rower", "5000") },
		`read number "a few"`:                    func() error { return b.KeepTotal("rower", "a few") },
	} {
		assert.ErrorContains(t, try(), want)
		assert.Equal(t, before, b.Book().Equipment)
	}
}
