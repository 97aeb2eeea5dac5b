package cyclegrid_test

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/require"

	"windlass/internal/cycle"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/cyclegrid"
	"windlass/ui/look"
	"windlass/ui/uitest"
)

// largest is a room on the demo gym, its people and its past, with the longest
// cycle there is in twice as many tracks.
func largest(b testing.TB) *uitest.Host {
	b.Helper()
	d, now := uitest.DemoDesk(b)
	book := *d.Book()
	for i, t := range d.Tracks() {
		t.ID, t.Name, t.Position = gym.ID(fmt.Sprintf("018e0000-0000-7000-8000-%012d", i)), t.Name+" evening", t.Position+10
		book.Tracks = append(book.Tracks, t)
	}
	spec := cycle.Spec{ID: book.Cycles[0].ID, Name: "Long", Start: book.Cycles[0].Start, Weeks: 26}
	for i, t := range book.Tracks {
		templates := cycle.Templates()
		spec.Tracks = append(spec.Tracks, cycle.TrackSpec{Track: t.ID, Template: templates[i%len(templates)].Key, Wave: gym.RollingWave})
	}
	book.Cycles = nil
	c, err := cycle.Make(spec, &book)
	require.NoError(b, err)
	book.Cycles = []gym.Cycle{c}
	return uitest.Stage(b, uitest.DeskOn(b, book, now), look.Dark(), stage, cyclegrid.New)
}

// A frame at 60 Hz is 16.7 ms.
func BenchmarkCursorIn26Weeks6Tracks(b *testing.B) {
	h := largest(b)
	for _, page := range []string{"lifts", "conditioning", "warm-up"} {
		b.Run(page, func(b *testing.B) {
			for i := 0; b.Loop(); i++ {
				uitest.Key(b, h.On, []fyne.KeyName{fyne.KeyDown, fyne.KeyRight, fyne.KeyUp, fyne.KeyLeft}[i%4])
			}
		})
		h.Press(b, "D")
	}
}

func BenchmarkOpen26Weeks6Tracks(b *testing.B) {
	h := largest(b)
	for b.Loop() {
		h.Room.Refresh(desk.AboutAll)
	}
}

func BenchmarkTurnTheTrack26Weeks6Tracks(b *testing.B) {
	h := largest(b)
	for i := 0; b.Loop(); i++ {
		h.Press(b, fmt.Sprint(i%6+1))
	}
}
