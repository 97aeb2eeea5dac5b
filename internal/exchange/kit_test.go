package exchange

import (
	"bytes"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

var (
	today = day.Of(2026, 3, 9)
	now   = time.Date(2026, 3, 9, 12, 0, 0, 0, time.UTC)
)

// options numbers new rows from 1, so that a test can name them.
func options() Options {
	made := 0
	return Options{Today: today, Now: now, NewID: func() gym.ID {
		made++
		return gym.ID(fmt.Sprintf("00000000-0000-7000-8000-%012d", made))
	}}
}

func kg(x float64) mass.Mass { return mass.Of(x, mass.KG) }
func lb(x int) mass.Mass     { return mass.Mass(x) * mass.Pound }

// smallGym knows two athletes, some lifts and movements, and a little of a log.
func smallGym() *gym.Book {
	settings := gym.DefaultSettings()
	settings.Name = "Harbour Gym"
	return &gym.Book{
		Settings: settings,
		Equipment: gym.Equipment{
			Implements: []gym.Implement{{Kind: "kettlebell", Unit: mass.KG, Masses: []mass.Mass{kg(16), kg(24)}}},
		},
		Lifts: []gym.Lift{
			{Key: "back-squat", Name: "Back squat", Aliases: []string{"BS", "squat"}, Measure: gym.ByLoad, Reps: []int{1, 3, 5}},
			{Key: "bench-press", Name: "Bench press", Aliases: []string{"BP", "bench"}, Measure: gym.ByLoad, Reps: []int{1, 3, 5}},
			{Key: "clean-and-jerk", Name: "Clean and jerk", Aliases: []string{"C&J"}, Measure: gym.ByLoad, Reps: []int{1}},
			{Key: "max-log", Name: "Max log", Measure: gym.ByLoad, Reps: []int{1}},
			{Key: "yoke-run", Name: "Yoke run", Measure: gym.ByTime, Reps: []int{1}},
			{Key: "dead-hang", Name: "Dead hang", Measure: gym.ByHold, Reps: []int{1}},
		},
		Movements: []gym.Movement{
			{Key: "swing", Name: "Kettlebell swing", Implement: "kettlebell"},
			{Key: "ball", Name: "Wall ball", Loads: map[gym.Standard]gym.TierLoads{gym.StandardM: {Full: kg(9), Mid: kg(6), Light: kg(4)}}},
			{Key: "row", Name: "Row"},
		},
		Tracks:   []gym.Track{{ID: "t1", Name: "Powerlifting"}, {ID: "t2", Name: "Strongman"}},
		Athletes: []gym.Athlete{athlete("ann", "Ann Ash"), athlete("ben", "Ben Birch")},
		Moves:    []gym.TrackMove{{ID: "m1", Athlete: "ann", Track: "t1", From: today.Add(-30)}},
		Results:  []gym.Result{{ID: "r1", Athlete: "ann", Lift: "back-squat", Reps: 1, Load: kg(140), Unit: mass.KG, On: today.Add(-7), Source: gym.Tested}},
		Bouts:    []gym.Bout{{ID: "b1", Athlete: "ann", Movement: "swing", Load: kg(24), Unit: mass.KG, Reps: 30, Outcome: gym.Held, On: today.Add(-7), Workout: "Monday"}},
	}
}

func athlete(id gym.ID, name string) gym.Athlete {
	return gym.Athlete{ID: id, Name: name, Standard: gym.StandardM, Status: gym.Active, Unit: mass.KG, Show: gym.WallName}
}

func open(t testing.TB, content string) *File {
	t.Helper()
	f, err := Open(t.Context(), "sheet.csv", strings.NewReader(content))
	require.NoError(t, err)
	return f
}

// roster reads a sheet that must be readable as a whole.
func roster(t *testing.T, book *gym.Book, o Options, content string) Proposal {
	t.Helper()
	p, err := Roster(t.Context(), open(t, content), book, o)
	require.NoError(t, err)
	return p
}

func results(t *testing.T, book *gym.Book, o Options, content string) Proposal {
	t.Helper()
	p, err := Results(t.Context(), open(t, content), book, o)
	require.NoError(t, err)
	return p
}

func bouts(t *testing.T, book *gym.Book, o Options, content string) Proposal {
	t.Helper()
	p, err := Bouts(t.Context(), open(t, content), book, o)
	require.NoError(t, err)
	return p
}

// after is the book with the changes of a proposal made.
func after(book *gym.Book, p Proposal) *gym.Book {
	next := *book
	next.Athletes = append([]gym.Athlete(nil), book.Athletes...)
	next.Results = append([]gym.Result(nil), book.Results...)
	next.Bouts = append([]gym.Bout(nil), book.Bouts...)
	next.Moves = append([]gym.TrackMove(nil), book.Moves...)
	next.Apply(p.Changes...)
	return &next
}

func find(t *testing.T, book *gym.Book, name string) gym.Athlete {
	t.Helper()
	for _, a := range book.Athletes {
		if a.Name == name {
			return a
		}
	}
	require.Fail(t, "nobody is called "+name)
	return gym.Athlete{}
}

// best is the load that a book has for an athlete, a lift and a rep count.
func best(book *gym.Book, who gym.ID, lift gym.LiftKey, reps int) (mass.Mass, mass.Unit) {
	for _, r := range book.Results {
		if r.Athlete == who && r.Lift == lift && r.Reps == reps && r.Void == nil {
			return r.Load, r.Unit
		}
	}
	return 0, ""
}

func counts(p Proposal) [5]int {
	return [5]int{p.Read, p.Added, p.Updated, p.Same, len(p.Rejected)}
}

// workbookOf writes a workbook and reads it back as a coach's file.
func workbookOf(t *testing.T, tables ...Table) *File {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, WriteXLSX(t.Context(), &b, tables))
	f, err := Open(t.Context(), "sheet.xlsx", &b)
	require.NoError(t, err)
	return f
}
