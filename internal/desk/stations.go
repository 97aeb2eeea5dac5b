package desk

import (
	"cmp"
	"fmt"
	"slices"

	"windlass/internal/gym"
	"windlass/internal/station"
)

// How many lifters share a station: four where there is room, up to six where
// somebody would have none otherwise. Common practice, no source.
const (
	usualPlaces = 4
	mostPlaces  = 6
)

// seating is a class as package station sees it: the lifters who need a bar and
// the stations that have one, by their places in the class and the gym.
type seating struct {
	lifters  []station.Lifter
	who      []int // in the class, of each lifter
	stations []station.Station
	where    []int // in the equipment, of each station
	solver   *station.Solver
}

// seating lays out a class at stations of so many places. Who has no lift, no
// number or lifts a thing whole needs no bar and is left out.
func (d *Desk) seating(c gym.Class, places int) (seating, error) {
	var s seating
	at := map[int]int{}
	for i, bar := range d.stationBars(c, places) {
		loads, err := d.Loads(bar)
		if err != nil {
			continue // a station without a bar seats nobody
		}
		at[i] = len(s.stations)
		s.where = append(s.where, i)
		s.stations = append(s.stations, station.Station{Name: d.book.Equipment.Stations[i].Name, Loads: loads, Places: places})
	}
	for i, l := range c.Lifters {
		row, ok := d.seated(c, l)
		if !ok {
			continue
		}
		row.Seat = station.None
		if seat, ok := at[l.Station]; ok {
			row.Seat = seat
		}
		s.who, s.lifters = append(s.who, i), append(s.lifters, row)
	}
	var seconds []int
	for _, r := range c.Climb.Rungs {
		seconds = append(seconds, r.Until-r.At)
	}
	var err error
	s.solver, err = d.Boards().solver(s.stations, seconds)
	return s, err
}

// keptSolvers bounds what is remembered; a class asks for a few, as bars are lent
// and rungs lengthened.
const keptSolvers = 16

// solver returns what seats a class at stations, the same for the same question: it
// remembers what it has found out about loads.
func (bs *Boards) solver(stations []station.Station, seconds []int) (*station.Solver, error) {
	key := fmt.Sprint(seconds)
	for _, s := range stations {
		key += fmt.Sprintf("|%s %d %p", s.Name, s.Places, s.Loads)
	}
	if s, ok := bs.solvers[key]; ok {
		return s, nil
	}
	if len(bs.solvers) >= keptSolvers {
		clear(bs.solvers)
	}
	s, err := station.New(stations, seconds, station.UsualPace())
	if err == nil {
		bs.solvers[key] = s
	}
	return s, err
}

// seated is a lifter as package station sees one; false for who needs no bar.
func (d *Desk) seated(c gym.Class, l gym.Lifter) (station.Lifter, bool) {
	if l.Lift == "" || l.Bar == "" {
		return station.Lifter{}, false
	}
	path, err := d.Path(c, l)
	if err != nil {
		return station.Lifter{}, false
	}
	a, _ := d.Athlete(l.Athlete)
	row := station.Lifter{Name: a.Name, Bar: l.Bar, Lift: string(l.Lift)}
	for _, step := range path.Steps {
		row.Sets = append(row.Sets, station.Set{Load: likely(step), Reps: step.Reps})
	}
	return row, true
}

// ShareStations seats everybody anew, so that the windows are kept and the fewest
// plates are moved.
func (d *Desk) ShareStations(class gym.ID) error {
	if c, ok := d.Class(class); ok && len(c.Lifters) == 0 {
		return fmt.Errorf("share the stations: nobody is checked in; check at least one athlete in")
	}
	return d.change("share the stations", class, d.shareAll)
}

func (d *Desk) shareAll(c *gym.Class) error {
	from := d.rungToCome(*c)
	for i := range c.Lifters {
		l := &c.Lifters[i]
		l.Station, l.Place = -1, 0
		l.Exceptions = slices.DeleteFunc(slices.Clone(l.Exceptions), func(e gym.Exception) bool { return e.Rung >= from })
	}
	return d.seat(c, func(s seating) (station.Plan, error) { return s.solver.Solve(s.lifters) })
}

// join seats one lifter where that costs least and leaves all others.
func (d *Desk) join(c *gym.Class, athlete gym.ID) error {
	return d.seat(c, func(s seating) (station.Plan, error) {
		for i, at := range s.who {
			if c.Lifters[at].Athlete == athlete {
				return s.solver.Join(s.lifters, i)
			}
		}
		return s.solver.Judge(s.lifters) // they need no bar
	})
}

// seat asks for a plan at the usual number of places, and with more places to a
// station while somebody stands for want of one, and keeps it in the class.
func (d *Desk) seat(c *gym.Class, ask func(seating) (station.Plan, error)) error {
	for places := usualPlaces; ; places++ {
		s, err := d.seating(*c, places)
		if err != nil || len(s.lifters) == 0 {
			return err
		}
		plan, err := ask(s)
		if err != nil {
			return err
		}
		if places < mostPlaces && slices.ContainsFunc(plan.Standing, func(x station.Standing) bool { return x.Why != station.Refused }) {
			continue
		}
		s.keep(c, plan)
		return nil
	}
}

// keep writes a plan into the class.
func (s seating) keep(c *gym.Class, plan station.Plan) {
	for at, g := range plan.Groups {
		for place, i := range g.Lifters {
			l := &c.Lifters[s.who[i]]
			l.Station, l.Place = s.where[at], place
		}
	}
	for _, x := range plan.Standing {
		c.Lifters[s.who[x.Lifter]].Station = -1
	}
}

// MoveLifter puts a lifter at a station by hand; an index under 0 takes them off.
// An empty station takes the lifter's bar. At one with the same lift the lifter
// takes the bar that lies there.
func (d *Desk) MoveLifter(class, athlete gym.ID, to int) error {
	a, _ := d.Athlete(athlete)
	return d.change("move "+a.Name, class, func(c *gym.Class) error {
		l, err := lifter(c, athlete)
		if err != nil {
			return err
		}
		if to < 0 {
			l.Station = -1
			return nil
		}
		if to >= len(d.book.Equipment.Stations) {
			return fmt.Errorf("the gym has %s; choose one of them", count(len(d.book.Equipment.Stations), "station"))
		}
		if err := d.takeBarAt(*c, l, to); err != nil {
			return err
		}
		l.Station, l.Place = to, len(c.Lifters)
		d.order(c, to)
		return nil
	})
}

// takeBarAt gives a lifter the bar of those at a station, if they may share it.
func (d *Desk) takeBarAt(c gym.Class, l *gym.Lifter, at int) error {
	for _, other := range c.Lifters {
		if other.Station != at || other.Athlete == l.Athlete {
			continue
		}
		if other.Lift != l.Lift {
			lift, _ := d.Lift(other.Lift)
			return fmt.Errorf("%s is lifted at %s, and two lifts do not share a bar; choose an empty station or one with the same lift",
				lift.Name, d.book.Equipment.Stations[at].Name)
		}
		l.Bar = other.Bar
	}
	return nil
}

// order puts the lifters of a station in the order of their loads, the lightest
// first, so that the bar mostly grows.
func (d *Desk) order(c *gym.Class, at int) {
	type rank struct {
		i    int
		load int64
	}
	var ranks []rank
	for i, l := range c.Lifters {
		if l.Station != at {
			continue
		}
		row, _ := d.seated(*c, l)
		var most int64
		for _, set := range row.Sets {
			most = max(most, int64(set.Load))
		}
		ranks = append(ranks, rank{i, most})
	}
	slices.SortStableFunc(ranks, func(a, b rank) int { return cmp.Compare(a.load, b.load) })
	for place, r := range ranks {
		c.Lifters[r.i].Place = place
	}
}
