package cycle

import (
	"cmp"
	"errors"
	"fmt"
	"maps"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// ErrTrained marks a change of days that have results. Planning never alters
// them; the error says how to do it forward.
var ErrTrained = errors.New("results exist for it")

// Trained reports whether a track's day has results. A nil Trained means that
// nothing was trained yet.
type Trained func(track gym.ID, week int, on day.Weekday) bool

// At is one day of a cycle.
type At struct {
	Track   gym.ID
	Week    int // from 1
	Weekday day.Weekday
}

// Date returns the day of the calendar.
func (a At) Date(c gym.Cycle) day.Date {
	return c.Start.Add(7*(a.Week-1) + place(a.Weekday, c.Start.Weekday()))
}

// The verbs below never change the cycle they are given, and on an error they
// return it as it was. The old cycle and the new one share the plans that stayed,
// so change a plan by way of [Copy] and [Put].

// Copy returns a day's plan that shares nothing with the cycle; a rest day when
// there is none.
func Copy(c gym.Cycle, at At) gym.DayPlan {
	d := look(c, at)
	d.WarmUp, d.Finisher = slices.Clone(d.WarmUp), slices.Clone(d.Finisher)
	d.Main.Scheme = slices.Clone(d.Main.Scheme)
	d.Workout.Reps, d.Workout.Items = slices.Clone(d.Workout.Reps), slices.Clone(d.Workout.Items)
	for i := range d.Workout.Items {
		d.Workout.Items[i].Loads = maps.Clone(d.Workout.Items[i].Loads)
	}
	return d
}

// look returns a day's plan as it stands in the cycle.
func look(c gym.Cycle, at At) gym.DayPlan {
	p, _ := c.Plan(at.Track)
	return p.Day(at.Week, at.Weekday)
}

// Put sets the plan of the day that d names by its week and weekday. A rest day
// without anything in it clears the day.
func Put(c gym.Cycle, track gym.ID, d gym.DayPlan, trained Trained) (gym.Cycle, error) {
	at := At{track, d.Week, d.Weekday}
	if err := guard("change the day", c, trained, at); err != nil {
		return c, err
	}
	return replace(c, track, func(days []gym.DayPlan) []gym.DayPlan { return setDay(days, d) }), nil
}

// Paste puts a copied plan on a day. Its title gets a number when another day of
// that week has it.
func Paste(c gym.Cycle, at At, d gym.DayPlan, trained Trained) (gym.Cycle, error) {
	d.Week, d.Weekday = at.Week, at.Weekday
	p, _ := c.Plan(at.Track)
	d.Title = freeTitle(p, d)
	return Put(c, at.Track, d, trained)
}

// Clear makes a day a rest day.
func Clear(c gym.Cycle, at At, trained Trained) (gym.Cycle, error) {
	return Put(c, at.Track, gym.DayPlan{Week: at.Week, Weekday: at.Weekday, Kind: gym.RestDay}, trained)
}

// Cut clears a day and returns what was planned.
func Cut(c gym.Cycle, at At, trained Trained) (gym.Cycle, gym.DayPlan, error) {
	cut := Copy(c, at)
	c, err := Clear(c, at, trained)
	return c, cut, err
}

// Move exchanges the plans of two days, which may lie in different weeks of one
// track; moving onto a rest day moves the plan alone.
func Move(c gym.Cycle, from, to At, trained Trained) (gym.Cycle, error) {
	if from.Track != to.Track {
		return c, fmt.Errorf("move the day: the two days belong to different tracks; copy and paste instead")
	}
	if err := guard("move the day", c, trained, from, to); err != nil {
		return c, err
	}
	a, b := look(c, from), look(c, to)
	a.Week, a.Weekday, b.Week, b.Weekday = to.Week, to.Weekday, from.Week, from.Weekday
	return replace(c, from.Track, func(days []gym.DayPlan) []gym.DayPlan {
		days = setDay(setDay(days, a), b)
		return retitle(days, from.Week, to.Week)
	}), nil
}

// Repeat puts a day's plan on the same weekday of every later training week up
// to and with the last one named. Light weeks and test weeks keep their own
// plans. A main lift keeps the rep count that its week already has for it.
func Repeat(c gym.Cycle, at At, through int, trained Trained) (gym.Cycle, error) {
	d := Copy(c, at)
	var targets []At
	for w := at.Week + 1; w <= min(through, len(c.Weeks)); w++ {
		if c.Weeks[w-1] == gym.TrainingWeek {
			targets = append(targets, At{at.Track, w, at.Weekday})
		}
	}
	err := guard("repeat the day", c, nil, at) // the day itself may be trained
	if err == nil {
		err = guard("repeat the day", c, trained, targets...)
	}
	if err != nil {
		return c, err
	}
	return replace(c, at.Track, func(days []gym.DayPlan) []gym.DayPlan {
		for _, t := range targets {
			next := d
			next.Week = t.Week
			if old := look(c, t); old.Main.Lift == d.Main.Lift && !old.Main.Empty() {
				next.Main = old.Main
			}
			next.Title = freeTitle(gym.TrackPlan{Days: days}, next)
			days = setDay(days, next)
		}
		return days
	}), nil
}

// guard refuses days outside the cycle and days that were trained.
func guard(what string, c gym.Cycle, trained Trained, days ...At) error {
	for _, at := range days {
		if _, ok := c.Plan(at.Track); !ok {
			return fmt.Errorf("%s: the cycle %q has no such track; add the track first", what, c.Name)
		}
		if !onWeek(at.Weekday) {
			return fmt.Errorf("%s: %d is not a weekday; choose 0 for Monday to 6 for Sunday", what, int(at.Weekday))
		}
		if at.Week < 1 || at.Week > len(c.Weeks) {
			return fmt.Errorf("%s: week %d is not in the cycle %q; choose 1 to %d", what, at.Week, c.Name, len(c.Weeks))
		}
		if trained != nil && trained(at.Track, at.Week, at.Weekday) {
			return fmt.Errorf("%s: %s of week %d stays as it is: %w; %s", what, at.Weekday, at.Week, ErrTrained, forward(c, at.Track, trained))
		}
	}
	return nil
}

// forward says from where a track's plan may still change.
func forward(c gym.Cycle, track gym.ID, trained Trained) string {
	if w := firstOpenWeek(c, track, trained); w <= len(c.Weeks) {
		return fmt.Sprintf("change week %d or later", w)
	}
	return "start the next cycle from this one, and change it there"
}

// firstOpenWeek returns the first week after every trained day of a track, or
// one past the last week.
func firstOpenWeek(c gym.Cycle, track gym.ID, trained Trained) int {
	for w := len(c.Weeks); w >= 1; w-- {
		for on := day.Monday; on <= day.Sunday; on++ {
			if trained != nil && trained(track, w, on) {
				return w + 1
			}
		}
	}
	return 1
}

// replace returns c with other days for one track.
func replace(c gym.Cycle, track gym.ID, with func([]gym.DayPlan) []gym.DayPlan) gym.Cycle {
	c.Tracks = slices.Clone(c.Tracks)
	for i := range c.Tracks {
		if c.Tracks[i].Track == track {
			days := with(slices.Clone(c.Tracks[i].Days))
			sortDays(days, c.Start.Weekday())
			c.Tracks[i].Days = days
		}
	}
	return c
}

func sortDays(days []gym.DayPlan, first day.Weekday) {
	slices.SortStableFunc(days, func(a, b gym.DayPlan) int {
		return cmp.Or(cmp.Compare(a.Week, b.Week), cmp.Compare(place(a.Weekday, first), place(b.Weekday, first)))
	})
}

// setDay puts d in the place of its day's plan, or takes that plan away for a
// rest day that says nothing.
func setDay(days []gym.DayPlan, d gym.DayPlan) []gym.DayPlan {
	days = slices.DeleteFunc(days, func(o gym.DayPlan) bool { return o.Week == d.Week && o.Weekday == d.Weekday })
	if blank(d) {
		return days
	}
	return append(days, d)
}

// blank reports whether a plan is the same as none.
func blank(d gym.DayPlan) bool { return d.Kind == gym.RestDay && d.Notes == "" && idle(&d) }

// idle reports whether all five parts of a day are empty.
func idle(d *gym.DayPlan) bool {
	return len(d.WarmUp) == 0 && d.Main.Empty() && d.Second.Empty() && d.Workout.Empty() && len(d.Finisher) == 0
}

// retitle numbers titles that now stand twice in one of the weeks.
func retitle(days []gym.DayPlan, weeks ...int) []gym.DayPlan {
	for i := range days {
		if slices.Contains(weeks, days[i].Week) {
			days[i].Title = freeTitle(gym.TrackPlan{Days: days[:i]}, days[i])
		}
	}
	return days
}

// freeTitle returns the title of d, numbered when another day of its week in p
// has it.
func freeTitle(p gym.TrackPlan, d gym.DayPlan) string {
	title := d.Title
	taken := func(o gym.DayPlan) bool { return o.Week == d.Week && o.Weekday != d.Weekday && o.Title == title }
	for n := 2; title != "" && slices.ContainsFunc(p.Days, taken); n++ {
		title = fmt.Sprintf("%s (%d)", d.Title, n)
	}
	return title
}
