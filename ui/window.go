// Package ui is the console's main window: the rail of rooms, the line of notices
// at the foot, the keys that work everywhere, and the one ticker.
//
// A program needs [NewWindow] and [Window.Run]. The package promises that a room
// which is not in front costs nothing. It computes nothing about the gym: rooms
// read the desk and call its verbs.
package ui

import (
	"context"
	"slices"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/gymroom"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// Size is how large the window opens, in units.
var Size = fyne.NewSize(1440, 900)

// Options are what the program hands to its window.
type Options struct {
	Speed   float64         // of the desk's clock against the real one; 0 is 1
	Wall    func()          // opens, fills or closes the wall window; nil where there is none
	Look    func()          // draws every window in the look that the settings ask for
	Front   string          // the room to begin in; empty is the first
	Keeper  gymroom.Keeper  // of the gym's file; nil where the window has none
	Machine gymroom.Machine // that the program runs on; nil where nothing is known of it
}

// Window is the console's main window.
type Window struct {
	desk    *desk.Desk
	window  fyne.Window
	wall    func()
	look    func()
	keeper  gymroom.Keeper
	machine gymroom.Machine
	speed   float64
	names   []string
	rooms   []room.Room
	rail    []*kit.RailItem
	stale   []bool // the room was made in another look
	dark    bool
	front   int
	stage   *fyne.Container
	notice  *kit.Notice
	cart    *cart
	gym     *kit.Text
	life    context.Context // of what is on its way beside Fyne's thread, until [Window.End]
	end     context.CancelFunc
	due     time.Time                  // of the next second, while somebody watches
	watch   func(due, drawn time.Time) // nil for nobody
}

// NewWindow fills a window with the console. It must be called on Fyne's thread.
func NewWindow(in fyne.Window, d *desk.Desk, o Options) *Window {
	w := &Window{desk: d, window: in, wall: o.Wall, look: o.Look, keeper: o.Keeper, machine: o.Machine, speed: o.Speed, stage: container.NewStack()}
	if w.speed == 0 {
		w.speed = 1
	}
	w.life, w.end = context.WithCancel(context.Background())
	w.notice = kit.NewNotice()
	w.cart = newCart(w.notice)
	w.gym = kit.NewStrong(d.Settings().Name).Shrinks(120)
	for _, m := range makers {
		w.names = append(w.names, m.name)
		w.rooms = append(w.rooms, m.make(w))
	}
	w.stale, w.dark = make([]bool, len(w.rooms)), d.Settings().Dark
	in.SetPadded(false)
	in.SetContent(kit.NewShell(w.content()))
	w.listen()
	in.SetCloseIntercept(w.leave)
	d.Listen(w.refresh)
	w.Open(o.Front, "")
	return w
}

func (w *Window) content() fyne.CanvasObject {
	foot := kit.Column(0, kit.NewRule(), kit.Tall(look.ControlHeight, kit.Fill(w.cart.foot)))
	body := kit.Column(0, kit.Fill(w.stage), foot)
	return container.NewBorder(nil, nil, w.side(), nil, body)
}

func (w *Window) side() fyne.CanvasObject {
	items := []fyne.CanvasObject{kit.Pad(look.Gap4, kit.Column(0, w.gym, kit.NewCaption(w.desk.Settings().Town)))}
	for i, m := range makers {
		item := kit.NewRailItem(m.name, roomKey(i), func() { w.show(i, "") })
		w.rail = append(w.rail, item)
		items = append(items, item)
	}
	items = append(items, kit.Fill(),
		kit.NewButton("Find anything", w.find).Key("Ctrl+K").Plain(),
		kit.NewButton("All keys", w.showKeys).Key("F1").Plain())
	return kit.Pad(look.Gap2, kit.NewPanel(kit.Pad(look.Gap1, kit.Column(look.Gap1, items...))))
}

// refresh hands a change to the rooms. A room behind reads it when it comes to
// the front.
func (w *Window) refresh(about desk.Topic) {
	if about&desk.AboutSettings != 0 {
		w.gym.SetText(w.desk.Settings().Name)
		w.relook()
	}
	w.rooms[w.front].Refresh(about)
}

// relook puts on the look that the settings ask for. Fyne draws again only what a
// window shows, so every room, with the pages that it keeps behind, is made anew
// when it comes to the front.
func (w *Window) relook() {
	dark := w.desk.Settings().Dark
	if w.dark == dark {
		return
	}
	w.dark = dark
	if w.look != nil {
		w.look()
	}
	for i := range w.rooms {
		w.stale[i] = true
	}
	// After the room in front has ended what it is doing.
	fyne.Do(func() { w.show(w.front, "") })
}

// Open implements room.Host; a name of no room is the first.
func (w *Window) Open(name string, subject gym.ID) {
	for i, n := range w.names {
		if n == name {
			w.show(i, subject)
			return
		}
	}
	w.show(0, subject)
}

func (w *Window) show(i int, subject gym.ID) {
	w.front = i
	if w.stale[i] {
		w.stale[i] = false
		w.rooms[i] = makers[i].make(w)
	}
	for at, item := range w.rail {
		item.Here(at == i)
	}
	r := w.rooms[i]
	w.window.Canvas().Unfocus()
	kit.HideTip(w.stage)
	w.stage.Objects = []fyne.CanvasObject{r.Content()}
	w.stage.Refresh()
	r.Refresh(desk.AboutAll)
	r.Show(subject)
	r.Tick(w.desk.Now())
}

// Front returns the name of the room in front.
func (w *Window) Front() string { return w.names[w.front] }

// Place returns where a room stands on the rail, from 0, and -1 for none.
func (w *Window) Place(name string) int { return slices.Index(w.names, name) }

// Desk implements room.Host.
func (w *Window) Desk() *desk.Desk { return w.desk }

// Window implements room.Host.
func (w *Window) Window() fyne.Window { return w.window }

// Keeper returns what copies and checks the gym's file; nil where the window has
// no file of its own. The Gym room asks for it.
func (w *Window) Keeper() gymroom.Keeper { return w.keeper }

// Machine returns what is known of the machine; nil for nothing. The Gym room asks
// for it.
func (w *Window) Machine() gymroom.Machine { return w.machine }

// Wall implements room.Host.
func (w *Window) Wall() {
	if w.wall == nil {
		w.Say("This program was opened without a wall window.", false)
		return
	}
	w.wall()
}

// Say implements room.Host.
func (w *Window) Say(sentence string, undo bool) {
	if undo {
		w.notice.Say(sentence, w.undo)
		return
	}
	w.notice.Say(sentence, nil)
}

// Warn shows a sentence that a coach should not miss, about something that goes on
// all the same.
func (w *Window) Warn(sentence string) { w.notice.Warn(sentence) }

// Fail implements room.Host.
func (w *Window) Fail(err error) bool {
	if err == nil {
		return true
	}
	w.notice.Fail(err)
	return false
}

// mute switches the sound of the class's clock off or on.
func (w *Window) mute() {
	on := !w.desk.Settings().Sound
	if !w.Fail(w.desk.ChangeSettings(func(s *gym.Settings) error { s.Sound = on; return nil })) {
		return
	}
	said := "The clock is silent from now on. F12 lets it sound again."
	if on {
		said = "The clock sounds its cues."
	}
	w.Say(said, true)
}

// undo takes the last step back. Of a long one that is still on its way, when
// nothing was done since, it is that.
func (w *Window) undo() {
	if w.cart.stop() {
		return
	}
	w.shift(w.desk.BeginUndo, "Taken back: ", false)
}

func (w *Window) redo() { w.shift(w.desk.BeginRedo, "Made again: ", true) }

func (w *Window) shift(begin func() (string, *desk.LongStep, error), said string, undo bool) {
	label, long, err := begin()
	if !w.Fail(err) {
		return
	}
	w.Carry(long, func(err error) {
		if w.Fail(err) {
			w.Say(said+label+".", undo)
		}
	})
}
