package kit_test

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// numbered is a list of n rows called "row 0" and so on.
func numbered(n *int) *kit.DataList {
	return kit.NewDataList([]kit.ListColumn{
		{Title: "Name", Width: 100, Grow: 1, Sorts: true},
		{Title: "Load", Width: 80, End: true, Sorts: true},
		{Title: "Note", Width: 80},
	}, kit.Rows{Len: func() int { return *n }, Cell: func(row, column int) kit.Cell {
		return kit.Cell{Text: fmt.Sprintf("%s %d", []string{"row", "kg", "note"}[column], row)}
	}})
}

// openList shows a list with room for ten rows.
func openList(t *testing.T, l *kit.DataList) *uitest.Window {
	t.Helper()
	return uitest.OpenAs(t, look.Dark(), fyne.NewSize(500, 11*look.RowHeight), l)
}

func TestListKeyboard(t *testing.T) {
	for _, c := range []struct {
		name string
		keys []fyne.KeyName
		want int
	}{
		{"down and up", []fyne.KeyName{fyne.KeyDown, fyne.KeyDown, fyne.KeyUp}, 1},
		{"not above the first", []fyne.KeyName{fyne.KeyUp}, 0},
		{"a page is what is in sight, less one", []fyne.KeyName{fyne.KeyPageDown}, 9},
		{"back by a page", []fyne.KeyName{fyne.KeyPageDown, fyne.KeyPageDown, fyne.KeyPageUp}, 9},
		{"the end", []fyne.KeyName{fyne.KeyEnd}, 19_999},
		{"not below the last", []fyne.KeyName{fyne.KeyEnd, fyne.KeyPageDown, fyne.KeyDown}, 19_999},
		{"home again", []fyne.KeyName{fyne.KeyEnd, fyne.KeyHome}, 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			uitest.App(t, look.Dark())
			n, opened := 20_000, -1
			l := numbered(&n)
			l.OnOpen = func(row int) { opened = row }
			w := openList(t, l)
			l.Focus()
			uitest.Key(t, w, append(c.keys, fyne.KeyReturn)...)
			assert.Equal(t, c.want, l.Cursor())
			assert.Equal(t, c.want, opened, "Return opens the row of the cursor")
			uitest.See(t, w, fmt.Sprintf("row %d", c.want))
		})
	}
}

// Whatever is done to a list, its cursor is in sight and everything that it shows
// is one run of rows.
func TestListShowsARunOfRowsWithTheCursor(t *testing.T) {
	uitest.App(t, look.Dark())
	n := 0
	l := numbered(&n)
	w := openList(t, l)
	l.Focus()
	keys := []fyne.KeyName{fyne.KeyDown, fyne.KeyUp, fyne.KeyPageDown, fyne.KeyPageUp, fyne.KeyHome, fyne.KeyEnd}
	rapid.Check(t, func(r *rapid.T) {
		n = rapid.IntRange(0, 60).Draw(r, "rows")
		l.Refresh()
		for _, k := range rapid.SliceOfN(rapid.SampledFrom(keys), 0, 12).Draw(r, "keys") {
			uitest.Key(t, w, k)
		}
		rows := shownRows(w)
		if len(rows) != min(n, 10) {
			r.Fatalf("%d rows shown of %d", len(rows), n)
		}
		for i, row := range rows {
			if row != rows[0]+i {
				r.Fatalf("rows %v are not one run", rows)
			}
		}
		if n > 0 && (l.Cursor() < rows[0] || l.Cursor() > rows[len(rows)-1]) {
			r.Fatalf("cursor %d is not among %v", l.Cursor(), rows)
		}
	})
}

func shownRows(w *uitest.Window) (rows []int) {
	for _, text := range uitest.Read(w) {
		row := 0
		if _, err := fmt.Sscanf(text, "row %d", &row); err == nil {
			rows = append(rows, row)
		}
	}
	return rows
}

func TestListPointer(t *testing.T) {
	uitest.App(t, look.Dark())
	n, opened := 100, -1
	var cursor []int
	l := numbered(&n)
	l.OnCursor = func(row int) { cursor = append(cursor, row) }
	l.OnOpen = func(row int) { opened = row }
	w := openList(t, l)
	uitest.Tap(t, w, "row 3")
	uitest.Tap(t, w, "kg 5")
	assert.Equal(t, []int{3, 5}, cursor, "any cell of a row")
	assert.Equal(t, -1, opened)
	uitest.DoubleTap(t, w, "row 7")
	assert.Equal(t, 7, opened)

	uitest.Scroll(t, w, "row 7", -20*look.RowHeight)
	uitest.See(t, w, "row 20", "row 29")
	uitest.NotSee(t, w, "row 19", "row 30")
}

func TestListScrollBarReachesBothEnds(t *testing.T) {
	uitest.App(t, look.Dark())
	n := 20_000
	l := numbered(&n)
	w := openList(t, l)
	uitest.Drag(t, w, fyne.NewPos(496, 40), fyne.NewPos(496, 2000))
	uitest.See(t, w, "row 19999")
	uitest.Drag(t, w, fyne.NewPos(496, 350), fyne.NewPos(496, -50))
	uitest.See(t, w, "row 0")
	assert.Equal(t, 0, l.Cursor(), "scrolling leaves the cursor")
}

func TestListSortsByItsTitles(t *testing.T) {
	uitest.App(t, look.Dark())
	type asked struct {
		column int
		down   bool
	}
	var heard []asked
	n := 5
	l := numbered(&n)
	l.OnSort = func(column int, down bool) { heard = append(heard, asked{column, down}) }
	w := openList(t, l)
	uitest.Tap(t, w, "Name")
	uitest.Tap(t, w, "Name")
	uitest.Tap(t, w, "Load")
	uitest.Tap(t, w, "Note")
	assert.Equal(t, []asked{{0, false}, {0, true}, {1, true}}, heard, "numbers begin with the largest; notes do not sort")
}

func TestListMarks(t *testing.T) {
	uitest.App(t, look.Dark())
	marked := map[int]bool{}
	n := 6
	l := numbered(&n)
	l.Marked = func(row int) bool { return marked[row] }
	l.OnMark = func(rows []int, on bool) {
		for _, row := range rows {
			marked[row] = on
		}
	}
	w := openList(t, l)
	l.Focus()
	uitest.Key(t, w, fyne.KeyDown, fyne.KeySpace)
	assert.Equal(t, map[int]bool{1: true}, marked)
	uitest.Shortcut(t, w, &fyne.ShortcutSelectAll{})
	assert.Len(t, marked, 6)
	uitest.Shortcut(t, w, &fyne.ShortcutSelectAll{})
	assert.NotContains(t, marked, true)
	for _, on := range marked {
		assert.False(t, on, "all were marked, so all are unmarked")
	}
	at, _ := uitest.Where(w, "row 2")
	uitest.TapAt(w, fyne.NewPos(20, at.Y))
	assert.True(t, marked[2])
	assert.Equal(t, 1, l.Cursor(), "a box does not move the cursor")
}

func TestListShrinksUnderItsCursor(t *testing.T) {
	uitest.App(t, look.Dark())
	n := 100
	l := numbered(&n)
	l.Empty = "Nobody is called that."
	w := openList(t, l)
	l.Select(99)
	uitest.See(t, w, "row 99")
	n = 3
	l.Refresh()
	assert.Equal(t, 2, l.Cursor())
	uitest.See(t, w, "row 0", "row 2")
	n = 0
	l.Refresh()
	assert.Equal(t, -1, l.Cursor())
	uitest.See(t, w, "Nobody is called that.")
	uitest.NotSee(t, w, "row 0")
}

func TestListHandsOnWhatItDoesNotUse(t *testing.T) {
	uitest.App(t, look.Dark())
	n := 3
	l := numbered(&n)
	typed := ""
	l.OnRune = func(r rune) bool { typed += string(r); return r == 'a' }
	w := openList(t, l)
	window := ""
	w.Canvas().SetOnTypedRune(func(r rune) { window += string(r) })
	l.Focus()
	uitest.Type(t, w, "ab")
	assert.Equal(t, "ab", typed)
	assert.Equal(t, "b", window)
}

// What a step of the cursor and a filter cost with as many rows as a large gym.
func BenchmarkListStep(b *testing.B) {
	uitest.App(b, look.Dark())
	n := 20_000
	l := numbered(&n)
	uitest.OpenAs(b, look.Dark(), fyne.NewSize(1000, 800), l)
	b.ResetTimer()
	for i := range b.N {
		l.Select(i * 37 % n)
	}
}

// A void cell is struck out: a stroke goes through its words and nowhere else.
func TestVoidCellsAreStruckOut(t *testing.T) {
	void := false
	l := kit.NewDataList([]kit.ListColumn{{Title: "Load", Width: 200}}, kit.Rows{Len: func() int { return 2 }, Cell: func(row, _ int) kit.Cell {
		return kit.Cell{Text: "24 kg slowed", Void: void && row == 1}
	}})
	w := openList(t, l)
	before := w.Canvas().Capture()
	void = true
	l.Refresh()
	after := w.Canvas().Capture()
	rows, columns := map[int]bool{}, map[int]bool{}
	for y := range before.Bounds().Dy() {
		for x := range before.Bounds().Dx() {
			if before.At(x, y) != after.At(x, y) {
				rows[y], columns[x] = true, true
			}
		}
	}
	assert.NotEmpty(t, rows)
	assert.LessOrEqual(t, len(rows), 2, "a thin line")
	assert.Greater(t, len(columns), 40, "as long as the words")
	for y := range rows {
		assert.InDelta(t, 2.5*look.RowHeight, y, 2, "in the middle of the second row")
	}
	void = false
	l.Refresh()
	assert.Equal(t, before, w.Canvas().Capture())
}

// What grows beside a list does not take the chosen row out of sight.
func TestTheCursorStaysInSightWhenTheListShrinks(t *testing.T) {
	uitest.App(t, look.Dark())
	n := 50
	l := numbered(&n)
	w := openList(t, l)
	l.Select(9)
	uitest.See(t, w, "row 0", "row 9")
	w.Resize(fyne.NewSize(500, 6*look.RowHeight))
	uitest.See(t, w, "row 5", "row 9")
	uitest.NotSee(t, w, "row 4")
}

// A shorter name stands where the whole one has no room, and only there.
func TestACellHasAnotherTextWhereItIsNarrow(t *testing.T) {
	uitest.App(t, look.Dark())
	l := kit.NewDataList([]kit.ListColumn{{Title: "Whole", Width: 160}, {Title: "Short", Width: 80}}, kit.Rows{
		Len:  func() int { return 1 },
		Cell: func(int, int) kit.Cell { return kit.Cell{Text: "Matteo Ferrandi", Or: "Matteo F."} },
	})
	uitest.See(t, openList(t, l), "Matteo Ferrandi", "Matteo F.")
}
