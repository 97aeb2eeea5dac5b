package station

import (
	"fmt"
	"slices"

	"windlass/internal/plates"
)

// How many ways to make a load are weighed: few while thousands of groups are
// compared, more for what is shown and for a class small enough to try it all.
const (
	keepQuick = 6
	keepShown = 64
)

// Solver seats classes in one room under one clock. It remembers what it has
// found out about loads, so that the next question is answered faster; it is not
// for two goroutines at once.
type Solver struct {
	stations []Station
	windows  []int // seconds
	pace     Pace
	kinds    []*kind // the different bars with their plates
	kindOf   []int   // of each station
	programs programs
}

// kind is what stations with the same bar, plates and start have in common.
type kind struct {
	loads        *plates.Loads
	on           []plates.Disc
	quick, shown scale
	sequences    map[team]plates.Sequence // of the teams that were planned in full
}

// New returns a solver for stations and for windows of so many seconds. Stations
// with the same *plates.Loads are compared once for all. The error wraps
// [ErrClass].
func New(stations []Station, windows []int, pace Pace) (*Solver, error) {
	if err := validRoom(stations, windows); err != nil {
		return nil, err
	}
	if err := pace.valid(); err != nil {
		return nil, err
	}
	s := &Solver{stations: slices.Clone(stations), windows: slices.Clone(windows), pace: pace, programs: programs{}}
	for _, station := range stations {
		s.kindOf = append(s.kindOf, s.kind(station))
	}
	return s, nil
}

func (s *Solver) kind(station Station) int {
	for i, k := range s.kinds {
		if k.loads == station.Loads && slices.Equal(k.on, station.On) {
			return i
		}
	}
	s.kinds = append(s.kinds, &kind{
		loads: station.Loads,
		on:    station.On,
		quick: newScale(station.Loads, keepQuick),
		shown: newScale(station.Loads, keepShown),

		sequences: map[team]plates.Sequence{},
	})
	return len(s.kinds) - 1
}

// Solve seats the lifters so that as few as possible stand, then windows are
// too short by the fewest seconds, then the fewest plates are moved. Who has a
// fixed seat stays there; the other seats are not asked. A class of up to eight
// is solved by trying every way to part it; a larger one by parting the lifters
// in the order of their loads and then trading them between stations until no
// trade helps. The error wraps [ErrClass].
func (s *Solver) Solve(lifters []Lifter) (Plan, error) {
	if err := s.validLifters(lifters); err != nil {
		return Plan{}, err
	}
	if len(lifters) <= small {
		q := s.ask(lifters, keepShown)
		return q.plan(q.exhaust()), nil
	}
	q := s.ask(lifters, keepQuick)
	return q.plan(q.search()), nil
}

// Judge tells what becomes of the lifters where they sit. It moves nobody; who
// does not fit at their seat stands.
func (s *Solver) Judge(lifters []Lifter) (Plan, error) {
	if err := s.validLifters(lifters); err != nil {
		return Plan{}, err
	}
	q := s.ask(lifters, keepQuick)
	return q.plan(q.seated()), nil
}

// Improve starts from where the lifters sit and trades those without a fixed
// seat while that helps. It is quicker than [Solver.Solve] and moves fewer.
func (s *Solver) Improve(lifters []Lifter) (Plan, error) {
	if err := s.validLifters(lifters); err != nil {
		return Plan{}, err
	}
	q := s.ask(lifters, keepQuick)
	return q.plan(q.trade(q.seated())), nil
}

// Join seats one lifter, an index, where that costs least and leaves all others
// where they sit: for who comes late.
func (s *Solver) Join(lifters []Lifter, who int) (Plan, error) {
	if err := s.validLifters(lifters); err != nil {
		return Plan{}, err
	}
	if who < 0 || who >= len(lifters) {
		return Plan{}, fmt.Errorf("join lifter %d: %w: there are %d", who, ErrClass, len(lifters))
	}
	q := s.ask(lifters, keepShown) // compared as it is shown: there are few places to compare
	return q.plan(q.join(who)), nil
}
