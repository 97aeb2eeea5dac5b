package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"os"

	"windlass/internal/demo"
	"windlass/internal/gym"
	"windlass/internal/store"
)

// made is what demo answers.
type made struct {
	Athletes int `json:"athletes"`
	Results  int `json:"results"`
	Bouts    int `json:"bouts"`
}

func demoCommand(f *flag.FlagSet) run {
	seed := f.Uint64("seed", 1, "`N` from which everything invented follows")
	today := f.String("today", "", "the `DATE` on which the gym stands; without it, today")
	return func(ctx context.Context, a *App, _ []string) error {
		on, err := dateOr(*today, a.today())
		if err != nil {
			return err
		}
		book, err := demo.Book(*seed, on)
		if err != nil {
			return err
		}
		path, err := a.newPath()
		if err != nil {
			return err
		}
		if err := createWith(ctx, path, book.Changes()); err != nil {
			return err
		}
		m := made{len(book.Athletes), len(book.Results), len(book.Bouts)}
		return a.print(m, func() {
			a.say("%s, %s: %d athletes, %d results and %d bouts in %s\n", book.Settings.Name, book.Settings.Town, m.Athletes, m.Results, m.Bouts, path)
		})
	}
}

// createWith makes a new gym's file that says all of the changes. It takes its
// name only when it is whole, so that a program killed on the way leaves none.
func createWith(ctx context.Context, path string, changes []gym.Change) error {
	if _, err := os.Lstat(path); err == nil {
		return fmt.Errorf("make the demo gym in %q: %w; choose another name", path, store.ErrExists)
	}
	return inScratch(func(scratch string) error {
		file, err := store.Create(ctx, scratch)
		if err != nil {
			return err
		}
		if err := file.Write(ctx, changes...); err != nil {
			return errors.Join(err, file.Close())
		}
		if _, err = file.Backup(ctx, path); err != nil {
			err = fmt.Errorf("make the demo gym: %w", err)
		}
		return errors.Join(err, file.Close())
	})
}
