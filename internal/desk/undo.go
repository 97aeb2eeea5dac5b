package desk

import (
	"context"
	"errors"
	"fmt"

	"windlass/internal/gym"
)

// ErrNothing is returned by [Desk.Undo] and [Desk.Redo] when there is no step.
var ErrNothing = errors.New("there is no step to take")

// step is a list of changes that takes a verb back, or makes it again.
type step struct {
	label   string
	changes []gym.Change
	renamed map[gym.ID]gym.ID // rows that the changes add again under new names
}

// CanUndo returns the label of the step that [Desk.Undo] would take back, or nothing.
func (d *Desk) CanUndo() string { return lastLabel(d.undo) }

// CanRedo returns the label of the step that [Desk.Redo] would make again, or nothing.
func (d *Desk) CanRedo() string { return lastLabel(d.redo) }

func lastLabel(steps []step) string {
	if len(steps) == 0 {
		return ""
	}
	return steps[len(steps)-1].label
}

// Undo takes the last step back and returns its label. What is only ever added
// to the file is voided, never erased.
func (d *Desk) Undo() (string, error) { return d.atOnce(d.BeginUndo()) }

// Redo makes the last undone step again and returns its label.
func (d *Desk) Redo() (string, error) { return d.atOnce(d.BeginRedo()) }

// BeginUndo is [Desk.Undo] that only begins a long step, which it returns.
func (d *Desk) BeginUndo() (string, *LongStep, error) { return d.shift(&d.undo, &d.redo) }

// BeginRedo is [Desk.Redo] that only begins a long step, which it returns.
func (d *Desk) BeginRedo() (string, *LongStep, error) { return d.shift(&d.redo, &d.undo) }

func (d *Desk) shift(from, to *[]step) (string, *LongStep, error) {
	defer d.goFirst()() // what is taken up now is the last step
	if len(*from) == 0 {
		return "", nil, ErrNothing
	}
	last := (*from)[len(*from)-1]
	changes, label := d.keepNamed(last.changes), fmt.Sprintf("take back %q", last.label)
	if len(changes) >= d.longFrom {
		long, err := d.begin(label, changes, from, to)
		return last.label, long, err
	}
	back, err := d.make(context.Background(), changes)
	if err != nil {
		return last.label, nil, fmt.Errorf("%s: %w", label, err)
	}
	*from = (*from)[:len(*from)-1]
	back.label = last.label
	*to = append(*to, back)
	d.rename(last.renamed)
	return last.label, nil, nil
}

// atOnce finishes a step that was begun, where nobody waits.
func (d *Desk) atOnce(label string, long *LongStep, err error) (string, error) {
	if long != nil {
		err = long.Write(context.Background(), func(int, int) {})
		d.Land(long)
	}
	return label, err
}

// rename lets the steps that are left speak of rows by their new names.
func (d *Desk) rename(renamed map[gym.ID]gym.ID) {
	for _, steps := range [][]step{d.undo, d.redo} {
		for i := range steps {
			steps[i].changes = gym.Rename(steps[i].changes, renamed)
		}
	}
}

// keepNamed keeps rows that voided results still name: an athlete who would be
// dropped is archived instead, and a class stays as it is.
func (d *Desk) keepNamed(changes []gym.Change) []gym.Change {
	var kept []gym.Change
	for _, c := range changes {
		switch drop := c.(type) {
		case gym.DropAthlete:
			if d.athleteNamed(drop.ID) {
				a, _ := d.Athlete(drop.ID)
				a.Status = gym.Archived
				kept = append(kept, gym.PutAthlete{Athlete: a})
				continue
			}
		case gym.DropClass:
			if d.classNamed(drop.ID) {
				continue
			}
		case gym.PutClass:
			kept = append(kept, gym.PutClass{Class: d.withClock(drop.Class)})
			continue
		}
		kept = append(kept, c)
	}
	return kept
}

// withClock returns an earlier state of a class with the clocks of now.
func (d *Desk) withClock(c gym.Class) gym.Class {
	if now, ok := d.Class(c.ID); ok {
		c.Stage, c.Clock, c.Workout, c.Finished = now.Stage, now.Clock, now.Workout, now.Finished
	}
	return c
}

func (d *Desk) athleteNamed(id gym.ID) bool {
	return len(d.index.results[id]) > 0 || len(d.index.bouts[id]) > 0 || d.index.overrides[id] > 0 || d.index.came[id] != 0
}

func (d *Desk) classNamed(id gym.ID) bool {
	for _, r := range d.book.Results {
		if r.Class == id {
			return true
		}
	}
	for _, b := range d.book.Bouts {
		if b.Class == id {
			return true
		}
	}
	return false
}
