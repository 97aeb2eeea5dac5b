package station

import (
	"slices"

	"windlass/internal/plates"
)

// Plan is a class at its stations. Lifters are named by their index.
type Plan struct {
	Seats    []int      // for each lifter the station, or None
	Groups   []Group    // one a station
	Standing []Standing // those without a seat
	Moves    int        // plate moves of all stations; a pair of discs counts two
	Over     int        // seconds by which windows are too short, summed
}

// Keeps reports whether everybody has a seat and every window is long enough.
func (p Plan) Keeps() bool { return p.Over == 0 && len(p.Standing) == 0 }

// Group is one station's part of a plan.
type Group struct {
	Lifters []int    // in the order in which they lift, the same in every window
	Turns   []Turn   // every set, in the order of the class
	Windows []Window // what the station needs of each window
	Moves   int
	Over    int // seconds
}

// Turn is one set at a station: the bar, and the moves since the turn before.
type Turn struct {
	plates.Step
	Window, Lifter int
	Seconds        int // changing the bar, changing over and lifting
}

// Window tells whether a station gets through one window.
type Window struct {
	Needed, Given int // seconds
}

// Over returns how many seconds are missing.
func (w Window) Over() int { return max(w.Needed-w.Given, 0) }

// Standing is a lifter without a seat, and the reason.
type Standing struct {
	Lifter int
	Why    Reason
}

// Reason says why a lifter has no seat.
type Reason string

// The reasons.
const (
	NoBar    Reason = "no station has that bar"
	NoPlace  Reason = "the stations with that bar are full or taken by another lift"
	Refused  Reason = "the chosen station is full, has another bar or is taken by another lift"
	Unseated Reason = "not seated yet; there is a place free"
)

// plan works seats out in full, with the planners that weigh more.
func (q *question) plan(s seats) Plan {
	p := Plan{Seats: slices.Repeat([]int{None}, len(q.lifters))}
	for at := range q.stations {
		g := q.group(s[at], q.kinds[q.kindOf[at]])
		for _, i := range g.Lifters {
			p.Seats[i] = at
		}
		p.Groups = append(p.Groups, g)
		p.Moves += g.Moves
		p.Over += g.Over
	}
	for i := range s[q.standing()].each() {
		p.Standing = append(p.Standing, Standing{Lifter: q.place[i], Why: q.reason(s, i)})
	}
	return p
}

func (q *question) group(members group, k *kind) Group {
	g := Group{}
	for i := range members.each() {
		g.Lifters = append(g.Lifters, q.place[i])
	}
	seq := q.sequence(members, k)
	g.Moves = seq.Moves
	next := 0
	for w, given := range q.windows {
		window := Window{Given: given}
		for i := range members.each() {
			set := q.lifters[i].Sets[w]
			if set.Load == 0 {
				continue
			}
			turn := Turn{Step: seq.Steps[next], Window: w, Lifter: q.place[i]}
			turn.Seconds = q.pace.seconds(set.Reps, turn.Moves)
			g.Turns = append(g.Turns, turn)
			window.Needed += turn.Seconds
			next++
		}
		g.Windows = append(g.Windows, window)
		g.Over += window.Over()
	}
	return g
}

// sequence orders a group's plates, once for the same programs: from call to call
// most groups lift what they lifted.
func (q *question) sequence(members group, k *kind) plates.Sequence {
	t, small := q.team(members)
	if seq, ok := k.sequences[t]; ok && small {
		return seq
	}
	seq := k.shown.planner.Sequence(k.on, q.queue(nil, members))
	if small {
		k.sequences[t] = seq
	}
	return seq
}

func (q *question) reason(s seats, i int) Reason {
	if q.refused.has(i) {
		return Refused
	}
	why := NoBar
	for at, station := range q.stations {
		switch {
		case q.fits(s[at]|one(i), at):
			return Unseated
		case station.Loads.Bar().Key == q.lifters[i].Bar:
			why = NoPlace
		}
	}
	return why
}
