// Package station says who shares a bar.
//
// Most callers need [New], for the stations, the windows and the pace of a
// class, and [Solver.Solve], which seats the lifters so that the windows are kept
// and the fewest plates are moved. [Solver.Judge] tells the same of seats that
// were chosen by hand. The package promises that nobody is seated at a bar that
// is not theirs, that two lifts never share a station, and that who has no seat
// is named with the reason. It does not know what a lifter should lift; see
// package climb.
package station

import (
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// MaxLifters is the most that are seated at once; a larger class runs in waves.
const MaxLifters = 64

// None is the seat of a lifter without a station.
const None = -1

// Station is a place with a bar and plates that some lifters share.
type Station struct {
	Name   string
	Loads  *plates.Loads // what its bar can carry
	Places int           // how many lifters at most
	On     []plates.Disc // on each side of the bar before the first window; none for the bare bar
}

// Lifter is one of the class.
type Lifter struct {
	Name  string
	Bar   string // key of the bar that the lift wants
	Lift  string // lifters of different lifts do not share a station
	Sets  []Set  // one a window
	Seat  int    // the station where they are, or None
	Fixed bool   // the coach chose the seat: it is kept
}

// Set is what a lifter does in one window.
type Set struct {
	Load mass.Mass // aimed at; the station's nearest load is taken. 0 means no set
	Reps int
}

func (l Lifter) heaviest() mass.Mass {
	var most mass.Mass
	for _, set := range l.Sets {
		most = max(most, set.Load)
	}
	return most
}

// Pace is how long things take, in whole seconds.
type Pace struct {
	Rep         int  // one repetition
	Move        int  // pushing on or pulling off one disc
	ChangeOver  int  // from one lifter to the next
	SidesAtOnce bool // two load the bar together, so that a pair takes as long as a disc
}

// UsualPace is common practice, no source: time your own class and set it.
func UsualPace() Pace { return Pace{Rep: 3, Move: 6, ChangeOver: 8, SidesAtOnce: true} }

// seconds returns how long a set takes with so many plate moves before it.
func (p Pace) seconds(reps, moves int) int {
	if p.SidesAtOnce {
		moves /= 2 // they come in pairs
	}
	return reps*p.Rep + moves*p.Move + p.ChangeOver
}
