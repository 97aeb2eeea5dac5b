package station

import "slices"

// trade improves seats until no single lifter moved to another station, no two
// lifters traded, and no two groups traded between different bars help. Two
// stations that did not change since they were last compared are not compared
// again.
func (q *question) trade(s seats) seats {
	s = slices.Clone(s)
	version := slices.Repeat([]int{1}, len(s)) // counts the changes of each station
	compared := map[[2]int][2]int{}            // two stations, and their versions then
	for quiet := false; !quiet; {
		quiet = true
		for a := range s {
			for b := range a {
				pair, now := [2]int{a, b}, [2]int{version[a], version[b]}
				if compared[pair] == now {
					continue
				}
				if q.tradeBetween(s, a, b) {
					version[a]++
					version[b]++
					quiet = false
				}
				compared[pair] = [2]int{version[a], version[b]}
			}
		}
	}
	return s
}

// tradeBetween makes the best trade of two stations again and again.
func (q *question) tradeBetween(s seats, a, b int) (better bool) {
	for {
		bestA, bestB := s[a], s[b]
		least := q.cost(s[a], a).plus(q.cost(s[b], b))
		for _, t := range q.trades(s, a, b) {
			if !q.fits(t[0], a) || !q.fits(t[1], b) {
				continue
			}
			if c := q.cost(t[0], a).plus(q.cost(t[1], b)); c.below(least) {
				bestA, bestB, least = t[0], t[1], c
			}
		}
		if bestA == s[a] {
			return better
		}
		s[a], s[b], better = bestA, bestB, true
	}
}

// trades lists the groups of two stations after each trade: one lifter for
// another or for nobody, and all for all.
func (q *question) trades(s seats, a, b int) [][2]group {
	trades := [][2]group{{s[b], s[a]}}
	for i := range s[a].each() {
		trades = append(trades, [2]group{s[a] &^ one(i), s[b] | one(i)})
		for j := range s[b].each() {
			trades = append(trades, [2]group{s[a]&^one(i) | one(j), s[b]&^one(j) | one(i)})
		}
	}
	for j := range s[b].each() {
		trades = append(trades, [2]group{s[a] | one(j), s[b] &^ one(j)})
	}
	return trades
}
