package wall

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
	"windlass/ui/look"
	"windlass/ui/uitest"
)

var pictures = flag.String("pictures", "", "keep pictures of the wall in a folder")

// hall is a gym on a real file that a desk writes and the wall reads.
type hall struct {
	*desk.Desk
	t     *testing.T
	file  *store.File
	wall  *store.File
	now   time.Time
	read  Reader
	class gym.ID
}

// morning is 9 March 2026, a Monday, at six.
var morning = time.Date(2026, 3, 9, 6, 0, 0, 0, time.UTC)

func newHall(t *testing.T) *hall {
	t.Helper()
	ctx, path := context.Background(), filepath.Join(t.TempDir(), "gym.windlass")
	h := &hall{t: t, now: morning}
	file, err := store.Create(ctx, path)
	require.NoError(t, err)
	n := byte(0)
	book, err := desk.Starter("Harbour Hall", func() gym.ID { n++; return gym.NewID(morning, [10]byte{n}) })
	require.NoError(t, err)
	stock := &book.Equipment.Stock
	stock.Plates = stock.Plates[:len(stock.Plates)-1] // without the halves: loads go by 2.5 kg
	require.NoError(t, file.Write(ctx, book.Changes()...))
	h.file = file
	h.Desk, err = desk.Open(ctx, file, func() time.Time { return h.now }, rand.NewChaCha8([32]byte{1}))
	require.NoError(t, err)
	h.wall, err = store.OpenReadOnly(ctx, path)
	require.NoError(t, err)
	t.Cleanup(func() {
		require.NoError(t, h.wall.Close())
		require.NoError(t, h.file.Close())
	})
	return h
}

// Invented people.
var given = []string{"Ada", "Bo", "Cleo", "Dov", "Ines", "Jun", "Kofi", "Lena", "Mira", "Noor", "Olu", "Pia", "Rafa", "Sanne", "Tove", "Uli", "Vera", "Wim", "Xenia", "Yara", "Zeno", "Anouk", "Bram", "Cato", "Dirk", "Elin", "Finn", "Greta", "Hugo", "Ivo", "Jorun", "Katja", "Lovisa", "Maarten", "Nils", "Ottilie"}

var family = []string{"Lund", "Halvorsen", "Ito", "Moreau", "Bergh", "Okafor", "Petrov", "Quist"}

// lifters checks so many athletes in, over three tracks.
func (h *hall) lifters(n int) {
	h.t.Helper()
	lifts, reps := []gym.LiftKey{"back-squat", "clean", "deadlift"}, []int{3, 1, 5}
	from := []float64{110, 70, 150}
	for i, first := range given[:n] {
		track, share := i%3, 1-0.3*float64(i%2)
		a := h.NewAthlete(first + " " + family[i%len(family)])
		a.Standard = []gym.Standard{gym.StandardM, gym.StandardW}[i%2]
		a.Notes = "whispered note"
		require.NoError(h.t, h.AddAthlete(a, h.Tracks()[track].ID))
		load := float64(int((from[track]+float64(i/3)*5)*share/2.5)) * 2.5
		_, err := h.EnterResult(desk.Entry{Athlete: a.ID, Lift: lifts[track], Text: fmt.Sprintf("%dx%.1f", reps[track], load), On: day.From(h.now).Add(-21), Source: gym.Tested})
		require.NoError(h.t, err)
	}
	c, err := h.OpenFreeClass()
	require.NoError(h.t, err)
	h.class = c.ID
	for i, t := range h.Tracks() {
		p, _ := c.Piece(t.ID)
		p.Track, p.Lift, p.Reps, p.Workout = t.ID, lifts[i], reps[i], workouts[i]
		require.NoError(h.t, h.KeepPiece(c.ID, p))
	}
	for _, a := range h.Book().Athletes {
		require.NoError(h.t, h.CheckIn(c.ID, a.ID))
	}
	if n > 0 {
		require.NoError(h.t, h.ShareStations(c.ID))
	}
}

var workouts = []gym.Workout{
	{Format: gym.AMRAP, Seconds: 720, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 15}, {Movement: "kettlebell-goblet-squat", Amount: 10}, {Movement: "row-metres", Amount: 250}}},
	{Format: gym.EMOM, Seconds: 600, Items: []gym.Item{{Movement: "kettlebell-swing", Amount: 12}, {}}},
	{Format: gym.ForTime, Reps: []int{21, 15, 9}, Cap: 600, Items: []gym.Item{{Movement: "kettlebell-swing"}, {Movement: "kettlebell-goblet-squat"}}},
}

// state is what the wall reads of the file.
func (h *hall) state() State {
	h.t.Helper()
	book, err := h.wall.LoadClass(context.Background())
	require.NoError(h.t, err)
	return h.read.Read(book)
}

// settings changes the gym's settings.
func (h *hall) settings(edit func(*gym.Settings)) {
	h.t.Helper()
	s := h.Settings()
	edit(&s)
	require.NoError(h.t, h.KeepSettings(s))
}

// until lets the clock run to a time it shows.
func (h *hall) until(shown time.Duration) {
	h.t.Helper()
	c, _ := h.Class(h.class)
	if c.Stage == gym.SetUp {
		require.NoError(h.t, h.StartClock(h.class))
		c, _ = h.Class(h.class)
	}
	h.now = h.now.Add(shown - c.Clock.Elapsed(h.now))
}

// Sizes of screens, in millimetres: a 27-inch monitor and a 65-inch television of
// 16:9.
const inch27, inch65 = 336.3, 809.4

// show puts the wall in a window of a size on a screen of a height.
func (h *hall) show(p look.Palette, size fyne.Size, millimetres float64) (*View, *uitest.Window) {
	h.t.Helper()
	uitest.App(h.t, p)
	v := New()
	w := uitest.OpenAs(h.t, p, size, v.Content())
	v.SetHeight(millimetres)
	v.Show(h.state(), h.now)
	return v, w
}

// look keeps a picture where -pictures asks for one.
func (h *hall) look(w *uitest.Window, name string) {
	if *pictures != "" {
		uitest.Snapshot(h.t, w, filepath.Join(*pictures, name+".png"))
	}
}
