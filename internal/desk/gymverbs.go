package desk

import (
	"fmt"
	"strings"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// KeepSlot keeps a class of the weekly timetable.
func (d *Desk) KeepSlot(s gym.Slot) error {
	if strings.TrimSpace(s.Name) == "" || s.Minutes < 15 || s.Minutes > 240 {
		return fmt.Errorf("keep class: it wants a name and a length of 15 to 240 minutes")
	}
	for _, other := range d.book.Slots {
		if other.ID != s.ID && other.Weekday == s.Weekday && other.At == s.At {
			return fmt.Errorf("keep class: %s on %s at %s stands there already; choose another hour", other.Name, s.Weekday, s.At)
		}
	}
	return d.do("change timetable", gym.PutSlot{Slot: s})
}

// DropSlot takes a class out of the weekly timetable; past classes stay.
func (d *Desk) DropSlot(id gym.ID) error { return d.do("change timetable", gym.DropSlot{ID: id}) }

// KeepClosure keeps a stretch of days on which the gym is closed.
func (d *Desk) KeepClosure(c gym.Closure) error {
	if c.From == day.None || c.Until < c.From {
		return fmt.Errorf("keep closed days: they end before they begin; write the first day and then the last")
	}
	return d.do("change closed days", gym.PutClosure{Closure: c})
}

// DropClosure opens the gym again on those days.
func (d *Desk) DropClosure(id gym.ID) error {
	return d.do("change closed days", gym.DropClosure{ID: id})
}

// ClosedOn returns the name of what the gym is closed for on a day.
func (d *Desk) ClosedOn(on day.Date) (name string, closed bool) {
	for _, c := range d.book.Closures {
		if c.Covers(on) {
			return c.Name, true
		}
	}
	return "", false
}
