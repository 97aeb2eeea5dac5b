package plates

import (
	"encoding/binary"
	"slices"
)

// dealLimit bounds the search of a deal, in tries of a count. A gym's real
// clashes are settled within a few hundred.
const dealLimit = 200_000

// dealer shares the plates of one unit among bars that are loaded at the same
// time.
type dealer struct {
	grid    *grid
	heavier [][]bool // heavier[i][s]: the plates before i make s steps on one bar
}

func newDealer(g *grid) *dealer {
	row := make([]bool, len(g.least[0]))
	row[0] = true
	d := &dealer{grid: g, heavier: [][]bool{row}}
	for i, p := range g.plates {
		next := make([]bool, len(row))
		for s := range next {
			for c := 0; c <= p.Pairs && c*g.size[i] <= s && !next[s]; c++ {
				next[s] = row[s-c*g.size[i]]
			}
		}
		d.heavier = append(d.heavier, next)
		row = next
	}
	return d
}

// share finds pairs of each plate for every bar so that all bars carry their
// steps at once. It reports false when there is no way, or none was found
// within the limit.
func (d *dealer) share(steps []int) ([][]int, bool) {
	s := &deal{dealer: d, rest: slices.Clone(steps), dead: map[string]bool{}}
	for range steps {
		s.counts = append(s.counts, make([]int, len(d.grid.plates)))
	}
	return s.counts, s.plate(len(d.grid.plates) - 1)
}

// deal is one search. It goes from the lightest plate to the heaviest: whether
// an odd 1.25 can be had decides most clashes, and it is decided first.
type deal struct {
	*dealer
	rest   []int   // steps still to make, a bar each
	counts [][]int // pairs of each plate, a bar each
	dead   map[string]bool
	tries  int
}

// plate deals plate i and all heavier ones.
func (d *deal) plate(i int) bool {
	if i < 0 {
		return true // every rest is zero: nothing else is reached without plates
	}
	key := d.key(i)
	if d.dead[key] || !d.enough(i) {
		return false
	}
	if d.bar(i, 0, d.grid.plates[i].Pairs) {
		return true
	}
	d.dead[key] = true
	return false
}

// enough reports whether the plates up to i weigh what all bars together want.
func (d *deal) enough(i int) bool {
	have, want := 0, 0
	for j := range i + 1 {
		have += d.grid.size[j] * d.grid.plates[j].Pairs
	}
	for _, s := range d.rest {
		want += s
	}
	return want <= have
}

// bar gives bar b and those after it their pairs of plate i, as few as will do,
// out of the pairs that are left.
func (d *deal) bar(i, b, left int) bool {
	if b == len(d.rest) {
		return d.plate(i - 1)
	}
	spare := left - d.wanted(i, b+1)
	size, want := d.grid.size[i], d.rest[b]
	for c := 0; c <= spare && c*size <= want; c++ {
		if d.tries++; d.tries > dealLimit {
			return false
		}
		if !d.heavier[i][want-c*size] {
			continue
		}
		d.counts[b][i], d.rest[b] = c, want-c*size
		if d.bar(i, b+1, left-c) {
			return true
		}
		d.counts[b][i], d.rest[b] = 0, want
	}
	return false
}

// wanted returns how many pairs of plate i the bars from b on need at least.
func (d *deal) wanted(i, b int) int {
	all := 0
	for ; b < len(d.rest); b++ {
		c := 0
		for c*d.grid.size[i] <= d.rest[b] && !d.heavier[i][d.rest[b]-c*d.grid.size[i]] {
			c++
		}
		all += c
	}
	return all
}

func (d *deal) key(i int) string {
	key := []byte{byte(i)}
	for _, s := range d.rest {
		key = binary.AppendUvarint(key, uint64(s))
	}
	return string(key)
}
