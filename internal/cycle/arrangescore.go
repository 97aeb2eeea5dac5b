package cycle

import (
	"cmp"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// score says how good a week is among those with the same sessions.
type score struct {
	main    int // main days away from the track's own weekday
	moved   int // sessions of any kind away from it
	gap     int // least days between two sessions for one region, round the week
	swapped int // pairs of sessions out of the track's order
}

// better compares two scores; equal ones are not better.
func (s score) better(t score) bool {
	return cmp.Or(
		cmp.Compare(s.main, t.main), cmp.Compare(s.moved, t.moved), cmp.Compare(t.gap, s.gap), cmp.Compare(s.swapped, t.swapped),
	) < 0
}

// weigh keeps the present assignment if it is better than every earlier one. The
// search tries earlier weekdays first, so the earliest of equal weeks stays.
func (p *puzzle) weigh() {
	s := score{gap: p.gap()}
	for i, d := range p.days {
		if d != p.keep[i].Plan {
			s.moved++
			if p.keep[i].Kind == gym.MainDay {
				s.main++
			}
		}
		for _, earlier := range p.days[:i] {
			if earlier > d {
				s.swapped++
			}
		}
	}
	if p.found && !s.better(p.score) {
		return
	}
	p.found, p.score = true, s
	p.best = p.best[:0]
	for i, d := range p.days {
		p.best = append(p.best, Placed{p.keep[i], d})
	}
}

func (p *puzzle) gap() int {
	least := 7
	for a := range 7 {
		for b := a + 1; b < 7; b++ {
			if p.on[a] != nil && p.on[b] != nil && clash(p.on[a].Region, p.on[b].Region) {
				least = min(least, b-a, 7-(b-a))
			}
		}
	}
	return least
}

// week writes down what was found.
func (p *puzzle) week() Week {
	w := Week{Days: slices.Concat(p.hand, p.best)}
	slices.SortFunc(w.Days, func(a, b Placed) int { return cmp.Compare(a.On, b.On) })
	for _, s := range p.ask.Sessions {
		if !slices.ContainsFunc(w.Days, func(d Placed) bool { return d.Plan == s.Plan }) {
			w.Dropped = append(w.Dropped, s)
		}
	}
	w.Why = p.why(w)
	return w
}

// subsets returns every choice of size indices below n, those with the lowest
// indices first.
func subsets(n, size int) [][]int {
	if size == 0 {
		return [][]int{nil}
	}
	var all [][]int
	for first := 0; first <= n-size; first++ {
		for _, rest := range subsets(n-first-1, size-1) {
			choice := []int{first}
			for _, i := range rest {
				choice = append(choice, first+1+i)
			}
			all = append(all, choice)
		}
	}
	return all
}

// openDays are the weekdays a coach may choose from when none is closed.
const openDays day.Weekdays = 1<<7 - 1
