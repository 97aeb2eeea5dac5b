package store

import (
	"context"
	"errors"
	"os"
	"path/filepath"
)

// Restore puts a checked copy at path and returns the name beside it under which
// the replaced file is kept, if there was one. The copy itself stays. A file that
// is open in another program is refused (ErrLocked); after an error the file at
// path is the one that was there, unless kept names it.
func Restore(ctx context.Context, from, path string) (kept string, err error) {
	if same(from, path) {
		return "", fault("restore", path, ErrExists, "it is the copy itself")
	}
	o, err := usual()
	if err != nil {
		return "", err
	}
	if _, err := verify(ctx, from, o); err != nil {
		return "", err
	}
	temp, err := reserve("restore", path)
	if err != nil {
		return "", err
	}
	defer os.Remove(temp) // no effect once it has its name
	err = copyOf(ctx, from, temp, o)
	switch {
	case err != nil:
	case exists(path):
		kept, err = replace(ctx, temp, path, o)
	default:
		err = publish(temp, path)
	}
	return kept, explain("restore", path, ended(ctx, err))
}

// copyOf makes a checked copy of a file that is not open here.
func copyOf(ctx context.Context, from, to string, o options) error {
	f, _, err := openAny(ctx, from, o)
	if err != nil {
		return err
	}
	if err := errors.Join(f.copyInto(ctx, to), f.Close()); err != nil {
		return err
	}
	if _, err := verify(ctx, to, o); err != nil {
		return err
	}
	return syncFile(to)
}

// replace keeps the file at path under a free name and gives its name to temp.
// What settle left of a log goes with the old file, and first: it must not meet
// the new one.
func replace(ctx context.Context, temp, path string, o options) (kept string, err error) {
	// What is no gym's file at a glance is not even shown to SQLite, which would
	// tidy up its log.
	if head, err := checkHeader("restore", path); err == nil {
		if err := errors.Join(settle(ctx, path, o), head.release()); err != nil {
			return "", err
		}
	}
	kept = free(path + ".replaced")
	var undo undoing
	defer func() {
		if err != nil {
			err = errors.Join(err, undo.back())
		}
	}()
	if exists(path + "-wal") {
		if err := undo.rename(path+"-wal", kept+"-wal"); err != nil {
			return "", err
		}
	}
	// A second name, where there are such: then no moment is without a file at path.
	if os.Link(path, kept) == nil {
		undo = append(undo, func() error { return os.Remove(kept) })
	} else if err := undo.rename(path, kept); err != nil {
		return "", err
	}
	if err := os.Rename(temp, path); err != nil {
		return "", err
	}
	undo = nil // it is done, whatever the disk says of it
	return kept, syncFolder(filepath.Dir(path))
}

// undoing is what takes back the steps made so far, when a later one fails.
type undoing []func() error

func (u *undoing) rename(from, to string) error {
	if err := os.Rename(from, to); err != nil {
		return err
	}
	*u = append(*u, func() error { return os.Rename(to, from) })
	return nil
}

func (u undoing) back() error {
	var errs []error
	for _, step := range u {
		errs = append(errs, step())
	}
	return errors.Join(errs...)
}

// settle makes a file stand alone, without a log, which works only while no other
// program has it open; one that never had a log is locked for a moment to see
// that. A file too damaged for that is taken as it is.
func settle(ctx context.Context, path string, o options) error {
	db, err := connect(path, 1, o.building())
	if err != nil {
		return err
	}
	_, err = db.ExecContext(ctx, "PRAGMA journal_mode = DELETE; BEGIN EXCLUSIVE; ROLLBACK")
	err = explain("restore", path, errors.Join(err, db.Close()))
	if errors.Is(err, ErrDamaged) || errors.Is(err, ErrForeign) {
		err = nil
	}
	return err
}

// same reports whether two names lead to one file.
func same(a, b string) bool {
	first, err1 := os.Stat(a)
	second, err2 := os.Stat(b)
	return err1 == nil && err2 == nil && os.SameFile(first, second)
}
