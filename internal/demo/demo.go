// Package demo invents a gym: the Ropewalk in the harbour town of Orlemouth.
// Neither exists, and nobody in it does.
//
// Callers need [Book] alone, and the store writes its changes. The package
// promises that the same seed and day give the same book to the last ID, that
// every row of it passes the Valid method of its noun, that what was lifted can be
// loaded with the gym's plates, and that a record for more reps is under one for
// fewer. Its athletes grow by numbers of the project's own choice, which no study
// stands behind: the gym is for looking at the program, not for judging its models.
package demo

import (
	"fmt"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
)

const (
	cycleWeeks   = 12
	trainedWeeks = 5 // before the week of today
)

// Book returns the gym as it stands on the morning of a day: in the sixth week of
// a cycle of twelve, with the five weeks before it and the days of this one
// trained. A day of 1970 leaves no room for that,
// and one in the year 9999 none for what is planned.
func Book(seed uint64, today day.Date) (gym.Book, error) {
	start := today.Add(-int(today.Weekday()) - 7*trainedWeeks)
	if start.Add(-daysKnown) <= day.None {
		return gym.Book{}, fmt.Errorf("make demo gym on %q: there is no room for its past; choose a later day", today)
	}
	if today >= day.Of(9999, 1, 1) {
		return gym.Book{}, fmt.Errorf("make demo gym on %q: there is no room for its future; choose an earlier day", today)
	}
	w := &world{chance: newChance(seed), start: start, today: today}
	if err := w.found(); err != nil {
		return gym.Book{}, fmt.Errorf("make demo gym: %w", err)
	}
	w.enrol()
	if err := w.plan(); err != nil {
		return gym.Book{}, fmt.Errorf("make demo gym: %w", err)
	}
	w.remember()
	if err := w.train(); err != nil {
		return gym.Book{}, fmt.Errorf("make demo gym: %w", err)
	}
	w.coach()
	return w.book, nil
}

// world is the gym while it is being made.
type world struct {
	book         gym.Book
	chance       chance
	start, today day.Date
	people       []*person // as the book's athletes
	racks        racks
	kept         records         // the best results so far
	latest       map[pair]handed // the latest bouts so far
}

// found makes the gym without its people.
func (w *world) found() error {
	b, err := desk.Starter("The Ropewalk", func() gym.ID { return w.id(w.start.Add(-daysKnown), opening) })
	if err != nil {
		return err
	}
	b.Settings.Town, b.Settings.Caution = "Orlemouth", true
	if err := furnish(&b.Equipment); err != nil {
		return err
	}
	w.book = b
	w.timetable()
	w.racks = racks{book: &w.book}
	return nil
}

// plan makes the cycle over the three built-in tracks.
func (w *world) plan() error {
	spec := cycle.Spec{
		ID: w.id(w.start.Add(-10), evening), Name: "Harbour cycle", Goal: "A record on test day, and shoulders that last",
		Start: w.start, Weeks: cycleWeeks,
	}
	for i, t := range trackKeys {
		spec.Tracks = append(spec.Tracks, cycle.TrackSpec{Track: w.book.Tracks[i].ID, Template: t, Wave: gym.RollingWave})
	}
	c, err := cycle.Make(spec, &w.book)
	if err != nil {
		return err
	}
	w.book.Cycles = append(w.book.Cycles, c)
	return nil
}
