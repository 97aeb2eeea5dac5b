package kit_test

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// newGrid is a grid of n weeks whose days are called "0/0" and so on.
func newGrid(n int) *kit.WeekGrid {
	g := kit.NewWeekGrid(weekdays, func(s kit.Spot) kit.WeekCell {
		c := kit.WeekCell{Title: fmt.Sprintf("%d/%d", s.Week, s.Day), Kind: kit.MainDay}
		if s == (kit.Spot{Week: 1, Day: 2}) {
			c.Breach = "Lower body on neighbouring days"
		}
		return c
	})
	var weeks []kit.WeekTitle
	for i := range n {
		weeks = append(weeks, kit.WeekTitle{Title: fmt.Sprint("Week ", i+1)})
	}
	g.SetWeeks(weeks)
	return g
}

// gridSize has room for twelve weeks.
var gridSize = fyne.NewSize(1000, 760)

func TestGridShowsTwelveWeeks(t *testing.T) {
	uitest.App(t, look.Dark())
	w := uitest.OpenAs(t, look.Dark(), gridSize, newGrid(12))
	for week := range 12 {
		for day := range 7 {
			_, there := uitest.Where(w, fmt.Sprintf("%d/%d", week, day))
			assert.True(t, there, "week %d, day %d", week, day)
		}
	}
}

func TestGridKeyboard(t *testing.T) {
	for _, c := range []struct {
		name string
		keys []fyne.KeyName
		want kit.Spot
	}{
		{"arrows", []fyne.KeyName{fyne.KeyDown, fyne.KeyRight, fyne.KeyRight, fyne.KeyLeft}, kit.Spot{Week: 1, Day: 1}},
		{"not beyond the first", []fyne.KeyName{fyne.KeyUp, fyne.KeyLeft}, kit.Spot{}},
		{"the ends of a week", []fyne.KeyName{fyne.KeyDown, fyne.KeyEnd}, kit.Spot{Week: 1, Day: 6}},
		{"not beyond the last day", []fyne.KeyName{fyne.KeyEnd, fyne.KeyRight, fyne.KeyHome}, kit.Spot{}},
		{"a page is what is in sight", []fyne.KeyName{fyne.KeyPageDown}, kit.Spot{Week: 14}},
		{"not beyond the last week", []fyne.KeyName{fyne.KeyPageDown, fyne.KeyPageDown, fyne.KeyDown}, kit.Spot{Week: 25}},
	} {
		t.Run(c.name, func(t *testing.T) {
			uitest.App(t, look.Dark())
			g, opened := newGrid(26), kit.Spot{Week: -1}
			g.OnOpen = func(s kit.Spot) { opened = s }
			w := uitest.OpenAs(t, look.Dark(), gridSize, g)
			g.Focus()
			uitest.Key(t, w, append(c.keys, fyne.KeyReturn)...)
			assert.Equal(t, c.want, g.Cursor())
			assert.Equal(t, c.want, opened)
			uitest.See(t, w, fmt.Sprintf("%d/%d", c.want.Week, c.want.Day))
		})
	}
}

// Wherever the keys lead, the cursor is a day that there is, in sight, and within
// the selection.
func TestGridCursorStaysInSight(t *testing.T) {
	uitest.App(t, look.Dark())
	g := newGrid(26)
	w := uitest.OpenAs(t, look.Dark(), gridSize, g)
	g.Focus()
	keys := []fyne.KeyName{
		fyne.KeyUp, fyne.KeyDown, fyne.KeyLeft, fyne.KeyRight, fyne.KeyHome, fyne.KeyEnd,
		fyne.KeyPageUp, fyne.KeyPageDown,
	}
	rapid.Check(t, func(r *rapid.T) {
		uitest.Key(t, w, rapid.SliceOfN(rapid.SampledFrom(keys), 1, 20).Draw(r, "keys")...)
		at := g.Cursor()
		if _, there := uitest.Where(w, fmt.Sprintf("%d/%d", at.Week, at.Day)); !there {
			r.Fatalf("the cursor %v is not in sight", at)
		}
		from, to := g.Selection()
		if from != at || to != at {
			r.Fatalf("selection %v to %v is not the cursor %v", from, to, at)
		}
	})
}

func TestGridPointer(t *testing.T) {
	uitest.App(t, look.Dark())
	g := newGrid(12)
	var cursor []kit.Spot
	opened := kit.Spot{}
	g.OnCursor = func(s kit.Spot) { cursor = append(cursor, s) }
	g.OnOpen = func(s kit.Spot) { opened = s }
	w := uitest.OpenAs(t, look.Dark(), gridSize, g)
	uitest.Tap(t, w, "3/4")
	uitest.Tap(t, w, "3/4")
	assert.Equal(t, []kit.Spot{{Week: 3, Day: 4}}, cursor, "told once")
	uitest.DoubleTap(t, w, "5/6")
	assert.Equal(t, kit.Spot{Week: 5, Day: 6}, opened)
	uitest.Hover(t, w, "1/2")
	uitest.See(t, w, "Lower body on neighbouring days")
	uitest.Hover(t, w, "1/3")
	uitest.NotSee(t, w, "Lower body on neighbouring days")
}

func TestGridDragMovesADay(t *testing.T) {
	type moved struct {
		from, to kit.Spot
		copied   bool
	}
	uitest.App(t, look.Dark())
	var heard []moved
	g := newGrid(12)
	g.OnMove = func(from, to kit.Spot, copied bool) { heard = append(heard, moved{from, to, copied}) }
	w := uitest.OpenAs(t, look.Dark(), gridSize, g)
	drag := func(a, b string) {
		from, ok := uitest.Where(w, a)
		require.True(t, ok)
		to, ok := uitest.Where(w, b)
		require.True(t, ok)
		uitest.Drag(t, w, from, to)
	}
	drag("2/1", "4/3")
	assert.Equal(t, []moved{{kit.Spot{Week: 2, Day: 1}, kit.Spot{Week: 4, Day: 3}, false}}, heard)
	assert.Equal(t, kit.Spot{Week: 4, Day: 3}, g.Cursor(), "the cursor goes along")
	drag("2/1", "2/1")
	from, _ := uitest.Where(w, "0/0")
	uitest.Drag(t, w, from, fyne.NewPos(5, 5))
	assert.Len(t, heard, 1, "neither back to its place nor beside the days")
}

func TestGridShortcuts(t *testing.T) {
	uitest.App(t, look.Dark())
	heard := ""
	g := newGrid(12)
	g.OnCopy = func() { heard += "copy " }
	g.OnCut = func() { heard += "cut " }
	g.OnPaste = func() { heard += "paste " }
	g.OnDelete = func() { heard += "delete " }
	g.OnMove = func(from, to kit.Spot, _ bool) { heard += fmt.Sprint(from, to, " ") }
	w := uitest.OpenAs(t, look.Dark(), gridSize, g)
	w.Canvas().AddShortcut(&fyne.ShortcutUndo{}, func(fyne.Shortcut) { heard += "undo " })
	g.Focus()
	for _, s := range []fyne.Shortcut{
		&fyne.ShortcutCopy{}, &fyne.ShortcutCut{}, &fyne.ShortcutPaste{}, &fyne.ShortcutUndo{},
		&desktop.CustomShortcut{KeyName: fyne.KeyRight, Modifier: fyne.KeyModifierShortcutDefault},
		&desktop.CustomShortcut{KeyName: fyne.KeyUp, Modifier: fyne.KeyModifierShortcutDefault},
	} {
		uitest.Shortcut(t, w, s)
	}
	uitest.Key(t, w, fyne.KeyDelete)
	assert.Equal(t, "copy cut paste undo {0 0} {0 1} delete ", heard, "there is no week above the first")
}

func TestGridWithoutWeeksIsQuiet(t *testing.T) {
	uitest.App(t, look.Dark())
	g := newGrid(0)
	g.OnOpen = func(kit.Spot) { t.Error("there is nothing to open") }
	g.OnMove = func(kit.Spot, kit.Spot, bool) { t.Error("there is nothing to move") }
	w := uitest.OpenAs(t, look.Dark(), gridSize, g)
	g.Focus()
	uitest.Key(t, w, fyne.KeyDown, fyne.KeyReturn, fyne.KeyPageDown)
	uitest.TapAt(w, fyne.NewPos(400, 300))
	assert.Equal(t, kit.Spot{}, g.Cursor())
}

// A step of the cursor through the longest cycle; it must stay under a frame.
func BenchmarkGridStep(b *testing.B) {
	uitest.App(b, look.Dark())
	g := newGrid(26)
	uitest.OpenAs(b, look.Dark(), gridSize, g)
	b.ResetTimer()
	for i := range b.N {
		g.Select(kit.Spot{Week: i % 26, Day: i % 7})
	}
}

// Days that stand back leave their width to the others, and a press still finds
// the day under it.
func TestGridSharesItsWidth(t *testing.T) {
	uitest.App(t, look.Dark())
	g := newGrid(12)
	g.SetShares([]float32{1, 1, 1, 1, 1, 1, 0.4})
	w := uitest.OpenAs(t, look.Dark(), gridSize, g)
	for day := range 7 {
		at, there := uitest.Where(w, fmt.Sprintf("3/%d", day))
		require.True(t, there)
		uitest.TapAt(w, at)
		assert.Equal(t, kit.Spot{Week: 3, Day: day}, g.Cursor())
	}
	g.SetDays([]string{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"})
	sunday, _ := uitest.Where(w, "Sun")
	monday, _ := uitest.Where(w, "Mon")
	assert.Less(t, sunday.X, monday.X, "a week may begin on another day")
	first, _ := uitest.Where(w, "0/0")
	second, _ := uitest.Where(w, "0/1")
	assert.InDelta(t, (gridSize.Width-92)/6.4, second.X-first.X, 1, "a full share of what the titles leave")
}
