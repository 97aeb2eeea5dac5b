package gymroom_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/ui/uitest"
)

func slotNamed(t *testing.T, h *uitest.Host, name string) gym.Slot {
	t.Helper()
	for _, s := range h.Desk().Timetable() {
		if s.Name == name {
			return s
		}
	}
	t.Fatalf("no class %q", name)
	return gym.Slot{}
}

func TestAClassIsAddedChangedMovedAndRemoved(t *testing.T) {
	h := open(t, "Timetable")
	picture(t, h, "timetable")
	before := len(h.Desk().Timetable())
	h.Press(t, "C")
	h.Press(t, "Ctrl+N")
	uitest.Fill(t, h.On, "Name", "Lunch bar")
	uitest.Fill(t, h.On, "Begins at", "noon")
	uitest.Fill(t, h.On, "Minutes", "45")
	uitest.See(t, h.On, "it is not an hour of the day")
	uitest.Fill(t, h.On, "Begins at", "12:00")
	uitest.Fill(t, h.On, "Weekday", "Tuesday")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.Tap(t, h.On, "Strongman")
	s := slotNamed(t, h, "Lunch bar")
	assert.Equal(t, gym.Slot{ID: s.ID, Weekday: day.Tuesday, At: day.ClockOf(12, 0), Minutes: 45, Name: "Lunch bar", Tracks: s.Tracks}, s)
	assert.Equal(t, "Strongman", h.Desk().TracksText(s))
	picture(t, h, "timetable-class")

	h.Press(t, "C")
	uitest.Shortcut(t, h.On, &desktop.CustomShortcut{KeyName: fyne.KeyRight, Modifier: fyne.KeyModifierShortcutDefault})
	uitest.Shortcut(t, h.On, &desktop.CustomShortcut{KeyName: fyne.KeyUp, Modifier: fyne.KeyModifierShortcutDefault})
	s = slotNamed(t, h, "Lunch bar")
	assert.Equal(t, []any{day.Wednesday, day.ClockOf(11, 45)}, []any{s.Weekday, s.At})
	uitest.Key(t, h.On, fyne.KeyDelete)
	assert.Len(t, h.Desk().Timetable(), before)
}

func TestClosedDaysAreKeptWithWhatTheyMove(t *testing.T) {
	h := open(t, "Timetable")
	uitest.See(t, h.On, "Floor is relaid", "Herring fair")
	before := len(h.Desk().Closed())
	h.Press(t, "D")
	h.Press(t, "Ctrl+N")
	uitest.Fill(t, h.On, "What for", "Harbour day")
	uitest.Fill(t, h.On, "First day", "2026-05-25")
	uitest.Fill(t, h.On, "Last day", "2026-05-20")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "the last day 2026-05-20 is before the first")
	uitest.Fill(t, h.On, "Last day", "2026-05-26")
	uitest.Key(t, h.On, fyne.KeyReturn)
	uitest.See(t, h.On, "Harbour day", "25–26 May", "no place", "Sat 30 May")
	picture(t, h, "timetable-closed")
	require.Len(t, h.Desk().Closed(), before+1)
	h.Press(t, "D")
	uitest.Key(t, h.On, fyne.KeyDelete)
	assert.Len(t, h.Desk().Closed(), before)
}
