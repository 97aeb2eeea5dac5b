package station

import (
	"cmp"
	"slices"
)

// spread parts the lifters in their order, so that each station gets neighbours
// in load. Of all such ways it finds the cheapest: going from station to station
// in the order of their bars, it keeps the cheapest way to have dealt with the
// first few lifters. A lifter may also be left standing.
func (q *question) spread(order []int) seats {
	free := slices.Collect((q.everybody() &^ q.taken()).each())
	rows := [][]segment{leaveAll(free)}
	for _, at := range order {
		rows = append(rows, q.nextRow(rows[len(rows)-1], free, at))
	}
	s := slices.Clone(q.fixed)
	end := len(free)
	for r := len(order); r > 0; r-- {
		seg := rows[r][end]
		s[order[r-1]] |= seg.here
		s[q.standing()] |= seg.left
		end = seg.from
	}
	for _, i := range free[:end] {
		s[q.standing()] |= one(i)
	}
	return s
}

// search spreads the lifters over the stations in their order and the other way
// about, trades, and keeps the better seats.
func (q *question) search() seats {
	forth, back := q.byBar()
	best := q.trade(q.spread(forth))
	if q.alike(forth, back) {
		return best
	}
	if other := q.trade(q.spread(back)); q.sum(other).below(q.sum(best)) {
		return other
	}
	return best
}

func (q *question) sum(s seats) (c cost) {
	for at, g := range s {
		c = c.plus(q.cost(g, at))
	}
	return c
}

// alike reports whether two orders of the stations come to the same.
func (q *question) alike(a, b []int) bool {
	return slices.EqualFunc(a, b, func(i, j int) bool {
		return q.kindOf[i] == q.kindOf[j] && q.stations[i].Places == q.stations[j].Places && q.fixed[i] == q.fixed[j]
	})
}

// segment is the cheapest way found to deal with the first few lifters.
type segment struct {
	cost cost
	from int   // how many of them the stations before deal with
	here group // who of the others is at the last station
	left group // who of the others stands
}

// byBar orders the stations by their bars, and those of a bar as they come or
// the other way about.
func (q *question) byBar() (forth, back []int) {
	for at := range q.stations {
		forth = append(forth, at)
	}
	back = slices.Clone(forth)
	slices.Reverse(back)
	byKey := func(a, b int) int {
		return cmp.Compare(q.stations[a].Loads.Bar().Key, q.stations[b].Loads.Bar().Key)
	}
	slices.SortStableFunc(forth, byKey)
	slices.SortStableFunc(back, byKey)
	return forth, back
}

// leaveAll is the row before the first station: everybody stands.
func leaveAll(free []int) []segment {
	row := make([]segment, len(free)+1)
	for end := range row {
		row[end].cost.standing = end
	}
	return row
}

// nextRow adds the lifters from some point on to a station, or leaves the last
// of them standing.
func (q *question) nextRow(before []segment, free []int, at int) []segment {
	row := make([]segment, len(before))
	for end := range row {
		best := segment{cost: before[end].cost.plus(q.cost(q.fixed[at], at)), from: end}
		if end > 0 {
			skip := row[end-1]
			skip.cost.standing++
			skip.left |= one(free[end-1])
			if skip.cost.below(best.cost) {
				best = skip
			}
		}
		here := q.fixed[at]
		for start := end - 1; start >= 0; start-- {
			here |= one(free[start])
			if !q.fits(here, at) {
				break
			}
			if c := before[start].cost.plus(q.cost(here, at)); c.below(best.cost) {
				best = segment{cost: c, from: start, here: here &^ q.fixed[at]}
			}
		}
		row[end] = best
	}
	return row
}
