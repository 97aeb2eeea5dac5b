package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"io"
	"strings"
	"time"
)

// The exit statuses of the contract.
const (
	done    = 0
	refused = 1 // or failed; nothing was changed
	misused = 2
)

// App is the program with all that it takes from outside, so that a test can run
// it within its own process.
type App struct {
	In        io.Reader
	Out, Err  io.Writer
	Now       func() time.Time
	Random    io.Reader
	DefaultDB func() (string, error) // where the gym's file lies without -db

	db   string
	json bool
}

// usage is wrong use of the command line, told apart from what was refused.
type usage struct{ why string }

func (u usage) Error() string { return u.why }

func misuse(format string, values ...any) error { return usage{fmt.Sprintf(format, values...)} }

// Run does what the arguments ask for and returns the exit status.
func (a App) Run(ctx context.Context, args []string) int {
	err := a.run(ctx, args)
	var wrong usage
	switch {
	case err == nil, errors.Is(err, flag.ErrHelp):
		return done
	case errors.As(err, &wrong):
		a.complain(err)
		return misused
	}
	if errors.Is(err, context.Canceled) {
		err = fmt.Errorf("run windlassctl %s: it was interrupted and nothing was changed; run it again", strings.Join(args, " "))
	}
	a.complain(err)
	return refused
}

// complain writes one line, however many the error has.
func (a App) complain(err error) {
	line := strings.Join(strings.FieldsFunc(err.Error(), func(r rune) bool { return r == '\n' || r == '\r' }), "; ")
	_, _ = fmt.Fprintln(a.Err, line)
}

func (a *App) run(ctx context.Context, args []string) error {
	flags := quietFlags("windlassctl")
	flags.Func("db", "the gym's `file`; without it, the one in your own data folder", func(name string) error {
		if a.db = name; name == "" {
			return errors.New("it names no file; leave -db out to mean the one in your own data folder")
		}
		return nil
	})
	flags.BoolVar(&a.json, "json", false, "print one JSON document")
	if err := flags.Parse(args); err != nil {
		return a.helpOr(fmt.Errorf("run windlassctl: %w", err), func() { a.overview(flags) }, "windlassctl -h lists the commands")
	}
	c, rest, err := find(flags.Args())
	if errors.Is(err, flag.ErrHelp) {
		a.overview(flags)
	}
	if err != nil {
		return err
	}
	own := quietFlags("windlassctl " + c.name)
	do := c.setup(own)
	names, err := interleaved(own, rest)
	if err != nil {
		return a.helpOr(fmt.Errorf("run windlassctl %s: %w", c.name, err), func() { a.explain(c, own) }, hint(err, c.name))
	}
	if err := c.takes(names); err != nil {
		return err
	}
	return do(ctx, a, names)
}

// helpOr prints help where that was asked for, and else makes wrong use of err.
func (a *App) helpOr(err error, help func(), mend string) error {
	if errors.Is(err, flag.ErrHelp) {
		help()
		return err
	}
	return misuse("%s; %s", err, mend)
}

// hint says where a global flag goes, since that is the usual slip.
func hint(err error, command string) string {
	for _, global := range []string{"-json", "-db"} {
		if strings.HasSuffix(err.Error(), "not defined: "+global) {
			return global + " goes before the command"
		}
	}
	return "windlassctl " + command + " -h lists the flags"
}

// quietFlags leaves it to us what is printed.
func quietFlags(name string) *flag.FlagSet {
	flags := flag.NewFlagSet(name, flag.ContinueOnError)
	flags.SetOutput(io.Discard)
	return flags
}

// interleaved parses flags that stand before, between and after names. What
// follows "--" is names only.
func interleaved(flags *flag.FlagSet, args []string) (names []string, err error) {
	for {
		if err := flags.Parse(args); err != nil {
			return nil, err
		}
		rest := flags.Args()
		if read := len(args) - len(rest); read > 0 && args[read-1] == "--" {
			return append(names, rest...), nil
		}
		if len(rest) == 0 {
			return names, nil
		}
		names, args = append(names, rest[0]), rest[1:]
	}
}
