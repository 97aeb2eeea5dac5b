package main

import (
	"errors"
	"fmt"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"sync"
)

// album writes pictures beside the tour: a class at 60 times the speed does not
// wait for a file to be packed.
type album struct {
	folder, look string
	count        int
	writing      sync.WaitGroup
	mu           sync.Mutex
	faults       []error
}

// add keeps a picture under a name, numbered in the order in which they came.
func (a *album) add(name string, img image.Image) {
	a.count++
	path := filepath.Join(a.folder, fmt.Sprintf("%02d-%s-%s.png", a.count, name, a.look))
	a.writing.Go(func() {
		if err := writePNG(path, img); err != nil {
			a.mu.Lock()
			defer a.mu.Unlock()
			a.faults = append(a.faults, err)
		}
	})
}

// close waits for the last file and tells what could not be written.
func (a *album) close() error {
	a.writing.Wait()
	return errors.Join(a.faults...)
}

func writePNG(path string, img image.Image) error {
	f, err := os.Create(path)
	if err != nil {
		return fmt.Errorf("keep picture: %w", err)
	}
	if err := errors.Join(png.Encode(f, img), f.Close()); err != nil {
		return fmt.Errorf("keep picture %q: %w", path, err)
	}
	return nil
}
