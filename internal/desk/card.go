package desk

import (
	"cmp"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/repmax"
)

// Card is the record card of one athlete.
type Card struct {
	Counts []int // the gym's rep counts, a column each
	Lifts  []CardLift
}

// CardLift is one lift of a record card.
type CardLift struct {
	Lift   gym.Lift
	Wanted bool           // the athlete's track asks for it
	Cells  []CardCell     // one for each of the card's counts
	Raises []repmax.Raise // records that a record for more reps has overtaken
	Guide  *repmax.Guide  // where nothing is known but a related lift is
	Best   []gym.Result   // of a lift that is not counted by its load
	Other  []repmax.Entry // records for other rep counts
}

// CardCell is one rep max of a record card.
type CardCell struct {
	repmax.Entry
	Kept bool // the lift records this rep count
}

// RecordCard returns the record card of an athlete: the lifts that the track asks for in
// the order of the plan, then the others that have a result, by name.
func (d *Desk) RecordCard(athlete gym.ID) Card {
	a, ok := d.Athlete(athlete)
	if !ok {
		return Card{}
	}
	c := Card{Counts: d.book.Settings.DayReps}
	wanted := d.mainLifts(d.TrackOn(athlete, d.Today()).ID)
	for _, key := range append(slices.Clone(wanted), d.otherLifts(athlete, wanted)...) {
		if lift, ok := d.Lift(key); ok {
			row := d.cardLift(a, lift, c.Counts)
			row.Wanted = slices.Contains(wanted, key)
			c.Lifts = append(c.Lifts, row)
		}
	}
	return c
}

// otherLifts returns the lifts with a standing result that are not among some.
func (d *Desk) otherLifts(athlete gym.ID, some []gym.LiftKey) []gym.LiftKey {
	var others []gym.LiftKey
	for _, row := range d.index.results[athlete] {
		r := &d.book.Results[row]
		if r.Void == nil && !slices.Contains(some, r.Lift) && !slices.Contains(others, r.Lift) {
			others = append(others, r.Lift)
		}
	}
	slices.SortFunc(others, func(a, b gym.LiftKey) int { return cmp.Compare(d.liftName(a), d.liftName(b)) })
	return others
}

func (d *Desk) liftName(key gym.LiftKey) string {
	if l, ok := d.Lift(key); ok {
		return l.Name
	}
	return string(key)
}

func (d *Desk) cardLift(a gym.Athlete, lift gym.Lift, counts []int) CardLift {
	known := d.records().Known(a.ID, lift.Key)
	row := CardLift{Lift: lift}
	if !byLoad(lift) {
		row.Best = known
	}
	card := repmax.NewCard(known, counts, repmax.Handbook(), d.down(lift, a.Standard))
	row.Raises = card.Raises
	for _, e := range card.Entries {
		if e.Source == gym.Estimate {
			e.Unit = d.book.Settings.Unit // nobody entered it, in any unit
		}
		row.Cells = append(row.Cells, CardCell{Entry: e, Kept: slices.Contains(d.countsOf(lift), e.Reps) && byLoad(lift)})
	}
	for _, r := range known {
		if !slices.Contains(counts, r.Reps) && r.Load > 0 {
			row.Other = append(row.Other, repmax.Entry{Reps: r.Reps, Load: r.Load, Unit: r.Unit, Source: r.Source, On: r.On, Result: r.ID})
		}
	}
	if len(known) == 0 {
		row.Guide = d.guide(a, lift)
	}
	return row
}

func byLoad(l gym.Lift) bool { return l.Measure == gym.ByLoad || l.Measure == "" }

// Raise logs what records for more reps prove for fewer, in one step.
func (d *Desk) Raise(raises ...repmax.Raise) error {
	var changes []gym.Change
	for _, r := range raises {
		row := r.Row()
		row.ID, row.Made = d.NewID(), d.now()
		if err := row.Valid(); err != nil {
			return err
		}
		changes = append(changes, gym.AddResult{Result: row})
	}
	return d.do("raise "+count(len(raises), "record"), changes...)
}

// History returns the results of an athlete in a lift, voided ones too, newest
// first; an empty lift is every one.
func (d *Desk) History(athlete gym.ID, lift gym.LiftKey) []gym.Result {
	results := d.Results(athlete)
	slices.Reverse(results)
	if lift == "" {
		return results
	}
	return slices.DeleteFunc(results, func(r gym.Result) bool { return r.Lift != lift })
}

// Trend is how an athlete came along in a lift.
type Trend struct {
	Results []gym.Result // that stand, oldest first
	Reps    int          // whose record the line follows: the count that was logged most
	Best    []TrendStep
}

// TrendStep is a record from a day on.
type TrendStep struct {
	On   day.Date
	Load mass.Mass
}

// Trend returns the standing results of an athlete in a lift that is counted by
// its load, with the line of the record for the rep count that was logged most.
func (d *Desk) Trend(athlete gym.ID, lift gym.LiftKey) Trend {
	var t Trend
	times := map[int]int{}
	for _, r := range d.Results(athlete) {
		if r.Lift == lift && r.Void == nil && r.Load > 0 {
			t.Results = append(t.Results, r)
			times[r.Reps]++
		}
	}
	for reps, n := range times {
		if best := times[t.Reps]; n > best || n == best && reps > t.Reps {
			t.Reps = reps
		}
	}
	for _, r := range t.Results {
		if last := len(t.Best) - 1; r.Reps == t.Reps && (last < 0 || r.Load > t.Best[last].Load) {
			t.Best = append(t.Best, TrendStep{r.On, r.Load})
		}
	}
	return t
}
