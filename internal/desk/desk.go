// Package desk is the one live model of the running program: what the gym's
// file says now, the verbs a coach has, and undo.
//
// Most callers need [Open] and then a verb such as [Desk.EnterResult], or a
// reading such as [Desk.Card]. A verb lets the domain decide, writes one
// transaction, holds the new value and says what changed. The package promises
// that a verb which returns an error has changed nothing, neither in memory nor
// on disk. It draws nothing and has no clock of its own: now is handed in. It is
// used from one goroutine; what takes long is handed out to be done beside it, as a
// [LongStep], an [Import] or a [Lesson].
package desk

import (
	"context"
	"fmt"
	"io"
	"time"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/repmax"
)

// Store is what the desk needs of the file.
type Store interface {
	Load(ctx context.Context) (gym.Book, error)
	Write(ctx context.Context, changes ...gym.Change) error
	// WriteMany is Write for a long list, beside the desk: written hears how many
	// are, and when ctx ends the way is free within a change.
	WriteMany(ctx context.Context, changes []gym.Change, written func(n int)) error
}

// Desk holds the gym while the program runs.
type Desk struct {
	store     Store
	now       func() time.Time
	random    io.Reader
	book      gym.Book
	index     index
	loads     loadCache
	best      *repmax.Records // nil until somebody asks
	calendar  *cycle.Calendar // likewise
	mains     mainsCache
	tiers     tiers
	undo      []step
	redo      []step
	long      *LongStep // on its way into the file; nil for none
	longFrom  int       // changes
	landed    int       // long steps that were taken up
	listeners []func(Topic)
	watch     watch
	boards    *Boards // nil until somebody asks
}

// Open reads the whole file. now tells the time and random gives the bytes of
// new IDs; both are handed in so that a test can replay a day.
func Open(ctx context.Context, store Store, now func() time.Time, random io.Reader) (*Desk, error) {
	book, err := store.Load(ctx)
	if err != nil {
		return nil, fmt.Errorf("open desk: %w", err)
	}
	d := &Desk{store: store, now: now, random: random, book: book, longFrom: longFrom}
	d.index = newIndex(&d.book)
	return d, nil
}

// Now returns the present instant of the clock that the desk was opened with.
func (d *Desk) Now() time.Time { return d.now() }

// Today returns the present day on the gym's wall calendar.
func (d *Desk) Today() day.Date { return day.From(d.now()) }

// Book returns what the file says. Callers read it and change nothing in it.
func (d *Desk) Book() *gym.Book { return &d.book }

// Settings returns the coach's choices for the whole gym.
func (d *Desk) Settings() gym.Settings { return d.book.Settings }

// Listen calls f after every change with what it touched.
func (d *Desk) Listen(f func(Topic)) { d.listeners = append(d.listeners, f) }

// NewID names a new row. A source of randomness that fails leaves zero bytes: the
// time in the name still tells rows of different milliseconds apart.
func (d *Desk) NewID() gym.ID {
	var random [10]byte
	_, _ = io.ReadFull(d.random, random[:])
	return gym.NewID(d.now(), random)
}

// do makes one undoable step of the changes under a label that a coach reads.
func (d *Desk) do(label string, changes ...gym.Change) error {
	return d.doContext(context.Background(), label, changes...)
}

func (d *Desk) doContext(ctx context.Context, label string, changes ...gym.Change) error {
	back, err := d.make(ctx, changes)
	if err != nil {
		return fmt.Errorf("%s: %w", label, err)
	}
	d.keepStep(label, back)
	return nil
}

// keepStep makes the step that takes a verb back the next one to undo.
func (d *Desk) keepStep(label string, back step) {
	back.label = label
	d.undo = append(d.undo, back)
	d.dropRedo()
}

// make writes and holds the changes, and returns the step that takes them back.
func (d *Desk) make(ctx context.Context, changes []gym.Change) (step, error) {
	defer d.goFirst()()
	var back step
	back.changes, back.renamed = d.book.Inverse(changes, d.NewID, d.undone())
	if err := d.store.Write(ctx, changes...); err != nil {
		return step{}, err
	}
	if d.long != nil {
		d.long.heed(changes)
	}
	d.hold(changes)
	return back, nil
}

// undone is the void of a row that is taken back.
func (d *Desk) undone() gym.Void { return gym.Void{At: d.now(), Reason: "undone"} }

// hold makes of memory what the file says now, and tells of it.
func (d *Desk) hold(changes []gym.Change) {
	d.book.Apply(changes...)
	d.index.update(&d.book, changes)
	d.tiers.heed(changes, d.now())
	topic := topicOf(changes)
	d.forget(topic)
	d.tell(topic)
}

func (d *Desk) tell(about Topic) {
	for _, f := range d.listeners {
		f(about)
	}
}

// forget drops what was worked out from rows that have changed.
func (d *Desk) forget(about Topic) {
	if about&AboutEquipment != 0 {
		d.loads, d.boards = nil, nil
	}
	if about&(AboutResults|AboutCatalogue) != 0 {
		d.best = nil
	}
	if about&(AboutRoster|AboutPlan|AboutCatalogue) != 0 {
		d.calendar, d.mains = nil, mainsCache{}
	}
}
