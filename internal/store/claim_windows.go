//go:build windows

package store

import (
	"errors"
	"fmt"
	"syscall"
)

const sharingViolation = syscall.Errno(32)

// Claim takes a gym's file for one writer: a desk holds what the file says in
// memory, and would not see what another one writes. The error wraps [ErrLocked]
// while another program has the claim. The system gives it back when the program
// ends, however it ends.
func Claim(path string) (release func(), err error) {
	name, err := syscall.UTF16PtrFromString(path + ".desk")
	if err != nil {
		return nil, fmt.Errorf("open %q: %w", path, err)
	}
	// Sharing nothing is the claim.
	h, err := syscall.CreateFile(name, syscall.GENERIC_WRITE, 0, nil, syscall.OPEN_ALWAYS, syscall.FILE_ATTRIBUTE_NORMAL, 0)
	if errors.Is(err, sharingViolation) {
		return nil, fault("open", path, ErrLocked, "")
	}
	if err != nil {
		return nil, placeless("open", path, err)
	}
	return func() { _ = syscall.CloseHandle(h) }, nil
}
