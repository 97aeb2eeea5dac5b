package uitest

import (
	"context"
	"testing"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// Host stands in for the window around a room under test: it does what the
// window does, and remembers what it was asked.
type Host struct {
	*Window
	desk   *desk.Desk
	room   room.Room
	Said   []string // sentences at the foot, complaints too
	Opened []string // rooms that the coach was sent to
	Sent   gym.ID   // the subject of the last of them
	Walls  int      // how often the wall was asked for
}

// Stage shows a room over a desk in a window of a size, in a palette.
func Stage(t testing.TB, d *desk.Desk, p look.Palette, size fyne.Size, make func(room.Host) room.Room) *Host {
	t.Helper()
	App(t, p)
	h := &Host{desk: d}
	h.Window = OpenAs(t, p, size, kit.NewText(""))
	h.room = make(h)
	shell := kit.NewShell(h.room.Content())
	shell.TipDelay = 0
	h.Window.shell = shell
	h.Window.SetContent(shell)
	d.Listen(h.room.Refresh)
	h.Window.Canvas().SetOnTypedKey(func(k *fyne.KeyEvent) { h.Typed(k) })
	h.room.Refresh(desk.AboutAll)
	h.room.Show("")
	h.room.Tick(d.Now())
	h.Window.Resize(size.AddWidthHeight(1, 1))
	h.Window.Resize(size)
	return h
}

// Room returns the room on the stage.
func (h *Host) Room() room.Room { return h.room }

// Desk implements room.Host.
func (h *Host) Desk() *desk.Desk { return h.desk }

