package store

import (
	"os"
	"path/filepath"
	"runtime"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// asNobody lets the rest of the test touch files as a user without rights. Root
// may write everywhere; a thread of root may give that up for itself.
func asNobody(t *testing.T) {
	t.Helper()
	if os.Getuid() != 0 {
		return
	}
	runtime.LockOSThread()
	require.NoError(t, syscall.Setfsuid(65534))
	t.Cleanup(func() {
		require.NoError(t, syscall.Setfsuid(0))
		runtime.UnlockOSThread()
	})
}

// passable lets everybody into the test's own folder.
func passable(t *testing.T, path string) {
	t.Helper()
	require.NoError(t, os.Chmod(filepath.Dir(filepath.Dir(path)), 0o755))
}

func protect(t *testing.T, path string, mode os.FileMode) {
	t.Helper()
	require.NoError(t, os.Chmod(path, mode))
	t.Cleanup(func() { _ = os.Chmod(path, 0o755) })
}

func TestAFileThatCannotBeWritten(t *testing.T) {
	path := savedFile(t)
	want := loadPath(t, path)
	passable(t, path)
	protect(t, path, 0o444)
	protect(t, filepath.Dir(path), 0o555)
	asNobody(t)

	_, err := Open(t.Context(), path)
	require.ErrorIs(t, err, ErrReadOnly)
	_, err = Claim(path)
	require.ErrorIs(t, err, ErrReadOnly)
	_, err = Create(t.Context(), filepath.Join(filepath.Dir(path), "other"))
	require.ErrorIs(t, err, ErrReadOnly)
	_, err = Restore(t.Context(), path, filepath.Join(filepath.Dir(path), "other"))
	require.ErrorIs(t, err, ErrReadOnly)

	s, err := Verify(t.Context(), path) // a copy on a protected disk
	require.NoError(t, err)
	assert.True(t, s.OK)
	f, err := OpenReadOnly(t.Context(), path)
	require.NoError(t, err)
	assert.Equal(t, want, load(t, f))
	require.NoError(t, f.Close())
}

func TestAProtectedFileInAnOpenFolder(t *testing.T) {
	path := savedFile(t)
	passable(t, path)
	protect(t, path, 0o444)
	require.NoError(t, os.Chmod(filepath.Dir(path), 0o777))
	asNobody(t)
	_, err := Open(t.Context(), path)
	assert.ErrorIs(t, err, ErrReadOnly)
}

func TestAnOpenFileInAProtectedFolder(t *testing.T) {
	path := savedFile(t)
	passable(t, path)
	protect(t, path, 0o666)
	protect(t, filepath.Dir(path), 0o555)
	asNobody(t)
	_, err := Open(t.Context(), path)
	assert.ErrorIs(t, err, ErrReadOnly)
}

func TestAFileThatCannotBeRead(t *testing.T) {
	path := savedFile(t)
	passable(t, path)
	protect(t, path, 0o000)
	asNobody(t)
	_, err := Open(t.Context(), path)
	assert.ErrorIs(t, err, os.ErrPermission)
}
