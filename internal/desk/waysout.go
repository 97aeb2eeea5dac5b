package desk

import (
	"encoding/binary"

	"windlass/internal/plates"
)

// waysOut remembers what is dear to find where plates run out, by what it follows
// from: which bars carry which loads at once. From call to call, and from one trial
// of a mend to the next, most moments are as they were.
type waysOut struct {
	restacked map[string][]plates.Loading // nil where there is no way
	ways      map[string][]plates.Way
}

// keptMoments bounds what is remembered.
const keptMoments = 4000

func newWaysOut() waysOut {
	return waysOut{restacked: map[string][]plates.Loading{}, ways: map[string][]plates.Way{}}
}

// restack makes the loads of a moment out of other plates; false where that is not
// possible.
func (w *waysOut) restack(m moments, set int) ([]plates.Loading, bool) {
	key := m.key(set)
	loadings, ok := w.restacked[key]
	if !ok {
		if len(w.restacked) >= keptMoments {
			clear(w.restacked)
		}
		loadings, _ = plates.Restacked(m.queues, set)
		w.restacked[key] = loadings
	}
	return loadings, loadings != nil
}

// at are the ways out of a moment.
func (w *waysOut) at(m moments, set int) []plates.Way {
	key := m.key(set)
	ways, ok := w.ways[key]
	if !ok {
		if len(w.ways) >= keptMoments {
			clear(w.ways)
		}
		ways = plates.WaysOut(m.queues, set)
		w.ways[key] = ways
	}
	return ways
}

// key spells which bars carry which loads at a moment.
func (m moments) key(set int) string {
	var key []byte
	for _, q := range m.queues {
		key = append(key, q.Loads.Bar().Key...)
		key = append(key, 0)
		key = binary.AppendUvarint(key, uint64(q.Sets[set].Total))
	}
	return string(key)
}
