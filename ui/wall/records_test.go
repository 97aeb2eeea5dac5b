package wall

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

func TestARecordIsCelebratedOnceItIsLogged(t *testing.T) {
	h := newHall(t, 6)
	h.until(20*time.Minute + time.Second)
	assert.False(t, h.row("Ada").Record, "an open call is no record")
	lifter, ok := h.state().Board.Lifter(h.athlete("Ada"))
	require.True(t, ok)
	h.log("Ada", lifter.Base.Digits(lifter.Unit))
	assert.False(t, h.row("Ada").Record, "a tie is no record")
	h.log("Cleo", "250")
	row := h.row("Cleo")
	assert.True(t, row.Record)
	assert.Equal(t, "250", row.Now.Text)
	assert.Equal(t, []gym.ID{h.athlete("Cleo")}, h.state().Records())
	_, w := h.show(look.Dark(), full, inch65)
	uitest.See(t, w, "record", "250")
	h.look(w, "record")
}

// A climb that is counted from less than the record celebrates no less.
func TestALoweredBaseMakesNoRecord(t *testing.T) {
	h := newHall(t, 6)
	lifter, ok := h.state().Board.Lifter(h.athlete("Ada"))
	require.True(t, ok)
	record := lifter.Base
	lower := gym.Effort{Reps: lifter.Reps, Load: record.Scale(0.8), Unit: lifter.Unit}
	require.NoError(t, h.CountFrom(h.class, lifter.Athlete, lower))
	h.until(20*time.Minute + time.Second)
	h.log("Ada", record.Scale(0.9).Digits(lifter.Unit))
	assert.False(t, h.row("Ada").Record, "over the lowered base, under the record")
	h.log("Ada", record.Scale(1.1).Digits(lifter.Unit))
	assert.True(t, h.row("Ada").Record)
}

// log enters the day's result of a lifter.
func (h *hall) log(first, load string) {
	h.t.Helper()
	_, err := h.LogResult(h.class, h.athlete(first), load)
	require.NoError(h.t, err)
}
