package store

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
)

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
	if err != nil {
		return "", placeless(verb, path, err)
	}
	return file.Name(), file.Close()
}

// placeless explains why there can be no file beside a path.
func placeless(verb, path string, err error) error {
	if errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("%s %q: %w; make its folder first", verb, path, fs.ErrNotExist)
	}
	return fault(verb, path, ErrReadOnly, err.Error())
}

// publish gives a file its name and never takes one that is in use. SQLite would
// play the log of a file that is gone into the new one, so such a log is in use.
func publish(temp, path string) error {
	if log := path + "-wal"; exists(log) {
		return fault("make", log, ErrExists, "it is the log of a file that is gone: move it away")
	}
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
