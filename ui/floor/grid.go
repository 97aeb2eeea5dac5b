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
		height = min(height, usualPlaces*mostRow+look.Gap6*2)
	}
	for i, o := range objects {
		o.Move(fyne.NewPos(float32(i%columns)*(width+look.Gap3), float32(i/columns)*(height+look.Gap3)))
		o.Resize(fyne.NewSize(width, height))
	}
}

// A lifter's row is as high as the card has room for, within these bounds.
const (
	usualPlaces = 4
	leastRow    = 36
	mostRow     = 76
)

// rowsLayout shares the height of a card among the lifters of a station.
type rowsLayout struct{}

// MinSize implements fyne.Layout.
func (rowsLayout) MinSize(rows []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(120, float32(len(rows)*leastRow))
}

// Layout implements fyne.Layout.
func (rowsLayout) Layout(rows []fyne.CanvasObject, size fyne.Size) {
	height := min(mostRow, size.Height/float32(max(1, len(rows))))
	for i, r := range rows {
		r.Move(fyne.NewPos(0, float32(i)*height))
		r.Resize(fyne.NewSize(size.Width, height))
	}
}
