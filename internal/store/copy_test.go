package store

import (
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
)

func TestBackupAndRestore(t *testing.T) {
	f := newFile(t)
	want := load(t, f)
	to := filepath.Join(t.TempDir(), "copy")
	s, err := f.Backup(t.Context(), to)
	require.NoError(t, err)
	o, err := usual()
	require.NoError(t, err)
	assert.Equal(t, Summary{Path: to, Version: o.latest(), Athletes: 2, Results: 1, Bouts: 1, OK: true}, s)
	_, err = f.Backup(t.Context(), to)
	require.ErrorIs(t, err, ErrExists)

	require.NoError(t, f.Write(t.Context(), gym.PutAthlete{Athlete: athlete("cleo", "Cleo Cedar")}))
	later := load(t, f)
	_, err = Restore(t.Context(), to, f.Path())
	require.ErrorIs(t, err, ErrLocked, "the desk has it open")
	require.NoError(t, f.Close())

	kept, err := Restore(t.Context(), to, f.Path())
	require.NoError(t, err)
	assert.Equal(t, want, loadPath(t, f.Path()))
	assert.Equal(t, later, loadPath(t, kept), "the replaced file is whole")
	assert.Equal(t, want, loadPath(t, to), "the copy stays")
	noParts(t, filepath.Dir(to), filepath.Dir(f.Path()))
}

// A copy has no log, so that only a lock can say that somebody is writing it.
func TestRestoreOverALockedFileWithoutALog(t *testing.T) {
	f := newFile(t)
	path := filepath.Join(t.TempDir(), "copy")
	_, err := f.Backup(t.Context(), path)
	require.NoError(t, err)
	o, err := usual()
	require.NoError(t, err)
	o.patience = time.Millisecond
	require.NoError(t, settle(t.Context(), path, o))

	other, err := connect(path, 1, o.building())
	require.NoError(t, err)
	defer other.Close()
	tx, err := other.BeginTx(t.Context(), nil)
	require.NoError(t, err)
	require.ErrorIs(t, settle(t.Context(), path, o), ErrLocked)
	require.NoError(t, tx.Rollback())
	assert.NoError(t, settle(t.Context(), path, o))
}

func TestRestoreIntoNothing(t *testing.T) {
	from, to := savedFile(t), filepath.Join(t.TempDir(), "gym.windlass")
	kept, err := Restore(t.Context(), from, to)
	require.NoError(t, err)
	assert.Empty(t, kept)
	assert.Equal(t, loadPath(t, from), loadPath(t, to))
}

// What a killed program left in its log belongs to the copy.
func TestRestoreFromACopyWithALog(t *testing.T) {
	f := newFile(t)
	want := load(t, f)
	from := filepath.Join(t.TempDir(), "copy")
	for _, tail := range []string{"", "-wal"} {
		copyFile(t, f.Path()+tail, from+tail)
	}
	to := filepath.Join(t.TempDir(), "gym.windlass")
	_, err := Restore(t.Context(), from, to)
	require.NoError(t, err)
	assert.Equal(t, want, loadPath(t, to))
}

// The usual reason to restore is that the file is damaged: it is kept as it is.
func TestRestoreOverADamagedFile(t *testing.T) {
	from := savedFile(t)
	path := fileWith(t, []byte("not a database at all"))
	require.NoError(t, os.WriteFile(path+"-wal", []byte("nor a log"), 0o600))
	kept, err := Restore(t.Context(), from, path)
	require.NoError(t, err)
	assert.Equal(t, loadPath(t, from), loadPath(t, path))
	for name, want := range map[string]string{kept: "not a database at all", kept + "-wal": "nor a log"} {
		got, err := os.ReadFile(name)
		require.NoError(t, err)
		assert.Equal(t, want, string(got))
	}
	again, err := Restore(t.Context(), from, path)
	require.NoError(t, err)
	assert.NotEqual(t, kept, again, "what was kept is kept")
}

func TestRestoreRefuses(t *testing.T) {
	path := savedFile(t)
	want := loadPath(t, path)
	_, err := Restore(t.Context(), path, path)
	require.ErrorIs(t, err, ErrExists)
	_, err = Restore(t.Context(), fileWith(t, []byte("a text")), path)
	require.ErrorIs(t, err, ErrForeign)
	assert.Equal(t, want, loadPath(t, path))
	noParts(t, filepath.Dir(path))
}

// The log of a file that is gone would be played into a new one of its name.
func TestALogLeftBehindIsInUse(t *testing.T) {
	from := savedFile(t)
	path := filepath.Join(t.TempDir(), "gym.windlass")
	require.NoError(t, os.WriteFile(path+"-wal", []byte("a log"), 0o600))
	_, err := Create(t.Context(), path)
	require.ErrorIs(t, err, ErrExists)
	assert.ErrorContains(t, err, path+"-wal")
	_, err = Restore(t.Context(), from, path)
	require.ErrorIs(t, err, ErrExists)
	assert.NoFileExists(t, path)
	noParts(t, filepath.Dir(path))
}

// A restore that fails in the middle takes its steps back.
func TestUndoing(t *testing.T) {
	folder := t.TempDir()
	one, two := filepath.Join(folder, "one"), filepath.Join(folder, "two")
	require.NoError(t, os.WriteFile(one, []byte("1"), 0o600))
	var undo undoing
	require.NoError(t, undo.rename(one, two))
	require.Error(t, undo.rename(one, two), "there is nothing left to rename")
	require.NoError(t, undo.back())
	assert.FileExists(t, one)
	assert.NoFileExists(t, two)
}

func loadPath(t *testing.T, path string) gym.Book {
	t.Helper()
	f, err := Open(t.Context(), path)
	require.NoError(t, err)
	defer func() { require.NoError(t, f.Close()) }()
	return load(t, f)
}

// noParts makes sure that no half-made file is left.
func noParts(t *testing.T, folders ...string) {
	t.Helper()
	for _, folder := range folders {
		parts, err := filepath.Glob(filepath.Join(folder, "*.part*"))
		require.NoError(t, err)
		assert.Empty(t, parts)
	}
}
