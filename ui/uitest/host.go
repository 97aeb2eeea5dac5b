package uitest

import (
	"context"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// Host stands in for the window around a room under test: it does what the
// window does, and remembers what it was asked.
type Host struct {
	On     *Window // the window that the room is shown in
	Room   room.Room
	Said   []string // sentences at the foot, complaints too
	Opened []string // rooms that the coach was sent to
	Sent   gym.ID   // the subject of the last of them
	Walls  int      // how often the wall was asked for
	desk   *desk.Desk
}

// Stage shows a room over a desk, in a palette, in a window of a size.
func Stage(t testing.TB, d *desk.Desk, p look.Palette, size fyne.Size, open func(room.Host) room.Room) *Host {
	t.Helper()
	App(t, p)
	stage := container.NewStack()
	h := &Host{desk: d, On: OpenAs(t, p, size, kit.NewShell(stage))}
	h.Room = open(h)
	stage.Objects = []fyne.CanvasObject{h.Room.Content()}
	stage.Refresh()
	d.Listen(h.Room.Refresh)
	kit.HearKeys(h.On.Canvas(), func(k *fyne.KeyEvent) { h.Typed(k) })
	h.Room.Refresh(desk.AboutAll)
	h.Room.Show("")
	h.Room.Tick(d.Now())
	// Twice, because prose knows its height only once it has its width.
	h.On.Resize(size.AddWidthHeight(1, 1))
	h.On.Resize(size)
	return h
}

// Press does what one of the room's keys does, as the coach reads it: "Ctrl+C".
func (h *Host) Press(t testing.TB, press string) {
	t.Helper()
	for _, k := range h.Room.Keys() {
		if k.Press == press {
			k.Do()
			return
		}
	}
	t.Fatalf("the room has no key %q", press)
}

// Desk implements room.Host.
func (h *Host) Desk() *desk.Desk { return h.desk }

// Window implements room.Host.
func (h *Host) Window() fyne.Window { return h.On }

// Say implements room.Host.
func (h *Host) Say(sentence string, _ bool) { h.Said = append(h.Said, sentence) }

// Fail implements room.Host.
func (h *Host) Fail(err error) bool {
	if err != nil {
		h.Said = append(h.Said, kit.Sentence(err))
	}
	return err == nil
}

// Open implements room.Host.
func (h *Host) Open(name string, subject gym.ID) { h.Opened, h.Sent = append(h.Opened, name), subject }

// Wall implements room.Host.
func (h *Host) Wall() { h.Walls++ }

// Typed implements room.Host for keys without anything held beside them.
func (h *Host) Typed(key *fyne.KeyEvent) bool {
	names := map[string]fyne.KeyName{"Enter": fyne.KeyReturn, "Esc": fyne.KeyEscape, "Del": fyne.KeyDelete, "+": fyne.KeyPlus, "-": fyne.KeyMinus}
	for _, k := range h.Room.Keys() {
		name, ok := names[k.Press]
		if !ok {
			name = fyne.KeyName(k.Press)
		}
		if name == key.Name {
			k.Do()
			return true
		}
	}
	return false
}

// Long implements room.Host: the work is done before it returns.
func (h *Host) Long(_ string, work func(*room.Job) error, done func(error)) {
	done(work(room.NewJob(context.Background(), func(int, int) {})))
}

// Carry implements room.Host: the step is written and taken up before it returns.
func (h *Host) Carry(step *desk.LongStep, done func(error)) {
	var err error
	if step != nil {
		err = step.Write(context.Background(), func(int, int) {})
		h.desk.Land(step)
	}
	done(err)
}
