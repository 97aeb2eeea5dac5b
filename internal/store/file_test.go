package store

import (
	"bytes"
	"context"
	"database/sql"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
)

func TestCreateAndOpen(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a gym, 100 % #1?.windlass")
	f, err := Create(t.Context(), path)
	require.NoError(t, err)
	assert.Equal(t, gym.Book{Settings: gym.DefaultSettings()}, load(t, f))
	require.NoError(t, f.Write(t.Context(), smallGym()...))
	want := load(t, f)
	require.NoError(t, f.Close())

	again, err := Open(t.Context(), path)
	require.NoError(t, err)
	assert.Equal(t, want, load(t, again))
	require.NoError(t, again.Close())
	entries, err := os.ReadDir(filepath.Dir(path))
	require.NoError(t, err)
	assert.Len(t, entries, 1, "a closed file stands alone")
}

func TestCreateRefusesWhatIsThere(t *testing.T) {
	path := filepath.Join(t.TempDir(), "notes.txt")
	require.NoError(t, os.WriteFile(path, []byte("mine"), 0o600))
	_, err := Create(t.Context(), path)
	require.ErrorIs(t, err, ErrExists)
	got, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.Equal(t, "mine", string(got))

	_, err = Create(t.Context(), filepath.Join(t.TempDir(), "no folder", "gym"))
	assert.ErrorIs(t, err, fs.ErrNotExist)
}

func TestOpenNamesTheFault(t *testing.T) {
	other := filepath.Join(t.TempDir(), "other.db")
	db, err := sql.Open("sqlite", other)
	require.NoError(t, err)
	_, err = db.ExecContext(t.Context(), "CREATE TABLE shopping (item TEXT)")
	require.NoError(t, err)
	require.NoError(t, db.Close())

	for _, c := range []struct {
		name string
		path string
		want error
	}{
		{"nothing there", filepath.Join(t.TempDir(), "gone"), fs.ErrNotExist},
		{"a folder", t.TempDir(), ErrForeign},
		{"an empty file", fileWith(t, nil), ErrForeign},
		{"a text", fileWith(t, []byte("Name;Back squat\n")), ErrForeign},
		{"the beginning of one", fileWith(t, []byte(magic)), ErrDamaged},
		{"another program's database", other, ErrForeign},
		{"a newer version", withSQL(t, "PRAGMA user_version = 999"), ErrNewer},
		{"a version that never was", withSQL(t, "PRAGMA user_version = 0"), ErrDamaged},
	} {
		t.Run(c.name, func(t *testing.T) {
			before, _ := os.ReadFile(c.path) // nothing, where nothing can be read
			for verb, open := range map[string]func(context.Context, string) error{
				"open": openAndClose, "look": lookAndClose,
				"verify": func(ctx context.Context, path string) error { _, err := Verify(ctx, path); return err },
			} {
				err := open(t.Context(), c.path)
				require.ErrorIs(t, err, c.want, verb)
				assert.ErrorContains(t, err, c.path)
				after, _ := os.ReadFile(c.path)
				assert.True(t, bytes.Equal(before, after), "%s leaves a file that is not for it as it is", verb)
			}
		})
	}
}

func openAndClose(ctx context.Context, path string) error {
	f, err := Open(ctx, path)
	if err != nil {
		return err
	}
	return f.Close()
}

func lookAndClose(ctx context.Context, path string) error {
	f, err := OpenReadOnly(ctx, path)
	if err != nil {
		return err
	}
	return f.Close()
}

func fileWith(t *testing.T, bytes []byte) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "file")
	require.NoError(t, os.WriteFile(path, bytes, 0o600))
	return path
}

// withSQL is a small gym after another program has run a query on it.
func withSQL(t *testing.T, query string) string {
	t.Helper()
	path := savedFile(t)
	runSQL(t, path, query)
	return path
}

func runSQL(t *testing.T, path, query string) {
	t.Helper()
	db, err := sql.Open("sqlite", path)
	require.NoError(t, err)
	_, err = db.ExecContext(t.Context(), query)
	require.NoError(t, errors.Join(err, db.Close()))
}

func TestReadOnlyWritesNothing(t *testing.T) {
	f := newFile(t)
	wall, err := OpenReadOnly(t.Context(), f.Path())
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, wall.Close()) })
	assert.ErrorIs(t, wall.Write(t.Context(), gym.DropClosure{ID: "closure"}), ErrReadOnly)
	assert.Equal(t, load(t, f), load(t, wall))
}

func TestDataVersionTellsOfOthers(t *testing.T) {
	f := newFile(t)
	wall, err := OpenReadOnly(t.Context(), f.Path())
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, wall.Close()) })
	version := func() int64 {
		v, err := wall.DataVersion(t.Context())
		require.NoError(t, err)
		return v
	}
	first := version()
	assert.Equal(t, first, version(), "nothing has happened")
	_ = load(t, wall)
	assert.Equal(t, first, version(), "reading is no change")
	require.NoError(t, f.Write(t.Context(), gym.DropClosure{ID: "closure"}))
	assert.NotEqual(t, first, version())
}

func TestLockedFile(t *testing.T) {
	path := savedFile(t)
	o, err := usual()
	require.NoError(t, err)
	o.patience = time.Millisecond
	f, err := open(t.Context(), path, o)
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, f.Close()) })

	other, err := Open(t.Context(), path)
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, other.Close()) })
	tx, err := other.write.BeginTx(t.Context(), nil) // holds the lock for writing
	require.NoError(t, err)
	before := load(t, f)
	err = f.Write(t.Context(), gym.DropClosure{ID: "closure"})
	require.ErrorIs(t, err, ErrLocked)
	require.NoError(t, tx.Rollback())
	assert.Equal(t, before, load(t, f))
	assert.NoError(t, f.Write(t.Context(), gym.DropClosure{ID: "closure"}))
}

func TestCancelledWriteChangesNothing(t *testing.T) {
	f := newFile(t)
	before := load(t, f)
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	require.ErrorIs(t, f.Write(ctx, gym.DropClosure{ID: "closure"}), context.Canceled)
	assert.Equal(t, before, load(t, f))
	_, err := f.Load(ctx)
	assert.ErrorIs(t, err, context.Canceled)
}

func TestEveryConnectionHasThePragmas(t *testing.T) {
	f := newFile(t)
	for _, c := range []struct {
		db     *sql.DB
		pragma string
		want   string
	}{
		{f.write, "journal_mode", "wal"},
		{f.write, "synchronous", "2"}, // FULL
		{f.write, "foreign_keys", "1"},
		{f.write, "busy_timeout", "5000"},
		{f.read, "query_only", "1"},
		{f.read, "busy_timeout", "5000"},
	} {
		var conns []*sql.Conn
		for range c.db.Stats().MaxOpenConnections {
			conn, err := c.db.Conn(t.Context())
			require.NoError(t, err)
			conns = append(conns, conn)
			var got string
			require.NoError(t, conn.QueryRowContext(t.Context(), "PRAGMA "+c.pragma).Scan(&got))
			assert.Equal(t, c.want, got, c.pragma)
		}
		for _, conn := range conns {
			require.NoError(t, conn.Close())
		}
	}
}
