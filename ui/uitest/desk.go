package uitest

import (
	"context"
	"math/rand/v2"
	"path/filepath"
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

// DemoDesk is a desk on the demo gym in a real file, with a clock that the test
// moves through the pointer.
func DemoDesk(t testing.TB) (*desk.Desk, *time.Time) {
	t.Helper()
	now := Morning
	book, err := demo.Book(1, day.From(now))
	require.NoError(t, err)
	return DeskOn(t, book, &now), &now
}

// DeskOn is a desk on a real file that says what a book says.
func DeskOn(t testing.TB, book gym.Book, now *time.Time) *desk.Desk {
	t.Helper()
	ctx := context.Background()
	file, err := store.Create(ctx, filepath.Join(t.TempDir(), "gym.windlass"))
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, file.Close()) })
	require.NoError(t, file.Write(ctx, book.Changes()...))
	d, err := desk.Open(ctx, file, func() time.Time { return *now }, rand.NewChaCha8([32]byte{1}))
	require.NoError(t, err)
	return d
}
