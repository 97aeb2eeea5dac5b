package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"strings"
	"text/tabwriter"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/tier"
)

// tierLine is a line of what tier answers: the model's suggestion. What the coach
// decided instead is not in it.
type tierLine struct {
	Athlete  string   `json:"athlete"`
	Movement string   `json:"movement"`
	Load     string   `json:"load"`
	Tier     gym.Tier `json:"tier"`
	Hold     float64  `json:"hold"`
	Why      string   `json:"why"`
}

// holdLine is a line of what hold answers.
type holdLine struct {
	Athlete  string  `json:"athlete"`
	Movement string  `json:"movement"`
	Load     string  `json:"load"`
	Hold     float64 `json:"hold"`
}

// tierOptions are the flags that tier and hold share.
type tierOptions struct {
	athlete, movement, on string
	all                   bool
	reps                  int
}

func (o *tierOptions) flags(f *flag.FlagSet) {
	f.StringVar(&o.athlete, "athlete", "", "`NAME` of an athlete")
	f.BoolVar(&o.all, "all", false, "everybody who has not left")
	f.StringVar(&o.movement, "movement", "", "`M`, one movement; without it, all that have loads")
	f.IntVar(&o.reps, "reps", 0, "reps of the bout, `N`; without them, a usual bout's")
	f.StringVar(&o.on, "on", "", "`DATE` of the bout; without it, today")
}

// asked is one athlete at one movement with the model of the day.
type asked struct {
	athlete  gym.Athlete
	movement gym.Movement
	model    *tier.Model
	unit     mass.Unit // of the movement's implements
	on       day.Date
}

// each learns from the gym's log up to the day and asks about every athlete and
// movement that the flags name.
func (o tierOptions) each(ctx context.Context, d *desk.Desk, about func(asked) error) error {
	on, err := dateOr(o.on, d.Today())
	if err != nil {
		return err
	}
	athletes, err := o.athletes(d)
	if err != nil {
		return err
	}
	movements, err := o.movements(d)
	if err != nil {
		return err
	}
	standing, err := d.StandingOn(ctx, on)
	if err != nil {
		return err
	}
	for _, who := range athletes {
		for _, m := range movements {
			model, err := standing.Model(who.ID, m.Key, on)
			switch {
			case errors.Is(err, tier.ErrUnloaded) && o.movement == "":
				continue // nobody asked for it by name
			case errors.Is(err, tier.ErrUnloaded):
				err = fmt.Errorf("suggest load of %q: %w; windlassctl catalogue lists those that have", m.Name, tier.ErrUnloaded)
			case err == nil:
				err = about(asked{who, m, model, unitOf(d.Book(), m), on})
			}
			if err != nil {
				return err
			}
		}
	}
	return ctx.Err()
}

func (o tierOptions) check(command string) error {
	if (o.athlete == "") == !o.all {
		return misuse("run windlassctl %s: say whom with -athlete NAME or -all, one of them", command)
	}
	return nil
}

func (o tierOptions) athletes(d *desk.Desk) ([]gym.Athlete, error) {
	if o.reps < 0 || o.reps > 10_000 {
		return nil, fmt.Errorf("suggest loads for %d reps: that is no bout; write 1 to 10000, or leave them out", o.reps)
	}
	if o.athlete != "" {
		who, err := athlete(d, o.athlete)
		return []gym.Athlete{who}, err
	}
	var here []gym.Athlete
	for _, a := range d.Book().Athletes {
		if a.Status != gym.Archived {
			here = append(here, a)
		}
	}
	return here, nil
}

func (o tierOptions) movements(d *desk.Desk) ([]gym.Movement, error) {
	if o.movement != "" {
		key, err := gym.MovementNames(d.Book().Movements).Find(o.movement)
		m, _ := d.Movement(key)
		return []gym.Movement{m}, err
	}
	var used []gym.Movement
	for _, m := range d.Book().Movements {
		if !m.Hidden {
			used = append(used, m)
		}
	}
	return used, nil
}

func tierCommand(f *flag.FlagSet) run {
	var o tierOptions
	o.flags(f)
	return func(ctx context.Context, a *App, _ []string) error {
		if err := o.check("tier"); err != nil {
			return err
		}
		return a.reading(ctx, func(d *desk.Desk) error {
			lines := []tierLine{}
			err := o.each(ctx, d, func(q asked) error {
				s, err := q.model.Suggest(tier.Ask{Reps: o.reps, On: q.on, Unit: q.unit, Work: desk.AskedText(q.movement, o.reps, q.model.Bouts())})
				lines = append(lines, tierLine{q.athlete.Name, q.movement.Name, s.Load.In(q.unit), s.Tier, s.Hold, s.Why})
				return err
			})
			if err != nil {
				return err
			}
			return a.print(lines, func() {
				a.table(func(w *tabwriter.Writer) {
					for _, l := range lines {
						line(w, l.Athlete, l.Movement, l.Load, string(l.Tier), fmt.Sprintf("%.2f", l.Hold), l.Why)
					}
				})
			})
		})
	}
}

func holdCommand(f *flag.FlagSet) run {
	var o tierOptions
	o.flags(f)
	loads := f.String("loads", "", "the loads asked about, as `MASS,MASS,…`; without them, every implement the gym owns")
	return func(ctx context.Context, a *App, _ []string) error {
		if err := o.check("hold"); err != nil {
			return err
		}
		var named []loadText
		if *loads != "" {
			var err error
			if named, err = loadTexts(*loads); err != nil {
				return err
			}
		}
		return a.reading(ctx, func(d *desk.Desk) error { return o.hold(ctx, a, d, named) })
	}
}

func (o tierOptions) hold(ctx context.Context, a *App, d *desk.Desk, named []loadText) error {
	lines := []holdLine{}
	err := o.each(ctx, d, func(q asked) error {
		wanted := named
		if len(wanted) == 0 {
			for _, owned := range q.model.Rack().Owned {
				wanted = append(wanted, loadText{owned, q.unit})
			}
		}
		q.model.Advance(q.on)
		for _, l := range wanted {
			lines = append(lines, holdLine{q.athlete.Name, q.movement.Name, l.mass.In(l.unit), q.model.Hold(l.mass, o.reps)})
		}
		return nil
	})
	if err != nil {
		return err
	}
	return a.print(lines, func() {
		a.table(func(w *tabwriter.Writer) {
			for _, l := range lines {
				line(w, l.Athlete, l.Movement, l.Load, fmt.Sprintf("%.2f", l.Hold))
			}
		})
	})
}

// loadText is a load in the unit in which it was written.
type loadText struct {
	mass mass.Mass
	unit mass.Unit
}

// loadTexts reads a list of loads, each of them something.
func loadTexts(text string) ([]loadText, error) {
	var all []loadText
	for part := range strings.SplitSeq(text, ",") {
		m, unit, err := mass.Parse(part, mass.KG)
		if err != nil {
			return nil, err
		}
		if m == 0 {
			return nil, fmt.Errorf("read load %q: it is nothing; write one like 16kg", strings.TrimSpace(part))
		}
		all = append(all, loadText{m, unit})
	}
	return all, nil
}
