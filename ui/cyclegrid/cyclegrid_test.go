package cyclegrid_test

import (
	"flag"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

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

// A coach who comes back finds the cursor where it was.
func TestTheCursorStaysWhereItWas(t *testing.T) {
	h := open(t, look.Dark())
	uitest.Key(t, h.On, fyne.KeyDown, fyne.KeyRight)
	uitest.See(t, h.On, "Tuesday 26 May, week 7")
	h.Room.Show("")
	uitest.See(t, h.On, "Tuesday 26 May, week 7")
	h.Press(t, "T")
	uitest.See(t, h.On, "Monday 18 May, week 6")
}

// No key of the room does harm while there is no cycle.
func TestEveryKeyIsSafeWithoutACycle(t *testing.T) {
	h := uitest.Stage(t, newGym(t), look.Dark(), stage, cyclegrid.New)
	for range 2 {
		for _, k := range h.Room.Keys() {
			if k.Press != "N" {
				k.Do()
			}
		}
	}
	uitest.See(t, h.On, "No cycle yet")
	assert.Empty(t, h.Desk().CanUndo())
}
