package main

import (
	"context"
	"flag"
	"fmt"
	"strings"
	"text/tabwriter"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
)

// arranged is what arrange answers.
type arranged struct {
	Days    []arrangedDay `json:"days"`
	Dropped []string      `json:"dropped"`
	Why     string        `json:"why"`
}

type arrangedDay struct {
	Weekday string     `json:"weekday"`
	Session string     `json:"session"`
	Region  gym.Region `json:"region"`
}

// arrangeOptions are the flags of arrange.
type arrangeOptions struct {
	track, athlete, days string
	want                 int
}

func arrangeCommand(f *flag.FlagSet) run {
	var o arrangeOptions
	f.StringVar(&o.track, "track", "", "track `T`, for anybody")
	f.StringVar(&o.athlete, "athlete", "", "`NAME` of an athlete, with the weekdays noted for them")
	f.StringVar(&o.days, "days", "", "the `WEEKDAYS` that are free, such as mon,tue,thu; without them, those noted or all")
	f.IntVar(&o.want, "want", 0, "how many training days, `N`; without it, as many as go")
	return func(ctx context.Context, a *App, _ []string) error {
		if (o.track == "") == (o.athlete == "") {
			return misuse("run windlassctl arrange: say whose week with -track T or -athlete NAME, one of them")
		}
		return a.reading(ctx, func(d *desk.Desk) error {
			w, err := o.arrange(d)
			if err != nil {
				return err
			}
			answer := arrangedOf(w)
			return a.print(answer, func() { answer.write(a) })
		})
	}
}

// arrange finds the week around today.
func (o arrangeOptions) arrange(d *desk.Desk) (cycle.Week, error) {
	if o.want < 0 || o.want > 7 {
		return cycle.Week{}, fmt.Errorf("arrange a week: %d training days do not fit one; write 1 to 7, or 0 for as many as go", o.want)
	}
	ask, err := o.ask(d)
	if err != nil {
		return cycle.Week{}, err
	}
	if o.days == "" && o.want == 0 && o.athlete != "" {
		who, err := athlete(d, o.athlete)
		return d.Calendar().OwnWeek(who, d.Today()), err
	}
	if o.days != "" {
		if ask.Free, err = day.ParseWeekdays(o.days); err != nil {
			return cycle.Week{}, err
		}
	}
	if o.want > 0 {
		ask.Want = o.want
	}
	return cycle.Arrange(ask), nil
}

// ask is what the track of this week has, and what is noted for the athlete.
func (o arrangeOptions) ask(d *desk.Desk) (cycle.Ask, error) {
	var who gym.Athlete // of the track, who said nothing
	var on gym.Track
	var err error
	if o.athlete != "" {
		if who, err = athlete(d, o.athlete); err != nil {
			return cycle.Ask{}, err
		}
		if on = d.TrackOn(who.ID, d.Today()); on.ID == "" {
			return cycle.Ask{}, fmt.Errorf("arrange a week for %q: no track today; give %s one in the window, or name one with -track", who.Name, who.Name)
		}
	} else if on, err = track(d, o.track); err != nil {
		return cycle.Ask{}, err
	}
	c, ok := d.CycleOn(on.ID, d.Today())
	if !ok {
		return cycle.Ask{}, fmt.Errorf("arrange a week of %s: no cycle runs for it on %s; make one in the window", on.Name, d.Today())
	}
	if o.athlete != "" {
		return d.Calendar().OwnAsk(who, d.Today()), nil
	}
	every := day.WeekdaysOf(day.Monday, day.Tuesday, day.Wednesday, day.Thursday, day.Friday, day.Saturday, day.Sunday)
	return cycle.Ask{Sessions: cycle.Sessions(c, on.ID, c.WeekOf(d.Today()), d.Book().Lifts), Free: every}, nil
}

func arrangedOf(w cycle.Week) arranged {
	answer := arranged{Days: []arrangedDay{}, Dropped: []string{}, Why: w.Why}
	for _, p := range w.Days {
		answer.Days = append(answer.Days, arrangedDay{strings.ToLower(p.On.Short()), p.Title, p.Region})
	}
	for _, s := range w.Dropped {
		answer.Dropped = append(answer.Dropped, s.Title)
	}
	return answer
}

func (w arranged) write(a *App) {
	a.table(func(t *tabwriter.Writer) {
		for _, d := range w.Days {
			line(t, d.Weekday, d.Session, string(d.Region))
		}
	})
	if len(w.Dropped) > 0 {
		a.say("left out: %s\n", strings.Join(w.Dropped, ", "))
	}
	a.say("%s\n", w.Why)
}

// breachLine is a line of what check answers.
type breachLine struct {
	Rule  cycle.Rule `json:"rule"`
	Track string     `json:"track"` // empty: the whole cycle
	Week  int        `json:"week"`  // 0: the whole cycle
	Day   int        `json:"day"`   // Monday 1 to Sunday 7; 0: the whole week
	Why   string     `json:"why"`
	Mend  string     `json:"mend"`
}

func checkCommand(f *flag.FlagSet) run {
	name := f.String("cycle", "", "`NAME` of the cycle; without it, the one of today or the latest")
	return func(ctx context.Context, a *App, _ []string) error {
		return a.reading(ctx, func(d *desk.Desk) error {
			c, err := cycleNamed(d, *name)
			if err != nil {
				return err
			}
			lines := []breachLine{}
			for _, b := range cycle.Check(c, d.Book()) {
				// cycle.NoWeekday is -1, so that a whole week becomes 0.
				lines = append(lines, breachLine{b.Rule, d.Track(b.Track).Name, b.Week, int(b.Weekday) + 1, b.Why, b.Mend})
			}
			return a.print(lines, func() { a.sayBreaches(c, lines) })
		})
	}
}

func (a *App) sayBreaches(c gym.Cycle, lines []breachLine) {
	if len(lines) == 0 {
		a.say("%s keeps every rule.\n", c.Name)
	}
	for _, l := range lines {
		where := or(l.Track, c.Name)
		if l.Week > 0 {
			where += fmt.Sprintf(", week %d", l.Week)
		}
		if l.Day > 0 {
			where += ", " + day.Weekday(l.Day-1).String()
		}
		a.say("%s: %s %s\n", where, l.Why, l.Mend)
	}
}

// cycleNamed finds a cycle by its name, and without one that of today or else the
// one that ends last.
func cycleNamed(d *desk.Desk, name string) (gym.Cycle, error) {
	var latest gym.Cycle
	var names []string
	for _, c := range d.Book().Cycles {
		named := name != "" && gym.FoldName(c.Name) == gym.FoldName(name)
		if named || name == "" && c.WeekOf(d.Today()) > 0 {
			return c, nil
		}
		if names = append(names, c.Name); latest.ID == "" || c.End() > latest.End() {
			latest = c
		}
	}
	switch {
	case len(names) == 0:
		return gym.Cycle{}, fmt.Errorf("check cycle %q: the gym has no cycle; make one in the window", name)
	case name != "":
		return gym.Cycle{}, fmt.Errorf("check cycle %q: there is none; there are %s", name, strings.Join(names, ", "))
	}
	return latest, nil
}
