package sound

import (
	"math"
	"sync"
)

// mixer adds up what plays at once. It is filled by the engine and emptied by the
// device's own thread.
type mixer struct {
	mu     sync.Mutex
	voices [][]int16 // what is left of each
}

func (m *mixer) add(samples []int16) {
	m.mu.Lock()
	defer m.mu.Unlock()
	m.voices = append(m.voices, samples)
}

// fill writes the next samples, little endian, and silence when nothing plays.
func (m *mixer) fill(out []byte) {
	m.mu.Lock()
	defer m.mu.Unlock()
	for i := 0; i+1 < len(out); i += 2 {
		sum := 0
		for v, left := range m.voices {
			if len(left) > 0 {
				sum += int(left[0])
				m.voices[v] = left[1:]
			}
		}
		s := uint16(int16(min(math.MaxInt16, max(math.MinInt16, sum))))
		out[i], out[i+1] = byte(s), byte(s>>8)
	}
	m.sweep()
}

// sweep forgets the voices that have ended.
func (m *mixer) sweep() {
	kept := m.voices[:0]
	for _, left := range m.voices {
		if len(left) > 0 {
			kept = append(kept, left)
		}
	}
	clear(m.voices[len(kept):])
	m.voices = kept
}
