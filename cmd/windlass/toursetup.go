package main

import (
	"slices"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/room"
)

// setUpClass opens the evening's class from Today and checks everybody in who is
// expected, and two of the newcomers, by typing their names.
func setUpClass(t *tour) error {
	if err := t.goTo(room.Today); err != nil {
		return err
	}
	t.press("Return")
	if err := t.until("a class is on the floor", func() bool { return t.main.Front() == room.Floor }); err != nil {
		return err
	}
	for _, name := range t.guests() {
		t.intoField("F")
		t.write(name)
		t.press("Return")
	}
	if err := t.until("two dozen are checked in", func() bool { c, _ := t.main.Desk().LiveClass(); return len(c.Lifters) >= 18 }); err != nil {
		return err
	}
	t.press("Escape", "F6")
	if err := t.desk("set-up"); err != nil {
		return err
	}
	if err := t.openWall(); err != nil { // before the clock, which does not wait for it
		return err
	}
	return t.startClock()
}

// guests are those who come tonight: whoever is expected, and two of the newcomers.
func (t *tour) guests() []string {
	return onThread(func() []string {
		d := t.main.Desk()
		names := slices.Clone(newcomers[:2])
		for _, m := range d.Meetings(d.Today()) {
			if m.State != desk.OnFloor {
				continue
			}
			for _, due := range m.Expected {
				if a, ok := d.Athlete(due.Athlete); ok && !slices.Contains(names, a.Name) {
					names = append(names, a.Name)
				}
			}
		}
		return names
	})
}

// startClock starts it; where lifters have no number yet, it gives them a first
// load, as the room asks for.
func (t *tour) startClock() error {
	onThread(func() bool { t.firstLoads(); return true })
	t.press("F5")
	return t.until("the clock runs", func() bool { c, _ := t.main.Desk().LiveClass(); return c.Clock.Running })
}

func (t *tour) firstLoads() {
	d := t.main.Desk()
	class, _ := d.LiveClass()
	for _, l := range class.Lifters {
		if l.Lift != "" && l.Base == 0 && l.Start == 0 {
			_ = d.StartWith(class.ID, l.Athlete, gym.Effort{Load: 40e12, Unit: "kg"})
		}
	}
}
