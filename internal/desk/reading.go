package desk

import (
	"fmt"
	"strings"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/repmax"
)

// Reading is what an entry means, before it is logged.
type Reading struct {
	Result gym.Result // as it would be logged, without an ID
	Before gym.Result // the record until now, zero for none
	Raises bool
	Says   string // one sentence
	Doubt  string // why it is hardly what was lifted, see [climb.Doubt]; empty where it may be
}

// ReadEntry reads an entry as [Desk.EnterResult] would, and logs nothing. One with a
// doubt is to be asked about first; EnterResult believes the coach.
func (d *Desk) ReadEntry(e Entry) (Reading, error) {
	lift, r, err := d.readEntry(e)
	if err != nil {
		return Reading{}, err
	}
	before, known := d.records().Of(r.Athlete, r.Lift, r.Reps)
	reading := Reading{Result: r, Before: before, Raises: !known || repmax.Better(r, before, lift.Measure)}
	reading.Says = reading.say(lift.Measure, known)
	if byLoad(lift) {
		reading.Doubt = d.doubtRead(r, before.Load)
	}
	return reading, nil
}

// doubtRead doubts a result as the floor doubts that of a class; an estimate stands in
// where there is no record.
func (d *Desk) doubtRead(r gym.Result, known mass.Mass) string {
	a, _ := d.Athlete(r.Athlete)
	l := d.LifterFor(a, r.Lift, r.Reps)
	if known == 0 {
		known = l.Base
	}
	return climb.Doubt(r.Load, d.lightest(l), known, r.Unit)
}

// readEntry reads reps and load, or the amount of a lift that is counted in
// something else.
func (d *Desk) readEntry(e Entry) (gym.Lift, gym.Result, error) {
	a, ok := d.Athlete(e.Athlete)
	if !ok {
		return gym.Lift{}, gym.Result{}, fmt.Errorf("enter result: there is no such athlete")
	}
	lift, ok := d.Lift(e.Lift)
	if !ok {
		return lift, gym.Result{}, fmt.Errorf("enter result: the catalogue has no lift %q", e.Lift)
	}
	if e.On > d.Today() {
		return lift, gym.Result{}, fmt.Errorf("enter result: %s has not come yet; choose today or a day before", e.On)
	}
	r := gym.Result{Athlete: a.ID, Lift: lift.Key, Reps: 1, Unit: a.Unit, On: e.On, Source: e.Source}
	text := strings.TrimSpace(e.Text)
	if byLoad(lift) {
		effort, err := gym.ParseEffort(text, a.Unit)
		if err != nil {
			return lift, r, err
		}
		r.Reps, r.Load, r.Unit = effort.Reps, effort.Load, effort.Unit
		return lift, r, r.Valid()
	}
	var err error
	if r.Amount, err = ParseAmount(text, lift.Measure); err != nil {
		return lift, r, err
	}
	return lift, r, r.Valid()
}

// say tells a record from a result that raises nothing.
func (r Reading) say(by gym.Measure, known bool) string {
	what, old := ResultText(r.Result, by), ResultText(r.Before, by)
	of := "record"
	if byMeasure := r.Result.Load == 0; !byMeasure {
		of = fmt.Sprintf("%dRM", r.Result.Reps)
		old = r.Before.Load.In(r.Before.Unit)
	}
	switch {
	case !known:
		return fmt.Sprintf("%s: the first %s.", what, of)
	case r.Raises && r.Result.Load > 0:
		return fmt.Sprintf("%s: a new %s, %s over %s.", what, of, r.difference(), old)
	case r.Raises:
		return fmt.Sprintf("%s: a new %s after %s.", what, of, old)
	case r.Result.Load == r.Before.Load && r.Result.Amount == r.Before.Amount:
		return fmt.Sprintf("%s: equals the %s of %s. A tie raises nothing.", what, of, r.Before.On.Short())
	case r.Result.Load > 0:
		return fmt.Sprintf("%s: %s under the %s of %s, which stays.", what, (r.Before.Load - r.Result.Load).In(r.Result.Unit), of, old)
	}
	return fmt.Sprintf("%s: not better than the %s of %s, which stays.", what, of, old)
}

// difference is how much heavier the entry is than the record.
func (r Reading) difference() string {
	by := r.Result.Load - r.Before.Load
	return fmt.Sprintf("%s (%.1f %%)", by.In(r.Result.Unit), 100*by.Ratio(r.Before.Load))
}

// ResultText writes what a result says: "5 × 142.5 kg", or the amount of a lift
// that is counted in something else.
func ResultText(r gym.Result, by gym.Measure) string {
	if r.Load > mass.Mass(0) {
		return fmt.Sprintf("%d × %s", r.Reps, r.Load.In(r.Unit))
	}
	return AmountText(r.Amount, by)
}
