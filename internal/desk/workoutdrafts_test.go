package desk_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
)

// Trying another format, or a rep list, and coming back loses nothing.
func TestComingBackToAFormatBringsBackWhatWasWritten(t *testing.T) {
	b := newBench(t)
	w := gym.Workout{Format: gym.ForTime, Rounds: 4, Cap: 900, Rest: 30, Items: []gym.Item{
		{Movement: "row-metres", Amount: 300}, {Movement: "burpee", Amount: 20},
	}}
	drafts := desk.WorkoutDrafts{}
	drafts.Keep(w)
	amrap := drafts.WithFormat(b.Desk, w, gym.AMRAP)
	require.NoError(t, b.WorkoutFault(amrap))
	drafts.Keep(amrap)
	assert.Equal(t, w, drafts.WithFormat(b.Desk, amrap, gym.ForTime))

	list, err := desk.PassesField.Read(w, "21-15-9")
	require.NoError(t, err)
	drafts.Keep(list)
	back, err := desk.PassesField.Read(list, "4")
	require.NoError(t, err)
	assert.Equal(t, w, drafts.WithAmounts(back))

	// A movement that came in since keeps its usual amount.
	more := b.WithMovement(amrap, 2, "sit-up")
	again := drafts.WithFormat(b.Desk, more, gym.ForTime)
	assert.Equal(t, w.Items, again.Items[:2])
	assert.Equal(t, more.Items[2], again.Items[2])
	require.NoError(t, b.WorkoutFault(again))
}
