package roster

import (
	"fyne.io/fyne/v2"

	"windlass/ui/look"
	"windlass/ui/record"
)

// beside is the layout of table and record: the record gets two fifths of a large
// room, within what it has use for.
type beside struct{}

// MinSize implements fyne.Layout.
func (beside) MinSize(objects []fyne.CanvasObject) fyne.Size {
	left, right := objects[0].MinSize(), objects[1].MinSize()
	return fyne.NewSize(left.Width+look.Gap6+max(record.Width, right.Width), max(left.Height, right.Height))
}

// Layout implements fyne.Layout.
func (beside) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	width := min(max(record.Width, size.Width*0.4), record.Most)
	left := size.Width - look.Gap6 - width
	objects[0].Move(fyne.NewPos(0, 0))
	objects[0].Resize(fyne.NewSize(left, size.Height))
	objects[1].Move(fyne.NewPos(left+look.Gap6, 0))
	objects[1].Resize(fyne.NewSize(width, size.Height))
}
