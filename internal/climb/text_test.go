package climb_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/climb"
)

// Single fields are read as those of a file are; the file's own tests say which.
func TestFieldsAreReadAloneToo(t *testing.T) {
	seconds, err := climb.ReadTime(" 02:30 ")
	require.NoError(t, err)
	assert.Equal(t, 150, seconds)
	_, err = climb.ReadTime("2:75")
	require.ErrorIs(t, err, climb.ErrPlan)

	for _, text := range []string{"62.5", "62,5", " 62.5 % "} {
		percent, err := climb.ReadPercent(text)
		require.NoError(t, err, text)
		assert.InDelta(t, 62.5, percent, 0, text)
	}
	_, err = climb.ReadPercent("1e2")
	require.ErrorIs(t, err, climb.ErrPlan)

	for text, want := range map[string]int{"3": 3, "day": 0, " ": 0} {
		reps, err := climb.ReadReps(text)
		require.NoError(t, err, text)
		assert.Equal(t, want, reps, text)
	}
	_, err = climb.ReadReps("0")
	require.ErrorIs(t, err, climb.ErrPlan)
}
