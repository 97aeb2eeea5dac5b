package plates

// stack is one side of a bar, inside first: a letter for each disc, which is
// its place in the order of the bar. Heaviest inside means letters ascend.
type stack string

// choices are ways to make one load, in the order of their letters.
type choices struct {
	stacks []stack
	all    bool // no way is left out
}

// choices lists the ways to make an amount. Where there are more than keep it
// lists all those of at most so many discs, with the greatest such number that
// keeps the list short enough.
func (l *Loads) choices(a amount, keep int) choices {
	wide := l.enumerate(a, keep, never-1)
	if !wide.spilled {
		return choices{stacks: wide.found, all: true}
	}
	lean := l.enumerate(a, keep, l.discs(a))
	for limit := l.discs(a) + 1; ; limit++ {
		next := l.enumerate(a, keep, limit)
		if next.spilled {
			return choices{stacks: lean.found}
		}
		lean = next
	}
}

// enumeration walks the plates from the heaviest and tries every count. It goes
// no way that ends nowhere, so it takes as long as what it finds.
type enumeration struct {
	loads   *Loads
	keep    int
	limit   int // discs a side
	side    []byte
	found   []stack
	spilled bool // more than keep were found; the rest is left out
}

func (l *Loads) enumerate(a amount, keep, limit int) *enumeration {
	e := &enumeration{loads: l, keep: keep, limit: limit}
	e.from(0, a, l.fullIn(a) >= 0)
	return e
}

// from tries the plates from letter i on for the rest, with a disc of full
// diameter among them if one is still lacking.
func (e *enumeration) from(i int, rest amount, lacking bool) {
	if len(e.side)+e.loads.fewest(i, rest, lacking) > e.limit {
		return
	}
	if rest == (amount{}) {
		e.note()
		return
	}
	at := e.loads.order[i]
	g := e.loads.grids[at.grid]
	most := min(g.plates[at.plate].Pairs, rest[at.grid]/g.size[at.plate])
	// The longest run of a letter sorts first.
	for c := most; c >= 0 && !e.spilled; c-- {
		mark := len(e.side)
		for range c {
			e.side = append(e.side, byte(i))
		}
		left := rest
		left[at.grid] -= c * g.size[at.plate]
		e.from(i+1, left, lacking && !(c > 0 && g.plates[at.plate].Full))
		e.side = e.side[:mark]
	}
}

func (e *enumeration) note() {
	if len(e.found) == e.keep {
		e.spilled = true
		return
	}
	e.found = append(e.found, stack(e.side))
}

func (l *Loads) disc(letter byte) Disc {
	at := l.order[letter]
	return l.grids[at.grid].plates[at.plate].Disc()
}
