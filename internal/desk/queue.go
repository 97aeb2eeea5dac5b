package desk

import (
	"slices"

	"windlass/internal/climb"
	"windlass/internal/clock"
	"windlass/internal/gym"
)

// Owed is a call that a lifter owes at a moment.
type Owed struct {
	Lifter BoardLifter
	Rung   int // after which the call is made
	Asked  int // the rung of the set that it is about, see [climb.Path.Asked]
	Kinds  []gym.CallKind
	Late   bool // the rung is over
}

// Owes returns the call that a lifter owes at a moment of the climb.
func (b Board) Owes(l BoardLifter, m clock.Moment) (Owed, bool) {
	at := m.Rung
	if at == clock.None {
		at = len(b.Class.Climb.Rungs) - 1
	}
	if !m.Started || l.Fault != nil {
		return Owed{}, false
	}
	rung, kinds, ok := l.Path.Owes(at)
	if !ok {
		return Owed{}, false
	}
	return Owed{Lifter: l, Rung: rung, Asked: l.Path.Asked(rung), Kinds: kinds, Late: rung < at || m.Finished}, true
}

// Queue lists the calls that are owed, the late ones first, in the order of the
// stations.
func (b Board) Queue(m clock.Moment) []Owed {
	var queue []Owed
	for _, l := range b.Lifters() {
		if o, ok := b.Owes(l, m); ok {
			queue = append(queue, o)
		}
	}
	slices.SortStableFunc(queue, func(x, y Owed) int {
		switch {
		case x.Late && !y.Late:
			return -1
		case y.Late && !x.Late:
			return 1
		}
		return 0
	})
	return queue
}

// NextCall returns the lifter whose call is to be made after an athlete's: the
// next in the queue from where the athlete stands on the board, round to the
// first. Late calls come before all.
func (b Board) NextCall(m clock.Moment, after gym.ID) (gym.ID, bool) {
	queue := b.Queue(m)
	if len(queue) == 0 {
		return "", false
	}
	order := map[gym.ID]int{} // from 1, so that who is not on the board stands before all
	for i, l := range b.Lifters() {
		order[l.Athlete] = i + 1
	}
	for _, o := range queue {
		if o.Late == queue[0].Late && order[o.Lifter.Athlete] > order[after] {
			return o.Lifter.Athlete, true
		}
	}
	return queue[0].Lifter.Athlete, true
}

// Shown is what a lifter's row says at a moment.
type Shown struct {
	Now, Next BoardSet
	HasNow    bool // there is a set in the present window
	HasNext   bool
	Call      gym.CallKind // the latest call that was made
}

// Shown returns the set of the present window and the one of the next that has
// one.
func (l BoardLifter) Shown(m clock.Moment) Shown {
	var s Shown
	if n := len(l.Calls); n > 0 {
		s.Call = l.Calls[n-1].Kind
	}
	rung := m.Rung
	if m.Finished {
		rung = len(l.Sets) - 1 // the last set is still on the bar
	}
	if rung < 0 || rung >= len(l.Sets) {
		return s
	}
	s.Now = l.Sets[rung]
	s.HasNow = s.Now.Likely() > 0 || s.Now.State == climb.Open
	if rung+1 < len(l.Sets) {
		s.Next = l.Sets[rung+1]
		s.HasNext = s.Next.Likely() > 0 || s.Next.State == climb.Open
	}
	return s
}

// Done reports whether a lifter lifts nothing any more from a rung on.
func (l BoardLifter) Done(rung int) bool {
	for i := max(0, rung); i < len(l.Sets); i++ {
		if l.Sets[i].State != climb.Off {
			return false
		}
	}
	return len(l.Sets) > 0
}
