package store

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
)

// Backup writes a checked copy of the file, as it is at one instant, while others
// go on using it. It refuses a name that is taken (ErrExists); a copy that fails
// leaves nothing behind.
func (f *File) Backup(ctx context.Context, to string) (Summary, error) {
	o, err := usual()
	if err != nil {
		return Summary{}, err
	}
	var s Summary
	err = beside("back up to", to, func(temp string) (err error) {
		if err := f.copyInto(ctx, temp); err != nil {
			return err
		}
		s, err = verify(ctx, temp, o)
		return err
	})
	s.Path = to
	return s, explain("back up to", to, err)
}

// copyInto writes a copy into a file that is empty. It holds no lock that a
// writer would wait for.
func (f *File) copyInto(ctx context.Context, to string) error {
	// The reading pool may only query; a copy is made on a connection of its own.
	o, err := usual()
	if err != nil {
		return err
	}
	db, err := connect(f.path, 1, append(o.always(), "mode=ro"))
	if err != nil {
		return err
	}
	_, err = db.ExecContext(ctx, "VACUUM INTO ?", to)
	return errors.Join(err, db.Close())
}

// keepCopy copies a file of an earlier version to a name beside it and checks
// the copy.
func (f *File) keepCopy(ctx context.Context, version int, o options) error {
	to := free(fmt.Sprintf("%s.v%d", f.path, version))
	return beside("copy to", to, func(temp string) error {
		if err := f.copyInto(ctx, temp); err != nil {
			return err
		}
		copied, _, err := openAny(ctx, temp, o)
		if err != nil {
			return err
		}
		return errors.Join(sound(ctx, copied.read, temp), copied.Close())
	})
}

// Restore puts a checked copy at path and returns the name beside it under which
// the replaced file is kept, if there was one. The copy itself stays. A file that
// is open in another program is refused (ErrLocked); after an error the file at
// path is the one that was there.
func Restore(ctx context.Context, from, path string) (kept string, err error) {
	if same(from, path) {
		return "", fault("restore", path, ErrExists, "it is the copy itself")
	}
	if _, err := Verify(ctx, from); err != nil {
		return "", err
	}
	temp, err := reserve("restore", path)
	if err != nil {
		return "", err
	}
	defer os.Remove(temp) // no effect once it has its name
	if err := copyOf(ctx, from, temp); err != nil {
		return "", explain("restore", path, err)
	}
	if !exists(path) {
		return "", publish(temp, path)
	}
	kept, err = replace(ctx, temp, path)
	return kept, explain("restore", path, err)
}

// copyOf copies a file that is not open here, what is in its log included.
func copyOf(ctx context.Context, from, to string) error {
	o, err := usual()
	if err != nil {
		return err
	}
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
func replace(ctx context.Context, temp, path string) (kept string, err error) {
	if err := settle(ctx, path); err != nil {
		return "", err
	}
	kept = free(path + ".replaced")
	// What settle could not empty belongs to the old file and must not meet the new.
	for _, tail := range []string{"-wal", "-shm"} {
		if err := os.Rename(path+tail, kept+tail); err != nil && !errors.Is(err, fs.ErrNotExist) {
			return "", err
		}
	}
	// A second name first: then there is no moment without a file at path.
	if err := os.Link(path, kept); err != nil {
		if err := os.Rename(path, kept); err != nil {
			return "", err
		}
	}
	if err := os.Rename(temp, path); err != nil {
		return "", err
	}
	return kept, syncFolder(filepath.Dir(path))
}

// settle makes a file stand alone, without a log, which works only while no other
// program has it open. A file too damaged for that is taken as it is, and one that
// is none at a glance is not even shown to SQLite, which would tidy up its log.
func settle(ctx context.Context, path string) error {
	if checkHeader("restore", path) != nil {
		return nil
	}
	o, err := usual()
	if err != nil {
		return err
	}
	db, err := connect(path, 1, o.building())
	if err != nil {
		return err
	}
	_, err = db.ExecContext(ctx, "PRAGMA journal_mode = DELETE")
	err = explain("restore", path, errors.Join(err, db.Close()))
	if errors.Is(err, ErrDamaged) || errors.Is(err, ErrForeign) {
		return nil
	}
	return err
}

// beside makes a file under a temporary name in the folder of path, has it
// filled, and gives it its name only when it is whole and on the disk.
func beside(verb, path string, fill func(temp string) error) error {
	if exists(path) {
		return fault(verb, path, ErrExists, "")
	}
	temp, err := reserve(verb, path)
	if err != nil {
		return err
	}
	defer os.Remove(temp) // no effect once it has its name
	if err := fill(temp); err != nil {
		return err
	}
	if err := syncFile(temp); err != nil {
		return err
	}
	if err := publish(temp, path); err != nil {
		if errors.Is(err, fs.ErrExist) {
			return fault(verb, path, ErrExists, "")
		}
		return err
	}
	return nil
}

// reserve makes an empty file in the folder of path.
func reserve(verb, path string) (string, error) {
	file, err := os.CreateTemp(filepath.Dir(path), filepath.Base(path)+".*.part")
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return "", fmt.Errorf("%s %q: %w; make its folder first", verb, path, fs.ErrNotExist)
	case err != nil:
		return "", fault(verb, path, ErrReadOnly, err.Error())
	}
	return file.Name(), file.Close()
}

// publish gives a file its name and never takes one that is in use.
func publish(temp, path string) error {
	if err := os.Link(temp, path); err != nil {
		// Some memory sticks know no links.
		if errors.Is(err, fs.ErrExist) || exists(path) {
			return fs.ErrExist
		}
		if err := os.Rename(temp, path); err != nil {
			return err
		}
	}
	return syncFolder(filepath.Dir(path))
}

// free returns the first name of name, name-2, name-3, … that nothing has.
func free(name string) string {
	candidate := name
	for n := 2; exists(candidate); n++ {
		candidate = fmt.Sprintf("%s-%d", name, n)
	}
	return candidate
}

func same(a, b string) bool {
	first, err1 := os.Stat(a)
	second, err2 := os.Stat(b)
	return err1 == nil && err2 == nil && os.SameFile(first, second)
}

func exists(path string) bool {
	_, err := os.Lstat(path)
	return err == nil
}

func syncFile(path string) error {
	file, err := os.OpenFile(path, os.O_RDWR, 0)
	if err != nil {
		return err
	}
	return errors.Join(file.Sync(), file.Close())
}

// syncFolder makes a new name last through a loss of power. Windows keeps names
// safe by itself and cannot sync a folder.
func syncFolder(path string) error {
	if runtime.GOOS == "windows" {
		return nil
	}
	file, err := os.Open(path)
	if err != nil {
		return err
	}
	return errors.Join(file.Sync(), file.Close())
}
