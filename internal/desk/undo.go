package desk

import (
	"context"
	"errors"
	"fmt"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// ErrNothing is returned by [Desk.Undo] and [Desk.Redo] when there is no step.
var ErrNothing = errors.New("there is no step to take")

// step is a list of changes that takes a verb back, or makes it again.
type step struct {
	label   string
	changes []gym.Change
	renamed map[gym.ID]gym.ID // rows that the changes add again under new names
	turns   bool              // the changes turn a class to another stage
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
	changes, label := d.asOfNow(last), fmt.Sprintf("take back %q", last.label)
	if from == &d.redo {
		label = fmt.Sprintf("make %q again", last.label)
	}
	if err := d.mayTurn(last); err != nil {
		return last.label, nil, fmt.Errorf("%s: %w", label, err)
	}
	if len(changes) >= d.longFrom {
		long, err := d.begin(label, changes, from, to)
		return last.label, long, err
	}
	back, err := d.make(context.Background(), changes)
	if err != nil {
		return last.label, nil, fmt.Errorf("%s: %w", label, err)
	}
	*from = (*from)[:len(*from)-1]
	back.label, back.turns = last.label, last.turns
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

// dropRedo forgets what could be made again: something else was made since. That
// holds for a step that is being made again as well, should it fail.
func (d *Desk) dropRedo() {
	d.redo = nil
	if d.long != nil && d.long.from == &d.redo {
		d.long.gone = true
	}
}

// rename lets the steps that are left speak of rows by their new names.
func (d *Desk) rename(renamed map[gym.ID]gym.ID) {
	for _, steps := range [][]step{d.undo, d.redo} {
		for i := range steps {
			steps[i].changes = gym.Rename(steps[i].changes, renamed)
		}
	}
}

// asOfNow are the changes of a step as they are to be made at this instant. Rows
// that voided results still name are kept: an athlete who would be dropped is
// archived instead, and a class stays as it is. Voids are of now, not of when the
// step to take back was made.
func (d *Desk) asOfNow(s step) []gym.Change {
	var kept []gym.Change
	for _, c := range s.changes {
		switch drop := c.(type) {
		case gym.VoidResult:
			drop.Void.At = d.now()
			c = drop
		case gym.VoidBout:
			drop.Void.At = d.now()
			c = drop
		case gym.VoidOverride:
			drop.Void.At = d.now()
			c = drop
		case gym.DropAthlete:
			if d.athleteNamed(drop.ID, s.changes) {
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
			kept = append(kept, gym.PutClass{Class: d.withClock(drop.Class, s.turns)})
			continue
		}
		kept = append(kept, c)
	}
	return kept
}

// withClock returns an earlier state of a class with the clocks of now and what is
// thought of their course, and unless the step turns the class, at the stage of now.
func (d *Desk) withClock(c gym.Class, turns bool) gym.Class {
	now, ok := d.Class(c.ID)
	if !ok {
		return c
	}
	c.Clock, c.Workout, c.Pace, c.Ahead = now.Clock, now.Workout, now.Pace, now.Ahead
	if !turns {
		c.Stage, c.Finished = now.Stage, now.Finished
	}
	if c.Stage == gym.Finished {
		c.Clock, c.Workout = c.Clock.Hold(d.now()), c.Workout.Hold(d.now())
	}
	return c
}

// mayTurn refuses a step that would open a class while another one is.
func (d *Desk) mayTurn(s step) error {
	for _, c := range s.changes {
		put, ok := c.(gym.PutClass)
		if !s.turns || !ok || put.Class.Stage == gym.Finished {
			continue
		}
		if live, ok := d.LiveClass(); ok && live.ID != put.Class.ID {
			return fmt.Errorf("%w: finish %s first", ErrRunning, live.Name)
		}
	}
	return nil
}

// athleteNamed reports whether anything but an athlete's own row names them once
// the changes are made.
func (d *Desk) athleteNamed(id gym.ID, changes []gym.Change) bool {
	return len(d.index.results[id]) > 0 || len(d.index.bouts[id]) > 0 || d.index.overrides[id] > 0 ||
		d.index.came[id] != day.None && d.cameAfter(id, changes)
}

// cameAfter reports whether an athlete is in a class once the changes are made.
func (d *Desk) cameAfter(id gym.ID, changes []gym.Change) bool {
	after := map[gym.ID]gym.Class{}
	for _, c := range changes {
		switch class := c.(type) {
		case gym.PutClass:
			after[class.Class.ID] = class.Class
		case gym.DropClass:
			after[class.ID] = gym.Class{}
		}
	}
	return slices.ContainsFunc(d.book.Classes, func(c gym.Class) bool {
		if put, ok := after[c.ID]; ok {
			c = put
		}
		_, err := lifter(&c, id)
		return err == nil
	})
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
