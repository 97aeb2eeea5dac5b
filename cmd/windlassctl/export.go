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

	"windlass/internal/desk"
	"windlass/internal/exchange"
)

// exported is what export answers.
type exported struct {
	Files []string `json:"files"`
}

func exportCommand(f *flag.FlagSet) run {
	out := f.String("out", "", "`DIR` for one CSV a table, made when it is not there")
	xlsx := f.String("xlsx", "", "`FILE` for one workbook, a sheet a table")
	return func(ctx context.Context, a *App, _ []string) error {
		if (*out == "") == (*xlsx == "") {
			return misuse("run windlassctl export: say where to with -out DIR or with -xlsx FILE, one of them")
		}
		return a.reading(ctx, func(d *desk.Desk) error {
			tables := exchange.Tables(d.Book(), d.Today())
			if *xlsx != "" {
				return a.workbook(ctx, *xlsx, tables)
			}
			names, err := exchange.WriteCSVs(ctx, *out, tables)
			if err != nil {
				return err
			}
			for i := range names {
				names[i] = filepath.Join(*out, filepath.Base(names[i]))
			}
			return a.printFiles(names)
		})
	}
}

func (a *App) workbook(ctx context.Context, name string, tables []exchange.Table) error {
	if name == "-" {
		return exchange.WriteXLSX(ctx, a.Out, tables)
	}
	if err := writeNew(name, func(w io.Writer) error { return exchange.WriteXLSX(ctx, w, tables) }); err != nil {
		return err
	}
	return a.printFiles([]string{name})
}

func (a *App) printFiles(names []string) error {
	return a.print(exported{names}, func() {
		for _, n := range names {
			a.say("%s\n", n)
		}
	})
}

// writeNew fills a new file. It takes no name that is in use, and leaves nothing
// behind when it fails.
func writeNew(name string, fill func(io.Writer) error) error {
	f, err := os.OpenFile(name, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o600)
	switch {
	case errors.Is(err, fs.ErrExist):
		return fmt.Errorf("write %q: %w; choose another name", name, plain(err))
	case err != nil:
		return fmt.Errorf("write %q: %w; choose another place", name, plain(err))
	}
	if err := errors.Join(fill(f), f.Close()); err != nil {
		return errors.Join(fmt.Errorf("write %q: %w", name, err), os.Remove(name))
	}
	return nil
}

// plain leaves out of a file's error the name, which we have said already.
func plain(err error) error {
	var of *fs.PathError
	if errors.As(err, &of) {
		return of.Err
	}
	return err
}
