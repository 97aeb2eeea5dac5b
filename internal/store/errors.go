package store

import (
	"context"
	"errors"
	"fmt"

	"modernc.org/sqlite"
	lib "modernc.org/sqlite/lib"
)

// The faults that a caller may tell apart with errors.Is. The error around one
// names the file and says what would mend it.
var (
	ErrNewer      = errors.New("the file was made by a newer program")
	ErrOlder      = errors.New("the file was made by an older program")
	ErrForeign    = errors.New("the file is not a gym's file")
	ErrDamaged    = errors.New("the file is damaged")
	ErrLocked     = errors.New("another program is using the file")
	ErrReadOnly   = errors.New("the file cannot be written")
	ErrFull       = errors.New("the disk is full")
	ErrExists     = errors.New("the file exists already")
	ErrInUse      = errors.New("something still names it")
	ErrConstraint = errors.New("the file refuses it")
)

// mend says what would help against a fault of the file itself.
var mend = map[error]string{
	ErrNewer:    "install the newer program, or open an older backup",
	ErrOlder:    "open it once with write access, which brings it up to date",
	ErrForeign:  "choose another file, or restore a backup",
	ErrDamaged:  "keep it, and restore a backup",
	ErrLocked:   "close the other program, then try again",
	ErrReadOnly: "allow writing to the file and to its folder, or copy it elsewhere",
	ErrFull:     "free some space, then try again",
	ErrExists:   "choose another name",
}

// fault builds the error for a sentinel: what was asked, of which file, what is
// wrong, and what would mend it.
func fault(verb, path string, sentinel error, detail string) error {
	if detail != "" {
		detail = " (" + detail + ")"
	}
	return fmt.Errorf("%s %q: %w%s; %s", verb, path, sentinel, detail, mend[sentinel])
}

// explain turns an error of the driver into one of ours, once. The codes are
// those of https://www.sqlite.org/rescode.html. An error that carries none, or
// has been explained, passes through with the file's name at most.
func explain(verb, path string, err error) error {
	var driver *sqlite.Error
	switch {
	case err == nil:
		return nil
	case errors.Is(err, context.Canceled), errors.Is(err, context.DeadlineExceeded):
		return fmt.Errorf("%s %q: %w; nothing was changed", verb, path, err)
	case !errors.As(err, &driver):
		return err
	}
	if sentinel := sentinelOf(driver.Code()); sentinel != nil {
		return fault(verb, path, sentinel, driver.Error())
	}
	return fmt.Errorf("%s %q: %w", verb, path, err)
}

// ended is the context's own error for anything that failed because it was done:
// what the driver says then depends on the moment.
func ended(ctx context.Context, err error) error {
	if err != nil && ctx.Err() != nil {
		return ctx.Err()
	}
	return err
}

// sentinelOf returns what a result code means for the file as a whole, and nil
// for a code that speaks of one row or of nothing we know.
func sentinelOf(code int) error {
	if code == lib.SQLITE_IOERR_SHORT_READ { // the file ends too early; other faults of a disk are no damage
		return ErrDamaged
	}
	switch code & 0xff { // the primary code
	case lib.SQLITE_BUSY, lib.SQLITE_LOCKED, lib.SQLITE_PROTOCOL:
		return ErrLocked
	case lib.SQLITE_READONLY, lib.SQLITE_CANTOPEN, lib.SQLITE_PERM:
		return ErrReadOnly
	case lib.SQLITE_NOTADB:
		return ErrForeign
	case lib.SQLITE_CORRUPT, lib.SQLITE_FORMAT:
		return ErrDamaged
	case lib.SQLITE_FULL:
		return ErrFull
	}
	return nil
}

// explainRow turns the refusal of one row into one of ours; other errors pass
// through for [explain].
func explainRow(what string, err error) error {
	var driver *sqlite.Error
	if !errors.As(err, &driver) || driver.Code()&0xff != lib.SQLITE_CONSTRAINT {
		return err
	}
	switch driver.Code() {
	case lib.SQLITE_CONSTRAINT_FOREIGNKEY:
		return fmt.Errorf("%s: %w: it names something that the file does not have; add that first", what, ErrConstraint)
	case lib.SQLITE_CONSTRAINT_PRIMARYKEY, lib.SQLITE_CONSTRAINT_UNIQUE:
		return fmt.Errorf("%s: %w: the file has one with the same key; give it another", what, ErrConstraint)
	}
	return fmt.Errorf("%s: %w: %s", what, ErrConstraint, driver.Error())
}

// explainDrop is [explainRow] for a deletion, which only ever fails because the
// row is in use.
func explainDrop(what string, err error) error {
	var driver *sqlite.Error
	if !errors.As(err, &driver) || driver.Code()&0xff != lib.SQLITE_CONSTRAINT {
		return err
	}
	return fmt.Errorf("%s: %w; hide it instead, or take it out of what names it", what, ErrInUse)
}
