package ui_test

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
	"windlass/internal/store"
	"windlass/ui"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// BenchmarkFirstFrame is a cold start on the demo gym without the time that the
// system takes for a window: the file is opened and read, every room is made, and
// the first picture is drawn.
func BenchmarkFirstFrame(b *testing.B) {
	ctx := context.Background()
	path := filepath.Join(b.TempDir(), "gym.windlass")
	book, err := demo.Book(1, day.From(uitest.Morning))
	require.NoError(b, err)
	file, err := store.Create(ctx, path)
	require.NoError(b, err)
	require.NoError(b, file.Write(ctx, book.Changes()...))
	require.NoError(b, file.Close())
	in := uitest.OpenAs(b, look.Dark(), ui.Size, kit.NewBody(""))
	for b.Loop() {
		file, err := store.Open(ctx, path)
		require.NoError(b, err)
		d, err := desk.Open(ctx, file, func() time.Time { return uitest.Morning }, rand.NewChaCha8([32]byte{}))
		require.NoError(b, err)
		ui.NewWindow(in, d, ui.Options{})
		in.Canvas().Capture()
		require.NoError(b, file.Close())
	}
}
