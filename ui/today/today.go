// Package today is the room a coach opens in the morning: the day's classes, and
// what needs the coach before them.
//
// [New] makes it. It shows what the desk says of the day and sends the coach on
// to the floor or to a record; it changes nothing itself.
package today

import (
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// Today is the room.
type Today struct {
	host     room.Host
	content  *fyne.Container
	date     *kit.Text
	note     *kit.Text
	classes  *fyne.Container
	meetings []desk.Meeting
	cards    []*classCard
	week     *weekStrip
	needs    *kit.DataList
	rows     []desk.Need
	shown    day.Date
}

// classesWidth is what the longest name of a lift needs beside the button.
const classesWidth float32 = 560

// New makes the room.
func New(h room.Host) room.Room {
	t := &Today{host: h, date: kit.NewTitle(""), note: kit.NewCaption(""), classes: kit.Column(look.Gap4)}
	t.week = newWeekStrip()
	t.needs = t.needsList()
	head := kit.Row(look.Gap3, t.date, kit.Fill(), kit.NewButton("Open a class now", t.openFree).Key("O"))
	needs := kit.NewCard("Needs you", kit.Fill(t.needs))
	classes := kit.Scroll(kit.Pad(look.Hairline, t.classes))
	body := container.NewBorder(nil, nil, kit.Wide(classesWidth, classes), nil,
		container.NewBorder(nil, nil, kit.Wide(look.Gap4, kit.Fill()), nil, needs))
	week := kit.NewCard("This week", t.week.content)
	t.content = kit.Pad(look.Gap6, kit.Column(look.Gap4, head, t.note, kit.Fill(body), week))
	return t
}

// Content implements room.Room.
func (t *Today) Content() fyne.CanvasObject { return t.content }

// Show implements room.Room.
func (t *Today) Show(gym.ID) {}

// Refresh implements room.Room.
func (t *Today) Refresh(desk.Topic) {
	d := t.host.Desk()
	t.shown = d.Today()
	t.date.SetText(t.shown.Long())
	t.meetings = d.MeetingsNow()
	t.rows = d.Needs()
	t.note.SetText(t.summary())
	t.drawClasses()
	t.week.show(d, t.shown)
	t.needs.Refresh()
}

// Tick implements room.Room: the day turns at midnight, and a class that was to
// come becomes one that was not held.
func (t *Today) Tick(now time.Time) {
	if day.From(now) != t.shown || now.Second() == 0 {
		t.Refresh(desk.AboutAll)
	}
}

// Keys implements room.Room.
func (t *Today) Keys() []room.Key {
	return []room.Key{
		{Press: "Enter", Does: "Open the next class on the floor", Do: t.openNext},
		{Press: "O", Does: "Open a class outside the timetable", Do: t.openFree},
		{Press: "N", Does: "Go to what needs you", Do: t.needs.Focus},
	}
}

func (t *Today) openNext() {
	if i := t.next(); i >= 0 {
		t.open(t.meetings[i])
		return
	}
	t.host.Say("No class is left today. Open one outside the timetable with O.", false)
}

func (t *Today) openFree() {
	class, err := t.host.Desk().OpenFreeClass()
	if t.host.Fail(err) {
		t.host.Open(room.Floor, class.ID)
	}
}

func (t *Today) open(m desk.Meeting) {
	if m.Class.ID != "" {
		t.host.Open(room.Floor, m.Class.ID)
		return
	}
	class, err := t.host.Desk().OpenClass(m.Slot)
	if t.host.Fail(err) {
		t.host.Open(room.Floor, class.ID)
	}
}
