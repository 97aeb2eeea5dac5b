package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"time"

	"fyne.io/fyne/v2"

	"windlass/internal/gym"
	"windlass/ui"
)

// tour walks through the real windows with the keyboard, on a fresh demo gym,
// and keeps a picture of each stop. It is a test as well: a stop that does not
// come to pass ends it with an error.
type tour struct {
	*console
	folder string
	album  album
}

// stop is one place of the tour.
type stop struct {
	name string
	do   func(*tour) error
}

// What the tour waits for at most, and between an action and its picture: the
// driver draws 60 times a second, and twice what takes longest is enough.
const (
	tourPatience = 20 * time.Second
	tourSettle   = 400 * time.Millisecond
)

// tourWall is a wall of 75 inches as a plain window, so that the desk beside it
// stays in sight.
const tourWall = "1920x1080@75"

// tourHour and tourMinute are the hour at which the tour's day begins: before the last
// class of a Monday, so that a full class is to come.
const tourHour, tourMinute = 17, 50

func runTour(o options) error {
	if err := os.MkdirAll(o.tour, 0o755); err != nil {
		return fmt.Errorf("take the tour: %w; name another folder", err)
	}
	if err := forget(o.db); err != nil {
		return fmt.Errorf("take the tour: %w", err)
	}
	o.demo, o.size = true, tourWall
	if err := newWallProcess(o).close(); err != nil { // one that an earlier tour left behind
		return fmt.Errorf("take the tour: %w", err)
	}
	o.pace = tourPace(time.Now())
	t := &tour{console: &console{options: o, app: newApp()}, folder: o.tour}
	t.album.folder, t.album.look = o.tour, "dark"
	if o.light {
		t.album.look = "light"
	}
	return t.run(func() error { return t.walk(tourStops()) })
}

// run opens the window and walks through it beside Fyne's thread.
func (t *tour) run(walk func() error) error {
	t.window = t.app.NewWindow("Windlass")
	t.window.Resize(ui.Size)
	if err := t.open(); err != nil {
		return err
	}
	var failed error
	t.app.Lifecycle().SetOnStarted(func() {
		_ = moveTo(t.window, 0, 0) // the wall stands beside it; elsewhere they may lie over each other
		go func() {
			failed = errors.Join(walk(), t.wall.close())
			fyne.Do(t.app.Quit)
		}()
	})
	t.window.ShowAndRun()
	t.close()
	return failed
}

// forget removes the file of an earlier tour.
func forget(db string) error {
	for _, behind := range []string{"", "-wal", "-shm", ".desk"} {
		if err := os.Remove(db + behind); err != nil && !errors.Is(err, os.ErrNotExist) {
			return err
		}
	}
	return nil
}

// tourPace is a clock at 60 times the real one that begins on the Monday of the
// week of a given instant.
func tourPace(now time.Time) pace { return mondayPace(now, 60) }

func mondayPace(now time.Time, speed float64) pace {
	monday := now.AddDate(0, 0, -(int(now.Weekday())+6)%7)
	start := time.Date(monday.Year(), monday.Month(), monday.Day(), tourHour, tourMinute, 0, 0, now.Location())
	return pace{start: start, real: now, speed: speed}
}

func (t *tour) walk(stops []stop) error {
	ctx, cancel := context.WithTimeout(context.Background(), 10*time.Minute)
	defer cancel()
	for _, s := range stops {
		if ctx.Err() != nil {
			return fmt.Errorf("tour, stop %q: the tour takes too long", s.name)
		}
		fmt.Println("tour:", s.name)
		if err := s.do(t); err != nil {
			err = errors.Join(fmt.Errorf("tour, stop %q: %w", s.name, err), t.desk("failed"))
			return errors.Join(err, t.album.close())
		}
	}
	fmt.Printf("tour: %d pictures in %s\n", t.album.count, t.folder)
	return t.album.close()
}

// picture keeps what a window shows once it has settled.
func (t *tour) picture(title, name string) error {
	time.Sleep(tourSettle)
	img, err := takePicture(title)
	if err == nil {
		t.album.add(name, img)
	}
	return err
}

// until waits for something that is read on Fyne's thread.
func (t *tour) until(what string, holds func() bool) error {
	return t.within(tourPatience, what, holds)
}

func (t *tour) within(patience time.Duration, what string, holds func() bool) error {
	for deadline := time.Now().Add(patience); time.Now().Before(deadline); time.Sleep(50 * time.Millisecond) {
		if onThread(holds) {
			return nil
		}
	}
	return fmt.Errorf("waited in vain until %s", what)
}

// onThread asks on Fyne's thread and waits for the answer.
func onThread[T any](ask func() T) T {
	answer := make(chan T, 1)
	fyne.Do(func() { answer <- ask() })
	return <-answer
}

// live returns the class on the floor.
func (t *tour) live() gym.Class {
	return onThread(func() gym.Class {
		c, _ := t.main.Desk().LiveClass()
		return c
	})
}

// openWall opens the wall and waits until it can be seen.
func (t *tour) openWall() error {
	t.press("Ctrl+W")
	for deadline := time.Now().Add(tourPatience); time.Now().Before(deadline); time.Sleep(100 * time.Millisecond) {
		if windowShown(wallTitle) {
			return nil
		}
	}
	return fmt.Errorf("the wall did not open")
}
