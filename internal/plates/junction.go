package plates

import "slices"

// stage is one set: its stacks, the moves on one side to reach each, and the
// stack before it.
type stage struct {
	stacks     []stack
	cost, from []int
}

// reset takes other stacks, none of them reached yet.
func (s *stage) reset(stacks []stack) {
	n := len(stacks)
	s.stacks = stacks
	s.cost, s.from = slices.Grow(s.cost[:0], n)[:n], slices.Grow(s.from[:0], n)[:n]
	for i := range n {
		s.cost[i], s.from[i] = -1, i
	}
}

func (s stage) cheapest() int {
	best := 0
	for i, c := range s.cost {
		if c < s.cost[best] {
			best = i
		}
	}
	return best
}

// follow reaches every stack of s from the stage before. With the same load
// again the bar stays as it is: no detour is shorter than the straight way.
func (s *stage) follow(before *stage, same bool) {
	if same {
		copy(s.cost, before.cost)
		return
	}
	j := junction{before: before, after: s}
	j.meet(0, span{0, len(before.stacks)}, span{0, len(s.stacks)})
}

// junction finds, for every stack after, the cheapest stack before. From S to T
// it takes as many moves as S and T have discs beyond their common prefix. Both
// lists are sorted, so stacks that share a prefix stand together: for each
// prefix in both, the cheapest S under it serves every T under it.
type junction struct{ before, after *stage }

type span struct{ from, to int }

func (j *junction) meet(depth int, s, t span) {
	best := s.from
	for i := s.from; i < s.to; i++ {
		if j.stripped(i) < j.stripped(best) {
			best = i
		}
	}
	for i := t.from; i < t.to; i++ {
		cost := j.stripped(best) + len(j.after.stacks[i]) - 2*depth
		if old := j.after.cost[i]; old < 0 || cost < old {
			j.after.cost[i], j.after.from[i] = cost, best
		}
	}
	j.branch(depth, s, t)
}

// stripped is the cost of a stack before and of taking all of it off.
func (j *junction) stripped(i int) int { return j.before.cost[i] + len(j.before.stacks[i]) }

// branch meets again under every letter that goes on in both lists.
func (j *junction) branch(depth int, s, t span) {
	s, t = beyond(j.before.stacks, s, depth), beyond(j.after.stacks, t, depth)
	for s.from < s.to && t.from < t.to {
		a, b := j.before.stacks[s.from][depth], j.after.stacks[t.from][depth]
		sEnd, tEnd := s.from, t.from
		if a <= b {
			sEnd = run(j.before.stacks, s, depth)
		}
		if b <= a {
			tEnd = run(j.after.stacks, t, depth)
		}
		if a == b {
			j.meet(depth+1, span{s.from, sEnd}, span{t.from, tEnd})
		}
		s.from, t.from = sEnd, tEnd
	}
}

// beyond drops the stacks that end at depth; they sort first.
func beyond(stacks []stack, s span, depth int) span {
	for s.from < s.to && len(stacks[s.from]) == depth {
		s.from++
	}
	return s
}

// run returns the end of the stacks that share the first one's letter at depth.
func run(stacks []stack, s span, depth int) int {
	i := s.from
	for i < s.to && stacks[i][depth] == stacks[s.from][depth] {
		i++
	}
	return i
}
