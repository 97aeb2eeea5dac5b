package gym

import (
	"slices"

	"windlass/internal/mass"
)

// Exception is what the coach decided for one rung of one lifter in place of the
// climb's plan, since the gym's plates do not suffice for all stations at once.
type Exception struct {
	Rung int       `json:"rung"` // index
	Load mass.Mass `json:"load"` // in place of the planned one; 0 keeps that
	Last bool      `json:"last"` // lifts when all stations have lifted in this window
}

// Exception returns what was decided for a rung; nothing for most.
func (l Lifter) Exception(rung int) Exception {
	for _, e := range l.Exceptions {
		if e.Rung == rung {
			return e
		}
	}
	return Exception{Rung: rung}
}

// Except returns the lifter with another exception, which takes the place of one
// for the same rung. One that says nothing takes that back.
func (l Lifter) Except(e Exception) Lifter {
	l.Exceptions = slices.DeleteFunc(slices.Clone(l.Exceptions), func(x Exception) bool { return x.Rung == e.Rung })
	if e.Load > 0 || e.Last {
		l.Exceptions = append(l.Exceptions, e)
	}
	return l
}
