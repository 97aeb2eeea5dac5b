package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"windlass/internal/store"
)

// kept is what backup, restore and verify answer.
type kept struct {
	File     string `json:"file"`
	Athletes int    `json:"athletes"`
	Results  int    `json:"results"`
	Bouts    int    `json:"bouts"`
	OK       bool   `json:"ok"`
}

func (a *App) printKept(s store.Summary, more string) error {
	k := kept{s.Path, s.Athletes, s.Results, s.Bouts, s.OK}
	return a.print(k, func() {
		state := "whole"
		if !k.OK {
			state = "not whole"
		}
		a.say("%s is %s: %d athletes, %d results, %d bouts\n%s", k.File, state, k.Athletes, k.Results, k.Bouts, more)
	})
}

func backupCommand(f *flag.FlagSet) run {
	out := f.String("out", "", "`FILE` for the copy; it must be a new one")
	return func(ctx context.Context, a *App, _ []string) error {
		if *out == "" {
			return misuse("run windlassctl backup: say where to with -out FILE")
		}
		file, err := a.openToRead(ctx)
		if err != nil {
			return err
		}
		defer file.Close() //nolint:errcheck // it was only read
		if *out == "-" {
			return inScratch(func(name string) error {
				if _, err := file.Backup(ctx, name); err != nil {
					return err
				}
				return a.pour(name)
			})
		}
		s, err := file.Backup(ctx, *out)
		if err != nil {
			return err
		}
		return a.printKept(s, "")
	}
}

// pour writes a file to the standard output.
func (a *App) pour(name string) error {
	f, err := os.Open(name)
	if err != nil {
		return err
	}
	_, err = io.Copy(a.Out, f)
	return errors.Join(err, f.Close())
}

// inScratch lends the name of a file that does not exist yet, in a folder that is
// gone afterwards.
func inScratch(use func(name string) error) error {
	folder, err := os.MkdirTemp("", "windlass-*")
	if err != nil {
		return fmt.Errorf("make a scratch folder: %w", err)
	}
	return errors.Join(use(filepath.Join(folder, "copy.windlass")), os.RemoveAll(folder))
}

// named lends the name of a file, for "-" one that holds the standard input.
func (a *App) named(name string, use func(string) error) error {
	if name != "-" {
		return use(name)
	}
	return inScratch(func(scratch string) error {
		f, err := os.Create(scratch)
		if err != nil {
			return err
		}
		_, err = io.Copy(f, a.In)
		if err := errors.Join(err, f.Close()); err != nil {
			return fmt.Errorf("read the standard input: %w", err)
		}
		if err := use(scratch); err != nil {
			return errors.New(strings.ReplaceAll(err.Error(), strconv.Quote(scratch), "standard input"))
		}
		return nil
	})
}

// noCopy says what to do about a copy that is not there.
func noCopy(name string, err error) error {
	if errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("open %q: there is no such file; check the name", name)
	}
	return err
}

func restoreCommand(*flag.FlagSet) run {
	return func(ctx context.Context, a *App, names []string) error {
		path, err := a.newPath()
		if err != nil {
			return err
		}
		return a.named(names[0], func(from string) error { return a.restore(ctx, from, path) })
	}
}

// restore checks the copy before it asks for anything else, so that a copy that
// is none leaves no mark at all.
func (a *App) restore(ctx context.Context, from, path string) error {
	if _, err := store.Verify(ctx, from); err != nil {
		return noCopy(from, err)
	}
	release, err := store.Claim(path)
	if err != nil {
		return err
	}
	defer release()
	before, err := store.Restore(ctx, from, path)
	if err != nil {
		return err
	}
	s, err := store.Verify(ctx, path)
	if err != nil {
		return err
	}
	more := ""
	if before != "" {
		more = "The file that was there is kept as " + before + "\n"
	}
	return a.printKept(s, more)
}

func verifyCommand(*flag.FlagSet) run {
	return func(ctx context.Context, a *App, names []string) error {
		missing := noCopy
		if len(names) == 0 {
			path, err := a.path()
			if err != nil {
				return err
			}
			names, missing = []string{path}, orMissing
		}
		return a.named(names[0], func(name string) error {
			s, err := store.Verify(ctx, name)
			s.Path = names[0]
			if err != nil {
				return a.unsound(s, missing(name, err))
			}
			return a.printKept(s, "")
		})
	}
}

// unsound tells a script that a file is not whole, and a person why.
func (a *App) unsound(s store.Summary, why error) error {
	if !a.json {
		return why
	}
	s.OK = false
	return errors.Join(why, a.printKept(s, ""))
}
