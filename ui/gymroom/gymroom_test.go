package gymroom_test

import (
	"flag"
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/gymroom"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

var pictures = flag.String("pictures", "", "keep pictures of the room in a folder")

// stage is what the window leaves a room of 1440 × 900.
var stage = fyne.NewSize(1240, 860)

func open(t *testing.T, section string) *uitest.Host {
	t.Helper()
	d, _ := uitest.DemoDesk(t)
	h := uitest.Stage(t, d, look.Dark(), stage, gymroom.New)
	if section != "" {
		uitest.Tap(t, h.On, section)
	}
	return h
}

func picture(t *testing.T, h *uitest.Host, name string) {
	t.Helper()
	assert.Empty(t, uitest.Overflows(h.On), name)
	if *pictures != "" {
		uitest.Snapshot(t, h.On, filepath.Join(*pictures, name+".png"))
	}
}

// The room at a window of 1440 × 900 and of 1920 × 1080: every section is reached
// by its key, and no text is cut off.
func TestEverySectionFitsTheWindow(t *testing.T) {
	d, _ := uitest.DemoDesk(t)
	for size, p := range map[fyne.Size]look.Palette{
		fyne.NewSize(1240, 840): look.Dark(), fyne.NewSize(1720, 1020): look.Light(),
	} {
		h := uitest.Stage(t, d, p, size, gymroom.New)
		for key, says := range map[string]string{
			"F2": "The week begins on", "F3": "Closed days", "F4": "What can be loaded on", "F5": "Masses",
			"F6": "Heavy line", "F7": "Show hidden ones", "F8": "Days of 5", "F9": "cannot make backups",
		} {
			uitest.Key(t, h.On, fyne.KeyName(key))
			uitest.See(t, h.On, says)
			picture(t, h, fmt.Sprintf("%s-%g", key, size.Width))
			least := h.Room.Content().MinSize()
			assert.LessOrEqual(t, least.Width, size.Width, key)
			assert.LessOrEqual(t, least.Height, size.Height, key)
		}
	}
}

// A gym with nothing in it: every section says what to do first, and no key does
// harm.
func TestAnEmptyGymSaysWhatToDoFirst(t *testing.T) {
	now := uitest.Morning
	d := uitest.DeskOn(t, gym.Book{Settings: gym.Settings{
		Name: "Empty", Unit: mass.LB, Confidence: 0.75, DayReps: []int{5}, Viewer: 8,
	}}, &now)
	h := uitest.Stage(t, d, look.Dark(), stage, gymroom.New)
	for key, says := range map[string]string{
		"F3": "Make the first with Ctrl+N", "F4": "Add plates first", "F5": "Add the first with Ctrl+N", "F6": "Make one with Ctrl+N", "F7": "add one of your own",
	} {
		uitest.Key(t, h.On, fyne.KeyName(key))
		uitest.See(t, h.On, says)
		picture(t, h, "empty-"+key)
		for _, k := range h.Room.Keys() {
			if !strings.HasPrefix(k.Press, "F") && k.Press != "Ctrl+N" && k.Press != "Ctrl+I" {
				k.Do()
				uitest.Key(t, h.On, fyne.KeyReturn, fyne.KeyDelete, fyne.KeyDown)
				uitest.Type(t, h.On, "x")
				uitest.Key(t, h.On, fyne.KeyReturn, fyne.KeyEscape)
			}
		}
	}
	assert.Empty(t, d.CanUndo(), "nothing was changed")
	uitest.Key(t, h.On, "F4")
	for _, list := range []string{"P", "B", "T"} { // a bar wants plates, and a station a bar
		h.Press(t, list)
		h.Press(t, "Ctrl+N")
	}
	own := d.Book().Equipment
	assert.Equal(t, []int{1, 1, 1}, []int{len(own.Bars), len(own.Stock.Plates), len(own.Stations)})
}

func TestSettingsAreKeptAtOnceAndRefusedInPlace(t *testing.T) {
	h := open(t, "")
	picture(t, h, "gym-dark")
	uitest.Fill(t, h.On, "Name", "Rope and Anchor")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Equal(t, "Rope and Anchor", h.Desk().Settings().Name)
	uitest.Fill(t, h.On, "Name", "")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "Could not keep settings: the gym has no name. Write one.")
	assert.Equal(t, "Rope and Anchor", h.Desk().Settings().Name, "nothing was changed")
	uitest.Fill(t, h.On, "How sure a conditioning load has to be", "80")
	uitest.Fill(t, h.On, "Metres from the wall to its farthest reader", "a few")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.InDelta(t, 0.8, h.Desk().Settings().Confidence, 1e-9, "going on keeps it")
	uitest.See(t, h.On, "it is not a number", "80 %")
	h.Press(t, "L")
	assert.False(t, h.Desk().Settings().Dark)
}
