// Command dev sets a machine up for Windlass, then runs or checks it there.
//
//	go run ./cmd/dev run     install what is missing, build, open the console on the demo gym
//	go run ./cmd/dev test    the same set-up, then every check that a change must pass
//
// [runConsole] and [runChecks] list the steps; needs.go says what a machine must
// have and why, and lint.go pins the linter. Everything that it builds goes to
// .build, which may be deleted at any time. It uses the standard library alone,
// so that it works before anything else does. It does not package releases.
package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"
	"time"
)

type command struct {
	name    string
	summary string
	run     func(ctx context.Context, args []string) error
}

var commands = []command{
	{"run", "install what is missing, build, open the console on the demo gym", runConsole},
	{"test", "the same set-up, then every check that a change must pass", runChecks},
}

// errUsage marks a command line that was not understood.
var errUsage = errors.New("usage")

func main() {
	// A reader that goes away must not leave a virtual display behind.
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM, syscall.SIGPIPE)
	ctx, cancel := context.WithCancel(ctx)
	if startedByGoRun(os.Args[0]) {
		go cancelWithParent(os.Getppid, time.Second, cancel)
	}
	err := dispatch(ctx, os.Args[1:])
	cancel()
	stop()
	os.Exit(exitCode(err))
}

// startedByGoRun knows the folder that go run builds in.
func startedByGoRun(program string) bool {
	return strings.Contains(program, string(filepath.Separator)+"go-build")
}

// cancelWithParent ends the work when go run was ended, since that passes no
// signal on but an interrupt.
func cancelWithParent(parent func() int, every time.Duration, cancel func()) {
	for first := parent(); parent() == first; {
		time.Sleep(every)
	}
	cancel()
}

func dispatch(ctx context.Context, args []string) error {
	if len(args) == 0 {
		return fmt.Errorf("%w: no command given\n%s", errUsage, usage())
	}
	for _, c := range commands {
		if c.name == args[0] {
			return c.run(ctx, args[1:])
		}
	}
	return fmt.Errorf("%w: unknown command %q\n%s", errUsage, args[0], usage())
}

func exitCode(err error) int {
	switch {
	case err == nil, errors.Is(err, flag.ErrHelp):
		return 0
	case errors.Is(err, errUsage):
		fmt.Fprintf(os.Stderr, "dev: %v\n", err)
		return 2
	}
	fmt.Fprintf(os.Stderr, "dev: %v\n", err)
	return 1
}

func usage() string {
	text := "usage: go run ./cmd/dev COMMAND [-h]"
	for _, c := range commands {
		text += fmt.Sprintf("\n  %-6s %s", c.name, c.summary)
	}
	return text
}

// parseFlags keeps the flag package from ending the process, so that deferred
// clean-up always runs.
func parseFlags(fs *flag.FlagSet, args []string) error {
	err := fs.Parse(args)
	if errors.Is(err, flag.ErrHelp) {
		return err
	}
	if err != nil {
		return fmt.Errorf("%w: %w", errUsage, err)
	}
	if fs.NArg() > 0 {
		return fmt.Errorf("%w: %s takes no argument, got %q", errUsage, fs.Name(), fs.Args())
	}
	return nil
}
