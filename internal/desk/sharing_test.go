package desk_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/climb"
	"windlass/internal/gym"
)

// Six lifters on one of two stations cannot keep rungs of one minute; the mend
// lengthens the rungs until it can.
func TestSharingOffersAMendThatWorks(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	var all []gym.Athlete
	for i := range 6 {
		all = append(all, b.come(c.ID, fmt.Sprint("Lifter ", i), gym.StandardM, "back-squat", fmt.Sprintf("3x%d", 100+10*i)))
	}
	for _, a := range all {
		require.NoError(t, b.MoveLifter(c.ID, a.ID, 0))
	}
	before := mustClass(t, b.Desk, c.ID)
	notes := b.Sharing(before).Notes
	require.NotEmpty(t, notes)
	assert.Contains(t, notes[0].Text, "The clock cannot be kept")
	assert.Contains(t, notes[0].Text, "at Rack 1")
	require.NotEmpty(t, notes[0].Mend)
	require.NoError(t, notes[0].Do(c.ID))
	after := mustClass(t, b.Desk, c.ID)
	assert.Empty(t, climb.Check(after.Climb), "the longer climb is still a climb")
	for _, n := range b.Sharing(after).Notes {
		assert.NotContains(t, n.Text, "cannot be kept")
	}
	_, err := b.Undo()
	require.NoError(t, err)
	assert.Equal(t, before.Climb, mustClass(t, b.Desk, c.ID).Climb, "and can be undone")
}

// What cannot work is said before the class, with the mend: a station without a
// bar, loads under the bar, a gym without stations.
func TestSharingNamesWhatIsMissing(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	b.come(c.ID, "Ada Lund", gym.StandardW, "back-squat", "3x40")
	notes := b.Sharing(mustClass(t, b.Desk, c.ID)).Notes
	require.Len(t, notes, 1)
	assert.Equal(t, "Ada Lund begins with the bar alone, which is more than the climb says.", notes[0].Text, "35 % of 40 kg is 14 kg")
	assert.True(t, notes[0].Aside)

	e := b.Book().Equipment
	e.Stations = nil
	require.NoError(t, b.KeepEquipment(e))
	notes = b.Sharing(mustClass(t, b.Desk, c.ID)).Notes
	require.NotEmpty(t, notes)
	require.ErrorContains(t, notes[0].Err, "there is no station; add one to the gym")
}
