package floor_test

import (
	"context"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/ui/room"
	"windlass/ui/uitest"
)

// results confirms, corrects or refuses every row in the order of the sheet.
func (h *hall) results() {
	t := h.t
	h.press(fyne.KeyR)
	c, _ := h.LiveClass()
	for _, l := range c.Lifters {
		a, _ := h.Athlete(l.Athlete)
		i := player(t, a.Name)
		uitest.See(t, h.window, a.Name)
		switch typed := parts[i/3].typed; {
		case loadOf(i) == "":
			h.press(fyne.KeyM)
		case i == stronger:
			h.log("130")
		case i == 24: // the eighth part in the first track: undone and entered again
			h.press(fyne.KeyReturn)
			_, err := h.Undo()
			require.NoError(t, err)
			h.press(fyne.KeyUp)
			h.log(typed)
		case typed != "":
			h.log(typed)
		default:
			h.press(fyne.KeyReturn)
		}
	}
	h.check()
}

func (h *hall) log(load string) {
	uitest.Type(h.t, h.window, load)
	h.press(fyne.KeyReturn)
}

// check compares what is on the disk with the expectation worked out by hand.
func (h *hall) check() {
	t := h.t
	book, err := h.file.Load(context.Background())
	require.NoError(t, err)
	c := book.Classes[len(book.Classes)-1]
	standing := map[gym.ID]gym.Result{}
	for _, r := range book.Results {
		if r.Class == c.ID && r.Void == nil {
			require.Empty(t, standing[r.Athlete].ID, "one result stands for each")
			standing[r.Athlete] = r
		}
	}
	for _, l := range c.Lifters {
		a, _ := h.Athlete(l.Athlete)
		i := player(t, a.Name)
		r, ok := standing[l.Athlete]
		if loadOf(i) == "" {
			assert.False(t, ok, "%s: nothing counts", a.Name)
			assert.True(t, l.Missed, a.Name)
			continue
		}
		assert.Equal(t, loadOf(i), r.Load.String(), a.Name)
		assert.Equal(t, l.Reps, r.Reps, "%s: only the day's rep count is a rep max", a.Name)
		assert.Equal(t, r.ID, l.Result, a.Name)
	}
}

// conditioning starts its clock and logs a bout with one key.
func (h *hall) conditioning() {
	t := h.t
	h.press(fyne.KeyF4, fyne.KeySpace)
	h.wait(40 * time.Second)
	uitest.See(t, h.window, "00:30") // after ten seconds of counting in
	h.press(fyne.KeyH)
	c, _ := h.LiveClass()
	assert.Equal(t, gym.Conditioning, c.Stage)
	assert.Equal(t, gym.Held, h.BoutSheet(c)[0].Logged.Outcome)
}

// finish ends the class. By hand: records are three at 127.5 kg, the late comer's
// 127.5, the first result of the finder and 130 kg; three are under the heavy
// line; nothing counted for two.
func (h *hall) finish() {
	t := h.t
	h.press(fyne.KeyQ)
	c, _ := h.LiveClass()
	s := h.Summary(c)
	assert.Equal(t, 30, s.Came)
	assert.Len(t, s.Records, 6)
	assert.Equal(t, 25, s.Heavy)
	assert.Equal(t, 3, s.Under)
	assert.Len(t, s.Missed, 2)
	assert.Empty(t, s.Open)
	h.press(fyne.KeyF5)
	uitest.Tap(t, h.window, "Finish all the same") // of many bouts the scene logs a few
	assert.Equal(t, room.Today, h.opened)
	done, _ := h.Class(c.ID)
	assert.Equal(t, gym.Finished, done.Stage)
	record, ok := h.Record(h.Book().Athletes[stronger].ID, "deadlift", 5)
	require.True(t, ok)
	assert.Equal(t, "130 kg", record.Load.String())
	tie, _ := h.Record(h.Book().Athletes[21].ID, "back-squat", 3)
	assert.Equal(t, gym.ID(""), tie.Class, "a tie does not raise the record")
}
