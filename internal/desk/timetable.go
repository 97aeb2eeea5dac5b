package desk

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// Timetable returns the classes of the week by weekday, from the gym's first, and
// hour.
func (d *Desk) Timetable() []gym.Slot {
	first := d.book.Settings.FirstDay
	slots := slices.Clone(d.book.Slots)
	slices.SortStableFunc(slots, func(a, b gym.Slot) int {
		return cmp.Or(cmp.Compare((a.Weekday-first+7)%7, (b.Weekday-first+7)%7), cmp.Compare(a.At, b.At))
	})
	return slots
}

// TracksText names the tracks that run in a class.
func (d *Desk) TracksText(s gym.Slot) string {
	var names []string
	for _, t := range d.Tracks() {
		if slices.Contains(s.Tracks, t.ID) {
			names = append(names, t.Name)
		}
	}
	if len(names) == 0 {
		return "all tracks"
	}
	return strings.Join(names, ", ")
}

// ProposeSlot returns a class of an hour on a weekday at the first hour of the
// afternoon, or else of the morning, at which none begins.
func (d *Desk) ProposeSlot(on day.Weekday) gym.Slot {
	s := gym.Slot{Weekday: on, Minutes: 60, Name: "New class"}
	for n := range 17 {
		s.At = day.ClockOf((17-6+n)%17+6, 0)
		if !slices.ContainsFunc(d.book.Slots, func(o gym.Slot) bool { return o.Weekday == on && o.At == s.At }) {
			break
		}
	}
	return s
}

// KeepSlot keeps a class of the weekly timetable in the place of the one with its
// ID, or as a new one where it has none, and returns the ID.
func (d *Desk) KeepSlot(s gym.Slot) (gym.ID, error) {
	s.Name = strings.TrimSpace(s.Name)
	switch {
	case s.Name == "":
		return s.ID, fmt.Errorf("keep class: it has no name; write one")
	case s.Minutes < 15 || s.Minutes > 240:
		return s.ID, fmt.Errorf("keep class: %d minutes are no class; write 15 to 240", s.Minutes)
	}
	if err := s.Valid(); err != nil {
		return s.ID, err
	}
	for _, other := range d.book.Slots {
		if other.ID != s.ID && other.Weekday == s.Weekday && other.At == s.At {
			return s.ID, fmt.Errorf("keep class: %s on %s at %s stands there already; choose another hour", other.Name, s.Weekday, s.At)
		}
	}
	if s.ID == "" {
		s.ID = d.NewID()
	}
	return s.ID, d.do("change timetable", gym.PutSlot{Slot: s})
}

// MoveSlot keeps a class so many weekdays and minutes later. The week goes round.
func (d *Desk) MoveSlot(s gym.Slot, days, minutes int) error {
	s.Weekday = day.Weekday(((int(s.Weekday)+days)%7 + 7) % 7)
	s.At += day.Clock(minutes)
	_, err := d.KeepSlot(s)
	return err
}

// DropSlot takes a class out of the weekly timetable; past classes stay.
func (d *Desk) DropSlot(id gym.ID) error { return d.do("change timetable", gym.DropSlot{ID: id}) }

// Unserved says which training days of this week's plans no class runs: nobody
// could do them.
func (d *Desk) Unserved() []string {
	var lines []string
	for _, t := range d.Tracks() {
		c, ok := d.CycleOn(t.ID, d.Today())
		if !ok {
			continue
		}
		served := d.Calendar().ClassDays(t.ID)
		for _, s := range cycle.Sessions(c, t.ID, c.WeekOf(d.Today()), d.book.Lifts) {
			if !served.Has(s.Plan) {
				lines = append(lines, fmt.Sprintf("%s trains on %s (%s), and no class runs it.", t.Name, s.Plan, s.Title))
			}
		}
	}
	return lines
}
