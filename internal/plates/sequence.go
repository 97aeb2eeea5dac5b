package plates

import (
	"fmt"
	"slices"

	"windlass/internal/mass"
)

// Thorough is how many ways to make one load a planner weighs at most when time
// does not press. One unit's plates hardly ever allow more, and then the answer
// is proved least.
const Thorough = 1 << 14

// Step is a bar as one set wants it, and what it takes to get there from the
// set before.
type Step struct {
	Loading
	Moves int `json:"moves"` // discs pushed on or pulled off, both sides together
}

// Sequence is the bar set by set. Moves are counted from where the bar stood to
// the last set; stripping it afterwards is not counted.
type Sequence struct {
	Moves int    `json:"moves"`
	Steps []Step `json:"steps"`
	Least bool   `json:"least"` // proved: no other choice of stacks with the heaviest inside takes fewer moves
}

// Sequence rounds the targets to loads and chooses a stack for each such that the
// plate moves from the bare bar to the last set are fewest. In every stack the
// heaviest disc is inside, as bars are loaded (common practice, no source): with
// the discs in any order some series would take fewer moves. A disc pushed on or pulled off one side is one move, and an inner disc
// comes off only after the outer ones. The errors are those of [Loads.Loadable].
func (l *Loads) Sequence(targets []mass.Mass, r Rounding) (Sequence, error) {
	loads := make([]mass.Mass, len(targets))
	short := make([]bool, len(targets))
	for i, target := range targets {
		loading, err := l.Loadable(target, r)
		if err != nil {
			return Sequence{}, fmt.Errorf("order set %d: %w", i+1, err)
		}
		loads[i], short[i] = loading.Total, loading.Short
	}
	seq := NewPlanner(l, Thorough).Sequence(nil, loads)
	for i := range seq.Steps {
		seq.Steps[i].Short = short[i]
	}
	return seq, nil
}

// Planner orders many series of loads on the same bar. It remembers the ways to
// make each load and reuses its tables, so it is not for two goroutines at once.
type Planner struct {
	loads    *Loads
	heaviest mass.Mass
	keep     int
	known    map[mass.Mass]choices
	stages   []stage
}

// NewPlanner returns a planner that weighs at most keep ways to make a load,
// those with the fewest discs. It costs time in proportion to keep.
func NewPlanner(l *Loads, keep int) *Planner {
	return &Planner{loads: l, heaviest: l.Heaviest(), keep: max(keep, 1), known: map[mass.Mass]choices{}}
}

// Sequence is [Loads.Sequence] from what is on the bar now, nil for the bare
// bar. A target that the stock does not make counts as the nearest that it does:
// the bar alone when it is lighter, marked under, and everything when it is
// heavier, marked short.
func (p *Planner) Sequence(on []Disc, targets []mass.Mass) Sequence {
	seq := Sequence{Steps: make([]Step, len(targets)), Least: p.run(on, targets)}
	p.retrace(len(targets), func(i int, on stack, moves int) {
		step := Step{Loading: p.loads.wear(on), Moves: moves}
		step.Under, step.Short = targets[i] < p.loads.Lightest(), targets[i] > p.heaviest
		seq.Steps[i] = step
		seq.Moves += moves
	})
	return seq
}

// AppendMoves appends the moves of each set of the sequence, for a caller that
// compares many and wants no more than the numbers.
func (p *Planner) AppendMoves(moves []int, on []Disc, targets []mass.Mass) []int {
	p.run(on, targets)
	first := len(moves)
	moves = slices.Grow(moves, len(targets))[:first+len(targets)]
	p.retrace(len(targets), func(i int, _ stack, n int) { moves[first+i] = n })
	return moves
}

// retrace goes back from the cheapest stack of the last set.
func (p *Planner) retrace(sets int, visit func(set int, on stack, moves int)) {
	at := p.stages[sets].cheapest()
	for i := sets; i > 0; i-- {
		s, before := p.stages[i], p.stages[i-1]
		from := s.from[at]
		visit(i-1, s.stacks[at], 2*(s.cost[at]-before.cost[from]))
		at = from
	}
}

// run goes from set to set and keeps the cheapest way to every stack: what comes
// later depends on the stack alone, not on how it was reached. It reports
// whether every way to make every load was weighed.
func (p *Planner) run(on []Disc, targets []mass.Mass) (all bool) {
	for len(p.stages) <= len(targets) {
		p.stages = append(p.stages, stage{})
	}
	p.stages[0].reset([]stack{p.loads.letters(on)})
	p.stages[0].cost[0] = 0
	all = true
	for i, target := range targets {
		c := p.choices(target)
		all = all && c.all
		p.stages[i+1].reset(c.stacks)
		p.stages[i+1].follow(&p.stages[i], i > 0 && target == targets[i-1])
	}
	return all
}

func (p *Planner) choices(target mass.Mass) choices {
	c, ok := p.known[target]
	if !ok {
		c = p.loads.choices(p.loads.nearest(target), p.keep)
		p.known[target] = c
	}
	return c
}

// letters spells discs; one that the stock does not have gets a letter of its
// own, which no stack shares, so that it comes off.
func (l *Loads) letters(discs []Disc) stack {
	side := make([]byte, len(discs))
	for i, d := range discs {
		side[i] = 0xff
		for letter := range l.order {
			if l.disc(byte(letter)) == d {
				side[i] = byte(letter)
			}
		}
	}
	return stack(side)
}

// wear is the bar with a stack on each side.
func (l *Loads) wear(s stack) Loading {
	side := make([]Disc, len(s))
	for i := range side {
		side[i] = l.disc(s[i])
	}
	return l.dress(side)
}
