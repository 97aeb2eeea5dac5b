package desk

import (
	"slices"

	"windlass/internal/gym"
)

// snapshot is a book whose rows no verb of the desk changes any more, for work
// beside it. Of the logs, which are long, it has those that are named.
func snapshot(b gym.Book, logs Topic) gym.Book {
	b.Lifts, b.Movements = slices.Clone(b.Lifts), slices.Clone(b.Movements)
	b.Finishers, b.Drills = slices.Clone(b.Finishers), slices.Clone(b.Drills)
	b.Tracks, b.Athletes, b.Moves = slices.Clone(b.Tracks), slices.Clone(b.Athletes), slices.Clone(b.Moves)
	b.Restrictions = slices.Clone(b.Restrictions)
	b.Climbs, b.Slots, b.Closures = slices.Clone(b.Climbs), slices.Clone(b.Slots), slices.Clone(b.Closures)
	b.Cycles, b.Classes = slices.Clone(b.Cycles), slices.Clone(b.Classes)
	results, bouts, overrides := b.Results, b.Bouts, b.Overrides
	b.Results, b.Bouts, b.Overrides = nil, nil, nil
	if logs&AboutResults != 0 {
		b.Results = slices.Clone(results)
	}
	if logs&AboutBouts != 0 {
		b.Bouts, b.Overrides = slices.Clone(bouts), slices.Clone(overrides)
	}
	return b
}
