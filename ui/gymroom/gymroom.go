// Package gymroom is the room where a coach says what the gym is: its name and
// units, its timetable, bars, plates and implements, its climbs and catalogue,
// what its conditioning is composed by, and its backups.
//
// [New] makes it. Everything saves itself at once and can be taken back, but for
// a climb, which is saved when it is whole. The room lays out and listens: what
// it shows is read from the desk, and what may not be is refused by the desk and
// said beside the field. Backups are made by the program around the room, through
// a [Keeper].
package gymroom

import (
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// section is one page of the room.
type section interface {
	content() fyne.CanvasObject
	// refresh reads the desk again and draws what changed in place.
	refresh()
	// keys are those that work while the section is in front.
	keys() []room.Key
}

// sections are the pages in the order of the rail; F2 leads to the first.
var sections = []struct {
	name, key string
	make      func(*Gym) section
}{
	{"The gym", "F2", newHouse},
	{"Timetable", "F3", newTimetable},
	{"Bars and plates", "F4", newEquipment},
	{"Implements", "F5", newImplements},
	{"Climbs", "F6", newClimbs},
	{"Catalogue", "F7", newCatalogue},
	{"Conditioning", "F8", newComposing},
	{"Backups", "F9", newBackups},
}

// Gym is the room.
type Gym struct {
	host    room.Host
	content *fyne.Container
	stage   *fyne.Container
	rail    []*kit.RailItem
	pages   []section
	front   int
}

// railWidth is the width of the list of sections.
const railWidth float32 = 192

// New makes the room.
func New(h room.Host) room.Room {
	g := &Gym{host: h, stage: container.NewStack()}
	items := []fyne.CanvasObject{}
	for i, s := range sections {
		g.pages = append(g.pages, s.make(g))
		item := kit.NewRailItem(s.name, s.key, func() { g.show(i) })
		g.rail = append(g.rail, item)
		items = append(items, item)
	}
	side := kit.NewPanel(kit.Pad(look.Gap1, kit.Column(look.Gap1, append(items, kit.Fill())...)))
	g.content = kit.Pad(look.Gap6, kit.Row(look.Gap6, kit.Full(kit.Wide(railWidth, side)), kit.Fill(g.stage)))
	g.show(0)
	return g
}

// show brings a section to the front.
func (g *Gym) show(i int) {
	g.front = i
	for at, item := range g.rail {
		item.Here(at == i)
	}
	if w := g.host.Window(); w != nil {
		w.Canvas().Unfocus()
	}
	g.pages[i].refresh()
	g.stage.Objects = []fyne.CanvasObject{g.pages[i].content()}
	g.stage.Refresh()
}

// Content implements room.Room.
func (g *Gym) Content() fyne.CanvasObject { return g.content }

// shows is what the sections read.
const shows = desk.AboutSettings | desk.AboutEquipment | desk.AboutCatalogue | desk.AboutRoster | desk.AboutPlan

// Refresh implements room.Room.
func (g *Gym) Refresh(about desk.Topic) {
	if about&shows != 0 {
		g.pages[g.front].refresh()
	}
}

// Show implements room.Room.
func (g *Gym) Show(gym.ID) {}

// Tick implements room.Room.
func (g *Gym) Tick(time.Time) {}

// Keys implements room.Room: those of the section in front, those that mean the
// same in every section, and those that lead to another. Keys with something held
// down are there always, because the window learns them once.
func (g *Gym) Keys() []room.Key {
	keys := g.pages[g.front].keys()
	for _, k := range shared {
		keys = append(keys, room.Key{Press: k.press, Does: k.does, Do: func() {
			if !k.do(g.pages[g.front]) {
				g.host.Say(k.no, false)
			}
		}})
	}
	for i, s := range sections {
		keys = append(keys, room.Key{Press: s.key, Does: "Go to " + s.name, Do: func() { g.show(i) }})
	}
	return keys
}

// page sets a section's title and actions above its content.
func page(title string, body fyne.CanvasObject, actions ...fyne.CanvasObject) fyne.CanvasObject {
	top := kit.Row(look.Gap2, append([]fyne.CanvasObject{kit.NewTitle(title), kit.Fill()}, actions...)...)
	return kit.Column(look.Gap4, kit.Tall(look.ControlHeight, top), kit.Fill(body))
}

// scroll leaves room for the outlines of what is scrolled, which would be cut off.
func scroll(o fyne.CanvasObject) fyne.CanvasObject { return kit.Scroll(kit.Pad(look.Gap1, o)) }

// level is a stand-in for a button in the title of a card beside cards with one,
// so that their titles stand on one line.
func level() fyne.CanvasObject { return kit.Tall(look.ControlHeight, kit.Fill()) }

// saved says that a change was kept, and offers to take it back. An error it says
// whole, as a field has room for its beginning only, and hands on for the field.
func (g *Gym) saved(sentence string, err error) error {
	if g.host.Fail(err) {
		g.host.Say(sentence, true)
	}
	return err
}

// done is [Gym.saved] for what has no field to say an error under.
func (g *Gym) done(sentence string, err error) bool {
	if !g.host.Fail(err) {
		return false
	}
	g.host.Say(sentence, true)
	return true
}
