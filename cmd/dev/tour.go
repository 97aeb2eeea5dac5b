package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// threadFault is what Fyne prints when a window is touched from a goroutine
// other than its own. It does so only in builds without migrated_fynedo.
const threadFault = "Error in Fyne call thread"

// playTour runs the built program through every room and checks what came of it.
func (s *shop) playTour(ctx context.Context, dir string) (note string, err error) {
	if err := emptied(dir); err != nil {
		return "", fmt.Errorf("play the tour: %w", err)
	}
	ctx, cancel := context.WithTimeout(ctx, tourLimit)
	defer cancel()
	cmd := s.command(ctx, s.program(), "-tour", dir)
	cmd.Env = append(s.env[:len(s.env):len(s.env)], "FYNE_SCALE=1") // pictures of one size everywhere
	output, runErr := cmd.CombinedOutput()
	pictures, err := countPictures(dir)
	if err != nil {
		return "", fmt.Errorf("play the tour: %w", err)
	}
	if err := judgeTour(output, runErr, pictures); err != nil {
		s.show(output)
		if errors.Is(ctx.Err(), context.DeadlineExceeded) {
			err = fmt.Errorf("%w (stopped after %s)", err, short(tourLimit))
		}
		return "", err
	}
	return fmt.Sprintf("%d pictures in %s", pictures, dir), nil
}

// judgeTour is the tour as a test: it must end well, touch windows only from
// their goroutine, and leave pictures.
func judgeTour(output []byte, runErr error, pictures int) error {
	switch {
	case runErr != nil:
		return fmt.Errorf("windlass -tour: %w", runErr)
	case bytes.Contains(output, []byte(threadFault)):
		return fmt.Errorf("windlass -tour: Fyne reported %q; wrap the call in fyne.Do", threadFault)
	case pictures == 0:
		return errors.New("windlass -tour: it ended well but wrote no picture")
	}
	return nil
}

// emptied makes a folder and takes old pictures out, so that none is mistaken
// for a new one.
func emptied(dir string) error {
	if err := os.RemoveAll(dir); err != nil {
		return err
	}
	return os.MkdirAll(dir, 0o755)
}

func countPictures(dir string) (n int, err error) {
	err = filepath.WalkDir(dir, func(path string, _ fs.DirEntry, err error) error {
		if strings.HasSuffix(path, ".png") {
			n++
		}
		return err
	})
	return n, err
}

// hasTour asks the program itself, so that a tree without the tour still passes
// its other checks.
func (s *shop) hasTour(ctx context.Context) bool {
	output, _ := s.command(ctx, s.program(), "-help").CombinedOutput()
	return bytes.Contains(output, []byte("-tour"))
}
