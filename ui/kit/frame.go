package kit

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
)

// frame is an outline of four bars, all within its bounds: an outlined rectangle
// reaches a little beyond them and would be cut off at the edge of a list.
type frame struct{ top, bottom, left, right *canvas.Rectangle }

func newFrame() *frame { return &frame{box(0), box(0), box(0), box(0)} }

func (f *frame) objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{f.top, f.bottom, f.left, f.right}
}

func (f *frame) put(x, y float32, size fyne.Size, thick float32) {
	put(f.top, x, y, size.Width, thick)
	put(f.bottom, x, y+size.Height-thick, size.Width, thick)
	put(f.left, x, y+thick, thick, size.Height-2*thick)
	put(f.right, x+size.Width-thick, y+thick, thick, size.Height-2*thick)
}

func (f *frame) paint(c color.NRGBA, there bool) {
	for _, r := range []*canvas.Rectangle{f.top, f.bottom, f.left, f.right} {
		fill(r, c)
		shown(r, there)
	}
}
