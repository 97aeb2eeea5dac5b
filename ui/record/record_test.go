package record_test

import (
	"flag"
	"path/filepath"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/look"
	"windlass/ui/record"
	"windlass/ui/room"
	"windlass/ui/uitest"
)

var pictures = flag.String("pictures", "", "keep pictures of the record in a folder")

// alone is a room that is nothing but a record.
type alone struct{ *record.Record }

func (a alone) Show(subject gym.ID) { a.Record.Show(subject) }
func (alone) Tick(time.Time)        {}

// show shows the record of one athlete of a gym without anybody else.
func show(t *testing.T) (*uitest.Host, gym.Athlete) {
	t.Helper()
	now, n := uitest.Morning, byte(0)
	book, err := desk.Starter("Test Gym", func() gym.ID { n++; return gym.NewID(now, [10]byte{n}) })
	require.NoError(t, err)
	d := uitest.DeskOn(t, book, &now)
	a := d.NewAthlete("Ada Brook")
	require.NoError(t, d.AddAthlete(a, ""))
	var r *record.Record
	h := uitest.Stage(t, d, look.Dark(), fyne.NewSize(record.Width, 812), func(h room.Host) room.Room {
		r = record.New(h, func() {}, func(rune) bool { return false })
		return alone{r}
	})
	r.Show(a.ID)
	return h, a
}

func log(t *testing.T, h *uitest.Host, a gym.Athlete, lift gym.LiftKey, text string) {
	t.Helper()
	d := h.Desk()
	_, err := d.EnterResult(desk.Entry{Athlete: a.ID, Lift: lift, Text: text, On: d.Today(), Source: gym.Reported})
	require.NoError(t, err)
}

// A number's source stands beside it as a shape and in words.
func TestCardShowsWhereNumbersComeFrom(t *testing.T) {
	h, a := show(t)
	log(t, h, a, "back-squat", "5x225lb")
	uitest.See(t, h.On, "225 lb", "reported 18 May 2026", "estimate from the 5RM", "tested", "guide from a related lift")
	if *pictures != "" {
		uitest.Snapshot(t, h.On, filepath.Join(*pictures, "record.png"))
	}
	uitest.Golden(t, h.On, "record")
}

// Any lift of the catalogue can be chosen, also one that was never done; one that
// is counted by time says how it is written.
func TestAnotherLiftCountedByTime(t *testing.T) {
	h, a := show(t)
	h.Press(t, "F4")
	uitest.Fill(t, h.On, "Lift", "Yoke run for time")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "Yoke run for time", "This lift is counted by time")
	uitest.Type(t, h.On, "31.5")
	uitest.See(t, h.On, "31.5 s: the first record.")
	uitest.Key(t, h.On, fyne.KeyReturn)
	results := h.Desk().Results(a.ID)
	require.Len(t, results, 1)
	assert.InDelta(t, 31.5, results[0].Amount, 1e-9)
	uitest.See(t, h.On, "best 31.5 s")
}

// What is hardly what was lifted is asked about, as on the floor, and Enter twice does
// not log it.
func TestADoubtfulResultIsAskedAbout(t *testing.T) {
	h, a := show(t)
	log(t, h, a, "back-squat", "5x100")
	h.Press(t, "F2")
	uitest.Type(t, h.On, "5x1000")
	uitest.See(t, h.On, "1000 kg is 1000 % of 100 kg, what is known so far.")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "Log this for "+a.Name+"?")
	uitest.Key(t, h.On, fyne.KeyReturn)
	require.Len(t, h.Desk().Results(a.ID), 1, "the usual answer is to write it again")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Tap(t, h.On, "Log it as it is")
	require.Len(t, h.Desk().Results(a.ID), 2)
	uitest.NotSee(t, h.On, "1000 % of")
}

// What somebody is writing is not lost when something else changes.
func TestTypingOutlivesARefresh(t *testing.T) {
	h, a := show(t)
	log(t, h, a, "back-squat", "5x100")
	h.Press(t, "F2")
	uitest.Type(t, h.On, "3x1")
	log(t, h, a, "deadlift", "1x120")
	uitest.Type(t, h.On, "05")
	uitest.See(t, h.On, "3 × 105 kg: the first 3RM.")
}

// F9 leads from the line that logs to the history, and Del works there.
func TestTheHistoryTakesTheKeyboard(t *testing.T) {
	h, a := show(t)
	log(t, h, a, "back-squat", "5x100")
	h.Press(t, "F2")
	uitest.Key(t, h.On, fyne.KeyF9, fyne.KeyDelete)
	uitest.See(t, h.On, "Void 5 × 100 kg?")
}

func TestATierForEveryMovementIsDecidedInPlace(t *testing.T) {
	h, a := show(t)
	h.Press(t, "Ctrl+T")
	uitest.Tap(t, h.On, "Light")
	uitest.Fill(t, h.On, "Why", "new to it")
	uitest.Key(t, h.On, fyne.KeyReturn)
	kept := h.Desk().Overrides(a.ID)
	require.Len(t, kept, 1)
	assert.Equal(t, gym.Light, kept[0].Tier)
	h.Press(t, "F6")
	h.Press(t, "Ctrl+U")
	uitest.See(t, h.On, "at most the light tier", "every movement", "new to it")
}
