package kit_test

import (
	"testing"
	"time"

	"fyne.io/fyne/v2"

	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// The instruments of the trade are held as pictures: their words are tested
// elsewhere, but not that the present rung stands out or that a disc is drawn to
// size. Look at a picture before committing it: go test ./ui/kit -update.
func TestGoldens(t *testing.T) {
	strip := kit.NewRungStrip()
	strip.Set(climb())
	strip.SetNow(552 * time.Second)
	plates := kit.NewPlatePicture(300, 96)
	plates.Set("20 kg", discs(true, 25, 20, 5, 2.5))
	weeks := kit.NewWeekGrid(weekdays[:4], planned)
	weeks.SetWeeks([]kit.WeekTitle{{Title: "Week 1", Sub: "2 March"}, {Title: "Week 2", Sub: "9 March", Now: true}})
	for _, c := range []struct {
		name    string
		palette look.Palette
		size    fyne.Size
		shown   fyne.CanvasObject
	}{
		{"strip", look.Dark(), fyne.NewSize(720, 104), strip},
		{"plates", look.Light(), fyne.NewSize(300, 96), plates},
		{"weeks", look.Dark(), fyne.NewSize(620, 160), weeks},
	} {
		t.Run(c.name, func(t *testing.T) {
			uitest.App(t, c.palette)
			uitest.Golden(t, uitest.OpenAs(t, c.palette, c.size, c.shown), c.name)
		})
	}
}
