package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"sync"
)

// readers is how many connections read at once: the desk, the wall and a copy.
const readers = 4

// File is an open gym's file. Its methods may be called from any goroutine.
type File struct {
	path  string
	o     options
	head  *held
	write *sql.DB // one connection; nil in a file opened for reading only
	read  *sql.DB

	watching sync.Mutex
	watch    *sql.Conn // held for DataVersion
}

// Path returns the name that the file was opened with.
func (f *File) Path() string { return f.path }

// Create makes the file of a new gym and opens it. It refuses a path where
// something is (ErrExists) and a folder that cannot be written (ErrReadOnly); a
// program killed on the way leaves nothing at the path.
func Create(ctx context.Context, path string) (*File, error) {
	o, err := usual()
	if err != nil {
		return nil, err
	}
	if err := create(ctx, path, o); err != nil {
		return nil, explain("create", path, err)
	}
	return open(ctx, path, o)
}

func create(ctx context.Context, path string, o options) error {
	return beside("create", path, func(temp string) error {
		db, err := connect(temp, 1, o.building())
		if err != nil {
			return err
		}
		return errors.Join(migrate(ctx, db, o.steps, 0), db.Close())
	})
}

// Open opens a file for reading and writing. One of an earlier version is copied
// to a name beside it, the copy checked, and the file brought up to date. Errors
// wrap fs.ErrNotExist, ErrForeign, ErrDamaged, ErrNewer, ErrLocked or
// ErrReadOnly.
func Open(ctx context.Context, path string) (*File, error) {
	o, err := usual()
	if err != nil {
		return nil, err
	}
	return open(ctx, path, o)
}

func open(ctx context.Context, path string, o options) (*File, error) {
	head, err := checkHeader("open", path)
	if err != nil {
		return nil, err
	}
	f := &File{path: path, o: o, head: head}
	if err := f.connect(ctx); err != nil {
		_ = f.Close() // the first error is the one to tell
		return nil, err
	}
	return f, nil
}

func (f *File) connect(ctx context.Context) (err error) {
	if f.read, err = connect(f.path, readers, f.o.reading()); err != nil {
		return err
	}
	if err := refuse(ctx, f.read, f.path, f.o); err != nil {
		return err
	}
	if f.write, err = connect(f.path, 1, f.o.writing()); err != nil {
		return err
	}
	return explain("open", f.path, f.prepare(ctx))
}

// refuse tells of a file that is not for this program before a connection that
// writes would set up a log in it. Any other trouble is left to that connection,
// which can mend what an accident left behind.
func refuse(ctx context.Context, read *sql.DB, path string, o options) error {
	_, err := checkVersion(ctx, read, path, o)
	if errors.Is(err, ErrForeign) || errors.Is(err, ErrNewer) || errors.Is(err, ErrDamaged) {
		return err
	}
	return nil
}

// prepare makes sure that the file is ours, can be written and is up to date.
func (f *File) prepare(ctx context.Context) error {
	version, err := checkVersion(ctx, f.write, f.path, f.o)
	if err != nil {
		return err
	}
	if err := f.checkWritable(ctx); err != nil {
		return err
	}
	if version == f.o.latest() {
		return nil
	}
	if err := f.keepCopy(ctx, version); err != nil {
		return fmt.Errorf("copy %q before changing it: %w", f.path, err)
	}
	return migrate(ctx, f.write, f.o.steps, version)
}

// checkWritable asks SQLite, which opens a protected file for reading without a
// word, and reads back that the log is in use.
func (f *File) checkWritable(ctx context.Context) error {
	conn, err := f.write.Conn(ctx)
	if err != nil {
		return err
	}
	defer conn.Close()
	readOnly := false
	err = conn.Raw(func(driver any) error {
		c, ok := driver.(interface{ IsReadOnly(string) (bool, error) })
		if !ok {
			return fmt.Errorf("ask %T whether the file can be written: it does not know", driver)
		}
		readOnly, err = c.IsReadOnly("main")
		return err
	})
	if err != nil {
		return err
	}
	var mode string
	if err := conn.QueryRowContext(ctx, "PRAGMA journal_mode").Scan(&mode); err != nil {
		return err
	}
	if readOnly || mode != "wal" {
		return fault("open", f.path, ErrReadOnly, "")
	}
	return nil
}

// OpenReadOnly opens a file that another program may be writing. It changes
// nothing and cannot write; a file of an earlier version is refused (ErrOlder).
func OpenReadOnly(ctx context.Context, path string) (*File, error) {
	o, err := usual()
	if err != nil {
		return nil, err
	}
	return openReadOnly(ctx, path, o)
}

func openReadOnly(ctx context.Context, path string, o options) (*File, error) {
	f, version, err := openAny(ctx, path, o)
	if err == nil && version < o.latest() {
		_ = f.Close()
		return nil, fault("open", path, ErrOlder, "")
	}
	return f, err
}

// openAny opens a file of any version that the program knows, for reading.
func openAny(ctx context.Context, path string, o options) (*File, int, error) {
	head, err := checkHeader("open", path)
	if err != nil {
		return nil, 0, err
	}
	read, version, err := openPool(ctx, path, o, o.reading())
	if errors.Is(err, ErrReadOnly) && !exists(path+"-wal") {
		// Reading a file that has a log needs a second file beside it. In a
		// folder that cannot be written nobody else writes either.
		read, version, err = openPool(ctx, path, o, append(o.reading(), "immutable=1"))
	}
	if err != nil {
		_ = head.release() // the first error is the one to tell
		return nil, 0, err
	}
	return &File{path: path, o: o, head: head, read: read}, version, nil
}

func openPool(ctx context.Context, path string, o options, settings []string) (*sql.DB, int, error) {
	read, err := connect(path, readers, settings)
	if err != nil {
		return nil, 0, err
	}
	version, err := checkVersion(ctx, read, path, o)
	if err != nil {
		_ = read.Close() // the first error is the one to tell
		return nil, 0, explain("open", path, err)
	}
	return read, version, nil
}

// checkVersion returns the version of a file that is ours and not newer than the
// program.
func checkVersion(ctx context.Context, db *sql.DB, path string, o options) (int, error) {
	application, version, err := versionOf(ctx, db)
	switch {
	case err != nil:
		return 0, err
	case application != applicationID:
		return 0, fault("open", path, ErrForeign, "another program made it")
	case version > o.latest():
		return 0, fault("open", path, ErrNewer, fmt.Sprintf("its version is %d, this program knows %d", version, o.latest()))
	case version < 1:
		return 0, fault("open", path, ErrDamaged, fmt.Sprintf("its version is %d", version))
	}
	return version, nil
}

// DataVersion returns a number that changes when another connection has changed
// the file. It always asks on the same connection, as SQLite wants.
func (f *File) DataVersion(ctx context.Context) (int64, error) {
	f.watching.Lock()
	defer f.watching.Unlock()
	if f.watch == nil {
		conn, err := f.read.Conn(ctx)
		if err != nil {
			return 0, explain("watch", f.path, err)
		}
		f.watch = conn
	}
	var version int64
	err := f.watch.QueryRowContext(ctx, "PRAGMA data_version").Scan(&version)
	return version, explain("watch", f.path, err)
}

// Close closes the file. It waits for queries under way; a step being written is not
// kept, so end it first.
func (f *File) Close() error {
	f.watching.Lock()
	defer f.watching.Unlock()
	var errs []error
	if f.watch != nil {
		errs = append(errs, f.watch.Close())
		f.watch = nil
	}
	if f.read != nil {
		errs = append(errs, f.read.Close())
	}
	if f.write != nil {
		// Last of the two, so that it can empty the log into the file.
		errs = append(errs, f.write.Close())
	}
	if f.head != nil {
		errs = append(errs, f.head.release())
		f.head = nil
	}
	return explain("close", f.path, errors.Join(errs...))
}
