package kit_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

func TestChartTellsWhatIsUnderThePointer(t *testing.T) {
	uitest.App(t, look.Dark())
	c := kit.NewChart(400, 300)
	c.Set(trend())
	w := uitest.OpenAs(t, look.Dark(), fyne.NewSize(800, 300), c)
	uitest.See(t, w, "kg", "110", "150", "Week 1", "Today", "Test day")
	// The axis is 56 wide, then 12 of air; 119 days stand on the rest but 24.
	day := func(x float32) fyne.Position { return fyne.NewPos(56+12+x*(800-56-24-12)/119, 150) }
	uitest.HoverAt(w, day(40))
	uitest.See(t, w, "RM: 129.5 kg, day 40")
	uitest.HoverAt(w, day(110))
	uitest.See(t, w, "day 110: 136.9")
	uitest.Leave(w)
	uitest.NotSee(t, w, "day 110")
}

func TestChartWithLittleOnIt(t *testing.T) {
	uitest.App(t, look.Dark())
	c := kit.NewChart(400, 300)
	w := uitest.OpenAs(t, look.Dark(), fyne.NewSize(400, 300), c)
	c.Set(kit.Plot{Empty: "No results yet."})
	uitest.See(t, w, "No results yet.")
	uitest.HoverAt(w, fyne.NewPos(200, 100))

	c.Set(kit.Plot{Empty: "No results yet.", Points: []kit.PlotPoint{{X: 3, Y: 100, Label: "5 × 100 kg"}}})
	uitest.NotSee(t, w, "No results yet.")
	uitest.HoverAt(w, fyne.NewPos(222, 100))
	uitest.See(t, w, "5 × 100 kg")
}

func TestWornThemeReachesEveryWidget(t *testing.T) {
	uitest.App(t, look.Dark())
	w := uitest.Open(t, controlsPage(t))
	dark := w.Canvas().Capture()
	w.Wear(look.Light())
	light := w.Canvas().Capture()
	bright := 0
	for y := 0; y < 900; y += 10 {
		for x := 0; x < 1440; x += 10 {
			r, _, _, _ := light.At(x, y).RGBA()
			d, _, _, _ := dark.At(x, y).RGBA()
			if d < 0x5000 && r < 0x5000 {
				bright++ // dark in both: a widget that did not follow
			}
		}
	}
	assert.Less(t, bright, 90*144/50, "what is dark in the light palette is a little ink")
}
