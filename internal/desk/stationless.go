package desk

import (
	"strings"

	"windlass/internal/gym"
	"windlass/internal/station"
)

// Stationless is who has a load to lift on a bar and no station for it.
type Stationless struct {
	Names []string
	Anew  int // how many of the class would have none if the stations were shared anew
}

// Stationless tells which lifters of a class have no station, and whether sharing
// anew would help: whoever is checked in early may hold alone a bar that is wanted.
func (d *Desk) Stationless(c gym.Class) Stationless {
	s, err := d.seating(c, placesOf(c))
	if err != nil || len(s.lifters) == 0 {
		return Stationless{}
	}
	plan, err := s.solver.Judge(s.lifters)
	if err != nil {
		return Stationless{}
	}
	return d.stationless(c, s, plan)
}

func (d *Desk) stationless(c gym.Class, s seating, plan station.Plan) Stationless {
	var w Stationless
	for _, x := range plan.Standing {
		w.Names = append(w.Names, s.lifters[x.Lifter].Name)
	}
	if w.Anew = len(w.Names); w.Anew == 0 {
		return w
	}
	shared, err := d.edited("share the stations", c.ID, d.shareAll)
	if err != nil {
		return w
	}
	w.Anew = 0
	for _, l := range shared.Lifters {
		if _, seated := d.seated(shared, l); seated && l.Station < 0 {
			w.Anew++
		}
	}
	return w
}

// Mends reports whether sharing anew helps.
func (w Stationless) Mends() bool { return w.Anew < len(w.Names) }

// Text says who has no station and what sharing anew would do; empty for nobody.
func (w Stationless) Text() string {
	if len(w.Names) == 0 {
		return ""
	}
	text := w.who() + "."
	switch {
	case !w.Mends():
		return text
	case w.Anew == 0:
		return text + " Shared anew, everybody has one."
	}
	return text + " Shared anew, " + count(w.Anew, "lifter") + " would have none."
}

// manyNames is how many names the note lists before it counts.
const manyNames = 6

func (w Stationless) who() string {
	switch n := len(w.Names); {
	case n == 1:
		return w.Names[0] + " has no station"
	case n > manyNames:
		return count(n, "lifter") + " have no station"
	default:
		return strings.Join(w.Names[:n-1], ", ") + " and " + w.Names[n-1] + " have no station"
	}
}
