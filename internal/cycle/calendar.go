package cycle

import (
	"fmt"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Calendar says what happens on a date: in a track, and in an athlete's own
// week. It reads the book and never changes it; make a new one when lifts or
// moves between tracks have changed.
type Calendar struct {
	book  *gym.Book
	lifts map[gym.LiftKey]*gym.Lift
	moves map[gym.ID][]gym.TrackMove // by athlete
}

// NewCalendar returns the calendar of a gym.
func NewCalendar(b *gym.Book) Calendar {
	k := Calendar{book: b, lifts: knowLifts(b.Lifts), moves: map[gym.ID][]gym.TrackMove{}}
	for _, m := range b.Moves {
		k.moves[m.Athlete] = append(k.moves[m.Athlete], m)
	}
	return k
}

// CycleOn returns the cycle that runs for a track on a day.
func (k Calendar) CycleOn(track gym.ID, on day.Date) (gym.Cycle, bool) {
	for _, c := range k.book.Cycles {
		if _, ok := c.Plan(track); ok && c.WeekOf(on) > 0 {
			return c, true
		}
	}
	return gym.Cycle{}, false
}

// PlanOn returns what a track does on a day, with days that closures have moved
// in their new place. Without a cycle, and on a closed day, it is a rest day.
func (k Calendar) PlanOn(track gym.ID, on day.Date) gym.DayPlan {
	return k.planOf(track, on, k.TrackWeek(track, on))
}

// planOf looks a day up in a week that was arranged.
func (k Calendar) planOf(track gym.ID, on day.Date, w Week) gym.DayPlan {
	c, ok := k.CycleOn(track, on)
	placed, trains := w.On(on.Weekday())
	if !ok || !trains {
		return gym.DayPlan{Week: c.WeekOf(on), Weekday: on.Weekday(), Kind: gym.RestDay, Title: "Rest"}
	}
	return look(c, At{track, c.WeekOf(on), placed.Plan})
}

// TrackOf returns the track of an athlete on a day, as [gym.TrackOn] has it.
func (k Calendar) TrackOf(athlete gym.ID, on day.Date) gym.ID {
	return gym.TrackOn(k.moves[athlete], on)
}

// TrackWeek returns where the days of a track's week stand in the week of a date:
// on their own weekdays or, where the gym is closed, as [Calendar.Moved] finds.
func (k Calendar) TrackWeek(track gym.ID, on day.Date) Week {
	return k.Moved(track, on, k.book.Closures)
}

// Moved returns where closures put the days of a track's week: onto days with
// classes that are not closed, such that no day stands beside another for the
// same region, the weeks before and after counted in. Days that are not closed
// stay where they are if that can be. What finds no place is dropped. Closures
// are handed in so that a coach can look before adding one.
func (k Calendar) Moved(track gym.ID, on day.Date, closures []gym.Closure) Week {
	c, ok := k.CycleOn(track, on)
	if !ok {
		return Week{Why: "No cycle runs for the track on that day."}
	}
	ask := k.askOf(c, track, on)
	first := firstOfWeek(c, on)
	closed := closedDays(first, closures)
	if closed == 0 {
		return usualWeek(ask)
	}
	ask.Free = (k.ClassDays(track) | ask.Free) &^ closed
	return closedWeek(closed, arrange(ask, &edges{
		from:   first.Weekday(),
		before: regionOn(k.Moved(track, first.Add(-1), closures), first.Add(-1)),
		after:  k.planned(track, first.Add(7), closures),
	}))
}

// askOf asks for a track's week as the track has it.
func (k Calendar) askOf(c gym.Cycle, track gym.ID, on day.Date) Ask {
	ask := Ask{Sessions: sessionsOf(c, track, c.WeekOf(on), k.lifts)}
	for _, s := range ask.Sessions {
		ask.Free |= day.WeekdaysOf(s.Plan)
	}
	return ask
}

func firstOfWeek(c gym.Cycle, on day.Date) day.Date { return c.Start.Add(7 * (c.WeekOf(on) - 1)) }

// closedWeek says first that the gym is closed.
func closedWeek(closed day.Weekdays, w Week) Week {
	w.Why = fmt.Sprintf("Closed: %s. %s", closed, w.Why)
	return w
}

// usualWeek leaves every session on the track's own weekday.
func usualWeek(ask Ask) Week {
	w := Week{Why: "Every day stands on the track's own weekday."}
	for _, s := range ask.Sessions {
		w.Days = append(w.Days, Placed{s, s.Plan})
	}
	slices.SortFunc(w.Days, func(a, b Placed) int { return int(a.On - b.On) })
	return w
}

// regionOn returns what a week loads on a day of it.
func regionOn(w Week, on day.Date) gym.Region {
	p, _ := w.On(on.Weekday())
	return p.Region
}

// planned returns what a track's plan loads on a day that is not closed. The week
// after gives way to this one, never the other way round.
func (k Calendar) planned(track gym.ID, on day.Date, closures []gym.Closure) gym.Region {
	c, ok := k.CycleOn(track, on)
	if !ok || isClosed(on, closures) {
		return ""
	}
	d := look(c, At{track, c.WeekOf(on), on.Weekday()})
	return loadedRegion(&d, k.lifts[d.Main.Lift])
}

// ClassDays returns the weekdays on which a track has classes; without a
// timetable every day counts.
func (k Calendar) ClassDays(track gym.ID) day.Weekdays {
	if len(k.book.Slots) == 0 {
		return openDays
	}
	var s day.Weekdays
	for _, slot := range k.book.Slots {
		if len(slot.Tracks) == 0 || slices.Contains(slot.Tracks, track) {
			s |= day.WeekdaysOf(slot.Weekday)
		}
	}
	return s
}

// closedDays returns the weekdays of a week that are closed.
func closedDays(first day.Date, closures []gym.Closure) day.Weekdays {
	var s day.Weekdays
	for i := range 7 {
		if on := first.Add(i); isClosed(on, closures) {
			s |= day.WeekdaysOf(on.Weekday())
		}
	}
	return s
}

func isClosed(on day.Date, closures []gym.Closure) bool {
	return slices.ContainsFunc(closures, func(c gym.Closure) bool { return c.Covers(on) })
}
