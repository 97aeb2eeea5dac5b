package floor

import (
	"fyne.io/fyne/v2"

	"windlass/ui/kit"
	"windlass/ui/look"
)

// rowLines lays a lifter's row out. A high row has three lines: the name and the
// load; the plates and what comes next; what to change. A low one has two, with the
// plates in words. No figure is cut: a name may grow short, and what has no room is
// left out.
type rowLines struct{ row *lifterRow }

// Heights of a row's lines, and the least width of a picture of plates, in units.
const (
	pictureLine  = 18
	changeLine   = 15
	highRow      = 50
	leastPicture = 60
	mostPicture  = 216
)

// MinSize implements fyne.Layout.
func (rowLines) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(140, leastRow-look.Gap1) }

// Layout implements fyne.Layout.
func (l rowLines) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	r := l.row
	high := size.Height >= highRow
	show(r.load, high)
	show(r.small, !high)
	if !high {
		l.names(size.Width, 0, size.Height-pictureLine)
		l.words(size.Width, size.Height-pictureLine)
		return
	}
	top := size.Height - pictureLine - changeLine
	l.names(size.Width, 0, top)
	l.plates(size.Width, top)
	l.changes(size.Width, top+pictureLine)
}

// repsWidth has room for what most rows say of reps; loads stand below each other.
const repsWidth = 22

// names sets the first line from its far end: the reps, the load, the call, and the
// name in what is left.
func (l rowLines) names(width, y, height float32) {
	r := l.row
	right := width - max(repsWidth, r.reps.MinSize().Width)
	place(r.reps, right, y, width-right, height)
	load := r.load
	if !load.Visible() {
		load = r.small
	}
	right -= load.MinSize().Width + look.Gap1
	place(load, right, y, load.MinSize().Width, height)
	if r.call.Label() != "" {
		right -= r.call.MinSize().Width + look.Gap1
		place(r.call, right, y, r.call.MinSize().Width, height)
	}
	left := float32(0)
	if r.warning.Visible() {
		left = r.warning.MinSize().Width + look.Gap1
		place(r.warning, 0, y, r.warning.MinSize().Width, height)
	}
	place(r.name, left, y, max(0, right-look.Gap1-left), height)
}

// far sets what comes next, or the other load, at the far end of a line, and
// returns where the rest of the line ends.
func (l rowLines) far(width, y float32) float32 {
	right := width
	for _, t := range []fyne.CanvasObject{l.row.next, l.row.other} {
		w := t.MinSize().Width
		place(t, width-w, y, w, pictureLine)
		right = min(right, width-w)
	}
	return right
}

// plates draws the bar, or writes its plates where not every label can be read.
func (l rowLines) plates(width, y float32) {
	r := l.row
	room := l.far(width, y) - look.Gap2
	pictured := r.plates && r.picture.Needs(pictureLine) <= room
	show(r.picture, pictured)
	show(r.stack, r.plates && !pictured)
	place(r.picture, 0, y, min(room, mostPicture), pictureLine)
	place(r.stack, 0, y, room, pictureLine)
}

func (l rowLines) changes(width, y float32) {
	show(l.row.change, true)
	place(l.row.change, 0, y, width, changeLine)
}

// words writes plates and change in one line, the change only where it fits whole.
func (l rowLines) words(width, y float32) {
	r := l.row
	room := l.far(width, y) - look.Gap2
	show(r.picture, false)
	show(r.stack, r.plates)
	left := float32(0)
	if r.plates {
		left = captionWidth(r.stack) + look.Gap3
		place(r.stack, 0, y, room, pictureLine)
	}
	show(r.change, left+captionWidth(r.change) <= room)
	place(r.change, left, y, max(0, room-left), pictureLine)
}

// captionWidth is what a whole caption needs.
func captionWidth(t *kit.Text) float32 {
	return fyne.MeasureText(t.Label(), look.CaptionSize, fyne.TextStyle{}).Width
}

// place puts an object into the middle of a line's height.
func place(o fyne.CanvasObject, x, y, width, height float32) {
	tall := o.MinSize().Height
	o.Move(fyne.NewPos(x, y+(height-tall)/2))
	o.Resize(fyne.NewSize(width, tall))
}
