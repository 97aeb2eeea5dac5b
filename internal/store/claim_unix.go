//go:build unix

package store

import (
	"errors"
	"fmt"
	"os"
	"syscall"
)

// Claim takes a gym's file for one writer: a desk holds what the file says in
// memory, and would not see what another one writes. The error wraps [ErrLocked]
// while another program has the claim. The system gives it back when the program
// ends, however it ends.
func Claim(path string) (release func(), err error) {
	f, err := os.OpenFile(path+".desk", os.O_CREATE|os.O_RDWR, 0o600)
	if err != nil {
		return nil, placeless("open", path, err)
	}
	if err := syscall.Flock(int(f.Fd()), syscall.LOCK_EX|syscall.LOCK_NB); err != nil {
		_ = f.Close()
		if errors.Is(err, syscall.EWOULDBLOCK) {
			return nil, fault("open", path, ErrLocked, "")
		}
		return nil, fmt.Errorf("open %q: %w", path, err)
	}
	return func() { _ = f.Close() }, nil
}
