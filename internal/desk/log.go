package desk

import (
	"fmt"
	"strings"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Proposal is a lifter's row on the sheet of results.
type Proposal struct {
	Lifter  gym.Lifter
	Outcome climb.Outcome
	Verdict climb.Verdict // of the outcome's load; zero where nothing counts
	Text    string        // prefilled, as gym.ParseEffort reads it; empty where nothing counts
	Logged  gym.Result    // zero until it is logged
}

// Proposals returns a row for every lifter of a class who has a lift.
func (d *Desk) Proposals(c gym.Class) []Proposal {
	var rows []Proposal
	for _, l := range c.Lifters {
		if l.Lift == "" {
			continue
		}
		rows = append(rows, d.proposal(c, l))
	}
	return rows
}

func (d *Desk) proposal(c gym.Class, l gym.Lifter) Proposal {
	p := Proposal{Lifter: l, Outcome: climb.Outcome{Kind: climb.Nothing}}
	if path, err := d.Path(c, l); err == nil {
		p.Outcome = path.Outcome
	}
	load := p.Outcome.Load
	if p.Logged = d.result(l.Result); p.Logged.ID != "" {
		load = p.Logged.Load
	}
	if load > 0 && (p.Outcome.Kind == climb.Counts || p.Logged.ID != "") {
		p.Text = gym.Effort{Reps: l.Reps, Load: load, Unit: d.book.Settings.Unit}.String()
		p.Verdict = d.verdict(c, l, load)
	}
	return p
}

// verdict weighs a load against the record without what this class logged for the
// lifter. What the climb was counted from may be another number: the coach can
// type one. It stands in, as an estimate does, where there is no record.
func (d *Desk) verdict(c gym.Class, l gym.Lifter, load mass.Mass) climb.Verdict {
	record, source := l.Base, gym.Estimate
	var best gym.Result
	for _, r := range d.Results(l.Athlete) {
		if r.Void == nil && r.ID != l.Result && r.Lift == l.Lift && r.Reps == l.Reps && r.Load > best.Load {
			best = r
		}
	}
	if best.Load > 0 {
		record, source = best.Load, best.Source
	}
	v := climb.Judge(load, record, source, c.Climb.HeavyLine, d.book.Settings.Unit)
	v.Doubt = d.doubt(c, l, load, record)
	return v
}

// doubt says why a load is hardly what a lifter has lifted. Where neither record
// nor estimate is known, what the climb found is.
func (d *Desk) doubt(c gym.Class, l gym.Lifter, load, known mass.Mass) string {
	if path, err := d.Path(c, l); err == nil && known == 0 {
		known = path.Outcome.Load
	}
	return climb.Doubt(load, d.lightest(l), known, d.book.Settings.Unit)
}

// lightest is the least that a lifter can lift in this gym; 0 where nobody knows.
func (d *Desk) lightest(l gym.Lifter) mass.Mass {
	rig, err := d.Rig(l)
	if err != nil {
		return 0
	}
	least, _ := rig.Rack.AtLeast(0)
	return least.Total
}

func (d *Desk) result(id gym.ID) gym.Result {
	if id == "" {
		return gym.Result{}
	}
	for i := len(d.book.Results) - 1; i >= 0; i-- {
		if d.book.Results[i].ID == id {
			return d.book.Results[i]
		}
	}
	return gym.Result{}
}

// LogResult keeps a lifter's result of the day, such as "3x142.5", or a load
// alone. What was logged for the lifter before in this class is voided. It says
// whether the record rose, and why or why not.
func (d *Desk) LogResult(class, athlete gym.ID, text string) (climb.Verdict, error) {
	c, ok := d.Class(class)
	if !ok {
		return climb.Verdict{}, fmt.Errorf("log result: there is no such class")
	}
	l, err := lifter(&c, athlete)
	if err != nil {
		return climb.Verdict{}, fmt.Errorf("log result: %w", err)
	}
	r, err := d.readResult(c, *l, text)
	if err != nil {
		return climb.Verdict{}, err
	}
	verdict := d.verdict(c, *l, r.Load)
	changes := d.replacing(*l, gym.AddResult{Result: r})
	put, err := d.edited("log result", class, func(c *gym.Class) error {
		l, err := lifter(c, athlete)
		if err == nil {
			l.Result, l.Missed = r.ID, false
		}
		return err
	})
	if err != nil {
		return climb.Verdict{}, err
	}
	return verdict, d.do(d.whose("log "+r.Load.In(r.Unit)+" as "+d.repMaxText(r.Lift, r.Reps)+" for", athlete),
		append(changes, gym.PutClass{Class: put})...)
}

// Weigh says what a lifter's result would mean before it is logged. One with a doubt
// is to be asked about first; [Desk.LogResult] believes the coach.
func (d *Desk) Weigh(class, athlete gym.ID, text string) (climb.Verdict, error) {
	c, ok := d.Class(class)
	if !ok {
		return climb.Verdict{}, fmt.Errorf("weigh result: there is no such class")
	}
	l, err := lifter(&c, athlete)
	if err != nil {
		return climb.Verdict{}, fmt.Errorf("weigh result: %w", err)
	}
	r, err := d.readResult(c, *l, text)
	if err != nil {
		return climb.Verdict{}, err
	}
	return d.verdict(c, *l, r.Load), nil
}

func (d *Desk) readResult(c gym.Class, l gym.Lifter, text string) (gym.Result, error) {
	text = strings.TrimSpace(text)
	if !strings.ContainsAny(text, "x×*@") {
		text = fmt.Sprintf("%dx%s", l.Reps, text)
	}
	effort, err := gym.ParseEffort(text, d.book.Settings.Unit)
	if err != nil {
		return gym.Result{}, err
	}
	if effort.Reps != l.Reps {
		return gym.Result{}, fmt.Errorf("log %q: today counts %s, not %d; enter another rep max in the athlete's record", text, count(l.Reps, "rep"), effort.Reps)
	}
	r := gym.Result{
		ID: d.NewID(), Athlete: l.Athlete, Lift: l.Lift, Reps: l.Reps, Load: effort.Load, Unit: effort.Unit,
		On: c.On, Source: gym.Tested, Class: c.ID, Made: d.now(),
	}
	return r, r.Valid()
}

// replacing voids what the lifter logged before, ahead of a change.
func (d *Desk) replacing(l gym.Lifter, then ...gym.Change) []gym.Change {
	if before := d.result(l.Result); before.ID != "" && before.Void == nil {
		void := gym.VoidResult{ID: before.ID, Void: gym.Void{At: d.now(), Reason: "entered again in class"}}
		return append([]gym.Change{void}, then...)
	}
	return then
}

// LogNothing notes that no set of a lifter counted.
func (d *Desk) LogNothing(class, athlete gym.ID) error {
	c, ok := d.Class(class)
	if !ok {
		return fmt.Errorf("log a miss: there is no such class")
	}
	l, err := lifter(&c, athlete)
	if err != nil {
		return fmt.Errorf("log a miss: %w", err)
	}
	changes := d.replacing(*l)
	put, err := d.edited("log a miss", class, func(c *gym.Class) error {
		l, err := lifter(c, athlete)
		if err == nil {
			l.Result, l.Missed = "", true
		}
		return err
	})
	if err != nil {
		return err
	}
	return d.do(d.whose("log that nothing counted for", athlete), append(changes, gym.PutClass{Class: put})...)
}
