package desk_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// The desk doubts what is under the bar or far over what is known, and keeps it
// when the coach says so.
func TestAResultIsDoubtedAndKept(t *testing.T) {
	b, c := hall(t)
	b.lifts(c.ID, "back-squat", 3)
	known := b.come(c.ID, "Ada Lund", gym.StandardM, "back-squat", "3x100")
	finder := b.come(c.ID, "Ines Bergh", gym.StandardM, "back-squat", "")
	require.NoError(t, b.StartWith(c.ID, finder.ID, gym.Effort{Load: 40 * mass.Kilogram}))
	require.NoError(t, b.StartClock(c.ID))
	require.NoError(t, b.Call(c.ID, finder.ID, gym.EasyCall)) // 40 kg moved
	b.now = b.now.Add(90 * time.Second)
	require.NoError(t, b.Call(c.ID, finder.ID, gym.MissedCall))
	for _, row := range []struct {
		who  gym.Athlete
		text string
		want string
	}{
		{known, "97.5", ""},
		{known, "8", "8 kg is less than the lightest that can be lifted here, 20 kg."},
		{known, "950", "950 kg is 950 % of 100 kg, what is known so far."},
		{known, "120", ""},
		{finder, "45", ""},
		{finder, "400", "400 kg is 1000 % of 40 kg, what is known so far."},
	} {
		v, err := b.Weigh(c.ID, row.who.ID, row.text)
		require.NoError(t, err, row.text)
		assert.Equal(t, row.want, v.Doubt, row.text)
	}
	_, err := b.LogResult(c.ID, known.ID, "8")
	require.NoError(t, err)
	results := b.Results(known.ID)
	assert.Equal(t, 8*mass.Kilogram, results[len(results)-1].Load)
}
