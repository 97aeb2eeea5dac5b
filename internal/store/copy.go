package store

import (
	"context"
	"errors"
	"fmt"
)

// Backup writes a checked copy of the file, as it is at one instant, while others
// go on using it. It refuses a name that is taken (ErrExists); a copy that fails
// leaves nothing behind.
func (f *File) Backup(ctx context.Context, to string) (Summary, error) {
	var s Summary
	err := beside("back up to", to, func(temp string) (err error) {
		if err := f.copyInto(ctx, temp); err != nil {
			return err
		}
		s, err = verify(ctx, temp, f.o)
		return err
	})
	s.Path = to
	return s, explain("back up to", to, ended(ctx, err))
}

// copyInto writes a copy into a file that is empty, what is in the log included.
// It needs a connection of its own, since those of the pool may only query, and
// holds no lock that a writer would wait for.
func (f *File) copyInto(ctx context.Context, to string) error {
	db, err := connect(f.path, 1, append(f.o.always(), "mode=ro"))
	if err != nil {
		return err
	}
	_, err = db.ExecContext(ctx, "VACUUM INTO ?", to)
	return errors.Join(err, db.Close())
}

// keepCopy copies a file of an earlier version to a name beside it and checks
// the copy.
func (f *File) keepCopy(ctx context.Context, version int) error {
	to := free(fmt.Sprintf("%s.v%d", f.path, version))
	return beside("copy to", to, func(temp string) error {
		if err := f.copyInto(ctx, temp); err != nil {
			return err
		}
		copied, _, err := openAny(ctx, temp, f.o)
		if err != nil {
			return err
		}
		return errors.Join(sound(ctx, copied.read, temp), copied.Close())
	})
}
