package station

import (
	"cmp"
	"slices"

	"windlass/internal/mass"
)

// question is one class that asks for seats. Its lifters stand in the order of
// bar, lift and load, which is also the order at a station: lightest first.
type question struct {
	*Solver
	lifters []Lifter
	place   []int    // in the class, of each lifter
	program []uint16 // of each lifter
	scales  []scale  // of each kind
	fixed   seats    // those whose seat the coach chose and who fit there
	refused group    // those whose chosen seat cannot be had

	sets  []mass.Mass // scratch of one group
	moves []int
}

// ask prepares a search that weighs so many ways to make a load.
func (s *Solver) ask(lifters []Lifter, keep int) *question {
	s.forget()
	q := &question{Solver: s, place: inOrder(lifters)}
	for _, i := range q.place {
		q.lifters = append(q.lifters, lifters[i])
		q.program = append(q.program, s.programs.number(lifters[i].Sets))
	}
	for _, k := range s.kinds {
		scale := k.quick
		if keep == keepShown {
			scale = k.shown
		}
		q.scales = append(q.scales, scale)
	}
	q.fix()
	return q
}

func inOrder(lifters []Lifter) []int {
	place := make([]int, len(lifters))
	for i := range place {
		place[i] = i
	}
	slices.SortStableFunc(place, func(a, b int) int {
		l, m := lifters[a], lifters[b]
		return cmp.Or(cmp.Compare(l.Bar, m.Bar), cmp.Compare(l.Lift, m.Lift), cmp.Compare(l.heaviest(), m.heaviest()))
	})
	return place
}

// cost tells what a group costs where it fits.
func (q *question) cost(g group, at int) cost {
	switch {
	case g == 0:
		return cost{}
	case at == q.standing():
		return cost{standing: g.size()}
	}
	k := q.kindOf[at]
	t, ok := q.team(g)
	if !ok {
		return q.weigh(g, k)
	}
	c, ok := q.scales[k].known[t]
	if !ok {
		c = q.weigh(g, k)
		q.scales[k].known[t] = c
	}
	return c
}

func (q *question) team(g group) (t team, ok bool) {
	n := 0
	for i := range g.each() {
		if n == len(t) {
			return t, false
		}
		t[n] = q.program[i]
		n++
	}
	return t, true
}

// weigh tells what a group costs at a kind of station that it fits.
func (q *question) weigh(g group, k int) cost {
	q.sets = q.queue(q.sets[:0], g)
	q.moves = q.scales[k].planner.AppendMoves(q.moves[:0], q.kinds[k].on, q.sets)
	var c cost
	next := 0
	for w, given := range q.windows {
		needed := 0
		for i := range g.each() {
			if set := q.lifters[i].Sets[w]; set.Load > 0 {
				c.moves += q.moves[next]
				needed += q.pace.seconds(set.Reps, q.moves[next])
				next++
			}
		}
		c.over += Window{Needed: needed, Given: given}.Over()
	}
	return c
}

// queue appends the loads of a group in the order of the class: window by
// window, in each the lifters one after another.
func (q *question) queue(loads []mass.Mass, g group) []mass.Mass {
	for w := range q.windows {
		for i := range g.each() {
			if set := q.lifters[i].Sets[w]; set.Load > 0 {
				loads = append(loads, set.Load)
			}
		}
	}
	return loads
}
