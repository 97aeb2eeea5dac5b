package exchange

import (
	"bytes"
	"context"
	"encoding/csv"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"github.com/xuri/excelize/v2"
	"pgregory.net/rapid"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// drawGym is a gym whose log and roster are full of what could go wrong in a
// sheet: names that begin formulas, share a spelling, have quotes and commas.
func drawGym(rt *rapid.T) *gym.Book {
	b := smallGym()
	b.Athletes, b.Moves, b.Results, b.Bouts = nil, nil, nil, nil
	text := rapid.StringOfN(rapid.RuneFrom([]rune("aAé ,;\"'=-+@\n\t?.")), 0, 6, -1)
	for i := range rapid.IntRange(1, 6).Draw(rt, "athletes") {
		name := text.Draw(rt, "name") + "x" + text.Draw(rt, "name")
		a := athlete(drawnID("a", i), oneLine(name))
		a.Standard = rapid.SampledFrom([]gym.Standard{gym.StandardM, gym.StandardW}).Draw(rt, "standard")
		a.Display = strings.TrimSpace(text.Draw(rt, "display"))
		a.Free, a.Want = day.Weekdays(rapid.IntRange(0, 127).Draw(rt, "free")), rapid.IntRange(0, 7).Draw(rt, "want")
		a.Hand = []gym.HandDay{{Plan: day.Monday, On: day.Tuesday}}
		a.Joined, a.Notes = day.Of(2024, 1, 1).Add(i), "a secret"
		b.Athletes = append(b.Athletes, a)
		b.Moves = append(b.Moves, gym.TrackMove{ID: drawnID("m", i), Athlete: a.ID, Track: "t1", From: today.Add(-i)})
		b.Restrictions = append(b.Restrictions, gym.Restriction{ID: drawnID("s", i), Athlete: a.ID, Text: "a secret"})
	}
	for i := range rapid.IntRange(0, 8).Draw(rt, "results") {
		b.Results = append(b.Results, drawResult(rt, b, i))
	}
	for i := range rapid.IntRange(0, 8).Draw(rt, "bouts") {
		b.Bouts = append(b.Bouts, gym.Bout{
			ID: drawnID("b", i), Athlete: rapid.SampledFrom(b.Athletes).Draw(rt, "who").ID, Movement: "swing", Load: drawLoad(rt),
			Unit: drawUnit(rt), Reps: rapid.IntRange(1, 10_000).Draw(rt, "reps"), Outcome: gym.Slowed, On: today.Add(-i),
			Workout: text.Draw(rt, "workout"), Score: text.Draw(rt, "score"), Made: now, Void: drawVoid(rt),
		})
	}
	return b
}

func drawResult(rt *rapid.T, b *gym.Book, i int) gym.Result {
	r := gym.Result{
		ID: drawnID("r", i), Athlete: rapid.SampledFrom(b.Athletes).Draw(rt, "who").ID, Reps: rapid.IntRange(1, 20).Draw(rt, "reps"),
		Unit: drawUnit(rt), On: today.Add(-rapid.IntRange(0, 5).Draw(rt, "ago")), Source: gym.Tested, Made: now, Void: drawVoid(rt),
	}
	if r.Lift = rapid.SampledFrom(b.Lifts).Draw(rt, "lift").Key; r.Lift == "yoke-run" || r.Lift == "dead-hang" {
		r.Amount = float64(rapid.IntRange(1, 9999).Draw(rt, "amount")) / 8
	} else {
		r.Load = drawLoad(rt)
	}
	return r
}

func drawnID(kind string, i int) gym.ID {
	return gym.ID(fmt.Sprintf("00000000-0000-7000-8000-%x%010d", kind[0], i))
}

func drawLoad(rt *rapid.T) mass.Mass {
	return mass.Mass(rapid.Int64Range(int64(mass.Gram), int64(mass.Max)).Draw(rt, "load"))
}

func drawUnit(rt *rapid.T) mass.Unit {
	return rapid.SampledFrom([]mass.Unit{mass.KG, mass.LB}).Draw(rt, "unit")
}

func drawVoid(rt *rapid.T) *gym.Void {
	reasons := []*gym.Void{nil, nil, {At: now, Reason: "wrong bar"}, {At: now.Add(time.Millisecond), Reason: ""}}
	return rapid.SampledFrom(reasons).Draw(rt, "void")
}

// Reading in what was written out changes nothing, as CSV and as XLSX.
func TestReadingInWhatWasWrittenOutIsTheSame(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		book := drawGym(rt)
		tables := Tables(book, today)
		for name, read := range map[string]func(context.Context, *File, *gym.Book, Options) (Proposal, error){
			"athletes": Roster, "results": Results, "bouts": Bouts,
		} {
			f := csvOf(rt, t, tables, name)
			p, err := read(t.Context(), f, book, options())
			require.NoError(rt, err)
			require.Empty(rt, p.Rejected, name)
			require.Empty(rt, p.Changes, name)
			require.Equal(rt, p.Read, p.Same)
			require.Equal(rt, map[string]int{"athletes": len(book.Athletes), "results": len(book.Results), "bouts": len(book.Bouts)}[name], p.Read)
		}
	})
	book := smallGym()
	f := workbookOf(t, Tables(book, today)...)
	for _, read := range []func(context.Context, *File, *gym.Book, Options) (Proposal, error){Roster, Results, Bouts} {
		p, err := read(t.Context(), f, book, options())
		require.NoError(t, err)
		assert.Positive(t, p.Same)
		assert.Equal(t, p.Read, p.Same)
		assert.Empty(t, p.Changes)
	}
}

func csvOf(rt require.TestingT, t *testing.T, tables []Table, name string) *File {
	var b bytes.Buffer
	for _, table := range tables {
		if table.Name == name {
			require.NoError(rt, WriteCSV(t.Context(), &b, table))
		}
	}
	f, err := Open(t.Context(), name, &b)
	require.NoError(rt, err)
	return f
}

// Where two have one name, their IDs stand in its place.
func TestSharedNamesComeBack(t *testing.T) {
	book := smallGym()
	book.Athletes = append(book.Athletes, athlete("ann2", "ANN ash"))
	book.Lifts[1].Name = "back-squat" // reads like the other one's key
	book.Results = append(book.Results, gym.Result{ID: "r2", Athlete: "ann2", Lift: "bench-press", Reps: 3, Load: kg(60), Unit: mass.KG, On: today, Source: gym.Tested})
	tables := Tables(book, today)
	for name, read := range map[string]func(context.Context, *File, *gym.Book, Options) (Proposal, error){"athletes": Roster, "results": Results} {
		p, err := read(t.Context(), csvOf(t, t, tables, name), book, options())
		require.NoError(t, err)
		assert.Empty(t, p.Rejected, name)
		assert.Empty(t, p.Changes, name)
	}
}

// The track of a day is that of the latest move until then.
func TestTracksInTheTableOfAthletes(t *testing.T) {
	book := smallGym()
	move := func(track gym.ID, ago int, made time.Time) gym.TrackMove {
		return gym.TrackMove{Athlete: "ann", Track: track, From: today.Add(-ago), Made: made}
	}
	for _, c := range []struct {
		moves []gym.TrackMove
		want  string
	}{
		{nil, ""},
		{[]gym.TrackMove{move("t1", 30, now), move("t2", 9, now), move("t1", 20, now)}, "Strongman"},
		{[]gym.TrackMove{move("t1", 30, now), move("t2", -1, now)}, "Powerlifting"},      // tomorrow is not yet
		{[]gym.TrackMove{move("t1", 0, now.Add(1)), move("t2", 0, now)}, "Powerlifting"}, // the later word of one day
		{[]gym.TrackMove{move("t1", 30, now), move("", 9, now)}, ""},
	} {
		book.Moves = c.moves
		table := Tables(book, today)[0]
		require.Equal(t, "Track", table.Header[5])
		assert.Equal(t, c.want, table.Rows[0][5])
	}
}

// In another gym's file the same tables make the same athletes, results and bouts.
func TestReadingInElsewhere(t *testing.T) {
	book := smallGym()
	tables := Tables(book, today)
	elsewhere := smallGym()
	elsewhere.Athletes, elsewhere.Moves, elsewhere.Results, elsewhere.Bouts = nil, nil, nil, nil
	for _, step := range []struct {
		name string
		read func(context.Context, *File, *gym.Book, Options) (Proposal, error)
	}{{"athletes", Roster}, {"results", Results}, {"bouts", Bouts}} {
		p, err := step.read(t.Context(), csvOf(t, t, tables, step.name), elsewhere, options())
		require.NoError(t, err)
		require.Empty(t, p.Rejected)
		elsewhere = after(elsewhere, p)
	}
	again := Tables(elsewhere, today)
	assert.Equal(t, withoutOwn(tables), withoutOwn(again))
}

// withoutOwn leaves out what a file has of its own: IDs and times of making.
func withoutOwn(tables []Table) map[string][][]any {
	out := map[string][][]any{}
	for _, t := range tables[:4] {
		for _, row := range t.Rows {
			var kept []any
			for i, cell := range row {
				if h := t.Header[i]; h != "ID" && h != "Made" && h != "From" {
					kept = append(kept, cell)
				}
			}
			out[t.Name] = append(out[t.Name], kept)
		}
	}
	return out
}

func TestNothingLeavesTheDesk(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		for _, table := range Tables(drawGym(rt), today) {
			for _, row := range table.Rows {
				require.Len(rt, row, len(table.Header), table.Name)
				require.NotContains(rt, row, "a secret", table.Name)
			}
		}
	})
}

func TestWriteCSVs(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "out")
	names, err := WriteCSVs(t.Context(), folder, Tables(smallGym(), today))
	require.NoError(t, err)
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	require.Len(t, entries, len(names))
	for _, name := range names {
		file, err := os.Open(name)
		require.NoError(t, err)
		rows, err := csv.NewReader(file).ReadAll() // every row as long as its header
		require.NoError(t, err, name)
		assert.NotEmpty(t, rows)
		require.NoError(t, file.Close())
	}
	bytes, err := os.ReadFile(filepath.Join(folder, "results.csv"))
	require.NoError(t, err)
	assert.Equal(t, "ID,Date,Athlete,Lift,Reps,Load,Amount,Source,Made,Void,Void at\r\n"+
		"r1,2026-03-02,Ann Ash,Back squat,1,140 kg,,tested,,,\r\n", string(bytes))
	_, err = WriteCSVs(t.Context(), folder, Tables(smallGym(), today))
	require.ErrorIs(t, err, fs.ErrExist)
}

func TestWriteCSVsWritesAllOrNothing(t *testing.T) {
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	folder := t.TempDir()
	_, err := WriteCSVs(ctx, folder, Tables(smallGym(), today))
	require.ErrorIs(t, err, context.Canceled)
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	assert.Empty(t, entries)
	_, err = WriteCSVs(t.Context(), filepath.Join(folder, "a\x00b"), Tables(smallGym(), today))
	assert.ErrorContains(t, err, "choose another folder")
}

// A sheet's texts are texts: none of them runs as a formula.
func TestXLSXHasNoFormulas(t *testing.T) {
	var b bytes.Buffer
	table := Table{Name: "names", Header: []string{"Name", "Reps"}, Rows: [][]any{{"=1+2", 5}, {"+49", 2.5}}}
	require.NoError(t, WriteXLSX(t.Context(), &b, []Table{table}))
	book, err := excelize.OpenReader(&b)
	require.NoError(t, err)
	defer book.Close()
	for cell, want := range map[string]string{"A2": "=1+2", "A3": "+49", "B2": "5", "B3": "2.5"} {
		formula, err := book.GetCellFormula("names", cell)
		require.NoError(t, err)
		assert.Empty(t, formula, cell)
		value, err := book.GetCellValue("names", cell)
		require.NoError(t, err)
		assert.Equal(t, want, value)
	}
	kind, err := book.GetCellType("names", "B2")
	require.NoError(t, err)
	assert.Contains(t, []excelize.CellType{excelize.CellTypeUnset, excelize.CellTypeNumber}, kind, "a number is a number")
}

// Six decimals of either unit, and what they say is what is read.
func TestLoadsInASheet(t *testing.T) {
	assert.Equal(t, "185 lb", writeLoad(lb(185), mass.LB))
	assert.Equal(t, "102.5 kg", writeLoad(kg(102.5), mass.KG))
	// A 20 kg bar with four 45 lb plates: 20 + 4 × 45 × 0.45359237 = 101.6466266 kg.
	assert.Equal(t, "101.646627 kg", writeLoad(kg(20)+lb(180), mass.KG))
	assert.Empty(t, writeLoad(0, mass.KG))
	rapid.Check(t, func(rt *rapid.T) {
		m, u := drawLoad(rt), drawUnit(rt)
		text := writeLoad(m, u)
		got, unit, err := mass.Parse(text, mass.KG)
		require.NoError(rt, err)
		require.Equal(rt, text, writeLoad(got, unit))
		require.InDelta(rt, float64(m), float64(got), float64(u.One())/1e6)
	})
}
