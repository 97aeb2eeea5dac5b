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
	for _, c := range plates.Missing(m.queues) {
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

// rungWords writes "Rung 6", "Rungs 6 and 8", "Rungs 3, 5 to 7 and 9".
func rungWords(rungs []int) string {
	var words []string
	for i := 0; i < len(rungs); {
		n := 1
		for i+n < len(rungs) && rungs[i+n] == rungs[i]+n {
			n++
		}
		if n < 3 {
			n = 1
			words = append(words, fmt.Sprint(rungs[i]))
		} else {
			words = append(words, fmt.Sprintf("%d to %d", rungs[i], rungs[i+n-1]))
		}
		i += n
	}
	last := len(words) - 1
	switch {
	case len(rungs) == 1:
		return "Rung " + words[0]
	case last == 0:
		return "Rungs " + words[0]
	}
	return "Rungs " + strings.Join(words[:last], ", ") + " and " + words[last]
}
