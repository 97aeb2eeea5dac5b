package exchange

import (
	"errors"
	"fmt"

	"windlass/internal/gym"
)

// ledger tells the new rows of a log from those that stand in the gym's file or
// higher up in the sheet. K is what two rows must differ in to be two.
type ledger[K comparable] struct {
	byID     map[gym.ID]K
	standing map[K]bool
	seen     map[K]int // the line it stood on
}

func newLedger[K comparable]() ledger[K] {
	return ledger[K]{map[gym.ID]K{}, map[K]bool{}, map[K]int{}}
}

// enter notes a row of the gym's file. A void one only counts by its ID.
func (g ledger[K]) enter(id gym.ID, key K, void *gym.Void) {
	g.byID[id] = key
	if void == nil {
		g.standing[key] = true
	}
}

func (g ledger[K]) has(id gym.ID) bool { _, ok := g.byID[id]; return ok }

var errEdited = errors.New("a row with this ID says something else already; a logged row is never edited: void it in the gym and add a new one")

// judge says whether a sound row of the sheet is new, and faults one that edits
// the log or stands twice in the sheet.
func (g ledger[K]) judge(l *line, what column, id gym.ID, key K, void *gym.Void) verdict {
	old, ours := g.byID[id]
	line, stands := g.seen[key], void == nil // a void row is compared by its ID alone
	switch {
	case ours && old != key:
		l.faults.add(l.columns.heading(colID), errEdited)
		return added
	case stands && line > 0:
		l.faults.add(l.columns.heading(what), fmt.Errorf("it is the same as line %d; take one out", line))
		return added
	case ours, stands && g.standing[key]:
		return same
	}
	if id != "" {
		g.byID[id] = key
	}
	if stands {
		g.seen[key] = l.line
	}
	return added
}
