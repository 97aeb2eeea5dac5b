package kit_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"github.com/stretchr/testify/assert"

	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

func TestHourGridIsWorkedByKeyboardAndPointer(t *testing.T) {
	g := kit.NewHourGrid([]string{"Mon", "Tue", "Wed"})
	var moved, opened []int
	var shifted [][3]int
	g.OnCursor = func(i int) { moved = append(moved, i) }
	g.OnOpen = func(i int) { opened = append(opened, i) }
	g.OnShift = func(i, days, minutes int) { shifted = append(shifted, [3]int{i, days, minutes}) }
	g.Empty = "Nothing yet"
	w := uitest.Open(t, g)
	uitest.See(t, w, "Nothing yet", "Tue")
	g.Focus()
	uitest.Key(t, w, fyne.KeyDown, fyne.KeyReturn)
	assert.Empty(t, opened, "there is nothing to open")

	g.Set([]kit.HourBlock{
		{Day: 0, Start: 390, Minutes: 75, Title: "Early", Sub: "all tracks"},
		{Day: 0, Start: 1080, Minutes: 60, Title: "Evening", Sub: "strength"},
		{Day: 0, Start: 1110, Minutes: 60, Title: "Beside", Sub: "strength"}, // overlaps the one before
		{Day: 2, Start: 1050, Minutes: 60, Title: "Late", Sub: "all tracks"},
	})
	uitest.See(t, w, "Early", "06:30", "06:00", "Late")
	assert.Empty(t, uitest.Overflows(w))
	uitest.Key(t, w, fyne.KeyDown, fyne.KeyRight, fyne.KeyRight, fyne.KeyLeft, fyne.KeyHome, fyne.KeyUp, fyne.KeyEnd)
	assert.Equal(t, []int{1, 3, 1, 0, 3}, moved, "down, over the empty day and back to the nearest hour, home, end")
	uitest.Key(t, w, fyne.KeyReturn)
	uitest.DoubleTap(t, w, "Early")
	assert.Equal(t, []int{3, 0}, opened)
	uitest.Tap(t, w, "Beside")
	assert.Equal(t, 2, g.Cursor(), "overlapping blocks stand side by side")
	uitest.Shortcut(t, w, &desktop.CustomShortcut{KeyName: fyne.KeyUp, Modifier: fyne.KeyModifierShortcutDefault})
	uitest.Shortcut(t, w, &desktop.CustomShortcut{KeyName: fyne.KeyRight, Modifier: fyne.KeyModifierShortcutDefault})
	assert.Equal(t, [][3]int{{2, 0, -15}, {2, 1, 0}}, shifted)
	uitest.Hover(t, w, "Beside")
	uitest.See(t, w, "18:30–19:30  Beside, strength")
}

// Blocks stand at their hour, overlapping ones side by side, and the cursor shows.
func TestHourGridGolden(t *testing.T) {
	uitest.App(t, look.Light())
	g := kit.NewHourGrid([]string{"Mon", "Tue", "Wed"})
	g.Set([]kit.HourBlock{
		{Day: 0, Start: 510, Minutes: 120, Title: "Early", Sub: "all tracks"},
		{Day: 1, Start: 840, Minutes: 150, Title: "Evening", Sub: "strength"},
		{Day: 1, Start: 900, Minutes: 120, Title: "Beside", Sub: "strength"},
	})
	w := uitest.OpenAs(t, look.Light(), fyne.NewSize(480, 300), g)
	g.Focus()
	uitest.Golden(t, w, "hours")
}
