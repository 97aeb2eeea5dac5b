// Package cyclegrid is the room in which a coach plans: a grid of weeks by days for
// every track of a cycle, the five parts of the chosen day beside it, and what
// breaks a rule.
//
// [New] makes it. Everything it shows is read from the desk's views of a cycle,
// and everything it changes goes through a verb of the desk, so each change is one
// step that Ctrl+Z takes back. Days that were trained are shown and never changed.
// It judges no plan itself: see package cycle.
package cyclegrid

import (
	"fmt"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// Cycle is the room.
type Cycle struct {
	host  room.Host
	id    gym.ID // of the cycle in front
	view  desk.CycleView
	track int
	clip  desk.Clip
	seen  bool // shown before: the cursor stays where it was

	title  *kit.Text
	dates  *kit.Text
	choose *kit.Choice
	tabs   *kit.Segmented
	grid   *kit.WeekGrid
	side   *side
	maker  *maker
	body   fyne.CanvasObject
	empty  fyne.CanvasObject
	all    *fyne.Container
}

// sideWidth is what the day editor needs beside the grid.
const sideWidth float32 = 392

// New makes the room.
func New(h room.Host) room.Room {
	r := &Cycle{host: h, title: kit.NewTitle("").Shrinks(120), dates: kit.NewCaption("").Shrinks(80)}
	r.choose = kit.NewChoice("", nil, func(o kit.Option) { r.take(gym.ID(o.Key)) }).Hint("Another cycle").Least(160)
	r.tabs = kit.NewSegmented([]string{"–"}, 0, r.turn)
	r.grid = newGrid(r)
	r.side = newSide(r)
	r.maker = newMaker(r)
	planned := kit.NewPanel(kit.Pad(look.Gap1, r.grid))
	r.body = kit.Pad(look.Gap4, kit.Column(look.Gap3, r.head(), kit.Row(look.Gap2, r.tabs, kit.Fill(), r.side.turns),
		kit.Fill(kit.Row(look.Gap3, kit.Fill(planned), kit.Full(kit.Wide(sideWidth, r.side.stage)))), r.foot()))
	r.empty = kit.NewEmpty("No cycle yet",
		"A cycle is a block of 3 to 26 weeks with a goal. Make one in four steps from the built-in tracks, and change it day by day.",
		kit.NewButton("Make a cycle", r.make).Primary().Key("N"))
	r.all = container.NewStack(r.body)
	return r
}

func (r *Cycle) desk() *desk.Desk { return r.host.Desk() }

func (r *Cycle) head() fyne.CanvasObject {
	words := kit.Column(0, kit.Row(look.Gap3, kit.Fill(r.title), legend()), r.dates) // the goal has the whole width
	return kit.Tall(40, kit.Row(look.Gap2, kit.Fill(words), r.choose,
		kit.NewButton("Goal", r.rename).Key("G").Tip("The cycle's name and goal, and its removal."),
		kit.NewButton("Run a wave", r.wave).Key("W").Tip("Writes the rep counts of the main lifts into this track's weeks."),
		kit.NewButton("New cycle", r.make).Key("N").Tip("Makes a cycle in four steps."),
		kit.NewButton("Next cycle", r.next).Key("P").Tip("Starts another cycle with the plans of this one.")))
}

// legend names the marks of the regions.
func legend() fyne.CanvasObject {
	row := kit.Row(look.Gap1)
	for _, x := range []struct {
		region gym.Region
		name   string
	}{{gym.Lower, "lower body"}, {gym.Upper, "upper body"}, {gym.WholeBody, "whole body"}, {gym.Trunk, "trunk"}} {
		row.Add(kit.NewMark(regionShapes[x.region], look.Accent, 10))
		row.Add(kit.NewCaption(x.name))
		row.Add(kit.Wide(look.Gap1, kit.Fill()))
	}
	return row
}

// foot is the bar of what can be done with days and weeks.
func (r *Cycle) foot() fyne.CanvasObject {
	button := func(label, key, tip string, do func()) fyne.CanvasObject {
		return kit.NewButton(label, do).Key(key).Plain().Tip(tip)
	}
	return kit.Row(0, kit.NewCaption("Days"), kit.Wide(look.Gap2, kit.Fill()),
		button("Copy", "Ctrl+C", "Copies the marked days.", r.copy),
		button("Cut", "Ctrl+X", "Copies the marked days and clears them.", r.cut),
		button("Paste", "Ctrl+V", "Puts the copied days here.", r.paste),
		button("Clear", "Delete", "Makes the marked days rest days.", r.clear),
		button("Repeat", "R", "Puts this day on its weekday in the training weeks that follow.", r.repeat),
		kit.Fill(), kit.NewCaption("Weeks"), kit.Wide(look.Gap2, kit.Fill()),
		button("Insert", "I", "Puts an empty week before this one, in all tracks.", r.insertWeek),
		button("Take out", "O", "Takes this week out of all tracks.", r.removeWeek),
		button("Kind", "K", "Makes it a training, light or test week.", r.weekKind),
		button("Later", "L", "Moves this track's weeks from here on a week later.", func() { r.shift(1) }),
		button("Earlier", "E", "Moves this track's weeks from here on a week earlier.", func() { r.shift(-1) }))
}

// Content implements room.Room.
func (r *Cycle) Content() fyne.CanvasObject { return r.all }

// Tick implements room.Room.
func (r *Cycle) Tick(time.Time) {}

// shownTopics are what the room reads.
const shownTopics = desk.AboutPlan | desk.AboutClass | desk.AboutResults | desk.AboutCatalogue | desk.AboutRoster | desk.AboutSettings | desk.AboutEquipment

// Refresh implements room.Room.
func (r *Cycle) Refresh(about desk.Topic) {
	if about&shownTopics == 0 {
		return
	}
	if _, ok := r.desk().Cycle(r.id); !ok {
		usual, _ := r.desk().UsualCycle()
		r.id, r.track = usual.ID, 0
	}
	r.read()
}

// Show implements room.Room; the subject is a cycle.
func (r *Cycle) Show(subject gym.ID) {
	if _, ok := r.desk().Cycle(subject); ok && subject != r.id {
		r.take(subject)
		return
	}
	if r.maker.open || r.id == "" {
		return
	}
	if !r.seen {
		r.goToday()
	}
	r.seen = true
	r.grid.Focus()
}

// take brings a cycle to the front.
func (r *Cycle) take(id gym.ID) {
	r.id, r.track = id, 0
	r.maker.open = false
	r.read()
	r.goToday()
	r.grid.Focus()
}

// goToday puts the cursor on today.
func (r *Cycle) goToday() { r.ShowDay(r.desk().Today()) }

// ShowDay puts the cursor on a day, or on the first of a cycle without it.
func (r *Cycle) ShowDay(on day.Date) {
	c, spot := r.view.Cycle, kit.Spot{}
	if w := c.WeekOf(on); w > 0 {
		spot = kit.Spot{Week: w - 1, Day: on.Since(c.Start) % 7}
	}
	r.grid.Select(spot)
	r.side.refresh()
}

// read reads the cycle in front and draws it in place.
func (r *Cycle) read() {
	r.view, _ = r.desk().ViewCycle(r.id)
	r.track = max(0, min(r.track, len(r.view.Tracks)-1))
	r.front()
	c := r.view.Cycle
	r.title.SetText(c.Name)
	r.dates.SetText(datesOf(c))
	r.drawChoice()
	r.drawGrid()
	r.side.refresh()
}

// front shows the maker, the cycle, or what to do without one.
func (r *Cycle) front() {
	object := r.body
	switch {
	case r.maker.open:
		object = r.maker.all
	case r.id == "":
		object = r.empty
	}
	if len(r.all.Objects) != 1 || r.all.Objects[0] != object {
		r.all.Objects = []fyne.CanvasObject{object}
		r.all.Refresh()
	}
}

func datesOf(c gym.Cycle) string {
	text := fmt.Sprintf("%d weeks, %s to %s.", len(c.Weeks), c.Start.Short(), c.End().Short())
	if c.Goal != "" {
		text += " " + c.Goal + "."
	}
	return text
}

func (r *Cycle) drawChoice() {
	var options []kit.Option
	for _, c := range r.desk().Cycles() {
		options = append(options, kit.Option{Key: string(c.ID), Text: c.Name, Note: "from " + c.Start.Short()})
	}
	r.choose.SetOptions(options)
	r.choose.Set("")
	r.choose.Hidden = len(options) < 2
}

// turn brings another track to the front.
func (r *Cycle) turn(track int) {
	r.track = track
	r.drawGrid()
	r.side.refresh()
	r.grid.Focus()
}

// trackID is the track in front.
func (r *Cycle) trackID() gym.ID {
	if r.track < len(r.view.Tracks) {
		return r.view.Tracks[r.track].ID
	}
	return ""
}

// at is the day under the cursor.
func (r *Cycle) at() cycle.At {
	s := r.grid.Cursor()
	return desk.AtColumn(r.view.Cycle, r.trackID(), s.Week+1, s.Day)
}

// ready reports whether there is a cycle to change; it says what to do if not.
func (r *Cycle) ready() bool {
	if r.id == "" || r.maker.open {
		r.host.Say("There is no cycle in front. Make one first.", false)
		return false
	}
	return true
}

// did shows why a change failed, or says what was done and offers to undo it.
func (r *Cycle) did(err error, sentence string) bool {
	if !r.host.Fail(err) {
		return false
	}
	r.host.Say(sentence, true)
	return true
}

// Keys implements room.Room.
func (r *Cycle) Keys() []room.Key {
	if r.maker.open {
		return r.maker.keys()
	}
	keys := []room.Key{
		{Press: "Enter", Does: "Go to the parts of the day", Do: r.side.focus},
		{Press: "D", Does: "Turn to the day's next page: lifts, conditioning, warm-up and finisher", Do: r.side.page},
		{Press: "Esc", Does: "Go back to the grid", Do: r.grid.Focus},
		{Press: "Ctrl+C", Does: "Copy the marked days", Do: r.copy},
		{Press: "Ctrl+X", Does: "Cut the marked days", Do: r.cut},
		{Press: "Ctrl+V", Does: "Paste days here", Do: r.paste},
		{Press: "Delete", Does: "Make the marked days rest days", Do: r.clear},
		{Press: "Shift+Down", Does: "Mark more days, with Shift and any arrow", Do: r.grid.Focus},
		{Press: "Ctrl+Down", Does: "Move the day, with Ctrl and any arrow", Do: r.grid.Focus},
		{Press: "R", Does: "Repeat the day through the weeks", Do: r.repeat},
		{Press: "I", Does: "Insert a week here", Do: r.insertWeek},
		{Press: "O", Does: "Take this week out", Do: r.removeWeek},
		{Press: "K", Does: "Make it a training, light or test week", Do: r.weekKind},
		{Press: "L", Does: "Shift the weeks from here on later", Do: func() { r.shift(1) }},
		{Press: "E", Does: "Shift the weeks from here on earlier", Do: func() { r.shift(-1) }},
		{Press: "W", Does: "Run a wave", Do: r.wave},
		{Press: "C", Does: "Compose the conditioning", Do: r.side.compose},
		{Press: "B", Does: "Show the day, or what breaks a rule", Do: r.side.flip},
		{Press: "T", Does: "Go to today", Do: r.goToday},
		{Press: "G", Does: "Write the cycle's name and goal, or remove it", Do: r.rename},
		{Press: "N", Does: "Make a new cycle", Do: r.make},
		{Press: "P", Does: "Start the next cycle from this one", Do: r.next},
	}
	for i, t := range r.view.Tracks {
		if i < 9 {
			keys = append(keys, room.Key{Press: fmt.Sprint(i + 1), Does: "Go to " + t.Name, Do: func() { r.tabs.Set(i); r.turn(i) }})
		}
	}
	return keys
}
