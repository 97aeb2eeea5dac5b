package floor_test

import (
	"context"
	"flag"
	"fmt"
	"math/rand/v2"
	"path/filepath"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/store"
	"windlass/ui/floor"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
	"windlass/ui/uitest"
)

// hall is a gym on a real file with its floor in a window, and a clock that the
// test moves. It is the room's host.
type hall struct {
	*model
	t      testing.TB
	path   string
	file   *store.File
	now    time.Time
	window *uitest.Window
	room   room.Room
	said   []string
	failed []string
	opened string
}

// model is the desk under another name, since the host has a method Desk.
type model = desk.Desk

// morning is 9 March 2026, a Monday, at six.
var morning = time.Date(2026, 3, 9, 6, 0, 0, 0, time.UTC)

var folder = flag.String("look", "", "folder to write pictures of the floor to")

func newHall(t testing.TB, p look.Palette) *hall {
	t.Helper()
	uitest.App(t, p)
	h := &hall{t: t, path: filepath.Join(t.TempDir(), "gym.windlass"), now: morning}
	file, err := store.Create(context.Background(), h.path)
	require.NoError(t, err)
	n := byte(0)
	book, err := desk.Starter("Harbour Hall", func() gym.ID { n++; return gym.NewID(morning, [10]byte{n}) })
	require.NoError(t, err)
	plates := &book.Equipment.Stock.Plates
	*plates = (*plates)[:len(*plates)-1] // without the halves: loads go by 2.5 kg
	require.NoError(t, file.Write(context.Background(), book.Changes()...))
	h.file = file
	t.Cleanup(func() { require.NoError(t, h.file.Close()) })
	h.start(p, 1)
	return h
}

// start opens a desk on the file and a floor on the desk, as a program that
// starts does.
func (h *hall) start(p look.Palette, seed byte) {
	h.t.Helper()
	d, err := desk.Open(context.Background(), h.file, func() time.Time { return h.now }, rand.NewChaCha8([32]byte{seed}))
	require.NoError(h.t, err)
	h.model = d
	h.room = floor.New(h)
	d.Listen(func(about desk.Topic) { h.room.Refresh(about) })
	h.window = uitest.OpenAs(h.t, p, fyne.NewSize(1240, 840), h.room.Content())
	kit.HearKeys(h.window.Canvas(), func(e *fyne.KeyEvent) { h.Typed(e) })
	h.room.Show("")
}

// kill ends the program without a word to it and starts another on the file.
func (h *hall) kill(after time.Duration) {
	h.t.Helper()
	require.NoError(h.t, h.file.Close())
	h.now = h.now.Add(after)
	file, err := store.Open(context.Background(), h.path)
	require.NoError(h.t, err)
	h.file = file
	h.start(look.Dark(), 2)
}

// wait lets time pass, a tick a second.
func (h *hall) wait(d time.Duration) {
	for range int(d / time.Second) {
		h.now = h.now.Add(time.Second)
		h.room.Tick(h.now)
	}
}

// until lets time pass until the climb's clock shows a time.
func (h *hall) until(shown time.Duration) {
	c, _ := h.LiveClass()
	h.wait(shown - c.Clock.Elapsed(h.now))
}

// press does what a key does, as the window would.
func (h *hall) press(keys ...fyne.KeyName) { uitest.Key(h.t, h.window, keys...) }

// athlete adds an athlete on one of the starter's tracks with results such as
// "back-squat 3x100".
func (h *hall) athlete(name string, track int, standard gym.Standard, lift gym.LiftKey, text string) gym.Athlete {
	h.t.Helper()
	a := h.NewAthlete(name)
	a.Standard = standard
	require.NoError(h.t, h.AddAthlete(a, h.Tracks()[track].ID))
	if text != "" {
		_, err := h.EnterResult(desk.Entry{Athlete: a.ID, Lift: lift, Text: text, On: day.From(h.now).Add(-21), Source: gym.Tested})
		require.NoError(h.t, err)
	}
	return a
}

// look writes a picture where -look asks for one.
func (h *hall) look(name string) {
	if *folder != "" {
		uitest.Snapshot(h.t, h.window, filepath.Join(*folder, name+".png"))
	}
}

// The host.

func (h *hall) Desk() *desk.Desk { return h.model }

func (h *hall) Window() fyne.Window { return h.window }

func (h *hall) Say(sentence string, undo bool) { h.said = append(h.said, sentence) }

func (h *hall) Fail(err error) bool {
	if err != nil {
		h.failed = append(h.failed, kit.Sentence(err))
	}
	return err == nil
}

func (h *hall) Open(name string, _ gym.ID) { h.opened = name }

func (h *hall) Typed(e *fyne.KeyEvent) bool {
	names := map[fyne.KeyName]string{fyne.KeyReturn: "Enter", fyne.KeyEscape: "Esc", fyne.KeyPageDown: "Page Down", fyne.KeyPageUp: "Page Up"}
	name, ok := names[e.Name]
	if !ok {
		name = string(e.Name)
	}
	for _, k := range h.room.Keys() {
		if k.Press == name {
			k.Do()
			return true
		}
	}
	return false
}

func (h *hall) Long(string, func(*room.Job) error, func(error)) {}

func (h *hall) Carry(_ *desk.LongStep, done func(error)) { done(nil) }

func (h *hall) Wall() {}

// Invented people.
var given = []string{"Ada", "Bo", "Cleo", "Dov", "Ines", "Jun", "Kofi", "Lena", "Mira", "Noor", "Olu", "Pia", "Rafa", "Sanne", "Tove", "Uli", "Vera", "Wim", "Xenia", "Yara", "Zeno", "Anouk", "Bram", "Cato", "Dirk", "Elin", "Finn", "Greta", "Hugo", "Ivo"}

var family = []string{"Lund", "Halvorsen", "Ito", "Moreau", "Bergh", "Okafor", "Petrov", "Quist"}

// thirty is a class of thirty over three tracks: squats, cleans and deadlifts.
func (h *hall) thirty() gym.Class { return h.crowd(30) }

// crowd is a class of so many over three tracks.
func (h *hall) crowd(n int) gym.Class {
	h.t.Helper()
	lifts := []gym.LiftKey{"back-squat", "clean", "deadlift"}
	reps := []int{3, 1, 5}
	from := []float64{110, 70, 150}
	for i := range n {
		first, track := given[i%len(given)], i%3
		standard, share := gym.StandardM, 1.0
		if i%2 == 1 {
			standard, share = gym.StandardW, 0.7
		}
		load := (from[track] + float64(i/3)*5) * share
		text := fmt.Sprintf("%dx%.1f", reps[track], float64(int(load/2.5))*2.5)
		if i == 4 {
			text = ""
		}
		h.athlete(first+" "+family[(i+i/len(given))%len(family)], track, standard, lifts[track], text)
	}
	c, err := h.OpenFreeClass()
	require.NoError(h.t, err)
	h.pieces(c.ID)
	for _, a := range h.Book().Athletes {
		require.NoError(h.t, h.CheckIn(c.ID, a.ID))
	}
	require.NoError(h.t, h.ShareStations(c.ID))
	c, _ = h.Class(c.ID)
	return c
}

// pieces is what the three tracks do.
func (h *hall) pieces(class gym.ID) {
	h.t.Helper()
	lifts, reps := []gym.LiftKey{"back-squat", "clean", "deadlift"}, []int{3, 1, 5}
	swings := gym.Workout{Format: gym.ForTime, Reps: []int{21, 15, 9}, Cap: 600, Items: []gym.Item{{Movement: "kettlebell-swing"}, {Movement: "burpee"}}}
	minutes := gym.Workout{Format: gym.EMOM, Seconds: 720, Items: []gym.Item{{Movement: "wall-ball", Amount: 12}, {Movement: "row-calories", Amount: 12}, {}}}
	work := []gym.Workout{swings, minutes, swings}
	for i, t := range h.Tracks() {
		require.NoError(h.t, h.KeepPiece(class, gym.Piece{
			Track: t.ID, Lift: lifts[i], Reps: reps[i], Workout: work[i],
			Second: gym.SecondLift{Lift: "front-squat", Sets: 4, Reps: 6, Percent: 70, OfReps: 5, OfLift: "back-squat"},
		}))
	}
}
