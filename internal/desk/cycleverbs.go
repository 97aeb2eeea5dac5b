package desk

import (
	"fmt"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// Block is a rectangle of days of one track: weeks from 1, columns from 0 on the
// first day of the cycle's week.
type Block struct {
	Track                gym.ID
	FromWeek, ToWeek     int
	FromColumn, ToColumn int
}

// Clip holds copied days, each with its place in the block it was copied from.
type Clip struct {
	days []clipped
}

type clipped struct {
	weeks, columns int // from the first day of the block
	plan           gym.DayPlan
}

// Empty reports whether nothing was copied.
func (c Clip) Empty() bool { return len(c.days) == 0 }

// Days returns how many days were copied.
func (c Clip) Days() int { return len(c.days) }

// AtColumn returns the day of a cycle in a column of its grid.
func AtColumn(c gym.Cycle, track gym.ID, week, column int) cycle.At {
	return cycle.At{Track: track, Week: week, Weekday: (c.Start.Weekday() + day.Weekday(column)) % 7}
}

// each walks the days of a block.
func (b Block) each(c gym.Cycle, do func(at cycle.At, weeks, columns int) error) error {
	for w := b.FromWeek; w <= b.ToWeek; w++ {
		for col := b.FromColumn; col <= b.ToColumn; col++ {
			if err := do(AtColumn(c, b.Track, w, col), w-b.FromWeek, col-b.FromColumn); err != nil {
				return err
			}
		}
	}
	return nil
}

// CopyDays copies the days of a block.
func (d *Desk) CopyDays(id gym.ID, b Block) Clip {
	c, _ := d.Cycle(id)
	var clip Clip
	_ = b.each(c, func(at cycle.At, weeks, columns int) error { // copying cannot fail
		clip.days = append(clip.days, clipped{weeks, columns, cycle.Copy(c, at)})
		return nil
	})
	return clip
}

// PasteDays puts copied days on a track, the first of them on the day at; what
// falls outside the cycle is left out.
func (d *Desk) PasteDays(id, track gym.ID, week, column int, clip Clip) error {
	if clip.Empty() {
		return fmt.Errorf("paste days: nothing was copied; copy a day with Ctrl+C first")
	}
	return d.editCycle("paste "+days(clip.Days()), id, func(c gym.Cycle, t cycle.Trained) (gym.Cycle, error) {
		was := c
		for _, x := range clip.days {
			if week+x.weeks > len(c.Weeks) || column+x.columns > 6 {
				continue
			}
			var err error
			if c, err = cycle.Paste(c, AtColumn(c, track, week+x.weeks, column+x.columns), x.plan, t); err != nil {
				return was, err
			}
		}
		return c, nil
	})
}

// ClearDays makes the days of a block rest days.
func (d *Desk) ClearDays(id gym.ID, b Block) error {
	n := (b.ToWeek - b.FromWeek + 1) * (b.ToColumn - b.FromColumn + 1)
	return d.editCycle("clear "+days(n), id, func(c gym.Cycle, t cycle.Trained) (gym.Cycle, error) {
		was := c
		err := b.each(c, func(at cycle.At, _, _ int) (err error) {
			if cycle.Copy(c, at).Kind == gym.RestDay && !t(at.Track, at.Week, at.Weekday) {
				return nil
			}
			c, err = cycle.Clear(c, at, t)
			return err
		})
		if err != nil {
			return was, err
		}
		return c, nil
	})
}

func days(n int) string {
	if n == 1 {
		return "a day"
	}
	return fmt.Sprintf("%d days", n)
}

// KeepDay keeps a day as the coach changed it. A day that gets its first part
// becomes a training day, and one whose title was the name of its lift takes the
// name of the new one.
func (d *Desk) KeepDay(id gym.ID, at cycle.At, plan gym.DayPlan) error {
	return d.editCycle("change the day", id, func(c gym.Cycle, t cycle.Trained) (gym.Cycle, error) {
		return cycle.Paste(c, at, d.settle(cycle.Copy(c, at), plan), t)
	})
}

// settle fits the kind and the title of a changed day to its parts.
func (d *Desk) settle(was, is gym.DayPlan) gym.DayPlan {
	parts := !is.Main.Empty() || !is.Second.Empty() || is.Workout.Format != "" || len(is.WarmUp)+len(is.Finisher) > 0
	if is.Kind == gym.RestDay && was.Kind == gym.RestDay && parts {
		is.Kind = gym.RecoveryDay
		if !is.Main.Empty() {
			is.Kind = gym.MainDay
		}
	}
	old, _ := d.Lift(was.Main.Lift)
	named := is.Title == "" || is.Title == "Rest" || is.Title == "Recovery" || is.Title == old.Name
	if lift, ok := d.Lift(is.Main.Lift); ok && named {
		is.Title = lift.Name
	}
	if is.Kind == gym.RecoveryDay && named && is.Main.Empty() {
		is.Title = "Recovery"
	}
	return is
}

// MoveDay exchanges two days of a track, or moves one onto a rest day.
func (d *Desk) MoveDay(id gym.ID, from, to cycle.At) error {
	return d.editCycle("move the day", id, func(c gym.Cycle, t cycle.Trained) (gym.Cycle, error) {
		return cycle.Move(c, from, to, t)
	})
}

// RepeatDay puts a day on the same weekday of every later training week up to and
// with a week.
func (d *Desk) RepeatDay(id gym.ID, at cycle.At, through int) error {
	return d.editCycle("repeat the day", id, func(c gym.Cycle, t cycle.Trained) (gym.Cycle, error) {
		return cycle.Repeat(c, at, through, t)
	})
}

// InsertWeek puts an empty training week before a week, for all tracks.
func (d *Desk) InsertWeek(id gym.ID, before int) error {
	return d.editCycle(fmt.Sprintf("insert week %d", before), id, func(c gym.Cycle, t cycle.Trained) (gym.Cycle, error) {
		return cycle.InsertWeek(c, before, gym.TrainingWeek, t)
	})
}

// RemoveWeek takes a week out of all tracks.
func (d *Desk) RemoveWeek(id gym.ID, week int) error {
	return d.editCycle(fmt.Sprintf("remove week %d", week), id, func(c gym.Cycle, t cycle.Trained) (gym.Cycle, error) {
		return cycle.RemoveWeek(c, week, t)
	})
}

// SetWeek says what a week is for.
func (d *Desk) SetWeek(id gym.ID, week int, kind gym.WeekKind) error {
	return d.editCycle(fmt.Sprintf("make week %d a %s week", week, kind), id, func(c gym.Cycle, t cycle.Trained) (gym.Cycle, error) {
		return cycle.SetWeek(c, week, kind, t)
	})
}

// ShiftWeeks moves a track's plans from a week on by one week, later (by 1) or
// earlier (by -1).
func (d *Desk) ShiftWeeks(id, track gym.ID, from, by int) error {
	return d.editCycle("shift weeks", id, func(c gym.Cycle, t cycle.Trained) (gym.Cycle, error) {
		return cycle.Shift(c, track, from, by, t)
	})
}

// RunWave writes the rep counts of a wave into a track's main days from a week on.
func (d *Desk) RunWave(id, track gym.ID, wave gym.WaveKind, from int) error {
	return d.editCycle("run the "+string(wave)+" wave", id, func(c gym.Cycle, t cycle.Trained) (gym.Cycle, error) {
		return cycle.RunWave(c, track, wave, from, d.dayReps(), t)
	})
}

// dayReps are the rep counts of the gym's main days.
func (d *Desk) dayReps() []int {
	if reps := d.book.Settings.DayReps; len(reps) > 0 {
		return reps
	}
	return gym.DefaultSettings().DayReps
}
