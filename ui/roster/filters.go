package roster

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// filters are the search line and the chips of track and status.
type filters struct {
	host    room.Host
	changed func()
	content fyne.CanvasObject
	search  *kit.Field
	track   *kit.Segmented
	status  *kit.Segmented
	tracks  []gym.ID // of the segments
	leave   func()   // gives the keyboard back to the table
}

// statuses of the segments.
var statuses = []gym.Status{gym.Active, gym.Paused, gym.Archived, ""}

func newFilters(h room.Host, changed func()) *filters {
	f := &filters{host: h, changed: changed}
	f.search = kit.NewSearch("Search: type any part of a name").Least(220)
	f.search.OnChange(func(string) { changed() }).OnEnter(func(string) { f.leave() })
	f.track = kit.NewSegmented([]string{"All tracks"}, 0, func(int) { changed() })
	f.status = kit.NewSegmented([]string{"Active", "Paused", "Archived", "All"}, 0, func(int) { changed() })
	f.content = kit.Column(look.Gap2,
		kit.Row(look.Gap2, kit.Fill(f.search), f.status),
		kit.Tall(look.ControlHeight+4, container.NewHScroll(kit.Pad(2, f.track))))
	return f
}

// refresh shows the tracks and how many athletes each status has.
func (f *filters) refresh() {
	d := f.host.Desk()
	was := f.chosenTrack()
	f.tracks = []gym.ID{desk.AnyTrack}
	labels, at := []string{"All tracks"}, 0
	for _, t := range d.Tracks() {
		f.tracks, labels = append(f.tracks, t.ID), append(labels, t.Name)
	}
	f.tracks, labels = append(f.tracks, ""), append(labels, "No track")
	for i, id := range f.tracks {
		if id == was {
			at = i
		}
	}
	f.track.SetLabels(labels, at)
	n := d.Statuses()
	f.status.SetLabels([]string{
		fmt.Sprintf("Active %d", n[gym.Active]), fmt.Sprintf("Paused %d", n[gym.Paused]),
		fmt.Sprintf("Archived %d", n[gym.Archived]), "All",
	}, f.status.Chosen())
}

func (f *filters) chosenTrack() gym.ID {
	if i := f.track.Chosen(); i < len(f.tracks) {
		return f.tracks[i]
	}
	return desk.AnyTrack
}

// asked is the filter as it stands.
func (f *filters) asked(sort desk.RosterSort, down bool) desk.RosterFilter {
	return desk.RosterFilter{Text: f.search.Text(), Track: f.chosenTrack(), Status: statuses[f.status.Chosen()], Sort: sort, Down: down}
}

// clear asks for everybody.
func (f *filters) clear() {
	f.track.Set(0)
	f.status.Set(len(statuses) - 1)
	f.search.SetText("")
}

func (f *filters) focus() { f.search.Focus() }

// begin starts a search with what was typed elsewhere.
func (f *filters) begin(c rune) {
	f.search.Focus()
	f.search.Keyboard().TypedRune(c)
}
