package desk

import (
	"fmt"

	"windlass/internal/climb"
	"windlass/internal/gym"
)

// SecondLoad is what one athlete lifts by a percentage.
type SecondLoad struct {
	Athlete gym.ID
	Name    string
	Short   string // the name, no longer than tells the class apart
	Lift    string
	Work    string // "4 × 6"
	Load    string // empty where nothing is known
	Why     string // what the load is counted from, or what is missing
}

// SecondLoads returns what everybody in a class lifts by percentages, from the
// records as they stand now: the sets of a day without a climb, and the second
// lift.
func (d *Desk) SecondLoads(c gym.Class) []SecondLoad {
	var rows []SecondLoad
	shorts := d.shortsIn(c)
	for at, l := range c.Lifters {
		piece, _ := c.Piece(l.Track)
		from := len(rows)
		for _, s := range piece.Scheme {
			rows = append(rows, d.bySets(l, piece.Lift, s))
		}
		if !piece.Second.Empty() {
			rows = append(rows, d.secondLoad(l, piece.Second))
		}
		for i := range rows[from:] {
			rows[from+i].Short = shorts[at]
		}
	}
	return rows
}

// shortsIn are the short names of a class's lifters, in their order.
func (d *Desk) shortsIn(c gym.Class) []string {
	names := make([]string, len(c.Lifters))
	for i, l := range c.Lifters {
		a, _ := d.Athlete(l.Athlete)
		names[i] = a.Name
	}
	return shortNames(names)
}

// bySets is a lifter's load for sets at a percentage of the 1RM.
func (d *Desk) bySets(l gym.Lifter, lift gym.LiftKey, s gym.Sets) SecondLoad {
	return d.secondLoad(l, gym.SecondLift{Lift: lift, Sets: s.Sets, Reps: s.Reps, Percent: s.Percent, OfReps: 1})
}

func (d *Desk) secondLoad(l gym.Lifter, s gym.SecondLift) SecondLoad {
	a, _ := d.Athlete(l.Athlete)
	lift, _ := d.Lift(s.Lift)
	row := SecondLoad{Athlete: a.ID, Name: a.Name, Lift: lift.Name, Work: fmt.Sprintf("%d × %d", s.Sets, s.Reps)}
	of := lift
	if s.OfLift != "" {
		of, _ = d.Lift(s.OfLift)
	}
	reps := max(1, s.OfReps)
	base := d.BaseFor(a, of, reps)
	if base.Load == 0 {
		row.Why = fmt.Sprintf("no %dRM of %s is known", reps, of.Name)
		return row
	}
	load, ok := d.down(lift, a.Standard)(base.Load.Scale(s.Percent / 100))
	if !ok {
		load = base.Load.Scale(s.Percent / 100)
	}
	row.Load = load.In(d.book.Settings.Unit)
	row.Why = fmt.Sprintf("%g %% of the %dRM, %s", s.Percent, reps, base.Load.In(d.book.Settings.Unit))
	if base.Source == gym.Estimate {
		row.Why += " (estimate)"
	}
	return row
}

// Summary is what became of a class.
type Summary struct {
	Came    int
	Records []string // a sentence each
	Heavy   int      // at or over the heavy line, records too
	Under   int
	Missed  []string // names of those for whom nothing counted
	Open    []string // names of those without a result yet
	Bouts   int
}

// Summary adds a class up.
func (d *Desk) Summary(c gym.Class) Summary {
	s := Summary{Came: len(c.Lifters)}
	for _, p := range d.Proposals(c) {
		a, _ := d.Athlete(p.Lifter.Athlete)
		switch {
		case p.Lifter.Missed:
			s.Missed = append(s.Missed, a.Name)
		case p.Logged.ID == "":
			s.Open = append(s.Open, a.Name)
		default:
			s.add(a.Name, p.Verdict)
		}
	}
	for i := range d.book.Bouts {
		if b := &d.book.Bouts[i]; b.Class == c.ID && b.Void == nil {
			s.Bouts++
		}
	}
	return s
}

func (s *Summary) add(name string, v climb.Verdict) {
	if v.Raises {
		s.Records = append(s.Records, name+": "+v.Why)
	}
	if v.Grade == climb.Under {
		s.Under++
		return
	}
	s.Heavy++
}
