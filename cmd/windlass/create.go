package main

import (
	"context"
	"crypto/rand"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"windlass/internal/day"
	"windlass/internal/demo"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/store"
)

// demoSeed makes the demo gym the same on every machine.
const demoSeed = 1

// createDemo makes a file with the demo gym as it stands today.
func createDemo(ctx context.Context, o options) error {
	book, err := demo.Book(demoSeed, day.From(o.pace.now()))
	if err != nil {
		return err
	}
	return create(ctx, o.db, &book)
}

// createEmpty makes a file with a gym that has nobody in it yet.
func createEmpty(ctx context.Context, o options, name string) error {
	book, err := desk.Starter(name, func() gym.ID {
		var random [10]byte
		_, _ = rand.Read(random[:]) // never fails, says its documentation
		return gym.NewID(o.pace.now(), random)
	})
	if err != nil {
		return err
	}
	return create(ctx, o.db, &book)
}

func create(ctx context.Context, path string, book *gym.Book) error {
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		return fmt.Errorf("make a folder for %q: %w; name another file with -db", path, err)
	}
	file, err := store.Create(ctx, path)
	if err != nil {
		return err
	}
	return errors.Join(file.Write(ctx, book.Changes()...), file.Close())
}
