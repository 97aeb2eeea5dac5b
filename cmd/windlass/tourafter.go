package main

import (
	"time"

	"windlass/internal/gym"
)

func logResults(t *tour) error {
	t.press("R")
	for range 3 {
		t.press("Return")
	}
	if err := t.until("a result is logged", func() bool {
		c, _ := t.main.Desk().LiveClass()
		for _, l := range c.Lifters {
			if l.Result != "" {
				return true
			}
		}
		return false
	}); err != nil {
		return err
	}
	if err := t.desk("results"); err != nil {
		return err
	}
	for range 40 {
		t.press("Return")
	}
	return nil
}

func condition(t *tour) error {
	t.press("K")
	if err := t.until("the conditioning is on", func() bool {
		c, _ := t.main.Desk().LiveClass()
		return c.Stage == gym.Conditioning
	}); err != nil {
		return err
	}
	t.press("Space")
	time.Sleep(time.Second)
	for range 6 {
		t.press("H")
	}
	return t.both("conditioning")
}

func finish(t *tour) error {
	t.press("Q")
	if err := t.desk("summary"); err != nil {
		return err
	}
	t.press("F5")
	if onThread(func() bool { return t.window.Canvas().Overlays().Top() != nil }) {
		t.press("Return") // not every bout was logged: finish all the same
	}
	if err := t.until("the class is finished", func() bool { _, live := t.main.Desk().LiveClass(); return !live }); err != nil {
		return err
	}
	time.Sleep(time.Second)
	return t.picture(wallTitle, "wall-after")
}
