package main

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/store"
)

// path returns the gym's file.
func (a *App) path() (string, error) {
	if a.db != "" {
		return a.db, nil
	}
	return a.DefaultDB()
}

// newPath returns where a gym's file may be made. The usual folder comes into
// being with it; one that somebody names has to be there.
func (a *App) newPath() (string, error) {
	path, err := a.path()
	if err != nil || a.db != "" {
		return path, err
	}
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		return "", fmt.Errorf("make the data folder: %w; name a file with -db", err)
	}
	return path, nil
}

// reading opens the gym to look at it, beside a window that may be open too.
func (a *App) reading(ctx context.Context, look func(*desk.Desk) error) error {
	file, err := a.openToRead(ctx)
	if err != nil {
		return err
	}
	return a.with(ctx, file, look)
}

// openToRead brings a file of an earlier version up to date first, which keeps a
// copy of it: there is no other way to read one.
func (a *App) openToRead(ctx context.Context) (*store.File, error) {
	path, err := a.path()
	if err != nil {
		return nil, err
	}
	file, err := store.OpenReadOnly(ctx, path)
	if errors.Is(err, store.ErrOlder) {
		file, err = store.Open(ctx, path)
	}
	return file, orMissing(path, err)
}

// writing opens the gym to change it. A window that has it open would not see the
// change, so it must be closed.
func (a *App) writing(ctx context.Context, change func(*desk.Desk) error) error {
	path, err := a.path()
	if err != nil {
		return err
	}
	if _, err := os.Stat(path); err != nil {
		return orMissing(path, err) // before a claim leaves its mark beside it
	}
	release, err := store.Claim(path)
	if err != nil {
		return err
	}
	defer release()
	file, err := store.Open(ctx, path)
	if err != nil {
		return orMissing(path, err)
	}
	return a.with(ctx, file, change)
}

func (a *App) with(ctx context.Context, file *store.File, use func(*desk.Desk) error) error {
	d, err := desk.Open(ctx, file, a.Now, a.Random)
	if err == nil {
		err = use(d)
	}
	return errors.Join(err, file.Close())
}

// orMissing says what to do about a file that is not there.
func orMissing(path string, err error) error {
	if errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("open %q: there is no such file; name another with -db, or make one with windlassctl demo", path)
	}
	return err
}

// athlete finds one athlete by name.
func athlete(d *desk.Desk, name string) (gym.Athlete, error) {
	id, err := gym.AthleteNames(d.Book().Athletes).Find(name)
	if err != nil {
		return gym.Athlete{}, err
	}
	who, _ := d.Athlete(id)
	return who, nil
}

// lift finds one lift by name.
func lift(d *desk.Desk, name string) (gym.Lift, error) {
	key, err := gym.LiftNames(d.Book().Lifts).Find(name)
	if err != nil {
		return gym.Lift{}, err
	}
	found, _ := d.Lift(key)
	return found, nil
}

// track finds one track by name.
func track(d *desk.Desk, name string) (gym.Track, error) {
	id, err := gym.TrackNames(d.Book().Tracks).Find(name)
	if err != nil {
		return gym.Track{}, err
	}
	return d.Track(id), nil
}

// dateOr reads a date, and takes another one where nothing is written.
func dateOr(text string, without day.Date) (day.Date, error) {
	if strings.TrimSpace(text) == "" {
		return without, nil
	}
	return day.Parse(strings.TrimSpace(text))
}

// today is the present day where the gym is.
func (a *App) today() day.Date { return day.From(a.Now()) }
