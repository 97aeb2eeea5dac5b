package uitest

import (
	"context"
	"errors"
	"math/rand/v2"
	"os"
	"path/filepath"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/demo"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/store"
)

// Morning is a Monday of the demo gym's sixth week, before its first class.
var Morning = time.Date(2026, 5, 18, 5, 40, 0, 0, time.UTC)

// demoFile is the file of the demo gym on that morning. It is made once: most of a
// room's tests begin with it.
var demoFile = sync.OnceValues(func() ([]byte, error) {
	book, err := demo.Book(1, day.From(Morning))
	if err != nil {
		return nil, err
	}
	return FileOf(book)
})

// FileOf is the file of a gym that says what a book says, for tests that begin with
// it more than once.
func FileOf(book gym.Book) (file []byte, err error) {
	dir, err := os.MkdirTemp("", "gym")
	if err != nil {
		return nil, err
	}
	defer func() { err = errors.Join(err, os.RemoveAll(dir)) }()
	path := filepath.Join(dir, fileName)
	made, err := store.Create(context.Background(), path)
	if err != nil {
		return nil, err
	}
	if err := errors.Join(made.Write(context.Background(), book.Changes()...), made.Close()); err != nil {
		return nil, err
	}
	return os.ReadFile(path)
}

const fileName = "gym.windlass"

// DemoDesk is a desk on the demo gym in a real file, with a clock that the test
// moves through the pointer.
func DemoDesk(t testing.TB) (*desk.Desk, *time.Time) {
	t.Helper()
	now, path := Morning, filepath.Join(t.TempDir(), fileName)
	made, err := demoFile()
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(path, made, 0o600))
	file, err := store.Open(context.Background(), path)
	require.NoError(t, err)
	return deskOf(t, file, &now), &now
}

// DeskOn is a desk on a real file that says what a book says.
func DeskOn(t testing.TB, book gym.Book, now *time.Time) *desk.Desk {
	t.Helper()
	file, err := store.Create(context.Background(), filepath.Join(t.TempDir(), fileName))
	require.NoError(t, err)
	require.NoError(t, file.Write(context.Background(), book.Changes()...))
	return deskOf(t, file, now)
}

func deskOf(t testing.TB, file *store.File, now *time.Time) *desk.Desk {
	t.Helper()
	t.Cleanup(func() { require.NoError(t, file.Close()) })
	d, err := desk.Open(context.Background(), file, func() time.Time { return *now }, rand.NewChaCha8([32]byte{1}))
	require.NoError(t, err)
	return d
}
