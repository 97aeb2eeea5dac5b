package desk_test

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"math/rand/v2"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/climb"
	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// fullDisk is a store that takes nothing any more once it is full.
type fullDisk struct {
	desk.Store
	full bool
}

var errFull = errors.New("the disk is full")

func (s *fullDisk) Write(ctx context.Context, changes ...gym.Change) error {
	if s.full {
		return errFull
	}
	return s.Store.Write(ctx, changes...)
}

// A verb whose transaction fails has changed nothing: no row, no step to take back,
// and no room hears of it.
func TestAVerbThatIsNotWrittenChangesNothing(t *testing.T) {
	b := newBench(t)
	disk := &fullDisk{Store: b.file}
	d, err := desk.Open(t.Context(), disk, func() time.Time { return b.now }, rand.NewChaCha8([32]byte{1}))
	require.NoError(t, err)
	b.Desk = d
	ada, bo := b.join("Ada Brook"), b.join("Bo Quist")
	first := b.log(ada, "back-squat", "5x100")
	b.log(bo, "back-squat", "5x80")
	c, err := d.OpenFreeClass()
	require.NoError(t, err)
	plan, err := climb.Generate(20)
	require.NoError(t, err)
	require.NoError(t, d.KeepClimb(c.ID, plan))
	require.NoError(t, d.KeepPiece(c.ID, gym.Piece{Track: powerlifting, Lift: "back-squat", Reps: 5}))
	for _, a := range []gym.Athlete{ada, bo} {
		require.NoError(t, d.CheckIn(c.ID, a.ID))
	}
	heard := 0
	d.Listen(func(desk.Topic) { heard++ })
	before, err := json.Marshal(d.Book())
	require.NoError(t, err)
	undo, redo := d.CanUndo(), d.CanRedo()
	require.NotEmpty(t, undo)
	disk.full = true
	renamed := ada
	renamed.Name = "Ada Stream"
	for name, verb := range map[string]func() error{
		"log a result": func() error {
			_, err := d.EnterResult(desk.Entry{Athlete: ada.ID, Lift: "back-squat", Text: "5x105", On: day.From(b.now), Source: gym.Tested})
			return err
		},
		"log one in the class":  func() error { _, err := d.LogResult(c.ID, ada.ID, "105"); return err },
		"log that none counted": func() error { return d.LogNothing(c.ID, ada.ID) },
		"void a result":         func() error { return d.VoidResult(first.Result.ID, "wrong bar") },
		"change an athlete":     func() error { return d.KeepAthlete(renamed) },
		"pause athletes":        func() error { return d.SetStatus(gym.Paused, ada.ID, bo.ID) },
		"move off the track":    func() error { return d.MoveTrack("", day.From(b.now), ada.ID, bo.ID) },
		"share the stations":    func() error { return d.ShareStations(c.ID) },
		"move a lifter":         func() error { return d.MoveLifter(c.ID, ada.ID, 1) },
		"check out":             func() error { return d.CheckOut(c.ID, bo.ID) },
		"count from less": func() error {
			return d.CountFrom(c.ID, ada.ID, gym.Effort{Reps: 5, Load: 80 * mass.Kilogram, Unit: mass.KG})
		},
		"start the clock": func() error { return d.StartClock(c.ID) },
		"drop plates":     func() error { return d.DropPlates(0) },
		"change settings": func() error {
			return d.ChangeSettings(func(s *gym.Settings) error { s.Name = "Other"; s.DayReps[0] = 4; return nil })
		},
		"take a step back": func() error { _, err := d.Undo(); return err },
	} {
		require.ErrorIs(t, verb(), errFull, name)
		after, err := json.Marshal(d.Book())
		require.NoError(t, err)
		require.True(t, bytes.Equal(before, after), name)
		assert.Equal(t, undo, d.CanUndo(), name)
		assert.Equal(t, redo, d.CanRedo(), name)
	}
	assert.Zero(t, heard)
	disk.full = false
	label, err := d.Undo()
	require.NoError(t, err)
	assert.Equal(t, undo, label)
}
