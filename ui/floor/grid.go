package floor

import (
	"fyne.io/fyne/v2"

	"windlass/ui/look"
)

// gridLayout sets cards in one row up to four, and else in two.
type gridLayout struct{}

func (gridLayout) shape(n int) (columns, rows int) {
	if n <= 4 {
		return max(n, 1), 1
	}
	return (n + 1) / 2, 2
}

// MinSize implements fyne.Layout.
func (g gridLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	columns, rows := g.shape(len(objects))
	return fyne.NewSize(float32(columns)*160, float32(rows)*120)
}

// Layout implements fyne.Layout.
func (g gridLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	columns, rows := g.shape(len(objects))
	width := (size.Width - look.Gap3*float32(columns-1)) / float32(columns)
	height := (size.Height - look.Gap3*float32(rows-1)) / float32(rows)
	if rows == 1 {
		height = min(height, 8*rowHeight)
	}
	for i, o := range objects {
		o.Move(fyne.NewPos(float32(i%columns)*(width+look.Gap3), float32(i/columns)*(height+look.Gap3)))
		o.Resize(fyne.NewSize(width, height))
	}
}
