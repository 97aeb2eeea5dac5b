package conditioning

import (
	"maps"
	"slices"

	"windlass/internal/gym"
)

// Table is the coach's own: the formats for a day of a rep count. A rep count
// that it lacks takes any of its formats.
type Table map[int][]gym.Format

// of returns the formats for a rep count, or all of them in order of rep counts.
func (t Table) of(reps int) []gym.Format {
	if formats, ok := t[reps]; ok {
		return formats
	}
	var all []gym.Format
	for _, n := range slices.Sorted(maps.Keys(t)) {
		for _, f := range t[n] {
			if !slices.Contains(all, f) {
				all = append(all, f)
			}
		}
	}
	return all
}
