package main

import (
	"os"
	"path/filepath"
	"runtime/debug"
)

// keepCrash makes a fatal error leave its trace beside the gym's file, where a
// coach can find it and send it. Without such a file the program runs as well.
func keepCrash(db string) {
	f, err := os.OpenFile(filepath.Join(filepath.Dir(db), "crash.log"), os.O_CREATE|os.O_WRONLY|os.O_APPEND, 0o600)
	if err != nil {
		return
	}
	defer f.Close() //nolint:errcheck // the runtime holds a copy of its own
	_ = debug.SetCrashOutput(f, debug.CrashOptions{})
}
