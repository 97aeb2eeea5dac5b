// Package room says what a room of the console is and what it may ask of the
// window around it.
//
// A room implements [Room] and is handed a [Host]. Rooms never import each
// other: to send the coach elsewhere a room calls [Host.Open] with a name from
// this package.
package room

import (
	"time"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
)

// Names of the rooms, as the coach reads them.
const (
	Today    = "Today"
	Roster   = "Roster"
	Cycle    = "Cycle"
	Floor    = "Floor"
	Handouts = "Handouts"
	Gym      = "Gym"
)

// Room is one screen of the desk window. All its methods run on Fyne's thread.
type Room interface {
	// Content returns the room's canvas object, the same one at every call.
	Content() fyne.CanvasObject
	// Refresh reads the desk again and draws what changed in place.
	Refresh(about desk.Topic)
	// Show is called when the room comes to the front. The subject is the
	// athlete, class or cycle that the coach came for; it may be empty.
	Show(subject gym.ID)
	// Tick is called once a second while the room is in front.
	Tick(now time.Time)
	// Keys lists what the keyboard does here, in the order of the shortcut sheet.
	Keys() []Key
}

// Key is one action of the keyboard. Press is written as the coach reads it:
// "N", "Space", "F5", "Ctrl+S", "Ctrl+Shift+S", "Delete", "Left".
type Key struct {
	Press string
	Does  string // "Start the clock"
	Do    func()
}

// Host is what the window does for its rooms.
type Host interface {
	Desk() *desk.Desk
	Window() fyne.Window
	// Say shows one calm line at the foot; with undo it offers to take the last
	// step back.
	Say(sentence string, undo bool)
	// Fail shows why something did not happen. A nil error shows nothing, so a
	// verb's result can be handed on as it is; it returns true when err is nil.
	Fail(err error) bool
	// Open brings a room to the front.
	Open(name string, subject gym.ID)
	// Typed lets a focused list hand on a key that it has no use for.
	Typed(key *fyne.KeyEvent) bool
	// Long runs work beside Fyne's thread with progress and a way to cancel, then
	// done on Fyne's thread. Work must not touch the desk or any widget.
	Long(title string, work func(job *Job) error, done func(error))
	// Carry writes a long step beside Fyne's thread while the coach goes on, with its
	// progress and a way to stop it at the foot, takes it up, and then calls done on
	// Fyne's thread. A nil step is one that was short and is made already.
	Carry(step *desk.LongStep, done func(error))
	// Wall opens, fills or closes the wall window.
	Wall()
}
