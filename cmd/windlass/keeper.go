package main

import (
	"context"
	"errors"
	"fmt"
	"os"

	"fyne.io/fyne/v2"

	"windlass/internal/store"
)

// keeper copies, checks and brings back the gym's file for the Gym room. It is
// called beside Fyne's thread.
type keeper struct{ *console }

// Backup writes a checked copy.
func (k keeper) Backup(ctx context.Context, to string) (string, error) {
	s, err := k.file.Backup(ctx, to)
	if err != nil {
		return "", err
	}
	return fmt.Sprintf("Backed up to %s: %s. The copy was checked.", s.Path, contents(s)), k.remember()
}

// Verify reads the whole file.
func (k keeper) Verify(ctx context.Context) (string, error) {
	s, err := store.Verify(ctx, k.options.db)
	if err != nil {
		return "", err
	}
	return fmt.Sprintf("The file is sound: %s.", contents(s)), nil
}

// Restore puts a copy in the place of the file and opens the console on it; when
// it cannot, the console goes on with the file that was there. The copy is checked
// first, so that a wrong name is told where it was written: opening the console
// anew would leave the room that asked.
func (k keeper) Restore(ctx context.Context, from string) (string, error) {
	if _, err := store.Verify(ctx, from); err != nil {
		return "", err
	}
	if err := onThread(k.shut); err != nil {
		return "", errors.Join(err, onThread(k.reopen))
	}
	kept, err := store.Restore(ctx, from, k.options.db)
	err = errors.Join(err, onThread(k.reopen))
	sentence := fmt.Sprintf("The copy is in place. The file that was there is kept as %s.", kept)
	// The room that asked went with the window of the old file: the new one tells.
	fyne.Do(func() {
		if k.main.Fail(err) {
			k.main.Say(sentence, false)
		}
	})
	return sentence, err
}

// Last tells when the file was last backed up from this machine.
func (k keeper) Last() string {
	info, err := os.Stat(k.mark())
	if err != nil {
		return "This gym was never backed up from this machine."
	}
	days := int(k.options.pace.now().Sub(info.ModTime()).Hours() / 24)
	switch days {
	case 0:
		return "Last backed up today, at " + info.ModTime().Format("15:04") + "."
	case 1:
		return "Last backed up yesterday."
	}
	return fmt.Sprintf("Last backed up %d days ago, on %s.", days, info.ModTime().Format("2 January 2006"))
}

// mark is a file whose time is that of the last backup: the gym's own file would
// carry it into every copy.
func (k keeper) mark() string { return k.options.db + ".backedup" }

func (k keeper) remember() error {
	if err := os.WriteFile(k.mark(), nil, 0o600); err != nil {
		return fmt.Errorf("note the backup: %w", err)
	}
	now := k.options.pace.now()
	return os.Chtimes(k.mark(), now, now)
}

func contents(s store.Summary) string {
	return fmt.Sprintf("%d athletes, %d results, %d bouts", s.Athletes, s.Results, s.Bouts)
}

// shut closes the file and the wall that reads it, and keeps the claim on its
// name.
func (c *console) shut() error {
	c.stop()
	return errors.Join(c.wall.close(), c.file.Close())
}

// reopen reads the file again and fills the window anew.
func (c *console) reopen() error {
	d, file, err := openDesk(c.options)
	if err != nil {
		return err
	}
	c.file = file
	c.show(d)
	return nil
}
