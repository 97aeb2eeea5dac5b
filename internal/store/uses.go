package store

import (
	"cmp"
	"context"
	"fmt"
	"maps"
	"slices"

	"windlass/internal/gym"
)

// uses is what an aggregate names inside its JSON: each key with the column of
// table uses that guards it. The zero key of a noun is not a use.
type uses map[use]struct{}

type use struct{ column, key string }

func (u uses) add(column, key string) {
	if key != "" {
		u[use{column, key}] = struct{}{}
	}
}

// sorted gives the uses an order that does not change, so that the same changes
// make the same file to the last byte.
func (u uses) sorted() []use {
	return slices.SortedFunc(maps.Keys(u), func(a, b use) int {
		return cmp.Or(cmp.Compare(a.column, b.column), cmp.Compare(a.key, b.key))
	})
}

func slotUses(s gym.Slot) uses {
	u := uses{}
	for _, t := range s.Tracks {
		u.add("track", string(t))
	}
	return u
}

func classUses(c gym.Class) uses {
	u := uses{}
	for _, p := range c.Pieces {
		u.add("track", string(p.Track))
		u.add("lift", string(p.Lift))
		u.second(p.Second)
		u.workout(p.Workout)
	}
	for _, l := range c.Lifters {
		u.add("athlete", string(l.Athlete))
		u.add("track", string(l.Track))
		u.add("lift", string(l.Lift))
	}
	return u
}

func cycleUses(c gym.Cycle) uses {
	u := uses{}
	for _, p := range c.Tracks {
		u.add("track", string(p.Track))
		for _, d := range p.Days {
			u.day(d)
		}
	}
	return u
}

func (u uses) day(d gym.DayPlan) {
	for _, line := range d.WarmUp {
		u.add("drill", line.Drill)
	}
	u.add("lift", string(d.Main.Lift))
	u.add("climb", d.Main.Climb)
	u.second(d.Second)
	u.workout(d.Workout)
	for _, line := range d.Finisher {
		u.add("finisher", line.Finisher)
	}
}

func (u uses) second(s gym.SecondLift) {
	u.add("lift", string(s.Lift))
	u.add("lift", string(s.OfLift))
}

func (u uses) workout(w gym.Workout) {
	for _, i := range w.Items {
		u.add("movement", string(i.Movement))
	}
}

// putWithUses writes an aggregate and, anew, what it names.
func putWithUses[T any](ctx context.Context, w *writer, t table[T], row T, owner string, id gym.ID, all uses) error {
	if err := put(ctx, w, t, row); err != nil {
		return err
	}
	forget := func() string { return "DELETE FROM uses WHERE " + owner + " = ?" }
	if _, err := w.exec(ctx, "forget "+owner, forget, string(id)); err != nil {
		return err
	}
	for _, u := range all.sorted() {
		note := func() string { return "INSERT INTO uses (" + owner + ", " + u.column + ") VALUES (?, ?)" }
		if _, err := w.exec(ctx, owner+" uses "+u.column, note, string(id), u.key); err != nil {
			return explainRow(fmt.Sprintf("keep %s with the %s %q in it", t.describe(row), u.column, u.key), err)
		}
	}
	return nil
}
