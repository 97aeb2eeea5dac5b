package plates

import (
	"iter"

	"windlass/internal/mass"
)

// total returns what the bar weighs with that amount on it.
func (l *Loads) total(a amount) mass.Mass {
	return l.base + l.grids[0].mass(a[0]) + l.grids[1].mass(a[1])
}

// amount splits a total that the stock makes into its two shares.
func (l *Loads) amount(total mass.Mass) (amount, bool) {
	a, ok := l.atMost(total)
	return a, ok && l.total(a) == total
}

// atMost walks the sums of kilograms up and those of pounds down at once, so
// that every pair worth a look is met.
func (l *Loads) atMost(limit mass.Mass) (best amount, ok bool) {
	kg, lb := l.grids[0], l.grids[1]
	top := mass.Mass(-1)
	j := len(lb.sums) - 1
	for _, s := range kg.sums {
		room := limit - l.base - kg.mass(s)
		for j >= 0 && lb.mass(lb.sums[j]) > room {
			j--
		}
		if j < 0 {
			break
		}
		a := amount{s, lb.sums[j]}
		if m := l.total(a); m > top {
			best, top = a, m
		}
	}
	return best, top >= 0
}

// atLeast is the same walk from the other side of the limit.
func (l *Loads) atLeast(limit mass.Mass) (best amount, ok bool) {
	kg, lb := l.grids[0], l.grids[1]
	bottom := mass.Max + 1
	j := len(lb.sums) - 1
	for _, s := range kg.sums {
		need := limit - l.base - kg.mass(s)
		for j > 0 && lb.mass(lb.sums[j-1]) >= need {
			j--
		}
		a := amount{s, lb.sums[j]}
		if m := l.total(a); m >= limit && m < bottom {
			best, bottom = a, m
		}
	}
	return best, bottom <= mass.Max
}

// between yields every amount whose total is in the range, ends included, in no
// order.
func (l *Loads) between(from, to mass.Mass) iter.Seq[amount] {
	to = min(to, mass.Max)
	return func(yield func(amount) bool) {
		for _, s := range l.grids[0].sums {
			left := l.grids[0].mass(s) + l.base
			t, ok := l.grids[1].over(from - left)
			for ok && left+l.grids[1].mass(t) <= to {
				if !yield(amount{s, t}) {
					return
				}
				t, ok = l.grids[1].over(l.grids[1].mass(t) + 1)
			}
		}
	}
}

// discs returns the fewest discs a side for an amount.
func (l *Loads) discs(a amount) int { return l.fewest(0, a, l.fullIn(a) >= 0) }

// fewest returns the fewest discs a side that make an amount out of the plates
// from letter i on, one of full diameter among them if that is wanted. Where
// there is no way it returns never, which is more than any stock has.
func (l *Loads) fewest(i int, a amount, full bool) int {
	kg, lb := l.grids[0], l.grids[1]
	k, p := l.later[i][0], l.later[i][1]
	if !full {
		return both(kg.least[k][a[0]], lb.least[p][a[1]])
	}
	return min(both(kg.full[k][a[0]], lb.least[p][a[1]]), both(kg.least[k][a[0]], lb.full[p][a[1]]))
}

func both(m, n uint16) int {
	if m == never || n == never {
		return never
	}
	return int(m) + int(n)
}

// fullIn returns the grid whose share brings the disc of full diameter that a
// lift from the floor wants, and -1 where none is wanted or there is none.
func (l *Loads) fullIn(a amount) int {
	if !l.floor {
		return -1
	}
	kg, lb := l.extra(0, a[0]), l.extra(1, a[1])
	switch {
	case kg == never && lb == never:
		return -1
	case lb < kg:
		return 1
	}
	return 0
}

// extra returns how many discs more a share costs with one of full diameter.
func (l *Loads) extra(grid, s int) int {
	g := l.grids[grid]
	if g.full[0][s] == never {
		return never
	}
	return int(g.full[0][s] - g.least[0][s])
}

// loading reads the stack of an amount off the grids.
func (l *Loads) loading(a amount) Loading {
	full := l.fullIn(a)
	return l.pick(l.grids[0].read(a[0], full == 0), l.grids[1].read(a[1], full == 1))
}

// pick takes so many pairs of each plate of each grid, heaviest inside.
func (l *Loads) pick(counts ...[]int) Loading {
	side := []Disc{}
	for letter, at := range l.order {
		for range counts[at.grid][at.plate] {
			side = append(side, l.disc(byte(letter)))
		}
	}
	return l.dress(side)
}

// dress puts discs on the bar.
func (l *Loads) dress(side []Disc) Loading {
	loading := Loading{Bar: l.bar, Total: l.base, PerSide: side}
	full := false
	for _, d := range side {
		loading.Total += 2 * d.Mass
		full = full || d.Full
	}
	loading.Blocks = l.floor && !full
	return loading
}

func apart(a, b mass.Mass) mass.Mass { return max(a-b, b-a) }
