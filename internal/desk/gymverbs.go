package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// KeepEquipment keeps what the gym owns. A stock or bar that cannot be is
// refused, and so is a station whose bar the gym does not own.
func (d *Desk) KeepEquipment(e gym.Equipment) error {
	if err := e.Stock.Valid(); err != nil {
		return err
	}
	for _, b := range e.Bars {
		if err := b.Valid(); err != nil {
			return err
		}
	}
	for _, s := range e.Stations {
		if _, ok := e.Bar(s.Bar); !ok {
			return fmt.Errorf("keep station %q: the gym has no bar %q; choose one of its bars", s.Name, s.Bar)
		}
	}
	return d.do("change equipment", gym.PutEquipment{Equipment: e})
}

// Climbs returns the gym's climbs by name.
func (d *Desk) Climbs() []gym.ClimbPlan {
	climbs := slices.Clone(d.book.Climbs)
	slices.SortFunc(climbs, func(a, b gym.ClimbPlan) int { return strings.Compare(a.Name, b.Name) })
	return climbs
}

// ClimbNamed returns the climb with a name, in any case.
func (d *Desk) ClimbNamed(name string) (gym.ClimbPlan, bool) {
	for _, c := range d.book.Climbs {
		if strings.EqualFold(c.Name, name) {
			return c, true
		}
	}
	return gym.ClimbPlan{}, false
}

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
