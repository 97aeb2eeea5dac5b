package station

import (
	"cmp"
	"iter"
	"math/bits"
)

// group is a set of lifters, a bit for each in the order of the question.
type group uint64

func one(i int) group          { return 1 << i }
func (g group) has(i int) bool { return g&one(i) != 0 }
func (g group) size() int      { return bits.OnesCount64(uint64(g)) }
func (g group) first() int     { return bits.TrailingZeros64(uint64(g)) }

// each yields the lifters in the order in which they lift.
func (g group) each() iter.Seq[int] {
	return func(yield func(int) bool) {
		for ; g != 0; g &= g - 1 {
			if !yield(g.first()) {
				return
			}
		}
	}
}

// cost is what is to be least, the first number before the second.
type cost struct{ standing, over, moves int }

func (c cost) plus(d cost) cost {
	return cost{c.standing + d.standing, c.over + d.over, c.moves + d.moves}
}

func (c cost) below(d cost) bool {
	return cmp.Or(cmp.Compare(c.standing, d.standing), cmp.Compare(c.over, d.over), cmp.Compare(c.moves, d.moves)) < 0
}

func (c cost) minus(d cost) cost {
	return cost{c.standing - d.standing, c.over - d.over, c.moves - d.moves}
}
