package demo

import (
	"cmp"
	"slices"
	"time"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// train runs every class from the first day of the cycle to yesterday.
func (w *world) train() error {
	w.latest = map[pair]handed{}
	calendar := cycle.NewCalendar(&w.book)
	for on := w.start; on < w.today; on++ {
		if err := w.trainOn(calendar, on); err != nil {
			return err
		}
	}
	return nil
}

// trainOn runs the classes of a day. Nobody comes twice; most come to the last.
func (w *world) trainOn(k cycle.Calendar, on day.Date) error {
	came := map[gym.ID]bool{}
	slots := w.slotsOn(on)
	for i, s := range slots {
		last := i == len(slots)-1
		due := slices.DeleteFunc(k.Expected(s, on), func(d cycle.Due) bool {
			p := w.person(d.Athlete)
			return came[p.ID] || !last && !p.early || !w.turnsUp(p, on)
		})
		for _, d := range due {
			came[d.Athlete] = true
		}
		if err := w.class(k, s, on, due); err != nil {
			return err
		}
	}
	return nil
}

func (w *world) slotsOn(on day.Date) []gym.Slot {
	var slots []gym.Slot
	for _, s := range w.book.Slots {
		if s.Weekday == on.Weekday() {
			slots = append(slots, s)
		}
	}
	slices.SortFunc(slots, func(a, b gym.Slot) int { return cmp.Compare(a.At, b.At) })
	return slots
}

func (w *world) person(id gym.ID) *person {
	return w.people[slices.IndexFunc(w.people, func(p *person) bool { return p.ID == id })]
}

// turnsUp reports whether somebody who is due comes.
func (w *world) turnsUp(p *person, on day.Date) bool {
	if p.BackOn != day.None && on >= p.BackOn.Add(-21) && on < p.BackOn {
		return false
	}
	return w.chance.happens(p.comes)
}

// class runs one class to its end; one without anybody does not take place.
func (w *world) class(k cycle.Calendar, s gym.Slot, on day.Date, due []cycle.Due) error {
	if len(due) == 0 {
		return nil
	}
	c := gym.Class{
		ID: w.id(on, s.At), Slot: s.ID, On: on, At: s.At, Name: s.Name, Stage: gym.Finished,
		Pieces: w.pieces(k, s, on), Climb: w.climbOf(due),
	}
	for _, d := range due {
		l, err := w.lifts(&c, d)
		if err != nil {
			return err
		}
		l.Score = w.conditions(&c, d)
		c.Lifters = append(c.Lifters, l)
	}
	w.seat(c.Lifters)
	w.stopClocks(&c, s)
	w.book.Classes = append(w.book.Classes, c)
	return nil
}

func (w *world) pieces(k cycle.Calendar, s gym.Slot, on day.Date) []gym.Piece {
	var pieces []gym.Piece
	for _, t := range w.book.Tracks {
		if len(s.Tracks) > 0 && !slices.Contains(s.Tracks, t.ID) {
			continue
		}
		plan := k.PlanOn(t.ID, on)
		pieces = append(pieces, gym.Piece{Track: t.ID, Lift: plan.Main.Lift, Reps: plan.Main.Reps, Second: plan.Second, Workout: plan.Workout})
	}
	return pieces
}

// climbOf takes the climb that the first plan with a main lift asks for.
func (w *world) climbOf(due []cycle.Due) gym.ClimbPlan {
	for _, d := range due {
		at := slices.IndexFunc(w.book.Climbs, func(c gym.ClimbPlan) bool { return c.Name == d.Plan.Main.Climb })
		if at >= 0 {
			return w.book.Climbs[at]
		}
	}
	return w.book.Climbs[0]
}

// seat shares the stations out: lifters of one lift beside each other, by load.
func (w *world) seat(lifters []gym.Lifter) {
	order := make([]int, len(lifters))
	for i := range order {
		order[i] = i
		lifters[i].Station = -1
	}
	slices.SortStableFunc(order, func(a, b int) int {
		return cmp.Or(cmp.Compare(lifters[a].Lift, lifters[b].Lift), cmp.Compare(lifters[a].Bar, lifters[b].Bar), cmp.Compare(lifters[a].Base, lifters[b].Base))
	})
	const most = 4
	station, place := -1, most
	var lift gym.LiftKey
	var bar string
	for _, i := range order {
		l := &lifters[i]
		if l.Lift == "" {
			continue
		}
		if place == most || l.Lift != lift || l.Bar != bar {
			station, place, lift, bar = station+1, 0, l.Lift, l.Bar
		}
		if station >= len(w.book.Equipment.Stations) {
			return
		}
		l.Station, l.Place = station, place
		place++
	}
}

// stopClocks leaves the clocks as a class leaves them that kept its time.
func (w *world) stopClocks(c *gym.Class, s gym.Slot) {
	const warmUp, change = 15 * time.Minute, 12 * time.Minute
	begin := instant(c.On, s.At)
	climbed := time.Duration(c.Climb.Rungs[len(c.Climb.Rungs)-1].Until) * time.Second
	if slices.ContainsFunc(c.Lifters, func(l gym.Lifter) bool { return l.Lift != "" }) {
		c.Clock = gym.Run{Anchor: begin.Add(warmUp + climbed), Before: climbed}
	}
	workout := 15 * time.Minute
	c.Workout = gym.Run{Anchor: begin.Add(warmUp + climbed + change + workout), Before: workout}
	c.Finished = begin.Add(time.Duration(s.Minutes) * time.Minute)
}
