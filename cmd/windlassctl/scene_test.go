package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/store"
)

func TestDemoIsTheSameForTheSameSeed(t *testing.T) {
	folder := t.TempDir()
	var dumps []string
	for i, seed := range []string{"3", "3", "4"} {
		db := filepath.Join(folder, strconv.Itoa(i))
		m := read[made](t, "-db", db, "demo", "-seed", seed, "-today", "2026-03-04")
		assert.Equal(t, 36, m.Athletes)
		dump, err := os.ReadFile(db)
		require.NoError(t, err)
		dumps = append(dumps, string(dump))
	}
	assert.True(t, dumps[0] == dumps[1], "the same seed, the same file to the last byte")
	assert.False(t, dumps[0] == dumps[2], "another seed, another gym")
}

// A roster as coaches have it: byte order mark, semicolons, decimal commas, a
// split name, pounds in a heading, accents and blank cells. 185 lb stays 185 lb.
func TestRosterComesInRight(t *testing.T) {
	db := gymFile(t)
	roster := file(t, "roster.csv", "\ufeffFirst name;Last name;Load standard;Back Squat 1RM;bench press 1 rm (lb)\r\n"+
		"Zoë;Ångmark;W;102,5;185\r\nBram;Oostling;M;;\r\n")
	dry := read[imported](t, "-db", db, "import", "roster", "-dry-run", roster)
	assert.Equal(t, imported{Read: 2, Added: 1, Same: 1, Rejected: []rejected{}}, dry)
	assert.Equal(t, refused, ask(t, "", "-db", db, "record", "zoë ångmark").status, "a dry run writes nothing")

	assert.Equal(t, dry, read[imported](t, "-db", db, "import", "roster", roster))
	c := read[card](t, "-db", db, "record", "ZOË", "ångmark")
	assert.Equal(t, "Zoë Ångmark", c.Name)
	known := map[string]string{}
	for _, l := range c.Lifts {
		if l.Source != "estimate" {
			known[l.Lift] = l.Load
		}
	}
	assert.Equal(t, map[string]string{"Back squat": "102.5 kg", "Bench press": "185 lb"}, known)
	again := read[imported](t, "-db", db, "import", "roster", roster)
	assert.Equal(t, 2, again.Same, "the same sheet again says nothing new")
}

func TestBadRowsKeepAllOut(t *testing.T) {
	db := gymFile(t)
	sheet := "Name,Back squat 1RM\nZed Nova,120 kg\nBad Row,abc\n"
	before := state(t, filepath.Dir(db))
	a := ask(t, sheet, "-db", db, "-json", "import", "roster", "-")
	assert.Equal(t, refused, a.status)
	oneLine(t, a, "import", []string{"1 of 2 rows", "line 3", `"abc"`, "-skip-bad"})
	assert.Contains(t, a.out, `"line": 3`, "the preview is there all the same")
	assert.Equal(t, before, state(t, filepath.Dir(db)))

	a = ask(t, sheet, "-db", db, "import", "roster", "-", "-skip-bad")
	assert.Equal(t, done, a.status, a.err)
	assert.Contains(t, a.out, "1 added")
	assert.Contains(t, do(t, "-db", db, "record", "zed nova"), "120 kg")
}

// A heavier result raises the record, a climb counts from it, and bouts move the
// suggestion.
func TestLogsChangeTheAnswers(t *testing.T) {
	db := gymFile(t)
	results := file(t, "results.csv", "Date,Athlete,Lift,Reps,Load,Source\n2026-11-25,Bram Oostling,Back squat,5,180 kg,tested\n")
	assert.Equal(t, 1, read[imported](t, "-db", db, "import", "results", results).Added)
	c := read[climbed](t, "-db", db, "climb", "-athlete", "bram oostling", "-lift", "squat", "-reps", "5")
	assert.Equal(t, "180 kg", c.Base)
	assert.EqualValues(t, "tested", c.Source)
	assert.Equal(t, "162 kg", c.Lines.Heavy, "90 % of the record")

	hold := func() float64 {
		rows := read[[]holdLine](t, "-db", db, "hold", "-athlete", "bram oostling", "-movement", "kettlebell swing", "-loads", "24kg")
		require.Len(t, rows, 1)
		return rows[0].Hold
	}
	before := hold()
	var sheet strings.Builder
	sheet.WriteString("Date,Athlete,Movement,Load,Reps,Outcome,Workout,Score\n")
	for d := 20; d <= 25; d++ {
		sheet.WriteString("2026-11-" + strconv.Itoa(d) + ",Bram Oostling,Kettlebell swing,24 kg,40,stopped,,\n")
	}
	assert.Equal(t, 6, read[imported](t, "-db", db, "import", "bouts", file(t, "bouts.csv", sheet.String())).Added)
	assert.Less(t, hold(), before, "six stops speak against a load")
	s := read[[]tierLine](t, "-db", db, "tier", "-athlete", "bram oostling", "-movement", "kettlebell swing")
	require.Len(t, s, 1)
	assert.Contains(t, s[0].Why, "24 kg")
	assert.NotEqual(t, "24 kg", s[0].Load)
}

// A suggestion for a day gone by is the one that could have been made on it: what was
// logged later, a lift's result or a bout of this athlete or of others, says nothing.
func TestTheLogAfterADaySaysNothingOfIt(t *testing.T) {
	db := gymFile(t)
	hold := func(on string) []holdLine {
		return read[[]holdLine](t, "-db", db, "hold", "-athlete", "bram oostling", "-on", on)
	}
	suggested := func(on string) []tierLine { return read[[]tierLine](t, "-db", db, "tier", "-all", "-on", on) }
	holds, suggestions, later := hold("2026-11-10"), suggested("2026-11-10"), hold("2026-11-25")

	results := "Date,Athlete,Lift,Reps,Load,Source\n"
	bouts := "Date,Athlete,Movement,Load,Reps,Outcome,Workout,Score\n"
	for _, name := range twoNames(t, db) {
		results += "2026-11-11," + name + ",Deadlift,1,290 kg,tested\n"
		bouts += "2026-11-12," + name + ",Kettlebell swing,32 kg,40,held,,\n"
	}
	assert.Positive(t, read[imported](t, "-db", db, "import", "results", file(t, "results.csv", results)).Added)
	assert.Positive(t, read[imported](t, "-db", db, "import", "bouts", file(t, "bouts.csv", bouts)).Added)
	assert.Equal(t, holds, hold("2026-11-10"))
	assert.Equal(t, suggestions, suggested("2026-11-10"))
	assert.NotEqual(t, later, hold("2026-11-25"), "from the day itself on it counts")
}

// twoNames are the names of two athletes, of whom one is asked about.
func twoNames(t *testing.T, db string) []string {
	t.Helper()
	rows := read[[]athleteLine](t, "-db", db, "athletes")
	require.NotEmpty(t, rows)
	names := []string{"Bram Oostling"}
	for _, r := range rows {
		if r.Name != names[0] {
			return append(names, r.Name)
		}
	}
	return names
}

// What is written out and read in again changes nothing.
func TestExportComesBack(t *testing.T) {
	db, out := gymFile(t), filepath.Join(t.TempDir(), "tables")
	before := state(t, filepath.Dir(db))
	files := read[exported](t, "-db", db, "export", "-out", out)
	for _, f := range files.Files {
		assert.FileExists(t, f)
	}
	for _, tt := range []struct{ what, table string }{{"roster", "athletes.csv"}, {"results", "results.csv"}, {"bouts", "bouts.csv"}} {
		p := read[imported](t, "-db", db, "import", tt.what, "-dry-run", filepath.Join(out, tt.table))
		assert.Equal(t, p.Read, p.Same, tt.what)
		assert.Positive(t, p.Read)
	}
	book := filepath.Join(t.TempDir(), "all.xlsx")
	assert.Equal(t, []string{book}, read[exported](t, "-db", db, "export", "-xlsx", book).Files)
	piped := ask(t, "", "-db", db, "export", "-xlsx", "-")
	assert.True(t, strings.HasPrefix(piped.out, "PK\x03\x04"), "an XLSX is a zip (ISO/IEC 29500-2)")
	assert.Equal(t, before, state(t, filepath.Dir(db)))
}

func TestCopiesComeBack(t *testing.T) {
	db := gymFile(t)
	copied := filepath.Join(t.TempDir(), "copy.windlass")
	first := read[kept](t, "-db", db, "backup", "-out", copied)
	assert.True(t, first.OK)
	assert.Equal(t, 36, first.Athletes)
	roster := file(t, "roster.csv", "Name,Load standard\nZed Nova,M\n")
	do(t, "-db", db, "import", "roster", roster)
	assert.Equal(t, 37, read[kept](t, "-db", db, "verify").Athletes)

	back := read[kept](t, "-db", db, "restore", copied)
	assert.Equal(t, kept{File: db, Athletes: 36, Results: first.Results, Bouts: first.Bouts, OK: true}, back)
	replaced := read[kept](t, "verify", db+".replaced")
	assert.Equal(t, 37, replaced.Athletes, "the file that was there is kept")

	piped := ask(t, "", "-db", db, "backup", "-out", "-")
	require.Equal(t, done, piped.status, piped.err)
	checked := ask(t, piped.out, "-json", "verify", "-")
	assert.Equal(t, done, checked.status, checked.err)
	assert.Contains(t, checked.out, `"athletes": 36`)
	fresh := filepath.Join(t.TempDir(), "fresh.windlass")
	assert.Equal(t, done, ask(t, piped.out, "-db", fresh, "restore", "-").status)
	assert.Equal(t, 36, read[kept](t, "-db", fresh, "verify").Athletes)
}

func TestDamagedFileIsFoundOut(t *testing.T) {
	db := gymFile(t)
	whole, err := os.ReadFile(db)
	require.NoError(t, err)
	for at := len(whole) / 2; at < len(whole)/2+4096; at++ {
		whole[at] = 0xff
	}
	require.NoError(t, os.WriteFile(db, whole, 0o600))
	a := ask(t, "", "-json", "-db", db, "verify")
	assert.Equal(t, refused, a.status)
	oneLine(t, a, "verify", []string{"gym.windlass", "restore a backup"})
	assert.Contains(t, a.out, `"ok": false`)
}

// A desk that is open would not see what is written beside it.
func TestImportWaitsForTheDesk(t *testing.T) {
	db := gymFile(t)
	release, err := store.Claim(db)
	require.NoError(t, err)
	roster := file(t, "roster.csv", "Name,Load standard\nZed Nova,M\n")
	a := ask(t, "", "-db", db, "import", "roster", roster)
	assert.Equal(t, refused, a.status)
	oneLine(t, a, "import", []string{"gym.windlass", "another program", "close"})
	do(t, "-db", db, "athletes")
	release()
	do(t, "-db", db, "import", "roster", roster)
}

func TestRoster(t *testing.T) {
	db := gymFile(t)
	all := read[[]athleteLine](t, "-db", db, "athletes")
	assert.Len(t, all, 36)
	assert.Len(t, read[[]athleteLine](t, "-db", db, "athletes", "-status", "Paused"), 1)
	for _, l := range read[[]athleteLine](t, "-db", db, "athletes", "-track", " strongman ") {
		assert.Equal(t, "Strongman", l.Track)
	}
	assert.Contains(t, do(t, "-db", db, "catalogue"), "Kettlebell swing")
}

func TestArrange(t *testing.T) {
	db := gymFile(t)
	w := read[arranged](t, "-db", db, "arrange", "-track", "powerlifting", "-days", "mon,tue,thu,fri", "-want", "4")
	require.Len(t, w.Days, 4)
	// Squat and deadlift load the lower body, and so must not be neighbours.
	assert.Equal(t, []arrangedDay{
		{"mon", "Squat", "lower"}, {"tue", "Bench press", "upper"}, {"thu", "Deadlift", "lower"}, {"fri", "Shoulder press", "upper"},
	}, w.Days)
	own := read[arranged](t, "-db", db, "arrange", "-athlete", "greta sollheim")
	assert.Len(t, own.Days, 3, "as noted for her")
	fewer := read[arranged](t, "-db", db, "arrange", "-athlete", "greta sollheim", "-want", "2")
	assert.Len(t, fewer.Days, 2)
}

// The demo gym's plan keeps every rule; a deadlift planted beside the squat breaks
// one, where it stands and with its mend.
func TestCheck(t *testing.T) {
	db := gymFile(t)
	assert.Empty(t, read[[]breachLine](t, "-db", db, "check"))
	assert.Contains(t, do(t, "-db", db, "check", "-cycle", "harbour cycle"), "keeps every rule")
	plant(t, db)
	var found []breachLine
	for _, b := range read[[]breachLine](t, "-db", db, "check") {
		if b.Rule == cycle.RuleNeighbours && b.Week == 8 {
			found = append(found, b)
		}
	}
	require.NotEmpty(t, found)
	assert.Equal(t, "Powerlifting", found[0].Track)
	assert.Contains(t, []int{1, 2}, found[0].Day, "Monday or Tuesday")
	assert.NotEmpty(t, found[0].Why)
	assert.NotEmpty(t, found[0].Mend)
	assert.Contains(t, do(t, "-db", db, "check"), "Powerlifting, week 8")
}

// plant puts the deadlift of week 8 on the day after its squat.
func plant(t *testing.T, db string) {
	t.Helper()
	file, err := store.Open(t.Context(), db)
	require.NoError(t, err)
	defer func() { require.NoError(t, file.Close()) }()
	book, err := file.Load(t.Context())
	require.NoError(t, err)
	c := book.Cycles[0]
	at := cycle.At{Track: c.Tracks[0].Track, Week: 8, Weekday: day.Thursday}
	to := at
	to.Weekday = day.Tuesday
	moved, err := cycle.Move(c, at, to, nil)
	require.NoError(t, err)
	require.NoError(t, file.Write(t.Context(), gym.PutCycle{Cycle: moved}))
}

// Without -db the gym lies in the person's own data folder.
func TestUsualFile(t *testing.T) {
	home := t.TempDir()
	for _, name := range []string{"XDG_CONFIG_HOME", "HOME", "AppData"} { // as the systems call it
		t.Setenv(name, home)
	}
	var out, errs bytes.Buffer
	app := App{In: strings.NewReader(""), Out: &out, Err: &errs, Now: func() time.Time { return now }, Random: zeros{}, DefaultDB: store.DefaultPath}
	require.Equal(t, refused, app.Run(t.Context(), []string{"athletes"}))
	assert.Contains(t, errs.String(), "windlassctl demo")
	require.Equal(t, done, app.Run(t.Context(), []string{"demo"}), errs.String())
	path, err := store.DefaultPath()
	require.NoError(t, err)
	assert.FileExists(t, path)
	require.Equal(t, done, app.Run(t.Context(), []string{"athletes"}))
}

// zeros is a source of randomness that needs none.
type zeros struct{}

func (zeros) Read(p []byte) (int, error) { clear(p); return len(p), nil }
