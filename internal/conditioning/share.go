package conditioning

import (
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Crowd is the class that a workout is for, and what the gym has for it.
type Crowd struct {
	Size  int // athletes at work in the same workout; 0 asks for nothing
	Owned gym.Equipment
	Load  func(athlete int, item gym.Item) mass.Mass // of an athlete from 0 to Size − 1; 0 for a movement without a load
}

// Way is how a class gets by with too few implements. Each group begins at another
// movement and all move on together; of those who take turns, one group works
// while the others rest; heats go one after the other. All are 1 where everybody
// works at once.
type Way struct{ Starts, Turns, Heats int }

// groups is how many parts the class is in.
func (w Way) groups() int { return w.Starts * w.Turns * w.Heats }

// Bounds of what a coach would run in a class (common practice, no source).
const (
	mostHeats = 3
	mostTurns = 4
)

// Shortage is a pool from which more want to draw than there are things in it.
type Shortage struct {
	Pool   gym.Pool
	Wanted int
	There  int
}

// Sharing is whether the implements suffice for a class, and what to do if not.
type Sharing struct {
	Way       Way        // the simplest that does; the zero value is none
	Short     []Shortage // what all at once would lack, the greatest lack first
	Uncounted []string   // kinds of implement that nobody has counted, taken to be enough
	Asks      bool       // for any implement at all
}

// Enough reports whether the class can do the workout, in one way or another.
func (s Sharing) Enough() bool { return s.Way.Heats > 0 }

// Share looks for the simplest way in which a class can do a workout with what the
// gym owns: all at once, beginning at different movements, in turns, and last in
// heats. A way that it returns was tried with every athlete's own load, as if groups
// moved on together. Athletes who work all at once keep what they use from the
// first movement to the last; those who begin apart hand it on.
func (c Crowd) Share(w gym.Workout, find Find) Sharing { return c.share(w, find, mostHeats) }

func (c Crowd) share(w gym.Workout, find Find, heats int) Sharing {
	s := newSheet(c, w, find)
	sharing := Sharing{Short: s.short(), Uncounted: s.uncounted, Asks: len(s.pools) > 0}
	for _, way := range waysOf(w, heats) {
		if s.seats(way) {
			sharing.Way = way
			break
		}
	}
	return sharing
}

// waysOf returns the ways that a format allows, the simplest first. The list of a
// chipper is meant to be gone down in order, so all begin at its head. Intervals
// leave as many turns as the rest holds works, sets leave two.
func waysOf(w gym.Workout, heats int) []Way {
	starts, turns := 1, 1
	if w.Format != gym.Chipper {
		starts = max(1, len(w.Items))
	}
	switch {
	case w.Format == gym.Intervals && w.Work > 0:
		turns = min(mostTurns, 1+w.Rest/w.Work)
	case w.Format == gym.PlainSets && w.Rest > 0:
		turns = 2
	}
	var ways []Way
	for h := 1; h <= heats; h++ {
		for t := 1; t <= turns; t++ {
			for s := 1; s <= starts; s++ {
				ways = append(ways, Way{s, t, h})
			}
		}
	}
	return ways
}
