package today_test

import (
	"flag"
	"path/filepath"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/desk"
	"windlass/ui/look"
	"windlass/ui/room"
	"windlass/ui/today"
	"windlass/ui/uitest"
)

var pictures = flag.String("pictures", "", "keep pictures of the room in a folder")

// stage is what the window leaves a room of 1440 × 900.
var stage = fyne.NewSize(1240, 860)

func open(t *testing.T, p look.Palette) *uitest.Host {
	t.Helper()
	d, _ := uitest.DemoDesk(t)
	return uitest.Stage(t, d, p, stage, today.New)
}

func TestTodayShowsTheDay(t *testing.T) {
	for name, p := range map[string]look.Palette{"dark": look.Dark(), "light": look.Light()} {
		h := open(t, p)
		uitest.See(t, h.On, "Monday 18 May 2026", "This week", "Needs you", "to come")
		if *pictures != "" {
			uitest.Snapshot(t, h.On, filepath.Join(*pictures, "today-"+name+".png"))
		}
	}
}

func TestEnterOpensTheNextClassOnTheFloor(t *testing.T) {
	h := open(t, look.Dark())
	meetings := h.Desk().Meetings(h.Desk().Today())
	require.NotEmpty(t, meetings)
	uitest.Key(t, h.On, fyne.KeyReturn)
	require.Equal(t, []string{room.Floor}, h.Opened)
	class, ok := h.Desk().LiveClass()
	require.True(t, ok)
	assert.Equal(t, class.ID, h.Sent)
	assert.Equal(t, meetings[0].Slot.ID, class.Slot, "the first class that is to come")
	uitest.See(t, h.On, "on the floor")
}

// A class that was opened on another day, of the calendar or of another time zone,
// leads the page until it is finished.
func TestAClassOfAnotherDayIsGoneOnWith(t *testing.T) {
	quiet := open(t, look.Dark())
	d, now := uitest.DemoDesk(t)
	meetings := d.Meetings(d.Today())
	class, err := d.OpenClass(meetings[len(meetings)-1].Slot)
	require.NoError(t, err)
	*now = now.In(time.FixedZone("west", -10*3600))
	h := uitest.Stage(t, d, look.Dark(), stage, today.New)
	uitest.See(t, h.On, "Sunday 17 May 2026", class.Name, "opened on Monday 18 May 2026 and not finished", "Go on")
	assert.LessOrEqual(t, h.Room.Content().MinSize().Width, quiet.Room.Content().MinSize().Width, "it makes no room for itself")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Equal(t, class.ID, h.Sent)
}

func TestANeedLeadsToTheRecord(t *testing.T) {
	h := open(t, look.Dark())
	needs := h.Desk().Needs()
	require.NotEmpty(t, needs)
	h.Press(t, "N")
	uitest.Key(t, h.On, fyne.KeyReturn)
	assert.Equal(t, []string{room.Roster}, h.Opened)
	assert.Equal(t, needs[0].Athlete, h.Sent)
}

func TestEveryNeedIsOfAKindWithAWord(t *testing.T) {
	d, _ := uitest.DemoDesk(t)
	for _, n := range d.Needs() {
		assert.Contains(t, []desk.NeedKind{desk.NeedRestriction, desk.NeedNumber, desk.NeedStale, desk.NeedTrack}, n.Kind)
		assert.NotEmpty(t, n.Text)
	}
}
