package uitest

import (
	"flag"
	"fmt"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write golden pictures anew")

// What two pictures of the same thing may differ by: rounding differs a little
// between processors.
const (
	channelTolerance = 8
	pixelTolerance   = 0.001
)

// Golden compares the window with testdata/NAME.png beside the test. With
// -update it writes the picture instead.
func Golden(t testing.TB, w *Window, name string) {
	t.Helper()
	w.settle()
	path := filepath.Join("testdata", name+".png")
	if *update {
		require.NoError(t, save(path, w.Canvas().Capture()))
		return
	}
	want, err := load(path)
	require.NoError(t, err, "run the test with -update and look at the picture")
	got := w.Canvas().Capture()
	if err := compare(want, got); err != nil {
		seen := filepath.Join(os.TempDir(), "failed-"+name+".png")
		require.NoError(t, save(seen, got))
		require.NoError(t, err, "the window's picture is in %s", seen)
	}
}

// Snapshot writes a picture of the window to a file, for a person to look at.
func Snapshot(t testing.TB, w *Window, path string) {
	t.Helper()
	w.settle()
	require.NoError(t, save(path, w.Canvas().Capture()))
}

func save(path string, img image.Image) error {
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		return fmt.Errorf("save picture: %w", err)
	}
	f, err := os.Create(path)
	if err != nil {
		return fmt.Errorf("save picture: %w", err)
	}
	enc := png.Encoder{CompressionLevel: png.BestCompression}
	if err := enc.Encode(f, img); err != nil {
		_ = f.Close() // the picture is lost either way
		return fmt.Errorf("save picture %s: %w", path, err)
	}
	return f.Close()
}

func load(path string) (image.Image, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, fmt.Errorf("load picture: %w", err)
	}
	defer f.Close()
	img, err := png.Decode(f)
	if err != nil {
		return nil, fmt.Errorf("load picture %s: %w", path, err)
	}
	return img, nil
}

// compare tells how two pictures differ by more than the tolerance.
func compare(want, got image.Image) error {
	if want.Bounds() != got.Bounds() {
		return fmt.Errorf("compare pictures: size %v, want %v", got.Bounds().Max, want.Bounds().Max)
	}
	b, differ := want.Bounds(), 0
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			if !alike(want, got, x, y) {
				differ++
			}
		}
	}
	if all := b.Dx() * b.Dy(); float64(differ) > pixelTolerance*float64(all) {
		return fmt.Errorf("compare pictures: %d of %d pixels differ", differ, all)
	}
	return nil
}

func alike(a, b image.Image, x, y int) bool {
	ar, ag, ab, aa := a.At(x, y).RGBA()
	br, bg, bb, ba := b.At(x, y).RGBA()
	near := func(p, q uint32) bool { return max(p, q)-min(p, q) <= channelTolerance*0x101 }
	return near(ar, br) && near(ag, bg) && near(ab, bb) && near(aa, ba)
}
