package store

import (
	"compress/gzip"
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Run with -keep once a new version of the file is settled, never again after:
// testdata/schema holds files as old programs wrote them.
var keep = flag.Bool("keep", false, "keep a file of the latest version in testdata/schema, if there is none")

func kept(version int, tail string) string {
	return filepath.Join("..", "..", "testdata", "schema", fmt.Sprintf("version-%04d.%s", version, tail))
}

// A file of every version that a program ever wrote opens as what it said then.
func TestFilesOfEveryVersionOpen(t *testing.T) {
	o, err := usual()
	require.NoError(t, err)
	if *keep && !exists(kept(o.latest(), "db.gz")) {
		keepLatest(t, o.latest())
	}
	for version := 1; version <= o.latest(); version++ {
		t.Run(fmt.Sprint("version ", version), func(t *testing.T) {
			path := filepath.Join(t.TempDir(), "gym.windlass")
			unzip(t, kept(version, "db.gz"), path)
			s, err := Verify(t.Context(), path)
			require.NoError(t, err)
			require.Equal(t, version, s.Version)
			book := loadPath(t, path)
			assert.NoError(t, book.Settings.Valid(), "what came later has a meaning where it is missing")
			got, err := json.MarshalIndent(book, "", " ")
			require.NoError(t, err)
			want, err := os.ReadFile(kept(version, "json"))
			require.NoError(t, err)
			assert.JSONEq(t, string(want), string(got))
		})
	}
}

// A gym that never counted its implements has enough of all, one that chose
// nothing for the composer has what is usual, and the pairs of the built-in
// catalogue are known from now on.
func TestFilesWithoutCountsMeanPlenty(t *testing.T) {
	path := filepath.Join(t.TempDir(), "gym.windlass")
	unzip(t, kept(1, "db.gz"), path)
	runSQL(t, path, `INSERT INTO movements (key, name, region, pattern, measure, implement, reference_reps, seconds, loads, own, hidden)
		SELECT value, value, '', '', '', 'dumbbell', 40, 3, '{}', value = 'own-press', 0
		FROM json_each('["dumbbell-thruster", "dumbbell-snatch", "own-press"]')`)
	runSQL(t, path, `UPDATE singles SET body = json_set(body, '$.implements', json('[{"kind": "dumbbell", "unit": "kg", "masses": [10000000000000]}]'))
		WHERE key = 'equipment'`)
	book := loadPath(t, path)
	n, counted := book.Equipment.Pieces(gym.Pool{Kind: "dumbbell", Mass: 10 * mass.Kilogram})
	assert.False(t, counted, "%d", n)
	assert.Equal(t, gym.UsualComposing(), book.Settings.ComposeBy())
	pairs := map[gym.MovementKey]bool{}
	for _, m := range book.Movements {
		pairs[m.Key] = m.Pair
	}
	assert.True(t, pairs["dumbbell-thruster"])
	assert.False(t, pairs["dumbbell-snatch"])
	assert.False(t, pairs["own-press"])
}

func keepLatest(t *testing.T, version int) {
	t.Helper()
	bytes, book := savedBytes(t)
	file, err := os.Create(kept(version, "db.gz"))
	require.NoError(t, err)
	zip := gzip.NewWriter(file)
	_, err = zip.Write(bytes)
	require.NoError(t, err)
	require.NoError(t, zip.Close())
	require.NoError(t, file.Close())
	text, err := json.MarshalIndent(book, "", " ")
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(kept(version, "json"), append(text, '\n'), 0o600))
}

func unzip(t *testing.T, from, to string) {
	t.Helper()
	file, err := os.Open(from)
	require.NoError(t, err, "make it with: go test ./internal/store -keep")
	defer file.Close()
	zip, err := gzip.NewReader(file)
	require.NoError(t, err)
	bytes, err := io.ReadAll(zip)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(to, bytes, 0o600))
}

// with is what a later program would know: one more step.
func with(t *testing.T, sql string) options {
	t.Helper()
	o, err := usual()
	require.NoError(t, err)
	o.steps = append(o.steps, step{o.latest() + 1, sql})
	return o
}

func TestMigrationCopiesFirst(t *testing.T) {
	path := savedFile(t)
	want := loadPath(t, path)
	later := with(t, "ALTER TABLE tracks ADD COLUMN colour TEXT; CREATE TABLE colours (name TEXT) STRICT")

	s, err := verify(t.Context(), path, later)
	require.NoError(t, err, "an older file is whole")
	assert.Equal(t, Summary{Path: path, Version: later.latest() - 1, Athletes: 2, Results: 1, Bouts: 1, OK: true}, s)
	_, err = openReadOnly(t.Context(), path, later)
	require.ErrorIs(t, err, ErrOlder)

	f, err := open(t.Context(), path, later)
	require.NoError(t, err)
	assert.Equal(t, want, load(t, f))
	require.NoError(t, f.Close())
	s, err = verify(t.Context(), path, later)
	require.NoError(t, err)
	assert.Equal(t, later.latest(), s.Version)
	_, err = Open(t.Context(), path)
	require.ErrorIs(t, err, ErrNewer, "the program of today")

	copied := fmt.Sprintf("%s.v%d", path, later.latest()-1)
	assert.Equal(t, want, loadPath(t, copied))
	noParts(t, filepath.Dir(path))
}

func TestMigrationThatFailsChangesNothing(t *testing.T) {
	path := savedFile(t)
	want := loadPath(t, path)
	_, err := open(t.Context(), path, with(t, "CREATE TABLE colours (name TEXT) STRICT; INSERT INTO nowhere VALUES (1)"))
	require.ErrorContains(t, err, "nowhere")
	assert.Equal(t, want, loadPath(t, path))
	_, err = Verify(t.Context(), path)
	assert.NoError(t, err)
}

// A damaged file is not migrated: its copy would be no help.
func TestDamagedFileIsNotMigrated(t *testing.T) {
	path := withSQL(t, "PRAGMA foreign_keys = OFF; INSERT INTO moves VALUES (9, 'm', 'nobody', NULL, '2026-03-09', '')")
	_, err := open(t.Context(), path, with(t, "CREATE TABLE colours (name TEXT) STRICT"))
	require.ErrorIs(t, err, ErrDamaged)
	f, err := Open(t.Context(), path)
	require.NoError(t, err, "it has the version that it had")
	require.NoError(t, f.Close())
	noParts(t, filepath.Dir(path))
}

func TestStepsAreNumberedWithoutAGap(t *testing.T) {
	file := func(text string) *fstest.MapFile { return &fstest.MapFile{Data: []byte(text)} }
	got, err := steps(fstest.MapFS{"migrations/0001_a.sql": file("A"), "migrations/0002_b.sql": file("B")})
	require.NoError(t, err)
	assert.Equal(t, []step{{1, "A"}, {2, "B"}}, got)
	for _, name := range []string{"0003_c.sql", "0000_c.sql", "c.sql"} {
		_, err := steps(fstest.MapFS{"migrations/0001_a.sql": file("A"), "migrations/" + name: file("C")})
		assert.ErrorContains(t, err, "number", name)
	}
}
