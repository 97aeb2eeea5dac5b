package main

import (
	"errors"
	"fmt"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/room"
)

// lookAtCycle shows the cycle and plants a breach in a week to come: a day that
// loads the legs beside another. The list of what breaks a rule tells why and how
// to mend it; then the plan is as it was.
func lookAtCycle(t *tour) error {
	if err := shows(room.Cycle, "cycle")(t); err != nil {
		return err
	}
	plant, err := tryOnThread(t.plantable)
	if err != nil {
		return err
	}
	before := t.breaches()
	t.cursor(plant.week, plant.from)
	t.press("Ctrl+C")
	t.cursor(plant.week, plant.to)
	t.press("Ctrl+V")
	if err := t.until("the planted breach is found", func() bool { return t.counted() > before }); err != nil {
		return err
	}
	t.press("B", "End") // from the count of days to the day that follows its like
	if err := t.desk("cycle-breach"); err != nil {
		return err
	}
	t.press("B", "Ctrl+Z")
	if err := t.until("the breach is gone", func() bool { return t.counted() == before }); err != nil {
		return err
	}
	t.press("B")
	if err := t.desk("cycle-check"); err != nil {
		return err
	}
	t.press("B")
	return nil
}

// plant is where a breach is planted: the day of a column is copied to another of
// the same week, both from 0; the week counts from 1.
type plant struct{ week, from, to int }

// view is the cycle in front. It is read on Fyne's thread.
func (t *tour) view() (desk.CycleView, error) {
	usual, _ := t.main.Desk().UsualCycle()
	v, ok := t.main.Desk().ViewCycle(usual.ID)
	if !ok || len(v.Tracks) == 0 {
		return v, errors.New("there is no cycle with a track")
	}
	return v, nil
}

// counted is the number of breaches of the cycle in front, on Fyne's thread.
func (t *tour) counted() int {
	v, _ := t.view()
	return len(v.Breaches)
}

func (t *tour) breaches() int { return onThread(t.counted) }

// plantable finds the first week to come in which the first track has two main
// days of the lower body, and a day without one beside the second of them.
func (t *tour) plantable() (plant, error) {
	v, err := t.view()
	if err != nil {
		return plant{}, err
	}
	for week := v.Cycle.WeekOf(t.main.Desk().Today()) + 1; week <= desk.LastTraining(v.Cycle); week++ {
		var days []int
		for column := range 7 {
			if legs(v.Tracks[0].Day(week, column)) {
				days = append(days, column)
			}
		}
		if len(days) < 2 {
			continue
		}
		for _, beside := range []int{days[1] - 1, days[1] + 1} {
			if beside != days[0] && beside < 7 && !legs(v.Tracks[0].Day(week, beside)) {
				return plant{week, days[0], beside}, nil
			}
		}
	}
	return plant{}, errors.New("no week to come has two days for the lower body")
}

func legs(d desk.ViewDay) bool { return d.Kind == gym.MainDay && d.Region == gym.Lower }

// cursor brings the grid's cursor to a day by its keys: today's week is known, the
// first column is Home's.
func (t *tour) cursor(week, column int) {
	t.press("T", "Home")
	now := onThread(func() int {
		v, _ := t.view()
		return max(1, v.Cycle.WeekOf(t.main.Desk().Today()))
	})
	for range week - now {
		t.press("Down")
	}
	for range column {
		t.press("Right")
	}
}

// composeDay turns a day to come to its conditioning and lets the console compose
// another, with its reasons.
func composeDay(t *tour) error {
	if err := t.goTo(room.Cycle); err != nil {
		return err
	}
	plant, err := tryOnThread(t.plantable)
	if err != nil {
		return err
	}
	t.cursor(plant.week, plant.from)
	t.press("D")
	if err := t.desk("cycle-conditioning"); err != nil {
		return err
	}
	t.press("C")
	return t.desk("cycle-compose")
}

// makeCycle goes through the four steps to a new cycle, makes it, and takes it back.
func makeCycle(t *tour) error {
	count := func() int { return len(t.main.Desk().Cycles()) }
	before := onThread(count)
	t.press("N")
	t.write("Long days")
	t.press("Tab")
	t.write("A record on test day")
	for i, step := range []string{"", "cycle-make-tracks", "cycle-make-waves", "cycle-make-review"} {
		if i > 0 {
			t.press("Return")
		}
		if step == "" {
			continue
		}
		if err := t.desk(step); err != nil {
			return err
		}
	}
	t.press("Return")
	if err := t.until("the new cycle is made", func() bool { return count() == before+1 }); err != nil {
		return err
	}
	t.press("Ctrl+Z")
	return t.until("the new cycle is taken back", func() bool { return count() == before })
}

// tryOnThread is [onThread] for what can fail.
func tryOnThread[T any](ask func() (T, error)) (T, error) {
	type answer struct {
		value T
		err   error
	}
	a := onThread(func() answer {
		value, err := ask()
		return answer{value, err}
	})
	if a.err != nil {
		return a.value, fmt.Errorf("look for what to show: %w", a.err)
	}
	return a.value, nil
}
