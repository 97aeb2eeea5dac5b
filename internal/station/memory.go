package station

import (
	"encoding/binary"

	"windlass/internal/plates"
)

// The solver remembers what groups cost from one question to the next, when
// nearly all lifters do what they did before. It forgets everything once it
// knows more than this.
const (
	mostPrograms = 1 << 15
	mostTeams    = 1 << 18

	mostSequences = 1 << 11 // of a kind: a sequence takes some kilobytes
)

// programs numbers the different lists of sets that lifters have had.
type programs map[string]uint16

// number returns the number of a list of sets, from 1.
func (p programs) number(sets []Set) uint16 {
	var key []byte
	for _, set := range sets {
		key = binary.AppendUvarint(key, uint64(set.Load))
		key = binary.AppendUvarint(key, uint64(set.Reps))
	}
	n, ok := p[string(key)]
	if !ok {
		n = uint16(len(p) + 1)
		p[string(key)] = n
	}
	return n
}

// team is the programs of up to eight lifters in the order in which they lift. A
// larger group is weighed anew each time.
type team [8]uint16

// scale weighs groups at one kind of station.
type scale struct {
	planner *plates.Planner
	known   map[team]cost
}

func newScale(loads *plates.Loads, keep int) scale {
	return scale{planner: plates.NewPlanner(loads, keep), known: map[team]cost{}}
}

// forget keeps the memory within its bounds.
func (s *Solver) forget() {
	full := len(s.programs) > mostPrograms
	for _, k := range s.kinds {
		full = full || len(k.quick.known) > mostTeams || len(k.shown.known) > mostTeams
		if len(k.sequences) > mostSequences {
			clear(k.sequences)
		}
	}
	if !full {
		return
	}
	clear(s.programs)
	for _, k := range s.kinds {
		k.quick, k.shown = newScale(k.loads, keepQuick), newScale(k.loads, keepShown)
		clear(k.sequences)
	}
}
