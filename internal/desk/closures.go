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

// KeepClosure keeps a stretch of days on which the gym is closed, in the place of
// the one with its ID, or as a new one where it has none, and returns the ID.
func (d *Desk) KeepClosure(c gym.Closure) (gym.ID, error) {
	c.Name = strings.TrimSpace(c.Name)
	if c.Name == "" {
		return c.ID, fmt.Errorf("keep closed days: they have no name; write what they are for")
	}
	if err := c.Valid(); err != nil {
		return c.ID, err
	}
	if days := c.Until.Since(c.From) + 1; days > 366 {
		return c.ID, fmt.Errorf("keep closed days %q: %d days are more than a year; check the years", c.Name, days)
	}
	if c.ID == "" {
		c.ID = d.NewID()
	}
	return c.ID, d.do("change closed days", gym.PutClosure{Closure: c})
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

// ProposeClosure returns a closed day on the first day from tomorrow on that is
// open.
func (d *Desk) ProposeClosure() gym.Closure {
	on := d.Today().Add(1)
	for {
		if _, closed := d.ClosedOn(on); !closed {
			return gym.Closure{From: on, Until: on, Name: "Closed"}
		}
		on = on.Add(1)
	}
}

// ClosedDays is one stretch of closed days and what it does to the plans.
type ClosedDays struct {
	Closure gym.Closure
	Past    bool
	Moves   []DayMove
}

// DayMove is a training day of a track that closed days move.
type DayMove struct {
	Track string
	Title string
	From  day.Date
	To    day.Date // day.None where the week has no place for it
}

// Span writes the days: "18 Jun", "18–20 Jun" or "30 Jun – 2 Jul".
func (c ClosedDays) Span() string {
	from, until := c.Closure.From.Time(), c.Closure.Until.Time()
	switch {
	case c.Closure.From == c.Closure.Until:
		return c.Closure.From.Short()
	case from.Month() == until.Month() && from.Year() == until.Year():
		return fmt.Sprintf("%d–%s", from.Day(), c.Closure.Until.Short())
	}
	return c.Closure.From.Short() + " – " + c.Closure.Until.Short()
}

// Closed returns the closed days, those to come first, the nearest on top.
func (d *Desk) Closed() []ClosedDays {
	var all []ClosedDays
	for _, c := range d.book.Closures {
		all = append(all, ClosedDays{Closure: c, Past: c.Until < d.Today(), Moves: d.movesOf(c)})
	}
	slices.SortStableFunc(all, func(a, b ClosedDays) int {
		switch {
		case a.Past != b.Past && a.Past:
			return 1
		case a.Past != b.Past:
			return -1
		case a.Past:
			return cmp.Compare(b.Closure.From, a.Closure.From)
		}
		return cmp.Compare(a.Closure.From, b.Closure.From)
	})
	return all
}

// movesOf says what a closure changes, in comparison with the same weeks without
// it.
func (d *Desk) movesOf(c gym.Closure) []DayMove {
	others := slices.DeleteFunc(slices.Clone(d.book.Closures), func(o gym.Closure) bool { return o.ID == c.ID })
	var moves []DayMove
	for _, t := range d.Tracks() {
		seen := day.None
		for on := c.From; on <= c.Until; on++ {
			first := d.weekOf(t.ID, on)
			if first == day.None || first == seen {
				continue
			}
			seen = first
			open, closed := d.Calendar().Moved(t.ID, on, others), d.Calendar().Moved(t.ID, on, append(others, c))
			moves = append(moves, differences(t.Name, first, open, closed)...)
		}
	}
	return moves
}

// weekOf returns the first day of the week of a track's cycle that a day is in.
func (d *Desk) weekOf(track gym.ID, on day.Date) day.Date {
	c, ok := d.CycleOn(track, on)
	if !ok {
		return day.None
	}
	return c.Start.Add(7 * (c.WeekOf(on) - 1))
}

// differences says which sessions of a week stand elsewhere when it is closed.
func differences(track string, first day.Date, open, closed cycle.Week) []DayMove {
	date := func(w day.Weekday) day.Date { return first.Add(int(w-first.Weekday()+7) % 7) }
	var moves []DayMove
	for _, p := range open.Days {
		m := DayMove{Track: track, Title: p.Title, From: date(p.On)}
		at := slices.IndexFunc(closed.Days, func(q cycle.Placed) bool { return q.Plan == p.Plan })
		if at >= 0 {
			m.To = date(closed.Days[at].On)
		}
		if m.To != m.From {
			moves = append(moves, m)
		}
	}
	return moves
}
