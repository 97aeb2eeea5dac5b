package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"math"
	"strconv"
	"strings"
	"text/tabwriter"

	"windlass/internal/climb"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// usualClimb is run where no climb is named.
const usualClimb = "20 minutes"

// climbed is what climb answers.
type climbed struct {
	Base   string     `json:"base"`
	Source gym.Source `json:"base_source"`
	Rungs  []rungLine `json:"rungs"`
	Lines  linesLine  `json:"verdict_lines"`
}

type rungLine struct {
	At          string   `json:"at"`
	Until       string   `json:"until"`
	Percent     float64  `json:"percent"`
	Reps        int      `json:"reps"`
	Zone        gym.Zone `json:"zone"`
	Load        string   `json:"load"` // empty where nothing is lifted, or where it waits for a call
	LoadPercent float64  `json:"load_percent"`
	PerSide     []string `json:"per_side"`
}

type linesLine struct {
	Heavy   string `json:"heavy"`
	Record  string `json:"record"`
	Ceiling string `json:"ceiling"`
}

// climbOptions are the flags of climb.
type climbOptions struct {
	barOptions
	record, athlete, lift        string
	climb, template, calls, unit string
	reps                         int
}

func climbCommand(f *flag.FlagSet) run {
	var o climbOptions
	f.StringVar(&o.record, "record", "", "`MASS` that the climb is counted from")
	f.StringVar(&o.athlete, "athlete", "", "`NAME` of an athlete, with -lift: from the record, on the gym's bar and plates")
	f.StringVar(&o.lift, "lift", "", "`NAME` of the athlete's lift")
	f.IntVar(&o.reps, "reps", 1, "the day's rep count, `N`")
	f.StringVar(&o.climb, "climb", "", "`NAME` of the climb; without it, "+usualClimb)
	f.StringVar(&o.template, "template", "", "`FILE.csv` with a climb of your own: at,until,percent,reps,zone")
	f.StringVar(&o.calls, "calls", "", "the calls made so far, as a `LIST` of climb, settle, missed, easy, fair, hard")
	f.StringVar(&o.unit, "unit", "", "`kg|lb` of the answer; without it, that of the record")
	o.flags(f)
	return func(ctx context.Context, a *App, _ []string) error {
		owned, err := o.check()
		if err != nil {
			return err
		}
		if owned {
			return a.reading(ctx, func(d *desk.Desk) error { return o.inGym(a, d) })
		}
		l, err := o.barOptions.named()
		if err != nil {
			return err
		}
		return o.fromRecord(a, l, climb.BuiltIns())
	}
}

// check reports whether the gym's file is needed.
func (o climbOptions) check() (owned bool, err error) {
	switch {
	case (o.record == "") == (o.athlete == ""):
		return false, misuse("run windlassctl climb: say from what with -record MASS, or with -athlete NAME and -lift NAME")
	case (o.athlete == "") != (o.lift == ""):
		return false, misuse("run windlassctl climb: -athlete and -lift go together")
	case o.climb != "" && o.template != "":
		return false, misuse("run windlassctl climb: -climb and -template both name a climb; leave one out")
	case o.athlete != "" && (o.bar != "" || o.collar != "" || o.paired):
		return false, misuse("run windlassctl climb: an athlete lifts on the gym's bar with its plates; leave -bar, -collar and -pairs out")
	}
	owned, err = o.wantsGym()
	return owned || o.athlete != "", err
}

// inGym climbs with what the gym owns.
func (o climbOptions) inGym(a *App, d *desk.Desk) error {
	if o.athlete != "" {
		return o.fromAthlete(a, d)
	}
	l, err := o.gyms(d.Book().Equipment)
	if err != nil {
		return err
	}
	return o.fromRecord(a, l, d.Climbs())
}

// ground is what a climb stands on.
type ground struct {
	lifter gym.Lifter
	rig    climb.Rig
	loads  *plates.Loads // nil for what is lifted whole
	unit   mass.Unit
	climbs []gym.ClimbPlan
}

func (o climbOptions) fromRecord(a *App, l *plates.Loads, climbs []gym.ClimbPlan) error {
	record, unit, err := mass.Parse(o.record, mass.KG)
	if err != nil {
		return err
	}
	if record == 0 {
		return fmt.Errorf("climb from %q: the record is nothing; write a load over 0, or name an athlete", o.record)
	}
	lifter := gym.Lifter{Reps: o.reps, Base: record, Source: gym.Reported}
	return o.up(a, ground{lifter: lifter, rig: climb.Rig{Rack: l}, loads: l, unit: unit, climbs: climbs})
}

func (o climbOptions) fromAthlete(a *App, d *desk.Desk) error {
	who, err := athlete(d, o.athlete)
	if err != nil {
		return err
	}
	what, err := lift(d, o.lift)
	if err != nil {
		return err
	}
	if what.Measure != gym.ByLoad {
		return fmt.Errorf("climb in %q: it is counted in %s and not in load; choose another lift", what.Name, what.Measure)
	}
	g := ground{lifter: d.LifterFor(who, what.Key, o.reps), unit: who.Unit, climbs: d.Climbs()}
	lifter := g.lifter
	lifter.Lift = what.Key // also where the rep count is refused below
	if bar, ok := d.BarFor(what, who.Standard); ok {
		lifter.Bar = bar.Key
	}
	if g.rig, err = d.Rig(lifter); err != nil {
		return err
	}
	if _, whole := g.rig.Rack.(climb.Whole); !whole {
		if g.loads, err = d.LoadsFor(what, who.Standard); err != nil {
			return err
		}
	}
	return o.up(a, g)
}

// up plans the way up and prints it.
func (o climbOptions) up(a *App, g ground) error {
	plan, err := o.plan(a, g.climbs)
	if err != nil {
		return err
	}
	kinds, err := climb.ParseCalls(o.calls)
	if err != nil {
		return err
	}
	if g.lifter.Calls, err = climb.Place(plan, g.lifter, kinds); err != nil {
		return err
	}
	if o.round != "" {
		if g.rig.Rounding, err = plates.ParseRounding(o.round); err != nil {
			return err
		}
	}
	if o.unit != "" {
		if g.unit, err = mass.ParseUnit(o.unit); err != nil {
			return err
		}
	}
	g.rig.Unit = g.unit
	path, err := climb.Build(plan, g.lifter, g.rig)
	if errors.Is(err, climb.ErrNoStart) {
		return fmt.Errorf("climb for %q in %q: %w; log a rep max first, or name a load with -record", o.athlete, o.lift, climb.ErrNoStart)
	}
	if err != nil {
		return err
	}
	c := climbedOf(path, g)
	return a.print(c, func() { c.write(a, path, g.unit) })
}

// plan reads the climb of a file, or finds one by name.
func (o climbOptions) plan(a *App, climbs []gym.ClimbPlan) (gym.ClimbPlan, error) {
	if o.template != "" {
		from, name, err := a.input(o.template)
		if err != nil {
			return gym.ClimbPlan{}, err
		}
		defer from.Close() //nolint:errcheck // it was only read
		return climb.ReadCSV(name, from)
	}
	wanted, names := or(o.climb, usualClimb), []string{}
	for _, c := range climbs {
		if gym.FoldName(c.Name) == gym.FoldName(wanted) {
			return c, nil
		}
		names = append(names, c.Name)
	}
	return gym.ClimbPlan{}, fmt.Errorf("find climb %q: there is none; there are %s", wanted, strings.Join(names, ", "))
}

func climbedOf(path climb.Path, g ground) climbed {
	c := climbed{
		Base: load(g.lifter.Base, g.unit), Source: g.lifter.Source, Rungs: []rungLine{},
		Lines: linesLine{load(path.Lines.Heavy, g.unit), load(path.Lines.Record, g.unit), load(path.Lines.Ceiling, g.unit)},
	}
	stacks := stacksOf(path, g.loads)
	for i, s := range path.Steps {
		c.Rungs = append(c.Rungs, rungLine{
			At: climb.Time(s.Rung.At), Until: climb.Time(s.Rung.Until), Percent: s.Rung.Percent, Reps: s.Reps, Zone: s.Rung.Zone,
			Load: load(s.Load, g.unit), LoadPercent: math.Round(100*s.Percent) / 100, PerSide: side(stacks[i]),
		})
	}
	return c
}

// handyWays is how many ways to make a load are weighed. With a whole room's
// plates on hand the fewest moves of all would pile a dozen small discs on a
// sleeve; among the few ways with the fewest discs they stay handy.
const handyWays = 4

// stacksOf orders the plates of all rungs so that few discs are on the bar and few
// are moved.
func stacksOf(path climb.Path, loads *plates.Loads) [][]plates.Disc {
	stacks := make([][]plates.Disc, len(path.Steps))
	if loads == nil {
		return stacks
	}
	var targets []mass.Mass
	var of []int
	for i, s := range path.Steps {
		if s.Load > 0 {
			targets, of = append(targets, s.Load), append(of, i)
		}
	}
	for k, step := range plates.NewPlanner(loads, handyWays).Sequence(nil, targets).Steps {
		stacks[of[k]] = step.PerSide
	}
	return stacks
}

func (c climbed) write(a *App, path climb.Path, unit mass.Unit) {
	if c.Base != "" {
		a.say("From %s, %s; heavy from %s, at most %s\n", c.Base, c.Source, c.Lines.Heavy, c.Lines.Ceiling)
	} else {
		a.say("Nothing is known: the climb finds the rep max.\n")
	}
	a.table(func(w *tabwriter.Writer) {
		for i, r := range c.Rungs {
			if path.Steps[i].State == climb.Off {
				continue
			}
			line(w, r.At+"–"+r.Until, string(r.Zone), strconv.Itoa(r.Reps)+" ×", or(r.Load, "after the call"), percentText(r.LoadPercent), strings.Join(r.PerSide, " + "))
		}
	})
	if path.Attempt != nil {
		if note := path.Attempt.Note(unit); note != "" {
			a.say("%s\n", note)
		}
	}
}

func percentText(p float64) string {
	if p == 0 {
		return ""
	}
	return strconv.FormatFloat(p, 'f', 1, 64) + " %"
}
