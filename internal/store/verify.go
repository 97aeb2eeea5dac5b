package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"windlass/internal/gym"
)

// Summary says what a file holds.
type Summary struct {
	Path     string
	Version  int // of the file, before any migration
	Athletes int
	Results  int // void ones too
	Bouts    int // void ones too
	OK       bool
}

// Verify reads all of a file and changes nothing. OK is true, and the error nil,
// only for a file that SQLite finds whole, that has the tables and guards of its
// version, and of which every row makes a noun that passes its Valid method.
// A letter that changed inside a name cannot be seen.
func Verify(ctx context.Context, path string) (Summary, error) {
	o, err := usual()
	if err != nil {
		return Summary{Path: path}, err
	}
	return verify(ctx, path, o)
}

func verify(ctx context.Context, path string, o options) (Summary, error) {
	s := Summary{Path: path}
	f, version, err := openAny(ctx, path, o)
	if err != nil {
		return s, err
	}
	s.Version = version
	if err := errors.Join(sound(ctx, f.read, path), f.count(ctx, version, &s)); err != nil {
		_ = f.Close() // the first error is the one to tell
		return s, explain("verify", path, ended(ctx, err))
	}
	if err := f.Close(); err != nil {
		return s, err
	}
	s.OK = true
	return s, nil
}

// count loads the file, or a migrated copy of an older one, and counts.
func (f *File) count(ctx context.Context, version int, s *Summary) error {
	if version < f.o.latest() {
		return f.countMigrated(ctx, s)
	}
	if err := f.sameSchema(ctx); err != nil {
		return err
	}
	book, err := f.Load(ctx)
	if err != nil {
		return err
	}
	s.Athletes, s.Results, s.Bouts = len(book.Athletes), len(book.Results), len(book.Bouts)
	if err := valid(book); err != nil {
		return fault("verify", f.path, ErrDamaged, err.Error())
	}
	return nil
}

func (f *File) countMigrated(ctx context.Context, s *Summary) error {
	dir, err := os.MkdirTemp("", "windlass-verify-*")
	if err != nil {
		return err
	}
	defer os.RemoveAll(dir)
	temp := filepath.Join(dir, "copy")
	if err := f.copyInto(ctx, temp); err != nil {
		return err
	}
	migrated, err := open(ctx, temp, f.o)
	if err != nil {
		return err
	}
	return errors.Join(migrated.count(ctx, f.o.latest(), s), migrated.Close())
}

// sound asks SQLite for every fault that it can find by itself.
func sound(ctx context.Context, db *sql.DB, path string) error {
	faults, err := list(ctx, db, "PRAGMA integrity_check(1)")
	if err == nil && len(faults) == 1 && faults[0] == "ok" {
		faults, err = list(ctx, db, `SELECT 'a row of ' || "table" || ' names a missing row of ' || parent FROM pragma_foreign_key_check LIMIT 1`)
	}
	if err != nil {
		return err
	}
	if len(faults) > 0 {
		return fault("verify", path, ErrDamaged, faults[0])
	}
	return nil
}

// sameSchema compares tables, indexes, triggers and views with those that the
// migrations make: a file without its guards is not whole.
func (f *File) sameSchema(ctx context.Context) error {
	const schema = "SELECT type || ' ' || name || ' ' || coalesce(sql, '') FROM sqlite_schema ORDER BY type, name"
	fresh, err := sql.Open("sqlite", ":memory:")
	if err != nil {
		return err
	}
	defer fresh.Close()
	fresh.SetMaxOpenConns(1) // each connection would have a memory of its own
	if err := migrate(ctx, fresh, f.o.steps, 0); err != nil {
		return err
	}
	want, err := list(ctx, fresh, schema)
	if err != nil {
		return err
	}
	got, err := list(ctx, f.read, schema)
	if err != nil {
		return err
	}
	if fmt.Sprint(got) != fmt.Sprint(want) {
		return fault("verify", f.path, ErrDamaged, "its tables are not those of its version")
	}
	return nil
}

func list(ctx context.Context, db *sql.DB, query string) ([]string, error) {
	rows, err := db.QueryContext(ctx, query)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	var out []string
	for rows.Next() {
		var s string
		if err := rows.Scan(&s); err != nil {
			return nil, err
		}
		out = append(out, s)
	}
	return out, rows.Err()
}

// valid returns the first fault of a noun that knows its own rules.
func valid(b gym.Book) error {
	return errors.Join(firstFault(athletes, b.Athletes), firstFault(results, b.Results), firstFault(bouts, b.Bouts))
}

func firstFault[T any](t table[T], nouns []T) error {
	for _, n := range nouns {
		if err := t.valid(n); err != nil {
			return err
		}
	}
	return nil
}
