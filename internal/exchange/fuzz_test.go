package exchange

import (
	"bytes"
	"context"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
)

func FuzzOpen(f *testing.F) {
	for _, seed := range []string{
		"Name;Squat\nCleo;102,5\n", utf8Mark + "Name\nA\n", utf16Little + "N\x00", "sep=;\na;b\n", "a,\"b\n", "%PDF", "PK\x03\x04", "\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1",
	} {
		f.Add([]byte(seed))
	}
	var b bytes.Buffer
	if err := WriteXLSX(context.Background(), &b, []Table{{Name: "a", Header: []string{"Name"}, Rows: [][]any{{"Cleo"}}}}); err != nil {
		f.Fatal(err)
	}
	f.Add(b.Bytes())
	f.Fuzz(func(t *testing.T, content []byte) {
		file, err := Open(t.Context(), "fuzz", bytes.NewReader(content))
		if err != nil {
			assert.ErrorContains(t, err, `"fuzz"`)
			return
		}
		for _, s := range file.sheets {
			last := 0
			for _, r := range s.rows {
				require.Greater(t, r.line, last, "lines rise")
				last = r.line
			}
		}
	})
}

// A text table that is read and written out by the package reads as the same.
func FuzzCSVRoundTrip(f *testing.F) {
	for _, seed := range []string{"a,b\n1,2\n", "\"a\n\",'=b\n", "a;b\n", "'", "é\t\"\"\"\"\n"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		decoded, err := decode("fuzz", []byte(text))
		if err != nil {
			return
		}
		rows, err := parseCSV("fuzz", decoded)
		if err != nil || len(rows) == 0 {
			return
		}
		table := Table{Name: "t"}
		for _, r := range rows {
			cells := make([]any, len(r.cells))
			for i, c := range r.cells {
				cells[i] = c
			}
			table.Rows = append(table.Rows, cells)
		}
		var b bytes.Buffer
		b.WriteString("sep=,\n")
		for _, row := range table.Rows {
			header := make([]string, len(row))
			for i, c := range row {
				header[i] = csvCell(c)
			}
			require.NoError(t, WriteCSV(t.Context(), &b, Table{Header: header}))
		}
		again, err := parseCSV("fuzz", strings.ReplaceAll(b.String(), "\r\n", "\n"))
		require.NoError(t, err)
		require.Equal(t, cellsOf(rows), cellsOf(again))
	})
}

// cellsOf leaves out rows of one empty cell, which a text cannot tell from none.
func cellsOf(rows []row) [][]string {
	var out [][]string
	for _, r := range rows {
		if len(r.cells) > 1 || r.cells[0] != "" {
			out = append(out, r.cells)
		}
	}
	return out
}

func FuzzHeading(f *testing.F) {
	for _, seed := range []string{"Back Squat 1RM", "bench 5 rm (lb)", "RM3 x", "5rm5rm", "C&J", "#", "١ rm"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		h := readHeading(text)
		assert.GreaterOrEqual(t, h.reps, 0)
		assert.True(t, h.unit == "" || h.unit.Valid())
		assert.Equal(t, h, readHeading("  "+strings.ToLower(text)+" "), "case and outer spaces say nothing")
		for _, w := range h.words {
			assert.NotEmpty(t, w)
		}
	})
}

func FuzzDate(f *testing.F) {
	for _, seed := range []string{"2026-03-09", "9/3/26", "Mar 9 2026", "46090", "1e9", "nan", "--", "0x1p3"} {
		f.Add(seed, uint8(0), false)
		f.Add(seed, uint8(1), true)
	}
	f.Fuzz(func(t *testing.T, text string, order uint8, book bool) {
		epoch := day.None
		if book {
			epoch = epoch1900
		}
		o := []DateOrder{NoOrder, DayFirst, MonthFirst}[order%3]
		d, err := parseDate(text, o, epoch)
		if err != nil {
			assert.Equal(t, day.None, d)
			return
		}
		again, err := parseDate(d.String(), o, epoch)
		require.NoError(t, err)
		assert.Equal(t, d, again)
	})
}

func FuzzAmount(f *testing.F) {
	measures := gym.Measures()
	for i, seed := range []string{"1:02", "31,5 s", "200 m", "-1", "1:60", "NaN", "1e9", "0x10", "::", "1_0", "2 min"} {
		f.Add(seed, uint8(i))
	}
	f.Fuzz(func(t *testing.T, text string, by uint8) {
		x, err := parseAmount(text, measures[int(by)%len(measures)])
		if err == nil {
			assert.Positive(t, x)
			assert.LessOrEqual(t, x, 1e6+36_060)
		}
	})
}

// Whatever stands in a sheet, a proposal adds up, and all that it would write is
// valid and names only what the gym has.
func FuzzProposals(f *testing.F) {
	for _, seed := range []string{
		"Name;Squat 1RM;Track\nCleo;102,5;Powerlifting\nAnn Ash;;\n",
		"ID,Name,Joined,Days\n1,Cleo,2026-03-09,Mon Tue\n",
		"Date,Athlete,Lift,Reps,Load\n2026-03-01,Ann Ash,squat,5,100 lb\n",
		"Date,Athlete,Movement,Load,Reps,Outcome\n2026-03-01,Ben Birch,swing,24,30,held\n",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		file, err := Open(t.Context(), "fuzz", strings.NewReader(text))
		if err != nil {
			return
		}
		for _, read := range []func(context.Context, *File, *gym.Book, Options) (Proposal, error){Roster, Results, Bouts} {
			book := smallGym()
			p, err := read(t.Context(), file, book, options())
			if err != nil {
				require.Empty(t, p.Changes)
				continue
			}
			refused := p.Read - p.Added - p.Updated - p.Same
			require.GreaterOrEqual(t, refused, 0)
			require.LessOrEqual(t, refused, len(p.Rejected), "each refused row says why; headings may be refused too")
			for _, r := range p.Rejected {
				require.Positive(t, r.Line)
				require.NotEmpty(t, r.Reason)
			}
			checkChanges(t, after(book, p))
		}
	})
}

func checkChanges(t *testing.T, b *gym.Book) {
	t.Helper()
	known := map[gym.ID]bool{}
	for _, a := range b.Athletes {
		require.NoError(t, a.Valid())
		require.False(t, known[a.ID], "an ID is one athlete's")
		known[a.ID] = true
		require.True(t, utf8.ValidString(a.Name))
	}
	for _, r := range b.Results {
		require.True(t, known[r.Athlete])
		if r.Made.Equal(now) {
			require.NoError(t, r.Valid())
		}
	}
	for _, r := range b.Bouts {
		require.True(t, known[r.Athlete])
		if r.Made.Equal(now) {
			require.NoError(t, r.Valid())
		}
	}
}
