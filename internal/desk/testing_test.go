package desk_test

import (
	"context"
	"fmt"
	"math/rand/v2"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"windlass/data"
	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
	"windlass/internal/store"
)

// bench is a desk on a real file, with a clock that the test moves.
type bench struct {
	*desk.Desk
	t    *testing.T
	path string
	file *store.File
	now  time.Time
}

// monday is the first morning of every test: 9 March 2026, a Monday.
var monday = time.Date(2026, 3, 9, 6, 0, 0, 0, time.UTC)

func newBench(t *testing.T) *bench {
	t.Helper()
	path := filepath.Join(t.TempDir(), "gym.windlass")
	file, err := store.Create(context.Background(), path)
	require.NoError(t, err)
	book := smallGym(t)
	require.NoError(t, file.Write(context.Background(), book.Changes()...))
	b := &bench{t: t, path: path, file: file, now: monday}
	t.Cleanup(func() { require.NoError(t, b.file.Close()) })
	b.Desk = b.open()
	return b
}

func (b *bench) open() *desk.Desk {
	b.t.Helper()
	d, err := desk.Open(context.Background(), b.file, func() time.Time { return b.now }, rand.NewChaCha8([32]byte{1}))
	require.NoError(b.t, err)
	return d
}

// reopened is what a program that starts again finds on the disk.
func (b *bench) reopened() *desk.Desk {
	b.t.Helper()
	return b.open()
}

// smallGym is a gym with the built-in catalogue, kilogram plates, one track and
// nobody in it.
func smallGym(t testing.TB) gym.Book {
	t.Helper()
	catalogue, err := gym.ReadCatalogue(data.Files())
	require.NoError(t, err)
	settings := gym.DefaultSettings()
	settings.Name = "Test Gym"
	return gym.Book{
		Settings: settings, Lifts: catalogue.Lifts, Movements: catalogue.Movements,
		Finishers: catalogue.Finishers, Drills: catalogue.Drills,
		Equipment: gym.Equipment{
			Bars: []plates.Bar{{Key: "bar-20", Name: "20 kg bar", Mass: 20 * mass.Kilogram, Unit: mass.KG, Kind: plates.Barbell, Count: 8}},
			Stock: plates.Stock{Plates: []plates.Plate{
				{Mass: 25 * mass.Kilogram, Unit: mass.KG, Pairs: 8, Full: true},
				{Mass: 20 * mass.Kilogram, Unit: mass.KG, Pairs: 8, Full: true},
				{Mass: 10 * mass.Kilogram, Unit: mass.KG, Pairs: 8, Full: true},
				{Mass: 5 * mass.Kilogram, Unit: mass.KG, Pairs: 8},
				{Mass: 2500 * mass.Gram, Unit: mass.KG, Pairs: 8},
				{Mass: 1250 * mass.Gram, Unit: mass.KG, Pairs: 8},
			}},
			Stations:   []gym.Station{{Name: "Rack 1", Bar: "bar-20"}, {Name: "Rack 2", Bar: "bar-20"}},
			Implements: catalogue.Implements,
		},
		Tracks: []gym.Track{{ID: "018e0000-0000-7000-8000-000000000001", Name: "Powerlifting", Position: 1}},
	}
}

const powerlifting gym.ID = "018e0000-0000-7000-8000-000000000001"

// join adds an athlete on the powerlifting track.
func (b *bench) join(name string) gym.Athlete {
	b.t.Helper()
	a := b.NewAthlete(name)
	require.NoError(b.t, b.AddAthlete(a, powerlifting))
	return a
}

// log enters a result of today.
func (b *bench) log(a gym.Athlete, lift gym.LiftKey, text string) desk.Entered {
	b.t.Helper()
	e, err := b.EnterResult(desk.Entry{Athlete: a.ID, Lift: lift, Text: text, On: day.From(b.now), Source: gym.Tested})
	require.NoError(b.t, err)
	return e
}

// crowded is a desk on a gym of so many athletes, held in memory.
func crowded(t testing.TB, n int) *desk.Desk {
	t.Helper()
	book := smallGym(t)
	first, last := []string{"Ada", "Bo", "Carla", "Arne", "Émile"}, []string{"Brook", "Quist", "Armand", "Dell"}
	for i := range n {
		id := gym.ID(fmt.Sprintf("018e0000-0000-7000-8000-%012d", i+100))
		name := fmt.Sprintf("%s %s %d", first[i%len(first)], last[i%len(last)], i)
		book.Athletes = append(book.Athletes, gym.Athlete{ID: id, Name: name, Standard: gym.StandardM, Status: gym.Active, Unit: mass.KG})
		book.Moves = append(book.Moves, gym.TrackMove{ID: id + "m", Athlete: id, Track: powerlifting, From: 1})
	}
	d, err := desk.Open(context.Background(), shelf{book}, func() time.Time { return monday }, rand.NewChaCha8([32]byte{1}))
	require.NoError(t, err)
	return d
}

// shelf keeps a book where no file is asked for.
type shelf struct{ book gym.Book }

func (s shelf) Load(context.Context) (gym.Book, error)                   { return s.book, nil }
func (s shelf) Write(context.Context, ...gym.Change) error               { return nil }
func (s shelf) WriteMany(context.Context, []gym.Change, func(int)) error { return nil }
