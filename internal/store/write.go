package store

import (
	"context"
	"database/sql"
	"fmt"

	"windlass/internal/gym"
)

// Write makes the changes in one transaction: after it the file says what
// [gym.Book.Apply] makes of the book in memory. An error means that nothing was
// written. The file is stricter than a book: it refuses (ErrConstraint) a row
// that names something unknown, a key that is taken, a void of a row that is
// void or missing, and (ErrInUse) the deletion of what is in use.
func (f *File) Write(ctx context.Context, changes ...gym.Change) error {
	return f.WriteMany(ctx, changes, func(int) {})
}

// WriteMany is [File.Write] for a long list: written hears now and then how many
// of the changes are. When ctx ends it gives up within a change, which leaves the
// file to other writers as it was.
func (f *File) WriteMany(ctx context.Context, changes []gym.Change, written func(n int)) error {
	if f.write == nil {
		return fault("write", f.path, ErrReadOnly, "it was opened for reading only")
	}
	if len(changes) == 0 {
		return nil
	}
	return explain("write", f.path, ended(ctx, f.transact(ctx, changes, written)))
}

// hearEvery is how many changes are written between two words of it.
const hearEvery = 512

func (f *File) transact(ctx context.Context, changes []gym.Change, written func(n int)) error {
	tx, err := f.write.BeginTx(ctx, nil)
	if err != nil {
		return err
	}
	defer func() { _ = tx.Rollback() }() // no effect after the commit
	w := writer{tx: tx, prepared: map[string]*sql.Stmt{}}
	for i, c := range changes {
		if i%hearEvery == 0 {
			written(i)
		}
		if err := ctx.Err(); err != nil {
			return err
		}
		if err := w.people(ctx, c); err != nil {
			return err
		}
	}
	// The one check that waits for the end is that of related lifts.
	return explainRow("relate lifts", tx.Commit())
}

// writer is one transaction with the statements it has prepared.
type writer struct {
	tx       *sql.Tx
	prepared map[string]*sql.Stmt
}

// people writes a change of the roster, and hands on any other.
func (w *writer) people(ctx context.Context, change gym.Change) error {
	switch c := change.(type) {
	case gym.PutTrack:
		return put(ctx, w, tracks, c.Track)
	case gym.DropTrack:
		return drop(ctx, w, tracks, c.ID)
	case gym.PutAthlete:
		return put(ctx, w, athletes, c.Athlete)
	case gym.DropAthlete:
		return drop(ctx, w, athletes, c.ID)
	case gym.PutMove:
		return put(ctx, w, moves, c.Move)
	case gym.DropMove:
		return drop(ctx, w, moves, c.ID)
	case gym.PutRestriction:
		return put(ctx, w, restrictions, c.Restriction)
	case gym.DropRestriction:
		return drop(ctx, w, restrictions, c.ID)
	}
	return w.logs(ctx, change)
}

// logs writes a change of the three logs, and hands on any other.
func (w *writer) logs(ctx context.Context, change gym.Change) error {
	switch c := change.(type) {
	case gym.AddResult:
		return add(ctx, w, results, c.Result)
	case gym.VoidResult:
		return void(ctx, w, results, c.ID, c.Void)
	case gym.AddBout:
		return add(ctx, w, bouts, c.Bout)
	case gym.VoidBout:
		return void(ctx, w, bouts, c.ID, c.Void)
	case gym.AddOverride:
		return add(ctx, w, overrides, c.Override)
	case gym.VoidOverride:
		return void(ctx, w, overrides, c.ID, c.Void)
	}
	return w.plan(ctx, change)
}

// plan writes a change of the plan and its classes, and hands on any other.
func (w *writer) plan(ctx context.Context, change gym.Change) error {
	switch c := change.(type) {
	case gym.PutClimb:
		return put(ctx, w, climbs, c.Climb)
	case gym.DropClimb:
		return drop(ctx, w, climbs, c.ID)
	case gym.PutSlot:
		return putWithUses(ctx, w, slots, c.Slot, "slot", c.Slot.ID, slotUses(c.Slot))
	case gym.DropSlot:
		return drop(ctx, w, slots, c.ID)
	case gym.PutClosure:
		return put(ctx, w, closures, c.Closure)
	case gym.DropClosure:
		return drop(ctx, w, closures, c.ID)
	case gym.PutCycle:
		return putWithUses(ctx, w, cycles, c.Cycle, "cycle", c.Cycle.ID, cycleUses(c.Cycle))
	case gym.DropCycle:
		return drop(ctx, w, cycles, c.ID)
	case gym.PutClass:
		return putWithUses(ctx, w, classes, c.Class, "class", c.Class.ID, classUses(c.Class))
	case gym.DropClass:
		return drop(ctx, w, classes, c.ID)
	}
	return w.catalogue(ctx, change)
}

// catalogue writes a change of the catalogue and the settings. It is the last to
// be asked.
func (w *writer) catalogue(ctx context.Context, change gym.Change) error {
	switch c := change.(type) {
	case gym.PutSettings:
		return put(ctx, w, single[gym.Settings]("settings"), c.Settings)
	case gym.PutEquipment:
		return put(ctx, w, single[gym.Equipment]("equipment"), c.Equipment)
	case gym.PutLift:
		return put(ctx, w, lifts, c.Lift)
	case gym.DropLift:
		return drop(ctx, w, lifts, c.Key)
	case gym.PutMovement:
		return put(ctx, w, movements, c.Movement)
	case gym.DropMovement:
		return drop(ctx, w, movements, c.Key)
	case gym.PutFinisher:
		return put(ctx, w, finishers, c.Finisher)
	case gym.DropFinisher:
		return drop(ctx, w, finishers, c.Key)
	case gym.PutDrill:
		return put(ctx, w, drills, c.Drill)
	case gym.DropDrill:
		return drop(ctx, w, drills, c.Key)
	}
	return fmt.Errorf("write change: %T is not one that a file can hold", change)
}

// single is the table of what there is one of.
func single[T any](key string) table[T] {
	return table[T]{name: "singles", noun: key, cells: func(t *T) []cell {
		return []cell{text("key", &key), asJSON("body", t)}
	}}
}

// exec runs a statement that the transaction prepares, and has its text made,
// once for each verb and table: a list may have a hundred thousand rows. The driver
// starts a goroutine to watch a context that can end, which took a third of the
// time of a long list; a row is short, and whoever lists them looks at the context.
func (w *writer) exec(ctx context.Context, name string, query func() string, args ...any) (sql.Result, error) {
	ctx = context.WithoutCancel(ctx)
	statement, ok := w.prepared[name]
	if !ok {
		var err error
		if statement, err = w.tx.PrepareContext(ctx, query()); err != nil {
			return nil, err
		}
		w.prepared[name] = statement // closed with the transaction
	}
	return statement.ExecContext(ctx, args...)
}

func put[T any](ctx context.Context, w *writer, t table[T], row T) error {
	return insert(ctx, w, t, row, "put", t.upsertion)
}

func add[T any](ctx context.Context, w *writer, t table[T], row T) error {
	return insert(ctx, w, t, row, "add", t.insertion)
}

func insert[T any](ctx context.Context, w *writer, t table[T], row T, verb string, query func() string) error {
	if t.valid != nil {
		if err := t.valid(row); err != nil {
			return fmt.Errorf("%w: %w", ErrConstraint, err)
		}
	}
	if _, err := w.exec(ctx, verb+" "+t.name, query, values(t.cells(&row))...); err != nil {
		return explainRow("keep "+t.describe(row), err)
	}
	return nil
}

func drop[T any, K ~string](ctx context.Context, w *writer, t table[T], key K) error {
	_, err := w.exec(ctx, "drop "+t.name, t.deletion, string(key))
	return explainDrop(fmt.Sprintf("delete %s %q", t.noun, key), err)
}

func void[T any](ctx context.Context, w *writer, t table[T], id gym.ID, v gym.Void) error {
	what := fmt.Sprintf("void %s %q", t.noun, id)
	at, err := writeInstant(v.At)
	if err != nil {
		return fmt.Errorf("%s: %w", what, err)
	}
	done, err := w.exec(ctx, "void "+t.name, t.voiding, at, v.Reason, string(id))
	if err != nil {
		return explainRow(what, err)
	}
	if n, err := done.RowsAffected(); err != nil || n == 1 {
		return err
	}
	return fmt.Errorf("%s: %w: there is none with that key", what, ErrConstraint)
}
