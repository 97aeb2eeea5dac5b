package wall

import (
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Records returns who set a record in the class.
func (s State) Records() []gym.ID {
	var all []gym.ID
	for _, l := range s.Board.Lifters() {
		if s.record(l) {
			all = append(all, l.Athlete)
		}
	}
	return all
}

// record reports whether what was logged of a lifter is over every other result
// for the same reps; what the climb was counted from may have been lowered. An
// open call is no record yet, and a first result beats nobody.
func (s State) record(l desk.BoardLifter) bool {
	logged, ok := s.logged(l)
	var before mass.Mass
	for _, r := range s.Book.Results {
		if r.Void == nil && r.ID != logged.ID && r.Athlete == logged.Athlete && r.Lift == logged.Lift && r.Reps == logged.Reps {
			before = max(before, r.Load)
		}
	}
	return ok && before > 0 && logged.Load > before
}

// logged returns what was logged of a lifter's climb.
func (s State) logged(l desk.BoardLifter) (gym.Result, bool) {
	for _, r := range s.Book.Results {
		if r.ID == l.Result && r.Void == nil {
			return r, true
		}
	}
	return gym.Result{}, false
}
