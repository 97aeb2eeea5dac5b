package desk

import (
	"cmp"
	"fmt"
	"slices"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// Cycle returns the cycle with an ID.
func (d *Desk) Cycle(id gym.ID) (gym.Cycle, bool) {
	for _, c := range d.book.Cycles {
		if c.ID == id {
			return c, true
		}
	}
	return gym.Cycle{}, false
}

// Cycles returns the gym's cycles, the latest first.
func (d *Desk) Cycles() []gym.Cycle {
	all := slices.Clone(d.book.Cycles)
	slices.SortStableFunc(all, func(a, b gym.Cycle) int { return cmp.Compare(b.Start, a.Start) })
	return all
}

// UsualCycle returns the cycle that a coach most likely wants to see: the one of
// today, else the next one to come, else the last one.
func (d *Desk) UsualCycle() (gym.Cycle, bool) {
	var best gym.Cycle
	for _, c := range d.Cycles() {
		if best.ID == "" || c.End() >= d.Today() {
			best = c
		}
	}
	return best, best.ID != ""
}

// trackDate is a day of one track.
type trackDate struct {
	track gym.ID
	on    day.Date
}

// Trained tells which days of a cycle were trained: a class was held on them with
// somebody of the track in it, or the day's main lift was logged in a class by
// one. What was brought in from a sheet or told beside a class makes no day
// trained, whatever its date. A day that closures moved counts where it was
// planned.
func (d *Desk) Trained(c gym.Cycle) cycle.Trained {
	held := d.trainedDates(c)
	return func(track gym.ID, week int, on day.Weekday) bool {
		return held[trackDate{track, cycle.At{Track: track, Week: week, Weekday: on}.Date(c)}]
	}
}

// trainedDates collects the planned days of a cycle on which tracks were trained.
func (d *Desk) trainedDates(c gym.Cycle) map[trackDate]bool {
	held := map[trackDate]bool{}
	for _, class := range d.book.Classes {
		if class.Stage == gym.SetUp || c.WeekOf(class.On) == 0 {
			continue
		}
		for _, l := range class.Lifters {
			held[trackDate{l.Track, class.On}] = true
		}
	}
	for i := range d.book.Results {
		r := &d.book.Results[i]
		if r.Class == "" || r.Void != nil || c.WeekOf(r.On) == 0 {
			continue
		}
		at := trackDate{d.TrackOn(r.Athlete, r.On).ID, r.On}
		if !held[at] && d.PlanOn(at.track, r.On).Main.Lift == r.Lift {
			held[at] = true
		}
	}
	if len(d.book.Closures) == 0 {
		return held
	}
	planned := make(map[trackDate]bool, len(held))
	for at := range held {
		planned[trackDate{at.track, d.plannedFor(c, at)}] = true
	}
	return planned
}

// plannedFor returns the day for which a cycle has the plan that a track does on a
// day.
func (d *Desk) plannedFor(c gym.Cycle, at trackDate) day.Date {
	for _, p := range d.Calendar().TrackWeek(at.track, at.on).Days {
		if p.On == at.on.Weekday() {
			return cycle.At{Track: at.track, Week: c.WeekOf(at.on), Weekday: p.Plan}.Date(c)
		}
	}
	return at.on
}

// editCycle makes one undoable step of a change to a cycle.
func (d *Desk) editCycle(label string, id gym.ID, edit func(gym.Cycle, cycle.Trained) (gym.Cycle, error)) error {
	c, ok := d.Cycle(id)
	if !ok {
		return fmt.Errorf("%s: there is no such cycle; make one first", label)
	}
	changed, err := edit(c, d.Trained(c))
	if err != nil {
		return err
	}
	return d.do(label, gym.PutCycle{Cycle: changed})
}

// NameCycle keeps a cycle's name and goal.
func (d *Desk) NameCycle(id gym.ID, name, goal string) error {
	return d.editCycle("name the cycle", id, func(c gym.Cycle, _ cycle.Trained) (gym.Cycle, error) {
		if name == "" {
			return c, fmt.Errorf("name the cycle: it has no name; write one")
		}
		c.Name, c.Goal = name, goal
		return c, nil
	})
}

// DropCycle takes away a cycle of which no day was trained.
func (d *Desk) DropCycle(id gym.ID) error {
	c, ok := d.Cycle(id)
	if !ok {
		return fmt.Errorf("remove the cycle: there is no such cycle")
	}
	if len(d.trainedDates(c)) > 0 {
		return fmt.Errorf("remove the cycle: %w; let it run out and start the next one from it", cycle.ErrTrained)
	}
	return d.do("remove "+c.Name, gym.DropCycle{ID: id})
}
