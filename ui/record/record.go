// Package record shows one athlete's record card beside the roster: what they
// lift, what they move in conditioning, their own week, and what the coach knows.
//
// [New] makes it and [Record.Show] turns to an athlete. Whatever it shows is read
// from the desk, whatever it changes goes through a verb of the desk. It promises
// that what is typed is kept while a change elsewhere is drawn. It is not a room:
// the roster holds it.
package record

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// Width is what the record needs of a room's width, and Most what it has use for,
// in units.
const (
	Width = 560
	Most  = 640
)

// section is one of the record's parts. It is made once and drawn in place.
type section interface {
	content() fyne.CanvasObject
	show(gym.Athlete)
	keys() []room.Key
}

// Record is the card of one athlete.
type Record struct {
	host    room.Host
	athlete gym.ID
	content *fyne.Container
	card    *kit.Card
	none    *kit.Card
	head    *head
	tabs    []*kit.Button
	parts   []section
	front   int
	stage   *fyne.Container
	lifts   *lifts
	bouts   *bouts
	details *details
	move    func()          // asks for another track for the athlete shown; the roster's
	typed   func(rune) bool // searches the roster
}

// names and keys of the sections, in their order.
var tabs = []struct{ name, key string }{{"Lifts", "F5"}, {"Conditioning", "F6"}, {"Week", "F7"}, {"Details", "F8"}}

// New makes the record. moveTrack asks for another track for the athlete shown;
// typed hears of what is typed into a list.
func New(h room.Host, moveTrack func(), typed func(rune) bool) *Record {
	r := &Record{host: h, move: moveTrack, typed: typed, stage: container.NewStack()}
	r.head = newHead(r)
	r.lifts, r.bouts, r.details = newLifts(r), newBouts(r), newDetails(r)
	r.parts = []section{r.lifts, r.bouts, newOwnWeek(r), r.details}
	bar := []fyne.CanvasObject{}
	for i, t := range tabs {
		b := kit.NewButton(t.name, func() { r.turn(i) }).Key(t.key)
		r.tabs = append(r.tabs, b)
		bar = append(bar, b)
	}
	r.card = kit.NewCard("", kit.Column(look.Gap3, r.head.content, kit.Row(look.Gap2, append(bar, kit.Fill())...), kit.Fill(r.stage)))
	r.none = kit.NewCard("", kit.Fill(kit.NewEmpty("Nobody chosen", "Choose an athlete in the roster to see what they lift and to log what they did.")))
	r.content = container.NewStack(r.card, r.none)
	r.turn(0)
	r.Show("")
	return r
}

// Content is the record's canvas object, the same one at every call.
func (r *Record) Content() fyne.CanvasObject { return r.content }

// Athlete returns who is shown.
func (r *Record) Athlete() gym.ID { return r.athlete }

// Show turns to an athlete; an ID of nobody shows what to do first.
func (r *Record) Show(athlete gym.ID) {
	if athlete != r.athlete {
		r.athlete = athlete
		r.lifts.turned()
		r.bouts.turned()
	}
	r.draw()
}

// Refresh reads the desk again where a change touches the record.
func (r *Record) Refresh(desk.Topic) { r.draw() }

func (r *Record) draw() {
	a, ok := r.host.Desk().Athlete(r.athlete)
	r.card.Hidden, r.none.Hidden = !ok, ok
	if ok {
		r.head.show(a)
		r.parts[r.front].show(a)
	}
	r.content.Refresh()
}

// turn brings a section to the front.
func (r *Record) turn(i int) {
	r.front = i
	for at, b := range r.tabs {
		if at == i {
			b.Primary()
		} else {
			b.Quiet()
		}
	}
	r.stage.Objects = []fyne.CanvasObject{r.parts[i].content()}
	r.stage.Refresh()
	r.draw()
}

// Log gives the keyboard to the line that logs a result.
func (r *Record) Log() {
	r.turn(0)
	r.lifts.entry.focus()
}

// Keys are those of the record and of the section in front.
func (r *Record) Keys() []room.Key {
	keys := []room.Key{}
	for i, t := range tabs {
		keys = append(keys, room.Key{Press: t.key, Does: "Record: " + t.name, Do: func() { r.turn(i) }})
	}
	keys = append(keys, room.Key{Press: "F2", Does: "Log a result of the chosen lift", Do: r.Log})
	keys = append(keys, room.Key{Press: "Ctrl+T", Does: "Decide the heaviest tier for every movement", Do: r.decideForAll})
	return append(keys, r.parts[r.front].keys()...)
}

// ask puts a question in front of the window.
func (r *Record) ask(q kit.Question) *kit.Modal { return kit.Ask(r.host.Window().Canvas(), q) }

// done shows what a verb did, or why it did not.
func (r *Record) done(err error, sentence string) bool {
	if r.host.Fail(err) {
		r.host.Say(sentence, true)
		return true
	}
	return false
}
