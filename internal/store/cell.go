package store

import (
	"database/sql/driver"
	"encoding/json"
	"fmt"
	"time"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// cell is one column of a row: its name, and a place in a noun that can be
// written to it (driver.Valuer) and read back from it (sql.Scanner).
type cell struct {
	name  string
	value place
}

type place interface {
	Value() (driver.Value, error)
	Scan(any) error
}

// text is a TEXT column; maybe is one where empty means NULL.
func text[S ~string](name string, at *S) cell  { return cell{name, &textAt[S]{at: at}} }
func maybe[S ~string](name string, at *S) cell { return cell{name, &textAt[S]{at: at, null: true}} }

type textAt[S ~string] struct {
	at   *S
	null bool
	last S // neighbouring rows often say the same: keep one copy of it
}

func (t *textAt[S]) Value() (driver.Value, error) {
	if t.null && *t.at == "" {
		return nil, nil
	}
	return string(*t.at), nil
}

func (t *textAt[S]) Scan(from any) error {
	s, ok := from.(string)
	if !ok && (!t.null || from != nil) {
		return wrong("text", from)
	}
	if t.last != S(s) {
		t.last = S(s)
	}
	*t.at = t.last
	return nil
}

// whole is an INTEGER column.
func whole[N ~int | ~int64 | ~uint8](name string, at *N) cell { return cell{name, wholeAt[N]{at}} }

type wholeAt[N ~int | ~int64 | ~uint8] struct{ at *N }

func (w wholeAt[N]) Value() (driver.Value, error) { return int64(*w.at), nil }

func (w wholeAt[N]) Scan(from any) error {
	n, ok := from.(int64)
	if !ok || int64(N(n)) != n {
		return wrong("a whole number", from)
	}
	*w.at = N(n)
	return nil
}

// truth is an INTEGER column of 0 and 1.
func truth(name string, at *bool) cell { return cell{name, truthAt{at}} }

type truthAt struct{ at *bool }

func (f truthAt) Value() (driver.Value, error) { return *f.at, nil }

func (f truthAt) Scan(from any) error {
	n, ok := from.(int64)
	if !ok {
		return wrong("true or false", from)
	}
	*f.at = n != 0
	return nil
}

// number is a REAL column.
func number(name string, at *float64) cell { return cell{name, numberAt{at}} }

type numberAt struct{ at *float64 }

func (r numberAt) Value() (driver.Value, error) { return *r.at, nil }

func (r numberAt) Scan(from any) error {
	x, ok := from.(float64)
	if !ok {
		return wrong("a number", from)
	}
	*r.at = x
	return nil
}

// date is a TEXT column of ISO 8601 dates, NULL for none.
func date(name string, at *day.Date) cell { return cell{name, &dateAt{at: at}} }

type dateAt struct {
	at   *day.Date
	text string // the last one read, and what it means: dates come in runs
	last day.Date
}

func (d *dateAt) Value() (driver.Value, error) {
	switch {
	case *d.at == day.None:
		return nil, nil
	case *d.at < day.None: // it could not be read again
		return nil, fmt.Errorf("write date %s: %w: it is before 1970; check the year", *d.at, ErrConstraint)
	}
	return d.at.String(), nil
}

func (d *dateAt) Scan(from any) (err error) {
	s, ok := from.(string)
	switch {
	case from == nil:
		*d.at = day.None
		return nil
	case !ok:
		return wrong("a date", from)
	case s != d.text:
		if d.last, err = day.Parse(s); err != nil {
			return err
		}
		d.text = s
	}
	*d.at = d.last
	return nil
}

// instant is a TEXT column of RFC 3339 in UTC, empty for the zero time.
func instant(name string, at *time.Time) cell { return cell{name, instantAt{at}} }

type instantAt struct{ at *time.Time }

func (i instantAt) Value() (driver.Value, error) { return writeInstant(*i.at) }

func (i instantAt) Scan(from any) error {
	s, ok := from.(string)
	if !ok {
		return wrong("an instant", from)
	}
	return readInstant(s, i.at)
}

func writeInstant(t time.Time) (string, error) {
	if t.IsZero() {
		return "", nil
	}
	b, err := t.UTC().MarshalText() // refuses the years that RFC 3339 has no room for
	return string(b), err
}

func readInstant(s string, at *time.Time) (err error) {
	*at = time.Time{}
	if s != "" {
		*at, err = time.Parse(time.RFC3339Nano, s)
	}
	return err
}

// asJSON is a TEXT column of JSON.
func asJSON[T any](name string, at *T) cell { return cell{name, jsonAt[T]{at}} }

type jsonAt[T any] struct{ at *T }

func (j jsonAt[T]) Value() (driver.Value, error) {
	b, err := json.Marshal(*j.at)
	return string(b), err
}

// Scan decodes into a fresh value, so that rows share no slice or map.
func (j jsonAt[T]) Scan(from any) error {
	s, ok := from.(string)
	if !ok {
		return wrong("JSON", from)
	}
	var fresh T
	if err := json.Unmarshal([]byte(s), &fresh); err != nil {
		return err
	}
	*j.at = fresh
	return nil
}

// voided is the two columns of a void; both are NULL in a row that stands.
func voided(at **gym.Void) []cell {
	return []cell{{"void_at", voidTime{at}}, {"void_reason", voidReason{at}}}
}

type voidTime struct{ at **gym.Void }

func (v voidTime) Value() (driver.Value, error) {
	if *v.at == nil {
		return nil, nil
	}
	return writeInstant((*v.at).At)
}

func (v voidTime) Scan(from any) error {
	*v.at = nil
	if from == nil {
		return nil
	}
	s, ok := from.(string)
	if !ok {
		return wrong("an instant", from)
	}
	*v.at = &gym.Void{}
	return readInstant(s, &(*v.at).At)
}

type voidReason struct{ at **gym.Void }

func (v voidReason) Value() (driver.Value, error) {
	if *v.at == nil {
		return nil, nil
	}
	return (*v.at).Reason, nil
}

// Scan follows that of void_at, which has made the void.
func (v voidReason) Scan(from any) error {
	s, ok := from.(string)
	switch {
	case from == nil && *v.at == nil:
		return nil
	case !ok || *v.at == nil:
		return wrong("the reason of a void", from)
	}
	(*v.at).Reason = s
	return nil
}

func wrong(want string, got any) error {
	return fmt.Errorf("read column: it holds %v (%T) instead of %s", got, got, want)
}
