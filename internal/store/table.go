package store

import (
	"context"
	"database/sql"
	"fmt"
	"strings"
)

// table says how a noun stands in the file. Its first cell is the key.
type table[T any] struct {
	name  string // of the table
	noun  string // for errors
	cells func(*T) []cell
	valid func(T) error // what the noun itself refuses; nil where the columns say it all
}

// asker is what reads rows: a database, a connection or a transaction.
type asker interface {
	QueryContext(ctx context.Context, query string, args ...any) (*sql.Rows, error)
}

// all returns the rows in the order in which they were made. The condition may
// be empty.
func (t table[T]) all(ctx context.Context, from asker, where string, args ...any) ([]T, error) {
	rows, err := from.QueryContext(ctx, t.selection(where), args...)
	if err != nil {
		return nil, fmt.Errorf("read %s: %w", t.name, err)
	}
	defer rows.Close()
	var row T // every cell is overwritten by every row, so one is enough
	places := values(t.cells(&row))
	var out []T
	for rows.Next() {
		if err := rows.Scan(places...); err != nil {
			return nil, fmt.Errorf("read %s: row %d: %w", t.name, len(out)+1, undecodable{err})
		}
		out = append(out, row)
	}
	if err := rows.Err(); err != nil {
		return nil, fmt.Errorf("read %s: %w", t.name, err)
	}
	return out, nil
}

// undecodable marks a row that says something no noun can hold: the file is
// damaged even though SQLite finds it whole.
type undecodable struct{ cause error }

func (u undecodable) Error() string { return u.cause.Error() }

func (t table[T]) selection(where string) string {
	if where != "" {
		where = " WHERE " + where
	}
	return "SELECT " + strings.Join(t.columns(), ", ") + " FROM " + t.name + where + " ORDER BY seq"
}

func (t table[T]) insertion() string {
	columns := t.columns()
	marks := strings.Repeat(", ?", len(columns))[2:]
	return "INSERT INTO " + t.name + " (" + strings.Join(columns, ", ") + ") VALUES (" + marks + ")"
}

// upsertion keeps the place in the order of a row whose key is known.
func (t table[T]) upsertion() string {
	columns := t.columns()
	var set []string
	for _, c := range columns[1:] {
		set = append(set, c+" = excluded."+c)
	}
	return t.insertion() + " ON CONFLICT (" + columns[0] + ") DO UPDATE SET " + strings.Join(set, ", ")
}

func (t table[T]) deletion() string {
	return "DELETE FROM " + t.name + " WHERE " + t.columns()[0] + " = ?"
}

func (t table[T]) voiding() string {
	return "UPDATE " + t.name + " SET void_at = ?, void_reason = ? WHERE " + t.columns()[0] + " = ?"
}

func (t table[T]) columns() []string {
	var names []string
	for _, c := range t.cells(new(T)) {
		names = append(names, `"`+c.name+`"`)
	}
	return names
}

// describe names a row by its key, for errors.
func (t table[T]) describe(row T) string {
	key, err := t.cells(&row)[0].value.Value()
	if err != nil {
		return t.noun
	}
	return fmt.Sprintf("%s %q", t.noun, key)
}

func values(cells []cell) []any {
	out := make([]any, len(cells))
	for i, c := range cells {
		out[i] = c.value
	}
	return out
}
