package store

import (
	"context"
	"database/sql"
	"errors"
	"strings"

	"windlass/internal/gym"
)

// Load reads the whole file at one instant. A gym that has chosen nothing yet
// has [gym.DefaultSettings]. A row that cannot be read wraps ErrDamaged.
func (f *File) Load(ctx context.Context) (gym.Book, error) {
	return f.snapshot(ctx, func(r *reader, b *gym.Book) {
		r.catalogue(b)
		r.people(b)
		b.Results = rows(r, results, "")
		b.Bouts = rows(r, bouts, "")
		b.Overrides = rows(r, overrides, "")
		b.Climbs = rows(r, climbs, "")
		b.Slots = rows(r, slots, "")
		b.Closures = rows(r, closures, "")
		b.Cycles = rows(r, cycles, "")
		b.Classes = rows(r, classes, "")
	})
}

// presentClass picks the class that the wall shows: one whose clocks are in use
// before one being set up, then the one made last.
const presentClass = `seq = (SELECT seq FROM classes WHERE stage <> 'finished'
	ORDER BY stage = 'set-up', seq DESC LIMIT 1)`

// LoadClass reads what the wall needs: the settings, the equipment, the lifts,
// movements, tracks, slots and closures, the present class (at most one), the
// athletes in it, without their notes, and what was logged of its climb. The rest
// of the book is empty.
func (f *File) LoadClass(ctx context.Context) (gym.Book, error) {
	return f.snapshot(ctx, func(r *reader, b *gym.Book) {
		b.Lifts = rows(r, lifts, "")
		b.Movements = rows(r, movements, "")
		b.Tracks = rows(r, tracks, "")
		b.Slots = rows(r, slots, "")
		b.Closures = rows(r, closures, "")
		b.Classes = rows(r, classes, presentClass)
		if len(b.Classes) == 0 {
			return
		}
		b.Athletes = rows(r, athletes, "id IN (SELECT athlete FROM uses WHERE class = ?)", string(b.Classes[0].ID))
		for i := range b.Athletes {
			b.Athletes[i].Notes = ""
		}
		b.Results = loggedIn(r, b.Classes[0])
	})
}

// loggedIn reads the results that the lifters of a class were given, with those
// that each is to be held against: the same athlete's for the same lift and reps.
func loggedIn(r *reader, c gym.Class) []gym.Result {
	var ids []any
	for _, l := range c.Lifters {
		if l.Result != "" {
			ids = append(ids, string(l.Result))
		}
	}
	if len(ids) == 0 {
		return nil
	}
	logged := "SELECT athlete, lift, reps FROM results WHERE id IN (?" + strings.Repeat(",?", len(ids)-1) + ")"
	return rows(r, results, "(athlete, lift, reps) IN ("+logged+")", ids...)
}

// snapshot reads in one transaction, with the settings and the equipment first.
func (f *File) snapshot(ctx context.Context, read func(*reader, *gym.Book)) (gym.Book, error) {
	tx, err := f.read.BeginTx(ctx, &sql.TxOptions{ReadOnly: true})
	if err != nil {
		return gym.Book{}, f.explainRead(ended(ctx, err))
	}
	defer func() { _ = tx.Rollback() }() // nothing to keep
	r := &reader{ctx: ctx, from: tx}
	book := gym.Book{Settings: gym.DefaultSettings()}
	readSingle(r, "settings", &book.Settings)
	readSingle(r, "equipment", &book.Equipment)
	read(r, &book)
	if r.err != nil {
		return gym.Book{}, f.explainRead(ended(ctx, r.err))
	}
	return book, nil
}

func (f *File) explainRead(err error) error {
	if errors.As(err, &undecodable{}) {
		return fault("read", f.path, ErrDamaged, err.Error())
	}
	return explain("read", f.path, err)
}

// reader reads tables until the first error, which it keeps.
type reader struct {
	ctx  context.Context
	from asker
	err  error
}

func rows[T any](r *reader, t table[T], where string, args ...any) []T {
	if r.err != nil {
		return nil
	}
	var out []T
	out, r.err = t.all(r.ctx, r.from, where, args...)
	return out
}

// readSingle leaves the value alone where the file has none.
func readSingle[T any](r *reader, key string, to *T) {
	if found := rows(r, single[T](key), "key = ?", key); len(found) > 0 {
		*to = found[0]
	}
}

func (r *reader) catalogue(b *gym.Book) {
	b.Lifts = rows(r, lifts, "")
	b.Movements = rows(r, movements, "")
	b.Finishers = rows(r, finishers, "")
	b.Drills = rows(r, drills, "")
}

func (r *reader) people(b *gym.Book) {
	b.Tracks = rows(r, tracks, "")
	b.Athletes = rows(r, athletes, "")
	b.Moves = rows(r, moves, "")
	b.Restrictions = rows(r, restrictions, "")
}
