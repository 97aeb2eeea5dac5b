package kit

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"windlass/ui/look"
)

// ListColumn is one column of a [DataList].
type ListColumn struct {
	Title string
	Width float32 // the least width in units
	Grow  float32 // its share of the width that is left; 0 stays at its least
	End   bool    // set to the far end, for numbers
	Sorts bool    // a tap on the title sorts
}

// Cell is what stands in one column of one row. A text that is too long is cut
// with an ellipsis.
type Cell struct {
	Text  string
	Or    string // said instead where the text has no room; empty cuts the text
	Bold  bool
	Tone  look.Meaning // of the text; the zero value is look.Text
	Shape Shape        // before the text
	Mark  look.Meaning // of the shape; the zero value is look.Muted
	Void  bool         // the text is struck out
}

// Rows is where a list gets its rows. Only those in sight are asked for.
type Rows struct {
	Len  func() int
	Cell func(row, column int) Cell
}

// DataList is a table of any length with a header. One row has the cursor; it is
// moved with the arrows, Page Up, Page Down, Home and End, and opened with Return
// or a double click. The list scrolls by whole rows and keeps nothing of its
// rows: call Refresh when they changed.
type DataList struct {
	widget.BaseWidget

	// OnFocus hears that the list got the keyboard.
	OnFocus func()
	// OnCursor hears that the coach moved the cursor to a row.
	OnCursor func(row int)
	// OnOpen hears Return and a double click.
	OnOpen func(row int)
	// OnSort hears a tap on a title that sorts; down is largest first.
	OnSort func(column int, down bool)
	// OnRune is offered what is typed, for finding by the first letters.
	OnRune func(r rune) (used bool)
	// OnKey is offered every key before the list is.
	OnKey func(key *fyne.KeyEvent) (used bool)
	// Marked tells which rows are marked; nil is a list without marks.
	Marked func(row int) bool
	// OnMark hears which rows the coach marked or unmarked.
	OnMark func(rows []int, on bool)
	// Empty is said in the middle while there are no rows.
	Empty string

	columns []ListColumn
	rows    Rows
	cursor  int
	anchor  int // where a marked range began
	top     int
	over    int // the row under the pointer, or −1
	title   int // the title under the pointer, or −1
	rest    float32
	grip    bool // the scroll bar is being dragged
	focused bool
	sorted  int
	down    bool
	widths  []float32
	face    *listFace
}

// headHeight is the height of the titles.
const headHeight = look.RowHeight

// NewDataList returns a list of rows under titles.
func NewDataList(columns []ListColumn, rows Rows) *DataList {
	l := &DataList{columns: columns, rows: rows, over: -1, title: -1, sorted: -1}
	l.ExtendBaseWidget(l)
	return l
}

// Cursor returns the row that has the cursor, and −1 in an empty list.
func (l *DataList) Cursor() int { return min(l.cursor, l.rows.Len()-1) }

// Select moves the cursor without telling anybody, and shows the row.
func (l *DataList) Select(row int) {
	l.cursor = max(0, min(row, l.rows.Len()-1))
	l.anchor = l.cursor
	l.reveal()
	l.Refresh()
}

// Sorted shows that the rows stand sorted by a column; −1 is none.
func (l *DataList) Sorted(column int, down bool) {
	l.sorted, l.down = column, down
	l.Refresh()
}

// Focus gives the list the keyboard.
func (l *DataList) Focus() { Focus(l) }

// Refresh reads the rows in sight again.
func (l *DataList) Refresh() {
	l.cursor = max(0, min(l.cursor, l.rows.Len()-1))
	l.top = max(0, min(l.top, l.rows.Len()-l.inSight()))
	l.BaseWidget.Refresh()
}

// Resize implements fyne.CanvasObject. A row in sight that has the cursor stays in
// sight when something beside the list takes of its room.
func (l *DataList) Resize(size fyne.Size) {
	if seen := l.cursor >= l.top && l.cursor < l.top+l.inSight(); seen {
		l.top = max(l.top, l.cursor-rowsIn(size.Height)+1, 0)
	}
	l.BaseWidget.Resize(size)
}

// inSight is how many whole rows there is room for.
func (l *DataList) inSight() int { return rowsIn(l.Size().Height) }

// rowsIn is how many whole rows a list of a height shows, at least one.
func rowsIn(height float32) int { return max(1, int((height-headHeight)/look.RowHeight)) }

// reveal scrolls as little as brings the cursor into sight.
func (l *DataList) reveal() {
	l.top = max(min(l.top, l.cursor), l.cursor-l.inSight()+1, 0)
}

// move gives the cursor to a row, as a coach does.
func (l *DataList) move(row int) {
	row = max(0, min(row, l.rows.Len()-1))
	if l.rows.Len() == 0 || row == l.cursor {
		l.reveal()
		l.Refresh()
		return
	}
	l.cursor = row
	l.reveal()
	l.Refresh()
	if l.OnCursor != nil {
		l.OnCursor(row)
	}
}

func (l *DataList) open() {
	if l.OnOpen != nil && l.rows.Len() > 0 {
		l.OnOpen(l.cursor)
	}
}

// mark marks or unmarks everything between the anchor and a row, as the row
// itself changes; the row becomes the anchor.
func (l *DataList) mark(row int, fromAnchor bool) {
	if l.Marked == nil || l.OnMark == nil || row < 0 || row >= l.rows.Len() {
		return
	}
	from, to := row, row
	if fromAnchor {
		from, to = min(l.anchor, row), max(l.anchor, row)
	}
	var rows []int
	for i := from; i <= to; i++ {
		rows = append(rows, i)
	}
	on := !l.Marked(row)
	l.anchor = row
	l.OnMark(rows, on)
	l.Refresh()
}

// markAll marks every row, or unmarks them when all are marked.
func (l *DataList) markAll() {
	if l.Marked == nil || l.OnMark == nil || l.rows.Len() == 0 {
		return
	}
	all, on := make([]int, l.rows.Len()), false
	for i := range all {
		all[i] = i
		on = on || !l.Marked(i)
	}
	l.OnMark(all, on)
	l.Refresh()
}

// sort asks for the rows by a column, the other way round the second time.
func (l *DataList) sort(column int) {
	if column < 0 || !l.columns[column].Sorts || l.OnSort == nil {
		return
	}
	down := l.columns[column].End // numbers are asked for from the top
	if l.sorted == column {
		down = !l.down
	}
	l.sorted, l.down = column, down
	l.OnSort(column, down)
	l.Refresh()
}
