package station

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A solver that has been asked before answers as a new one does.
func TestMemoryChangesNoAnswer(t *testing.T) {
	stations, windows, lifters := bigClass(t)
	stations, lifters = stations[:3], lifters[:12]
	old, err := New(stations, windows, UsualPace())
	require.NoError(t, err)
	r := rand.New(rand.NewPCG(1, 2))
	for range 8 {
		l := &lifters[r.IntN(len(lifters))]
		l.Sets[r.IntN(len(l.Sets))].Load += kg(2.5)
		l.Sets[0].Reps = 1 + r.IntN(5)
		fresh, err := New(stations, windows, UsualPace())
		require.NoError(t, err)
		want, err := fresh.Solve(lifters)
		require.NoError(t, err)
		got, err := old.Solve(lifters)
		require.NoError(t, err)
		assert.Equal(t, want, got)
	}

	for i := range mostPrograms {
		old.programs[fmt.Sprint("filler", i)] = 1
	}
	before, err := old.Solve(lifters)
	require.NoError(t, err)
	assert.LessOrEqual(t, len(old.programs), len(lifters), "forgotten")
	again, err := old.Solve(lifters)
	require.NoError(t, err)
	assert.Equal(t, before, again)
}

// More at one station than the memory holds.
func TestATeamOfTen(t *testing.T) {
	var lifters []Lifter
	for i := range 10 {
		lifters = append(lifters, barOnly(fmt.Sprint(i), None, 1+i%2))
	}
	plan, err := room(t, 1, 10, 200).Solve(lifters)
	require.NoError(t, err)
	assert.True(t, plan.Keeps())
	assert.Equal(t, 5*(3+8)+5*(6+8), plan.Groups[0].Windows[0].Needed)
}
