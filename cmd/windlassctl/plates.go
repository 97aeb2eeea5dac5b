package main

import (
	"context"
	"flag"
	"fmt"
	"strings"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// stacked is what plates answers.
type stacked struct {
	Load    string   `json:"load"`
	PerSide []string `json:"per_side"`
	Short   bool     `json:"short"`
}

// sequenced is what sequence answers.
type sequenced struct {
	Moves int         `json:"moves"`
	Steps []stackStep `json:"steps"`
}

type stackStep struct {
	Load    string   `json:"load"`
	PerSide []string `json:"per_side"`
	Short   bool     `json:"short,omitempty"` // all the plates together make no more
}

// usualPairs are what a bar of one's own would do with (common practice, no
// source), when neither a stock nor pairs are named.
const usualPairs = "25kg*8,20kg*2,15kg*2,10kg*2,5kg*2,2.5kg*2,1.25kg*2,0.5kg*2"

// barOptions are the flags that say what is on hand.
type barOptions struct {
	bar, collar, stock, round string

	pairs  string
	paired bool // pairs were named, if only by an empty text
}

func (o *barOptions) flags(f *flag.FlagSet) {
	f.StringVar(&o.bar, "bar", "", "`MASS` of the bar, or with -stock gym the name of one; without it, 20 kg or the gym's own")
	f.StringVar(&o.collar, "collar", "", "`MASS` of one collar; without it, none or the gym's own")
	f.Func("pairs", "plates as `MASS*PAIRS,…`; without them, "+usualPairs, func(text string) error {
		o.pairs, o.paired = text, true
		return nil
	})
	f.StringVar(&o.stock, "stock", "", "`gym` for the bars and plates that the gym owns")
	f.StringVar(&o.round, "round", "", "`down|up|nearest` where the load cannot be made; without it, nearest or what the gym has set for an athlete")
}

// wantsGym reports whether the gym's file is needed.
func (o barOptions) wantsGym() (bool, error) {
	switch {
	case o.stock != "" && o.stock != "gym":
		return false, misuse("read -stock %q: the only one is gym; name other plates with -pairs", o.stock)
	case o.stock != "" && o.paired:
		return false, misuse("read -stock and -pairs: the plates are either the gym's or named; leave one out")
	}
	return o.stock != "", nil
}

// onHand finds the loads of the bar, and hands them to use. The gym's file stays
// closed unless it is needed.
func (o barOptions) onHand(ctx context.Context, a *App, use func(*plates.Loads, plates.Rounding) error) error {
	owned, err := o.wantsGym()
	if err != nil {
		return err
	}
	rounding, err := plates.ParseRounding(or(o.round, string(plates.Nearest)))
	if err != nil {
		return err
	}
	if !owned {
		l, err := o.named()
		if err != nil {
			return err
		}
		return use(l, rounding)
	}
	return a.reading(ctx, func(d *desk.Desk) error {
		l, err := o.gyms(d.Book().Equipment)
		if err != nil {
			return err
		}
		return use(l, rounding)
	})
}

// named returns the loads of what the flags name.
func (o barOptions) named() (*plates.Loads, error) {
	bar, err := o.barOf("20kg")
	if err != nil {
		return nil, err
	}
	stock, err := o.stockOf()
	if err != nil {
		return nil, err
	}
	return plates.NewLoads(bar, stock)
}

func (o barOptions) barOf(usual string) (plates.Bar, error) {
	m, unit, err := mass.Parse(or(o.bar, usual), mass.KG)
	if err != nil {
		return plates.Bar{}, err
	}
	return plates.Bar{Key: "bar", Name: m.In(unit) + " bar", Mass: m, Unit: unit, Kind: plates.Barbell, Count: 1}, nil
}

func (o barOptions) stockOf() (plates.Stock, error) {
	text := usualPairs
	if o.paired {
		text = o.pairs
	}
	pairs, err := plates.ParsePairs(text, mass.KG)
	if err != nil {
		return plates.Stock{}, err
	}
	collar, err := o.collarOf(0)
	return plates.Stock{Plates: pairs, Collar: collar}, err
}

func (o barOptions) collarOf(usual mass.Mass) (mass.Mass, error) {
	if o.collar == "" {
		return usual, nil
	}
	m, _, err := mass.Parse(o.collar, mass.KG)
	return m, err
}

// gyms returns the loads of a bar of the gym with all of its plates.
func (o barOptions) gyms(e gym.Equipment) (*plates.Loads, error) {
	bar, err := o.gymBar(e)
	if err != nil {
		return nil, err
	}
	stock := e.Stock
	if stock.Collar, err = o.collarOf(stock.Collar); err != nil {
		return nil, err
	}
	return plates.NewLoads(bar, stock)
}

// gymBar finds a bar by its name, key or mass; the usual one is the first of the
// gym's plain bars.
func (o barOptions) gymBar(e gym.Equipment) (plates.Bar, error) {
	var names []string
	m, _, err := mass.Parse(o.bar, mass.KG)
	for _, b := range e.Bars {
		named := strings.EqualFold(b.Name, strings.TrimSpace(o.bar)) || strings.EqualFold(b.Key, strings.TrimSpace(o.bar))
		if named || err == nil && b.Mass == m || o.bar == "" && b.Kind == plates.Barbell {
			return b, nil
		}
		names = append(names, b.Name)
	}
	return plates.Bar{}, fmt.Errorf("load bar %q: the gym has no such bar; it has %s", o.bar, strings.Join(names, ", "))
}

func platesCommand(f *flag.FlagSet) run {
	var o barOptions
	target := f.String("target", "", "`MASS` wanted, bar and collars included, such as 142.5kg")
	o.flags(f)
	return func(ctx context.Context, a *App, _ []string) error {
		if *target == "" {
			return misuse("run windlassctl plates: say what is wanted with -target, such as -target 142.5kg")
		}
		wanted, unit, err := mass.Parse(*target, mass.KG)
		if err != nil {
			return err
		}
		return o.onHand(ctx, a, func(l *plates.Loads, rounding plates.Rounding) error {
			got, err := l.Loadable(wanted, rounding)
			if err != nil {
				return err
			}
			return a.printStack(l, got, unit)
		})
	}
}

func (a *App) printStack(l *plates.Loads, got plates.Loading, unit mass.Unit) error {
	s := stacked{got.Total.In(unit), side(got.PerSide), got.Short}
	return a.print(s, func() {
		a.say("%s: %s, a side %s\n", s.Load, l.Bar().Name, onBar(s.PerSide))
		if s.Short {
			a.say("That is all that the plates make.\n")
		}
	})
}

func sequenceCommand(f *flag.FlagSet) run {
	var o barOptions
	targets := f.String("targets", "", "the loads of the sets, as `MASS,MASS,…`")
	o.flags(f)
	return func(ctx context.Context, a *App, _ []string) error {
		if *targets == "" {
			return misuse("run windlassctl sequence: say what is wanted with -targets, such as -targets 60kg,100kg")
		}
		loads, unit, err := masses(*targets)
		if err != nil {
			return err
		}
		return o.onHand(ctx, a, func(l *plates.Loads, rounding plates.Rounding) error {
			seq, err := l.Sequence(loads, rounding)
			if err != nil {
				return err
			}
			return a.printSequence(seq, unit)
		})
	}
}

func (a *App) printSequence(seq plates.Sequence, unit mass.Unit) error {
	s := sequenced{Moves: seq.Moves, Steps: []stackStep{}}
	for _, step := range seq.Steps {
		s.Steps = append(s.Steps, stackStep{step.Total.In(unit), side(step.PerSide), step.Short})
	}
	return a.print(s, func() {
		for i, step := range s.Steps {
			line := fmt.Sprintf("%d. %s: a side %s", i+1, step.Load, onBar(step.PerSide))
			if step.Short {
				line += "; that is all that the plates make"
			}
			a.say("%s\n", line)
		}
		a.say("%d plates moved\n", s.Moves)
	})
}

// masses reads a list of loads and the unit of the first.
func masses(text string) (all []mass.Mass, unit mass.Unit, err error) {
	loads, err := loadTexts(text)
	if err != nil {
		return nil, "", err
	}
	for _, l := range loads {
		all = append(all, l.mass)
	}
	return all, loads[0].unit, nil
}

func or(text, without string) string {
	if strings.TrimSpace(text) == "" {
		return without
	}
	return text
}
