package station

import "windlass/internal/plates"

// Clash is a moment at which the stations together want more of a plate than
// the room has. The bars of its ways out are stations.
type Clash struct {
	plates.Clash
	Window, Turn int // from 0; every station is at that turn of the window
}

// Clashes checks a plan of stations that draw on one stock: it takes the first
// turns of a window as one moment, then the second turns, and so on. A station
// without a turn keeps on the bar what it lifted last. Stations with plates of
// their own cannot clash and need no check.
func (s *Solver) Clashes(p Plan) []Clash {
	moments, queues := s.moments(p)
	var clashes []Clash
	for _, c := range plates.Check(queues) {
		at := moments[c.Set]
		clashes = append(clashes, Clash{Clash: c, Window: at.window, Turn: at.turn})
	}
	return clashes
}

type moment struct{ window, turn int }

// moments lays the turns of all stations side by side.
func (s *Solver) moments(p Plan) ([]moment, []plates.Queue) {
	var moments []moment
	queues := make([]plates.Queue, len(s.stations))
	for at, station := range s.stations {
		queues[at].Loads = station.Loads
	}
	for w := range s.windows {
		for turn := range p.turns(w) {
			for at, g := range p.Groups {
				queues[at].Sets = append(queues[at].Sets, g.at(w, turn))
			}
			moments = append(moments, moment{w, turn})
		}
	}
	return moments, queues
}

// turns is how many turns the busiest station has in a window.
func (p Plan) turns(window int) (most int) {
	for _, g := range p.Groups {
		n := 0
		for _, t := range g.Turns {
			if t.Window == window {
				n++
			}
		}
		most = max(most, n)
	}
	return most
}

// at returns what is on the bar at a turn of a window.
func (g Group) at(window, turn int) (on plates.Loading) {
	n := 0
	for _, t := range g.Turns {
		if t.Window > window || n > turn {
			break
		}
		on = t.Loading
		if t.Window == window {
			n++
		}
	}
	return on
}
