package station

import "slices"

// seats is a group for each station, and one more at the end for those who
// stand.
type seats []group

func (q *question) nobody() seats { return make(seats, len(q.stations)+1) }

// standing is the index behind the stations.
func (q *question) standing() int { return len(q.stations) }

func (q *question) everybody() group { return one(len(q.lifters)) - 1 }

// fix seats those whose seat the coach chose; who comes first in the class has
// the better right.
func (q *question) fix() {
	q.fixed = q.nobody()
	for i := range len(q.lifters) {
		i = slices.Index(q.place, i)
		switch l := q.lifters[i]; {
		case !l.Fixed || l.Seat == None:
		case q.fits(q.fixed[l.Seat]|one(i), l.Seat):
			q.fixed[l.Seat] |= one(i)
		default:
			q.refused |= one(i)
		}
	}
	q.fixed[q.standing()] = q.refused
}

// seated puts everybody where they sit, the fixed ones first, and who does not
// fit there among the standing.
func (q *question) seated() seats {
	s := slices.Clone(q.fixed)
	for i := range (q.everybody() &^ q.taken()).each() {
		at := q.lifters[i].Seat
		if at == None || !q.fits(s[at]|one(i), at) {
			at = q.standing()
		}
		s[at] |= one(i)
	}
	return s
}

// taken is everybody about whom nothing is to be decided.
func (q *question) taken() group {
	var g group
	for _, fixed := range q.fixed {
		g |= fixed
	}
	return g
}

// fits reports whether a group may share a station. Anybody may stand but those
// whose chosen seat can be had.
func (q *question) fits(g group, at int) bool {
	if at == q.standing() {
		return g&q.taken()&^q.refused == 0
	}
	if g.size() > q.stations[at].Places {
		return false
	}
	for i := range g.each() {
		if !q.welcome(i, at) || q.lifters[i].Lift != q.lifters[g.first()].Lift {
			return false
		}
	}
	return true
}

func (q *question) welcome(i, at int) bool {
	l := q.lifters[i]
	return l.Bar == q.stations[at].Loads.Bar().Key && !q.refused.has(i) && (!l.Fixed || l.Seat == None || l.Seat == at)
}

// join seats one lifter where that costs least.
func (q *question) join(who int) seats {
	i := slices.Index(q.place, who)
	s := q.seated()
	for at := range s {
		s[at] &^= one(i)
	}
	best, least := q.standing(), cost{standing: 1}
	for at := range q.stations {
		if !q.fits(s[at]|one(i), at) {
			continue
		}
		more := q.cost(s[at]|one(i), at).minus(q.cost(s[at], at))
		if more.below(least) {
			best, least = at, more
		}
	}
	s[best] |= one(i)
	return s
}
