package main

import (
	"context"
	"os"

	"windlass/internal/gym"
	"windlass/internal/store"
)

// follower reads the class from a file that another program writes, and nothing
// while the file stays the same.
type follower struct {
	path    string
	file    *store.File
	info    os.FileInfo
	version int64
	read    bool // once at least
}

func follow(ctx context.Context, path string) (*follower, error) {
	f := &follower{path: path}
	return f, f.open(ctx)
}

func (f *follower) open(ctx context.Context) error {
	info, err := os.Stat(f.path)
	if err != nil {
		return err
	}
	file, err := store.OpenReadOnly(ctx, f.path)
	if err != nil {
		return err
	}
	f.close()
	f.file, f.info, f.read = file, info, false
	return nil
}

// look returns the class's book when it is not the one returned before. A file
// that was restored from a backup is another file under the same name.
func (f *follower) look(ctx context.Context) (book gym.Book, changed bool, err error) {
	if info, err := os.Stat(f.path); err == nil && !os.SameFile(info, f.info) {
		if err := f.open(ctx); err != nil {
			return gym.Book{}, false, err
		}
	}
	version, err := f.file.DataVersion(ctx)
	if err != nil || f.read && version == f.version {
		return gym.Book{}, false, err
	}
	if book, err = f.file.LoadClass(ctx); err != nil {
		return gym.Book{}, false, err
	}
	f.version, f.read = version, true
	return book, true, nil
}

func (f *follower) close() {
	if f.file != nil {
		_ = f.file.Close() // read only: nothing can be lost
	}
}
