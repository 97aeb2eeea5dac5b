package station

// small is the class for which every way to part it is tried: 3^8 ways to split
// off one station's group are 6561.
const small = 8

// exhaust goes from station to station and keeps, for every group of lifters,
// the cheapest way to seat just them at the stations so far.
func (q *question) exhaust() seats {
	best := []partial{{reached: true}}
	best = append(best, make([]partial, q.everybody())...)
	var choices [][]partial
	for at := range q.stations {
		best = q.extend(best, at)
		choices = append(choices, best)
	}
	return q.readBack(choices)
}

// partial is the cheapest way found to seat one group.
type partial struct {
	cost    cost
	last    group // who of them is at the last station
	reached bool
}

func (q *question) extend(before []partial, at int) []partial {
	after := make([]partial, len(before))
	for g := range group(len(before)) {
		if g&q.fixed[at] != q.fixed[at] || !q.fits(g, at) {
			continue
		}
		c := q.cost(g, at)
		others := q.everybody() &^ g
		// Every group of the others, the empty one last.
		for rest := others; ; rest = (rest - 1) & others {
			if p := before[rest]; p.reached {
				after[rest|g].offer(partial{cost: p.cost.plus(c), last: g, reached: true})
			}
			if rest == 0 {
				break
			}
		}
	}
	return after
}

func (p *partial) offer(other partial) {
	if !p.reached || other.cost.below(p.cost) {
		*p = other
	}
}

// readBack finds whom it is cheapest to seat, and where they are then.
func (q *question) readBack(choices [][]partial) seats {
	var most partial
	var seated group
	for g, p := range choices[len(choices)-1] {
		if p.reached {
			p.cost = p.cost.plus(cost{standing: (q.everybody() &^ group(g)).size()})
			if !most.reached || p.cost.below(most.cost) {
				most, seated = p, group(g)
			}
		}
	}
	s := q.nobody()
	s[q.standing()] = q.everybody() &^ seated
	for at := len(choices) - 1; at >= 0; at-- {
		s[at] = choices[at][seated].last
		seated &^= s[at]
	}
	return s
}
