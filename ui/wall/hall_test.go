package wall

import (
	"context"
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
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
	app   fyne.App // of the test; a second one would read the typeface anew
}

// morning is 9 March 2026, a Monday, at six.
var morning = time.Date(2026, 3, 9, 6, 0, 0, 0, time.UTC)

// newHall opens the hall with a class of so many lifters, or without a class.
func newHall(t *testing.T, lifters int) *hall {
	t.Helper()
	ctx, path := context.Background(), filepath.Join(t.TempDir(), "gym.windlass")
	made, err := classFile(lifters)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(path, made.file, 0o600))
	h := &hall{t: t, now: morning, class: made.class}
	h.file, err = store.Open(ctx, path)
	require.NoError(t, err)
	h.Desk, err = desk.Open(ctx, h.file, func() time.Time { return h.now }, rand.NewChaCha8([32]byte{2}))
	require.NoError(t, err)
	h.wall, err = store.OpenReadOnly(ctx, path)
	require.NoError(t, err)
	t.Cleanup(func() {
		require.NoError(t, h.wall.Close())
		require.NoError(t, h.file.Close())
	})
	return h
}

// classMade is the file of a hall with a class that is set up.
type classMade struct {
	file  []byte
	class gym.ID // empty without lifters
}

// classesMade are the files by their number of lifters. Each is made once: every
// check-in is a transaction, and most tests begin with a full class.
var classesMade = map[int]classMade{}

func classFile(lifters int) (classMade, error) {
	if made, ok := classesMade[lifters]; ok {
		return made, nil
	}
	made, err := makeClass(lifters)
	if err == nil {
		classesMade[lifters] = made
	}
	return made, err
}

// makeClass plans the class at a desk that writes nothing, and then writes all it
// said at once.
func makeClass(lifters int) (made classMade, err error) {
	n := byte(0)
	book, err := desk.Starter("Harbour Hall", func() gym.ID { n++; return gym.NewID(morning, [10]byte{n}) })
	if err != nil {
		return made, err
	}
	stock := &book.Equipment.Stock
	stock.Plates = stock.Plates[:len(stock.Plates)-1] // without the halves: loads go by 2.5 kg
	d, err := desk.Open(context.Background(), unwritten{book}, func() time.Time { return morning }, rand.NewChaCha8([32]byte{1}))
	if err != nil {
		return made, err
	}
	if lifters > 0 {
		if made.class, err = planClass(d, lifters); err != nil {
			return made, err
		}
	}
	made.file, err = uitest.FileOf(*d.Book())
	return made, err
}

// unwritten is the store of a desk whose work is written later.
type unwritten struct{ book gym.Book }

func (u unwritten) Load(context.Context) (gym.Book, error)                           { return u.book, nil }
func (u unwritten) Write(context.Context, ...gym.Change) error                       { return nil }
func (u unwritten) WriteMany(context.Context, []gym.Change, func(written int)) error { return nil }

// Invented people.
var given = []string{"Ada", "Bo", "Cleo", "Dov", "Ines", "Jun", "Kofi", "Lena", "Mira", "Noor", "Olu", "Pia", "Rafa", "Sanne", "Tove", "Uli", "Vera", "Wim", "Xenia", "Yara", "Zeno", "Anouk", "Bram", "Cato", "Dirk", "Elin", "Finn", "Greta", "Hugo", "Ivo", "Jorun", "Katja", "Lovisa", "Maarten", "Nils", "Ottilie"}

var family = []string{"Lund", "Halvorsen", "Ito", "Moreau", "Bergh", "Okafor", "Petrov", "Quist"}

var (
	liftsMade = []gym.LiftKey{"back-squat", "clean", "deadlift"} // of the three tracks
	repsMade  = []int{3, 1, 5}
	basesMade = []float64{110, 70, 150} // of the first athletes
)

// planClass checks so many athletes in, over three tracks.
func planClass(d *desk.Desk, lifters int) (gym.ID, error) {
	for i := range lifters {
		if err := addLifter(d, i); err != nil {
			return "", err
		}
	}
	c, err := d.OpenFreeClass()
	if err != nil {
		return "", err
	}
	for i, t := range d.Tracks() {
		p, _ := c.Piece(t.ID)
		p.Track, p.Lift, p.Reps, p.Workout = t.ID, liftsMade[i], repsMade[i], workouts[i]
		if err := d.KeepPiece(c.ID, p); err != nil {
			return "", err
		}
	}
	for _, a := range d.Book().Athletes {
		if err := d.CheckIn(c.ID, a.ID); err != nil {
			return "", err
		}
	}
	return c.ID, d.ShareStations(c.ID)
}

// addLifter adds the athlete of a number, from 0, with a result of three weeks ago.
func addLifter(d *desk.Desk, i int) error {
	track, share := i%3, 1-0.3*float64(i%2)
	a := d.NewAthlete(given[i] + " " + family[i%len(family)])
	a.Standard = []gym.Standard{gym.StandardM, gym.StandardW}[i%2]
	a.Notes = "whispered note"
	if err := d.AddAthlete(a, d.Tracks()[track].ID); err != nil {
		return err
	}
	load := float64(int((basesMade[track]+float64(i/3)*5)*share/2.5)) * 2.5
	_, err := d.EnterResult(desk.Entry{
		Athlete: a.ID, Lift: liftsMade[track], Text: fmt.Sprintf("%dx%.1f", repsMade[track], load),
		On: day.From(morning).Add(-21), Source: gym.Tested,
	})
	return err
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
	if h.app == nil {
		h.app = uitest.App(h.t, p)
	}
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
