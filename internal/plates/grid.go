package plates

import (
	"math"
	"slices"

	"windlass/internal/mass"
)

// grid is every sum that pairs of plates of one unit make on a bar. They all
// lie on multiples of one step, so "can it be made, and with how few" is a
// table over the steps: exact, whatever the stock.
//
// No sum of kilogram plates equals a sum of pound plates: a gram times j is a
// thousandth of a pound times k only where k is a multiple of 10^8, since
// 45 359 237 and 10^8 share no factor, and 10^5 lb is beyond [mass.Max]. So a
// load has one share of kilograms and one of pounds, and the two grids of a
// stock can be searched apart.
type grid struct {
	step   mass.Mass  // greatest common divisor of the pairs
	plates []Plate    // in the order of the bar
	size   []int      // steps that one pair of plates[i] takes
	least  [][]uint16 // least[i][s]: fewest pairs out of plates[i:] that make s steps
	full   [][]uint16 // the same with at least one disc of full diameter
	sums   []int      // the steps that can be made, ascending; the first is 0
}

// never marks a sum that cannot be made.
const never = math.MaxUint16

func newGrid(plates []Plate, limit mass.Mass) *grid {
	g := &grid{step: 1, plates: plates}
	var all mass.Mass
	for _, p := range plates {
		all += 2 * p.Mass * mass.Mass(p.Pairs)
	}
	if len(plates) > 0 {
		g.step = 2 * common(plates)
	}
	for _, p := range plates {
		g.size = append(g.size, int(2*p.Mass/g.step))
	}
	g.fill(int(min(all, limit) / g.step))
	for s, n := range g.least[0] {
		if n != never {
			g.sums = append(g.sums, s)
		}
	}
	return g
}

// common returns the greatest common divisor of the plates' masses.
func common(plates []Plate) mass.Mass {
	a := plates[0].Mass
	for _, p := range plates[1:] {
		for b := p.Mass; b != 0; {
			a, b = b, a%b
		}
	}
	return a
}

// fill works from the lightest plate to the heaviest, so that a stack can be
// read off heaviest first.
func (g *grid) fill(last int) {
	n := len(g.plates)
	g.least, g.full = make([][]uint16, n+1), make([][]uint16, n+1)
	g.least[n], g.full[n] = blank(last), blank(last)
	g.least[n][0] = 0
	for i := n - 1; i >= 0; i-- {
		g.least[i], g.full[i] = blank(last), blank(last)
		for s := range g.least[i] {
			g.least[i][s], g.full[i][s] = g.fewest(i, s)
		}
	}
}

func blank(last int) []uint16 { return slices.Repeat([]uint16{never}, last+1) }

// fewest tries every number of pairs of plate i on top of the lighter plates.
func (g *grid) fewest(i, s int) (least, full uint16) {
	least, full = never, never
	for c := 0; c <= g.plates[i].Pairs && c*g.size[i] <= s; c++ {
		rest := s - c*g.size[i]
		lighter, with := g.least[i+1][rest], g.full[i+1][rest]
		least = min(least, plus(lighter, c))
		if g.plates[i].Full && c > 0 {
			with = lighter
		}
		full = min(full, plus(with, c))
	}
	return least, full
}

func plus(n uint16, c int) uint16 {
	if n == never {
		return never
	}
	return n + uint16(c)
}

// read returns the pairs of each plate that make s with the fewest discs, the
// heaviest plates first where that is equal. With full it takes a disc of full
// diameter along. The sum must be one that can be made so.
func (g *grid) read(s int, full bool) []int {
	counts := make([]int, len(g.plates))
	for i := range g.plates {
		c := min(g.plates[i].Pairs, s/g.size[i])
		for ; c > 0; c-- {
			if g.follows(i, s, c, full) {
				break
			}
		}
		counts[i], s = c, s-c*g.size[i]
		full = full && !(c > 0 && g.plates[i].Full)
	}
	return counts
}

// follows reports whether c pairs of plate i lie on a best way to s.
func (g *grid) follows(i, s, c int, full bool) bool {
	rest := s - c*g.size[i]
	switch {
	case !full:
		return plus(g.least[i+1][rest], c) == g.least[i][s]
	case g.plates[i].Full:
		return plus(g.least[i+1][rest], c) == g.full[i][s]
	}
	return plus(g.full[i+1][rest], c) == g.full[i][s]
}

// over returns the lightest sum of at least need.
func (g *grid) over(need mass.Mass) (s int, ok bool) {
	need = max(need, 0)
	i, _ := slices.BinarySearch(g.sums, int((need+g.step-1)/g.step))
	if i == len(g.sums) {
		return 0, false
	}
	return g.sums[i], true
}

func (g *grid) mass(s int) mass.Mass { return mass.Mass(s) * g.step }
