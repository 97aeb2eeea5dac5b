//go:build unix

package store

import (
	"fmt"
	"os"
	"os/exec"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const visitorVar = "WINDLASS_STORE_TEST_VISITOR" // names the file of which another program asks for the lock

// SQLite's bytes that everybody who has a file open locks together
// (https://www.sqlite.org/src/file/src/os.h, PENDING_BYTE and what follows).
const (
	sharedFirst = 0x40000000 + 2
	sharedSize  = 510
)

func init() { processes[visitorVar] = askForLock }

// askForLock tells whether a program could have a file for itself, as SQLite asks
// before it deletes a log that nobody needs.
func askForLock(path string) error {
	file, err := os.OpenFile(path, os.O_RDWR, 0)
	if err != nil {
		return err
	}
	defer file.Close()
	lock := syscall.Flock_t{Type: syscall.F_WRLCK, Start: sharedFirst, Len: sharedSize}
	if err := syscall.FcntlFlock(file.Fd(), syscall.F_GETLK, &lock); err != nil {
		return err
	}
	fmt.Print(lock.Type == syscall.F_UNLCK)
	return nil
}

func freeForAVisitor(t *testing.T, path string) string {
	t.Helper()
	self, err := os.Executable()
	require.NoError(t, err)
	visitor := exec.CommandContext(t.Context(), self)
	visitor.Env = append(os.Environ(), visitorVar+"="+path)
	out, err := visitor.CombinedOutput()
	require.NoError(t, err, "%s", out)
	return string(out)
}

// A file that is open here, and was looked at a second time from here, stays locked
// against a program that would take its log for nobody's.
func TestASecondLookGivesNoLockAway(t *testing.T) {
	f := newFile(t)
	assert.Equal(t, "false", freeForAVisitor(t, f.Path()))
	_, err := Verify(t.Context(), f.Path())
	require.NoError(t, err)
	second, err := OpenReadOnly(t.Context(), f.Path())
	require.NoError(t, err)
	require.NoError(t, second.Close())
	assert.Equal(t, "false", freeForAVisitor(t, f.Path()))
	require.NoError(t, f.Close())
	assert.Equal(t, "true", freeForAVisitor(t, f.Path()))
}
