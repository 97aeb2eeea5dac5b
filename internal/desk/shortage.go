package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/plates"
)

// Shortage is a plate that runs out where all stations load at once.
type Shortage struct {
	Rungs []int // from 1
	Disc  plates.Disc
	Need  int // pairs, where most are wanted
	Have  int
}

// Shortages tells which plates run out from a rung on, an index, where all
// stations of a board load as it says: their first lifters at once, then their
// second, and so on.
func (bs *Boards) Shortages(b Board, from int) []Shortage {
	_, clashes := bs.clashes(b, from)
	var all []Shortage
	for _, c := range clashes {
		at := slices.IndexFunc(all, func(x Shortage) bool { return x.Disc == c.Disc })
		if at < 0 {
			at = len(all)
			all = append(all, Shortage{Disc: c.Disc, Have: c.Have})
		}
		x := &all[at]
		x.Need = max(x.Need, c.Need)
		if !slices.Contains(x.Rungs, c.rung+1) {
			x.Rungs = append(x.Rungs, c.rung+1)
		}
	}
	return all
}

// clash is a moment at which plates run out.
type clash struct {
	plates.Clash
	rung int // from 0
}

func (bs *Boards) clashes(b Board, from int) (moments, []clash) {
	m := bs.moments(b)
	var all []clash
	for _, c := range plates.Check(m.queues) {
		if rung := m.rungs[c.Set]; rung >= from {
			all = append(all, clash{c, rung})
		}
	}
	return m, all
}

// Text says what runs out.
func (s Shortage) Text() string {
	return fmt.Sprintf("%s: all stations together want %d pairs of %s, the gym has %d.", rungWords(s.Rungs), s.Need, s.Disc, s.Have)
}

// rungWords writes "Rung 6", "Rungs 6 and 8", "Rungs 6 to 9".
func rungWords(rungs []int) string {
	first, last := rungs[0], rungs[len(rungs)-1]
	switch {
	case len(rungs) == 1:
		return fmt.Sprintf("Rung %d", first)
	case len(rungs) > 2 && last-first == len(rungs)-1:
		return fmt.Sprintf("Rungs %d to %d", first, last)
	}
	var words []string
	for _, n := range rungs[:len(rungs)-1] {
		words = append(words, fmt.Sprint(n))
	}
	return fmt.Sprintf("Rungs %s and %d", strings.Join(words, ", "), last)
}
