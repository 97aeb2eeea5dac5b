package store

import (
	"errors"
	"io/fs"
	"os"
	"slices"
	"sync"
)

// held is a file that this process keeps open beside SQLite, for its header.
//
// Closing any descriptor of a file drops every lock that the process has on it
// (POSIX, fcntl), SQLite's own too; another program would then take the log for
// nobody's and delete it under the desk. So a header's descriptor stays open for as
// long as anything of this package uses the file. SQLite keeps a list of its own for
// the same reason (https://www.sqlite.org/howtocorrupt.html, section 2.2).
type held struct {
	info  fs.FileInfo
	files []*os.File // one, or more after a race; the first is read
	uses  int
}

// holding lists what the whole process holds, since its locks are the process's.
var holding struct {
	sync.Mutex
	list []*held
}

// hold opens a file, or joins those that have it open. It is let go with release.
func hold(path string) (*held, error) {
	holding.Lock()
	defer holding.Unlock()
	info, err := os.Stat(path)
	if err != nil {
		return nil, err
	}
	if h := heldAs(info); h != nil {
		h.uses++
		return h, nil
	}
	file, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	if info, err = file.Stat(); err != nil {
		return nil, errors.Join(err, file.Close())
	}
	h := heldAs(info) // the name may have changed hands since
	if h == nil {
		h = &held{info: info}
		holding.list = append(holding.list, h)
	}
	h.files = append(h.files, file)
	h.uses++
	return h, nil
}

func heldAs(info fs.FileInfo) *held {
	for _, h := range holding.list {
		if os.SameFile(h.info, info) {
			return h
		}
	}
	return nil
}

// release lets the file go. It is called once for each hold, after SQLite closed
// the file.
func (h *held) release() error {
	holding.Lock()
	defer holding.Unlock()
	if h.uses--; h.uses > 0 {
		return nil
	}
	holding.list = slices.DeleteFunc(holding.list, func(o *held) bool { return o == h })
	var errs []error
	for _, file := range h.files {
		errs = append(errs, file.Close())
	}
	return errors.Join(errs...)
}
