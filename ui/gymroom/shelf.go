package gymroom

import (
	"fyne.io/fyne/v2"

	"windlass/ui/kit"
)

// shelf is a list of one sort of things, and the form that changes the one under
// the cursor.
type shelf struct {
	list  *kit.DataList
	form  *fyne.Container
	away  bool // the form gave its place to another
	lines []*kept
	len   func() int
	other func() // shows what of the form is no line of text; may be nil
}

// newShelf makes the list; the caller adds the form.
func newShelf(columns []kit.ListColumn, rows kit.Rows) *shelf {
	s := &shelf{list: kit.NewDataList(columns, rows), len: rows.Len}
	s.list.OnCursor = func(int) { s.show() }
	s.list.OnOpen = func(int) { s.write() }
	return s
}

// line adds a line of text to the form; read is not asked while the list is empty.
func (s *shelf) line(label string, read func() string, write func(text string) error) *kept {
	k := keep(kit.NewField(label), func() string {
		if s.len() == 0 {
			return ""
		}
		return read()
	}, write)
	s.lines = append(s.lines, k)
	return k
}

// at is the row under the cursor, or −1 in an empty list.
func (s *shelf) at() int { return s.list.Cursor() }

// show fills the form with the row under the cursor, whatever was typed in it.
func (s *shelf) show() {
	for _, k := range s.lines {
		k.show()
	}
	s.rest()
}

// refresh draws the list again, and in the form what changed.
func (s *shelf) refresh() {
	s.list.Refresh()
	for _, k := range s.lines {
		k.refresh()
	}
	s.rest()
}

// rest shows the form, unless there is nothing to change with it.
func (s *shelf) rest() {
	s.form.Hidden = s.away || s.len() == 0
	if s.other != nil && s.len() > 0 {
		s.other()
	}
}

// to moves the cursor to a row and fills the form.
func (s *shelf) to(row int) {
	s.list.Select(row)
	s.show()
}

// write gives the keyboard to the form's first line.
func (s *shelf) write() {
	if len(s.lines) > 0 {
		s.lines[0].Focus()
	}
}
