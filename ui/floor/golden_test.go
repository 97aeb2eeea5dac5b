package floor_test

import (
	"image"
	"image/draw"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// Nothing is cut off or written over its edge, at any step of a full class.
func TestNothingOverflowsWithThirty(t *testing.T) {
	h := newHall(t, look.Dark())
	c := h.thirty()
	h.room.Show(c.ID)
	fits := func(step string) {
		t.Helper()
		assert.Empty(t, uitest.Overflows(h.window), step)
	}
	fits("set-up")
	require.NoError(t, h.StartWith(c.ID, h.Book().Athletes[4].ID, gym.Effort{Load: 40 * mass.Kilogram}))
	h.press(fyne.KeyF5)
	fits("the first rung")
	h.until(13 * time.Minute)
	fits("a top rung, calls open")
	h.press(fyne.KeyC, fyne.KeyS, fyne.KeyM)
	h.until(15 * time.Minute)
	fits("late calls")
	h.press(fyne.KeyR)
	fits("results")
	h.press(fyne.KeyK, fyne.KeySpace)
	h.wait(30 * time.Second)
	fits("conditioning")
	h.press(fyne.KeyQ)
	fits("summary")
}

// Two stations with their lifters, in the middle of the calls.
func TestStationsGolden(t *testing.T) {
	h := newHall(t, look.Dark())
	c := h.thirty()
	h.room.Show(c.ID)
	require.NoError(t, h.StartWith(c.ID, h.Book().Athletes[4].ID, gym.Effort{Load: 40 * mass.Kilogram}))
	h.press(fyne.KeyF5)
	h.until(13 * time.Minute)
	h.press(fyne.KeyC, fyne.KeyS, fyne.KeyM)
	part := *h.window
	part.Window = cropped{h.window.Window, image.Rect(12, 206, 314, 484)}
	uitest.Golden(t, &part, "station")
}

// cropped is a window of which only a part is pictured.
type cropped struct {
	fyne.Window
	part image.Rectangle
}

func (c cropped) Canvas() fyne.Canvas { return croppedCanvas{c.Window.Canvas(), c.part} }

type croppedCanvas struct {
	fyne.Canvas
	part image.Rectangle
}

func (c croppedCanvas) Capture() image.Image {
	picture := image.NewRGBA(image.Rectangle{Max: c.part.Size()})
	draw.Draw(picture, picture.Bounds(), c.Canvas.Capture(), c.part.Min, draw.Src)
	return picture
}
