// Package roster is the room of everybody who trains: a table to filter and
// search at the left, and the chosen athlete's record at the right.
//
// [New] makes it. What the table says is read from the desk row by row as rows
// come into sight, so that ten thousand athletes cost no more than forty. Typing
// anywhere in the table searches. Nobody is ever deleted here.
package roster

import (
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/record"
	"windlass/ui/room"
)

// Roster is the room.
type Roster struct {
	host    room.Host
	content *fyne.Container
	table   *table
	filters *filters
	chosen  *kit.Text
	record  *record.Record
}

// New makes the room.
func New(h room.Host) room.Room {
	r := &Roster{host: h}
	r.filters = newFilters(h, r.list)
	h.Window().SetOnDropped(r.dropped)
	r.table = newTable(r)
	r.filters.leave = r.table.list.Focus
	r.record = record.New(h, r.moveShown, r.typed)
	left := kit.Column(look.Gap3, r.top(), r.filters.content, kit.Fill(kit.NewPanel(kit.Fill(r.table.list))), r.foot())
	r.content = kit.Pad(look.Gap6, container.New(beside{}, left, r.record.Content()))
	return r
}

func (r *Roster) top() fyne.CanvasObject {
	return kit.Row(look.Gap2, kit.NewTitle("Roster"), kit.Fill(),
		kit.NewButton("Bring a file in", r.askFile).Key("Ctrl+O"),
		kit.NewButton("Add an athlete", r.askAthlete).Key("Ctrl+N").Primary())
}

// foot is what can be done with the chosen athletes.
func (r *Roster) foot() fyne.CanvasObject {
	r.chosen = kit.NewCaption("").Shrinks(120)
	return kit.Column(look.Gap2, r.chosen, kit.Row(look.Gap1,
		kit.NewButton("Move track", r.askMove).Key("Ctrl+M"),
		kit.NewButton("Pause", func() { r.setStatus(gym.Paused) }).Key("Ctrl+P"),
		kit.NewButton("Bring back", func() { r.setStatus(gym.Active) }).Key("Ctrl+B"),
		kit.NewButton("Archive", func() { r.setStatus(gym.Archived) }).Key("Ctrl+D"), kit.Fill()))
}

// Content implements room.Room.
func (r *Roster) Content() fyne.CanvasObject { return r.content }

// Show implements room.Room: the subject is an athlete.
func (r *Roster) Show(subject gym.ID) {
	if subject != "" {
		r.reveal(subject)
	}
	r.table.list.Focus()
	r.showCursor()
}

// typed starts a search with what was typed into a list.
func (r *Roster) typed(c rune) bool {
	r.filters.begin(c)
	return true
}

// reveal brings an athlete under the cursor, whatever the filter was.
func (r *Roster) reveal(athlete gym.ID) {
	if !r.table.has(athlete) {
		r.filters.clear()
		r.list()
	}
	r.table.turnTo(athlete)
}

// Refresh implements room.Room.
func (r *Roster) Refresh(about desk.Topic) {
	r.filters.refresh()
	r.list()
	r.record.Refresh(about)
}

// list reads who is asked for and keeps the cursor on its athlete.
func (r *Roster) list() {
	before := r.table.current()
	r.table.read(r.filters.asked(r.table.sort, r.table.down))
	if before != "" {
		r.table.turnTo(before)
	}
	r.showCursor()
}

// showCursor turns the record to the athlete under the cursor.
func (r *Roster) showCursor() {
	r.record.Show(r.table.current())
	r.chosen.SetText(r.table.says())
}

// Tick implements room.Room.
func (r *Roster) Tick(time.Time) {}

// Keys implements room.Room.
func (r *Roster) Keys() []room.Key {
	return append([]room.Key{
		{Press: "Ctrl+F", Does: "Search; or type in the table", Do: r.filters.focus},
		{Press: "Ctrl+N", Does: "Add an athlete", Do: r.askAthlete},
		{Press: "Ctrl+O", Does: "Bring a roster, results or bouts in from a file", Do: r.askFile},
		{Press: "Ctrl+M", Does: "Move the chosen to another track from a day on", Do: r.askMove},
		{Press: "Ctrl+P", Does: "Pause the chosen", Do: func() { r.setStatus(gym.Paused) }},
		{Press: "Ctrl+B", Does: "Bring the chosen back", Do: func() { r.setStatus(gym.Active) }},
		{Press: "Ctrl+D", Does: "Archive the chosen", Do: func() { r.setStatus(gym.Archived) }},
	}, r.record.Keys()...)
}
