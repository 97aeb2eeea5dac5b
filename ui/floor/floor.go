// Package floor is the room that drives a class live: who is here, who shares a
// bar, the climb on the clock with its calls, the results, the conditioning and
// the end.
//
// A program needs [New]. The package promises that one key answers for a lifter
// and that nothing it draws is computed here: it reads package desk and calls its
// verbs. The clock it shows is a function of the class and of now; it keeps none.
package floor

import (
	"fmt"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// view is one step of a class.
type view interface {
	content() fyne.CanvasObject
	refresh()            // the class or what it stands on has changed
	show()               // it came to the front
	tick(m clock.Moment) // a second has passed
	keys() []room.Key
}

// The steps of a class, in the order of the bar at the top.
const (
	stepSetUp = iota
	stepClimb
	stepResults
	stepConditioning
	stepSummary
)

var stepNames = []string{"Set-up", "Climb", "Results", "Conditioning", "Summary"}

// stepOf is where a class stands.
var stepOf = map[gym.Stage]int{
	gym.SetUp: stepSetUp, gym.Climbing: stepClimb, gym.Conditioning: stepConditioning, gym.Finished: stepSummary,
}

// Floor is the room.
type Floor struct {
	host  room.Host
	id    gym.ID    // of the class on the floor; empty for none
	class gym.Class // as it stands on the desk
	board desk.Board
	found gym.ID // the class that was on the clock when the program started

	chooser *chooser
	title   *kit.Text
	steps   *kit.Segmented
	views   []view
	at      int
	stage   *fyne.Container
	body    fyne.CanvasObject
	all     *fyne.Container
}

// New returns the room.
func New(h room.Host) room.Room {
	f := &Floor{host: h, stage: container.NewStack()}
	if live, ok := f.desk().LiveClass(); ok && live.Clock.Started() {
		f.found = live.ID
	}
	f.chooser = newChooser(f)
	f.views = []view{newSetUp(f), newLive(f), newResults(f), newWorkout(f), newSummary(f)}
	f.title = kit.NewTitle("").Shrinks(160)
	f.steps = kit.NewSegmented(stepNames, 0, f.turn)
	wall := kit.NewButton("Wall", h.Wall).Key("Ctrl+W").Tip("Open, fill or close the athletes' window")
	head := kit.Row(look.Gap4, kit.Fill(kit.Column(0, kit.Fill(), f.title, kit.Fill())), f.steps, wall)
	f.body = kit.Pad(look.Gap4, kit.Column(look.Gap3, kit.Tall(look.ControlHeight, head), kit.Fill(f.stage)))
	f.all = container.NewStack(f.chooser.content())
	return f
}

// Content implements room.Room.
func (f *Floor) Content() fyne.CanvasObject { return f.all }

// Show implements room.Room; the subject is a class.
func (f *Floor) Show(subject gym.ID) {
	if _, ok := f.desk().Class(subject); ok {
		f.take(subject)
	} else if live, ok := f.desk().LiveClass(); ok {
		f.take(live.ID)
	} else {
		f.leave()
	}
	f.greet()
}

// take brings a class to the floor, at the step where it stands.
func (f *Floor) take(id gym.ID) {
	f.id = id
	f.read()
	f.all.Objects = []fyne.CanvasObject{f.body}
	f.all.Refresh()
	f.turn(stepOf[f.class.Stage])
}

// leave goes back to the choice of a class.
func (f *Floor) leave() {
	f.id, f.class = "", gym.Class{}
	f.chooser.refresh()
	f.all.Objects = []fyne.CanvasObject{f.chooser.content()}
	f.all.Refresh()
	f.chooser.list.Focus()
}

// greet says, once, that a class went on while the program was away.
func (f *Floor) greet() {
	if f.found == "" || f.id != f.found {
		return
	}
	f.found = ""
	if text := f.desk().Resumed(f.class); text != "" {
		f.host.Say(text, false)
	}
}

// turn brings a step to the front.
func (f *Floor) turn(step int) {
	f.at = step
	f.steps.Set(step)
	f.host.Window().Canvas().Unfocus()
	kit.HideTip(f.stage)
	v := f.views[step]
	f.stage.Objects = []fyne.CanvasObject{v.content()}
	f.stage.Refresh()
	v.refresh()
	v.tick(f.moment())
	v.show()
}

// Refresh implements room.Room.
func (f *Floor) Refresh(desk.Topic) {
	if f.id == "" {
		f.chooser.refresh()
		return
	}
	stage := f.class.Stage
	if !f.read() { // its opening was undone
		f.leave()
		return
	}
	if f.class.Stage != stage {
		f.turn(stepOf[f.class.Stage])
		return
	}
	f.views[f.at].refresh()
	f.views[f.at].tick(f.moment())
}

// read takes the class and its board from the desk; false when there is none.
func (f *Floor) read() (ok bool) {
	f.class, ok = f.desk().Class(f.id)
	f.board = f.desk().Boards().Board(f.class)
	f.title.SetText(fmt.Sprintf("%s, %s", f.class.Name, f.class.At))
	return ok
}

// Tick implements room.Room.
func (f *Floor) Tick(now time.Time) {
	if f.id != "" {
		f.views[f.at].tick(f.board.At(now))
	}
}

// Keys implements room.Room.
func (f *Floor) Keys() []room.Key {
	if f.id == "" {
		return f.chooser.keys()
	}
	return append(f.views[f.at].keys(),
		room.Key{Press: "F3", Does: "Go to the step before", Do: func() { f.turn(max(0, f.at-1)) }},
		room.Key{Press: "F4", Does: "Go to the next step", Do: func() { f.turn(min(len(f.views)-1, f.at+1)) }})
}

func (f *Floor) desk() *desk.Desk { return f.host.Desk() }

func (f *Floor) moment() clock.Moment { return f.board.At(f.desk().Now()) }

// did shows what a verb did, with a way back, or why it did not.
func (f *Floor) did(err error, sentence string) bool {
	if !f.host.Fail(err) {
		return false
	}
	f.host.Say(sentence, true)
	return true
}
