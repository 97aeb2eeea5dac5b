package station

import (
	"errors"
	"fmt"

	"windlass/internal/mass"
)

// ErrClass marks a class that cannot be seated as it was given.
var ErrClass = errors.New("not a class that can be seated")

func (p Pace) valid() error {
	if p.Rep < 0 || p.Move < 0 || p.ChangeOver < 0 {
		return fmt.Errorf("use pace of %d, %d and %d s: %w: no time can be negative", p.Rep, p.Move, p.ChangeOver, ErrClass)
	}
	return nil
}

func (s Station) valid() error {
	switch {
	case s.Loads == nil:
		return fmt.Errorf("seat class at %q: %w: the station has no bar; give it one", s.Name, ErrClass)
	case s.Places < 1:
		return fmt.Errorf("seat class at %q: %w: the station has %d places; give it at least one", s.Name, ErrClass, s.Places)
	}
	return nil
}

func validRoom(stations []Station, windows []int) error {
	if len(stations) == 0 {
		return fmt.Errorf("seat class: %w: there is no station; add one to the gym", ErrClass)
	}
	for _, s := range stations {
		if err := s.valid(); err != nil {
			return err
		}
	}
	if len(windows) == 0 {
		return fmt.Errorf("seat class: %w: the climb has no windows; choose another climb", ErrClass)
	}
	for i, seconds := range windows {
		if seconds <= 0 {
			return fmt.Errorf("seat class: %w: window %d lasts %d s; make it longer", ErrClass, i+1, seconds)
		}
	}
	return nil
}

func (s *Solver) validLifters(lifters []Lifter) error {
	switch n := len(lifters); {
	case n == 0:
		return fmt.Errorf("seat class: %w: nobody has checked in", ErrClass)
	case n > MaxLifters:
		return fmt.Errorf("seat class of %d: %w: %d is the most; run it in two waves", n, ErrClass, MaxLifters)
	}
	for _, l := range lifters {
		if err := s.validLifter(l); err != nil {
			return fmt.Errorf("seat %q: %w", l.Name, err)
		}
	}
	return nil
}

func (s *Solver) validLifter(l Lifter) error {
	if len(l.Sets) != len(s.windows) {
		return fmt.Errorf("%w: %d sets for %d windows", ErrClass, len(l.Sets), len(s.windows))
	}
	if l.Seat < None || l.Seat >= len(s.stations) {
		return fmt.Errorf("%w: there is no station %d; the last is %d", ErrClass, l.Seat, len(s.stations)-1)
	}
	for i, set := range l.Sets {
		if set.Load < 0 || set.Load > mass.Max || set.Reps < 0 {
			return fmt.Errorf("%w: set %d is %d × %s", ErrClass, i+1, set.Reps, set.Load)
		}
	}
	return nil
}
