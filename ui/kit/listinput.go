package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"windlass/ui/look"
)

// markWidth is the width of the boxes of a list that has marks.
const markWidth = 36

// gripWidth is the width in which the scroll bar can be taken.
const gripWidth = look.Gap3

// FocusGained implements fyne.Focusable.
func (l *DataList) FocusGained() {
	l.focused = true
	l.Refresh()
	call(l.OnFocus)
}

// FocusLost implements fyne.Focusable.
func (l *DataList) FocusLost() {
	l.focused = false
	l.Refresh()
}

// TypedRune implements fyne.Focusable. The space bar marks with its character, as
// [HearKeys] does.
func (l *DataList) TypedRune(r rune) {
	switch {
	case r == ' ' && l.Marked != nil:
		l.mark(l.cursor, false)
	case l.OnRune != nil && l.OnRune(r):
	default:
		PassRune(l, r)
	}
}

// TypedKey implements fyne.Focusable.
func (l *DataList) TypedKey(key *fyne.KeyEvent) {
	if l.OnKey != nil && l.OnKey(key) {
		return
	}
	to, moves := l.target(key.Name)
	switch {
	case moves && modifiers()&fyne.KeyModifierShift != 0 && l.Marked != nil:
		l.move(to)
		l.mark(l.cursor, true)
	case moves:
		l.move(to)
		l.anchor = l.cursor
	case key.Name == fyne.KeyReturn || key.Name == fyne.KeyEnter:
		l.open()
	case key.Name == fyne.KeySpace && l.Marked != nil: // see TypedRune
	default:
		PassKey(l, key)
	}
}

// target is the row that a key moves the cursor to.
func (l *DataList) target(key fyne.KeyName) (row int, moves bool) {
	switch key {
	case fyne.KeyDown:
		return l.cursor + 1, true
	case fyne.KeyUp:
		return l.cursor - 1, true
	case fyne.KeyPageDown:
		return l.cursor + l.inSight() - 1, true
	case fyne.KeyPageUp:
		return l.cursor - l.inSight() + 1, true
	case fyne.KeyHome:
		return 0, true
	case fyne.KeyEnd:
		return l.rows.Len() - 1, true
	}
	return 0, false
}

// TypedShortcut implements fyne.Shortcutable.
func (l *DataList) TypedShortcut(s fyne.Shortcut) {
	if _, all := s.(*fyne.ShortcutSelectAll); all && l.Marked != nil {
		l.markAll()
		return
	}
	PassShortcut(l, s)
}

// MouseDown implements desktop.Mouseable. A row is chosen at the press, not at
// the release: a list that also opens by a double click would else wait for it.
func (l *DataList) MouseDown(e *desktop.MouseEvent) {
	Focus(l)
	switch row := l.rowAt(e.Position); {
	case l.onBar(e.Position):
		l.grip = true
		l.scrollTo(e.Position.Y)
	case e.Position.Y < headHeight:
		l.sort(l.columnAt(e.Position.X))
	case row < 0:
	case l.Marked != nil && e.Position.X < markWidth:
		l.mark(row, e.Modifier&fyne.KeyModifierShift != 0)
	case l.Marked != nil && e.Modifier&(fyne.KeyModifierShift|fyne.KeyModifierShortcutDefault) != 0:
		l.mark(row, e.Modifier&fyne.KeyModifierShift != 0)
	default:
		l.anchor = row
		l.move(row)
	}
}

// MouseUp implements desktop.Mouseable.
func (l *DataList) MouseUp(*desktop.MouseEvent) { l.grip = false }

// DoubleTapped implements fyne.DoubleTappable.
func (l *DataList) DoubleTapped(e *fyne.PointEvent) {
	if row := l.rowAt(e.Position); row >= 0 && row == l.cursor && !l.onBar(e.Position) {
		l.open()
	}
}

// Dragged implements fyne.Draggable, for the scroll bar.
func (l *DataList) Dragged(e *fyne.DragEvent) {
	if l.grip {
		l.scrollTo(e.Position.Y)
	}
}

// DragEnd implements fyne.Draggable.
func (l *DataList) DragEnd() { l.grip = false }

// Scrolled implements fyne.Scrollable: whole rows, the rest kept for the next
// turn of the wheel.
func (l *DataList) Scrolled(e *fyne.ScrollEvent) {
	l.rest -= e.Scrolled.DY / look.RowHeight
	by := int(l.rest)
	l.rest -= float32(by)
	if by != 0 {
		l.top += by
		l.Refresh()
	}
}

// scrollTo brings the bar's middle to a height.
func (l *DataList) scrollTo(y float32) {
	hidden := l.rows.Len() - l.inSight()
	track := l.Size().Height - headHeight - l.thumb()
	if hidden <= 0 || track <= 0 {
		return
	}
	share := (y - headHeight - l.thumb()/2) / track
	l.top = int(share*float32(hidden) + 0.5)
	l.Refresh()
}

// thumb is the length of the scroll bar, and 0 when all rows are in sight.
func (l *DataList) thumb() float32 {
	if l.rows.Len() <= l.inSight() {
		return 0
	}
	track := l.Size().Height - headHeight
	return max(look.Gap6, track*float32(l.inSight())/float32(l.rows.Len()))
}

// MouseIn implements desktop.Hoverable.
func (l *DataList) MouseIn(e *desktop.MouseEvent) { l.MouseMoved(e) }

// MouseMoved implements desktop.Hoverable.
func (l *DataList) MouseMoved(e *desktop.MouseEvent) {
	title := -1
	if c := l.columnAt(e.Position.X); e.Position.Y < headHeight && c >= 0 && l.columns[c].Sorts {
		title = c
	}
	l.point(l.rowAt(e.Position), title)
}

// MouseOut implements desktop.Hoverable.
func (l *DataList) MouseOut() { l.point(-1, -1) }

func (l *DataList) point(row, title int) {
	if row != l.over || title != l.title {
		l.over, l.title = row, title
		l.Refresh()
	}
}

// rowAt is the row at a place, or −1.
func (l *DataList) rowAt(p fyne.Position) int {
	if p.Y < headHeight {
		return -1
	}
	i := int((p.Y - headHeight) / look.RowHeight)
	if row := l.top + i; i < l.inSight() && row < l.rows.Len() {
		return row
	}
	return -1
}

func (l *DataList) onBar(p fyne.Position) bool {
	return l.thumb() > 0 && p.Y >= headHeight && p.X >= l.Size().Width-gripWidth
}

// columnAt is the column at a place, or −1.
func (l *DataList) columnAt(x float32) int {
	x -= l.lead()
	for i, w := range l.widths {
		if x >= 0 && x < w {
			return i
		}
		x -= w
	}
	return -1
}

// lead is what stands before the first column.
func (l *DataList) lead() float32 {
	if l.Marked != nil {
		return markWidth
	}
	return look.Gap1
}
