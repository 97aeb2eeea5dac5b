package desk

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
)

// longFrom is from how many changes on a step is long. What is shorter is on the
// disk within a frame.
const longFrom = 500

// ErrUnderWay is returned when a long step is begun while another is on its way.
var ErrUnderWay = errors.New("another long step is on its way")

// LongStep is a step of so many changes that the desk would stand still while they
// are written. It is decided on the desk's goroutine by a verb that begins one,
// such as [Desk.BeginImport]; [LongStep.Write] writes it beside the desk in one
// transaction; [Desk.Land] takes it up on the desk's goroutine, and only then does
// the book say it.
//
// Verbs made meanwhile go first. The memory takes up the step in the place that it
// has in the file, so the two never differ. A row that a verb changed meanwhile
// stays as the verb left it: then nothing of the step is kept.
type LongStep struct {
	label   string
	changes []gym.Change
	store   Store
	way     *way
	inverse func() step // worked out beside the desk
	back    step        // what it made
	was     step        // the step that is taken back or made again
	from    *[]step     // where that was; nil for a new step
	to      *[]step     // where back goes
	at      int         // its place in from
	gone    bool        // it has no place there any more
	alone   bool        // no verb was made meanwhile
}

// begin decides a long step. from is the list of steps whose last it makes, nil for
// a new one.
func (d *Desk) begin(label string, changes []gym.Change, from, to *[]step) (*LongStep, error) {
	if d.long != nil {
		return nil, fmt.Errorf("%s: %w: %q; wait for it", label, ErrUnderWay, d.long.label)
	}
	book, newID, undone := snapshot(d.book, voided(changes)), d.namer(), d.undone()
	l := &LongStep{label: label, changes: changes, store: d.store, way: newWay(), from: from, to: to, alone: true}
	l.inverse = func() (back step) {
		back.changes, back.renamed = book.Inverse(changes, newID, undone)
		return back
	}
	if from != nil {
		l.at = len(*from) - 1
		l.was = (*from)[l.at]
		*from = (*from)[:l.at]
	}
	d.long = l
	return l, nil
}

// voided tells which logs have rows that the changes void.
func voided(changes []gym.Change) (logs Topic) {
	for _, c := range changes {
		switch c.(type) {
		case gym.VoidResult:
			logs |= AboutResults
		case gym.VoidBout, gym.VoidOverride:
			logs |= AboutBouts
		}
	}
	return logs
}

// Label names the step as a coach reads it.
func (l *LongStep) Label() string { return l.label }

// Alone reports whether no verb was made since the step was begun.
func (l *LongStep) Alone() bool { return l.alone }

// Write writes the step, wholly or not at all, and says now and then how much of it
// is written. It touches nothing of the desk, so it runs beside it; when ctx ends
// before the step is written, nothing of it is.
func (l *LongStep) Write(ctx context.Context, progress func(done, of int)) error {
	l.back = l.inverse()
	l.back.label = l.label
	if l.from != nil {
		l.back.label = l.was.label
	}
	for {
		attempt, err := l.way.begin(ctx)
		if err == nil {
			err = l.store.WriteMany(attempt, l.changes, func(n int) { progress(n, len(l.changes)) })
			if l.way.end(err) {
				continue
			}
		}
		if err != nil {
			return fmt.Errorf("%s: %w", l.label, err)
		}
		return nil
	}
}

// Land takes up what [LongStep.Write] has written, or forgets the step where it has
// failed. It must be called once Write has returned.
func (d *Desk) Land(l *LongStep) {
	switch {
	case d.long != l: // a verb found it written and took it up
	case l.way.isWritten():
		d.takeUp(l)
	default:
		d.long = nil
		if l.from != nil && !l.gone {
			*l.from = slices.Insert(*l.from, min(l.at, len(*l.from)), l.was)
		}
	}
}

func (d *Desk) takeUp(l *LongStep) {
	d.long = nil
	d.landed++
	*l.to = append(*l.to, l.back)
	if l.from == nil {
		d.dropRedo()
	}
	d.rename(l.was.renamed)
	d.hold(l.changes)
}

// goFirst makes the way free for a verb. A long step that is written already is
// taken up, so that the book has its rows in the order of the file.
func (d *Desk) goFirst() (goOn func()) {
	l := d.long
	if l == nil {
		return func() {}
	}
	l.alone = false
	if l.way.ask() {
		d.takeUp(l)
	}
	return l.way.leave
}

// heed keeps a long step from undoing what a verb has just made.
func (l *LongStep) heed(made []gym.Change) {
	for _, c := range made {
		if l.meets(c) {
			l.way.refuse(errors.New("what it changes was changed meanwhile, so nothing of it was kept; begin again"))
			return
		}
	}
}

// meets reports whether the step changes the row that a change is about, or brings
// in an athlete whom it names as well.
func (l *LongStep) meets(c gym.Change) bool {
	row, name := rowOf(c)
	return row != "" && slices.ContainsFunc(l.changes, func(own gym.Change) bool {
		ownRow, ownName := rowOf(own)
		return ownRow == row || name != "" && strings.EqualFold(name, ownName)
	})
}

// rowOf names the row that a change says anew, and the athlete in it. What is only
// added is a row of its own, and a long step changes nothing of a class or a plan.
func rowOf(change gym.Change) (row gym.ID, name string) {
	switch c := change.(type) {
	case gym.PutAthlete:
		return c.Athlete.ID, c.Athlete.Name
	case gym.DropAthlete:
		return c.ID, ""
	case gym.PutMove:
		return c.Move.ID, ""
	case gym.DropMove:
		return c.ID, ""
	case gym.VoidResult:
		return c.ID, ""
	case gym.VoidBout:
		return c.ID, ""
	case gym.VoidOverride:
		return c.ID, ""
	}
	return "", ""
}
