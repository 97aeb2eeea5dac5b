package gymroom

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// timetable is the section about the week's classes and the closed days.
type timetable struct {
	*Gym
	body   fyne.CanvasObject
	grid   *kit.HourGrid
	slots  []gym.Slot
	shown  gym.ID // the class under the cursor
	form   *slotForm
	gaps   *kit.Prose
	closed *closures
	days   bool // the closed days were worked in last
}

// formWidth is that of the forms at the right.
const formWidth float32 = 304

func newTimetable(g *Gym) section {
	t := &timetable{Gym: g, grid: kit.NewHourGrid(nil), gaps: kit.NewProse("", 200).Small().Tone(look.Warn)}
	t.grid.Empty = "No class yet. Make the first with Ctrl+N."
	t.grid.OnFocus = func() { t.days = false }
	t.grid.OnCursor = func(i int) {
		t.shown = t.slots[i].ID
		t.form.show()
	}
	t.grid.OnOpen = func(int) { t.form.name.Focus() }
	t.grid.OnShift = t.shift
	t.form = newSlotForm(t)
	t.closed = newClosures(t)
	week := kit.Row(look.Gap4, kit.Fill(kit.NewPanel(t.grid)), kit.Full(kit.Wide(formWidth, t.form.card)))
	t.body = page("Timetable", kit.Column(look.Gap4, kit.Fill(week), kit.Tall(closedHeight, t.closed.body)),
		kit.NewButton("Remove", t.remove).Key("Del").Tip("Takes out the class or the closed days under the cursor."),
		kit.NewButton("New", t.add).Key("Ctrl+N").Primary().Tip("Adds a class, or closed days where you worked in them last."))
	return t
}

func (t *timetable) content() fyne.CanvasObject { return t.body }

func (t *timetable) keys() []room.Key {
	return []room.Key{
		{Press: "C", Does: "Go to the week's classes; Ctrl and an arrow move one", Do: t.grid.Focus},
		{Press: "D", Does: "Go to the closed days", Do: t.closed.list.list.Focus},
		{Press: "Del", Does: "Remove the class or closed days under the cursor", Do: t.remove},
	}
}

func (t *timetable) refresh() {
	d := t.host.Desk()
	first := d.Settings().FirstDay
	t.slots = d.Timetable()
	t.grid.SetDays(dayNames(first))
	t.grid.Set(t.blocks(first))
	if at := t.row(t.shown); at >= 0 {
		t.grid.Select(at)
	}
	t.shown = ""
	if at := t.grid.Cursor(); at >= 0 {
		t.shown = t.slots[at].ID
	}
	t.form.refresh()
	t.closed.refresh()
	t.gaps.SetText(strings.Join(d.Unserved(), " "))
}

func dayNames(first day.Weekday) []string {
	var names []string
	for i := range 7 {
		names = append(names, ((first + day.Weekday(i)) % 7).Short())
	}
	return names
}

func (t *timetable) blocks(first day.Weekday) []kit.HourBlock {
	var blocks []kit.HourBlock
	for _, s := range t.slots {
		blocks = append(blocks, kit.HourBlock{
			Day: int(s.Weekday-first+7) % 7, Start: int(s.At), Minutes: s.Minutes,
			Title: s.Name, Sub: t.host.Desk().TracksText(s),
		})
	}
	return blocks
}

func (t *timetable) row(id gym.ID) int {
	return slices.IndexFunc(t.slots, func(s gym.Slot) bool { return s.ID == id })
}

// slot is the class under the cursor.
func (t *timetable) slot() (gym.Slot, bool) {
	at := t.grid.Cursor()
	if at < 0 {
		return gym.Slot{}, false
	}
	return t.slots[at], true
}

// change keeps the class under the cursor as set leaves it.
func (t *timetable) change(saved string, set func(*gym.Slot) error) error {
	s, ok := t.slot()
	if !ok {
		return nil
	}
	s.Tracks = slices.Clone(s.Tracks)
	if err := set(&s); err != nil {
		return err
	}
	_, err := t.host.Desk().KeepSlot(s)
	return t.saved(saved, err)
}

func (t *timetable) shift(block, days, minutes int) {
	t.done("The class is moved.", t.host.Desk().MoveSlot(t.slots[block], days, minutes))
}

func (t *timetable) add() {
	if t.days {
		t.closed.add()
		return
	}
	on := t.host.Desk().Settings().FirstDay
	if s, ok := t.slot(); ok {
		on = s.Weekday
	}
	id, err := t.host.Desk().KeepSlot(t.host.Desk().ProposeSlot(on))
	if t.done("Added. Now write when it is.", err) {
		t.shown = id
		t.refresh()
		t.form.show()
		t.form.name.Focus()
	}
}

func (t *timetable) remove() {
	if t.days {
		t.closed.remove()
		return
	}
	if s, ok := t.slot(); ok {
		t.done(s.Name+" is taken out. Past classes stay.", t.host.Desk().DropSlot(s.ID))
		t.form.show()
	}
}
