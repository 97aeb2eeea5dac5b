package cyclegrid_test

import (
	"flag"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"

	"windlass/ui/cyclegrid"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

var pictures = flag.String("pictures", "", "keep pictures of the room in a folder")

// stage is what the window leaves a room of 1440 × 900.
var stage = fyne.NewSize(1240, 860)

func open(t *testing.T, p look.Palette) *uitest.Host {
	t.Helper()
	d, _ := uitest.DemoDesk(t)
	return uitest.Stage(t, d, p, stage, cyclegrid.New)
}

// picture keeps a picture where one is asked for.
func picture(t *testing.T, h *uitest.Host, name string) {
	t.Helper()
	if *pictures != "" {
		uitest.Snapshot(t, h.On, filepath.Join(*pictures, name+".png"))
	}
}

func TestCycleShowsTwelveWeeks(t *testing.T) {
	for name, p := range map[string]look.Palette{"dark": look.Dark(), "light": look.Light()} {
		h := open(t, p)
		uitest.See(t, h.On, "Week 1", "12, test", "Powerlifting", "Weightlifting")
		picture(t, h, "cycle-"+name)
		uitest.Key(t, h.On, fyne.KeyDown, fyne.KeyDown)
		picture(t, h, "cycle-day-"+name)
		h.Press(t, "D")
		picture(t, h, "cycle-conditioning-"+name)
		h.Press(t, "C")
		picture(t, h, "cycle-compose-"+name)
		h.Press(t, "D")
		picture(t, h, "cycle-around-"+name)
	}
}
