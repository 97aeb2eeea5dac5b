package main

import (
	"context"
	"flag"
	"text/tabwriter"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// catalogue is what catalogue answers.
type catalogue struct {
	Lifts     []liftLine     `json:"lifts"`
	Movements []movementLine `json:"movements"`
}

type liftLine struct {
	Lift    string `json:"lift"`
	Region  string `json:"region"`
	Pattern string `json:"pattern"`
}

type movementLine struct {
	Movement      string                     `json:"movement"`
	LinkedLift    string                     `json:"linked_lift"`
	ReferenceReps int                        `json:"reference_reps"`
	Implements    []string                   `json:"implements"`
	Loads         map[gym.Standard]loadsLine `json:"loads"`
}

type loadsLine struct {
	Full  string `json:"full"`
	Mid   string `json:"mid"`
	Light string `json:"light"`
}

func catalogueCommand(*flag.FlagSet) run {
	return func(ctx context.Context, a *App, _ []string) error {
		return a.reading(ctx, func(d *desk.Desk) error {
			c := catalogueOf(d)
			return a.print(c, func() { a.table(c.write) })
		})
	}
}

func catalogueOf(d *desk.Desk) catalogue {
	c := catalogue{Lifts: []liftLine{}, Movements: []movementLine{}}
	b := d.Book()
	for _, l := range b.Lifts {
		if !l.Hidden {
			c.Lifts = append(c.Lifts, liftLine{l.Name, string(l.Region), string(l.Pattern)})
		}
	}
	for _, m := range b.Movements {
		if !m.Hidden {
			c.Movements = append(c.Movements, movementOf(d, m))
		}
	}
	return c
}

func movementOf(d *desk.Desk, m gym.Movement) movementLine {
	unit := unitOf(d.Book(), m)
	linked, _ := d.Lift(m.Linked)
	line := movementLine{
		Movement: m.Name, LinkedLift: linked.Name, ReferenceReps: m.ReferenceReps,
		Implements: []string{}, Loads: map[gym.Standard]loadsLine{},
	}
	for _, owned := range d.Book().Equipment.Implement(m.Implement) {
		line.Implements = append(line.Implements, owned.In(unit))
	}
	for standard, t := range m.Loads {
		line.Loads[standard] = loadsLine{load(t.Full, unit), load(t.Mid, unit), load(t.Light, unit)}
	}
	return line
}

// unitOf is the unit in which the gym counts a movement's implements.
func unitOf(b *gym.Book, m gym.Movement) mass.Unit {
	for _, i := range b.Equipment.Implements {
		if i.Kind == m.Implement && i.Unit.Valid() {
			return i.Unit
		}
	}
	return b.Settings.Unit
}

func (c catalogue) write(w *tabwriter.Writer) {
	for _, l := range c.Lifts {
		line(w, l.Lift, l.Region, l.Pattern)
	}
	line(w)
	for _, m := range c.Movements {
		cells := []string{m.Movement, m.LinkedLift}
		for _, standard := range gym.Standards() {
			cells = append(cells, tiers(standard, m.Loads[standard]))
		}
		line(w, cells...)
	}
}

func tiers(standard gym.Standard, l loadsLine) string {
	if l.Full == "" {
		return ""
	}
	return string(standard) + " " + l.Full + ", " + l.Mid + ", " + l.Light
}
