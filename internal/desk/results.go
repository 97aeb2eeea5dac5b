package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Lift returns the lift with a key.
func (d *Desk) Lift(key gym.LiftKey) (gym.Lift, bool) {
	i, ok := d.index.lifts[key]
	if !ok {
		return gym.Lift{}, false
	}
	return d.book.Lifts[i], true
}

// Movement returns the movement with a key.
func (d *Desk) Movement(key gym.MovementKey) (gym.Movement, bool) {
	i, ok := d.index.movements[key]
	if !ok {
		return gym.Movement{}, false
	}
	return d.book.Movements[i], true
}

// Results returns every result of an athlete, voided ones too, oldest first.
func (d *Desk) Results(athlete gym.ID) []gym.Result {
	rows := d.index.results[athlete]
	results := make([]gym.Result, len(rows))
	for i, row := range rows {
		results[i] = d.book.Results[row]
	}
	slices.SortStableFunc(results, func(a, b gym.Result) int { return int(a.On - b.On) })
	return results
}

// Bouts returns every bout of an athlete, voided ones too, oldest first.
func (d *Desk) Bouts(athlete gym.ID) []gym.Bout {
	rows := d.index.bouts[athlete]
	bouts := make([]gym.Bout, len(rows))
	for i, row := range rows {
		bouts[i] = d.book.Bouts[row]
	}
	slices.SortStableFunc(bouts, func(a, b gym.Bout) int { return int(a.On - b.On) })
	return bouts
}

// Record returns the best result of an athlete for a lift and a rep count that is
// not voided, by what the lift is counted in. Of equal ones the first holds the
// record.
func (d *Desk) Record(athlete gym.ID, lift gym.LiftKey, reps int) (gym.Result, bool) {
	return d.records().Of(athlete, lift, reps)
}

// Entry is a result as the coach enters it.
type Entry struct {
	Athlete gym.ID
	Lift    gym.LiftKey
	Text    string // as gym.ParseEffort reads it, or [ParseAmount] for a lift not counted by its load
	On      day.Date
	Source  gym.Source
}

// Entered says what became of an entry.
type Entered struct {
	Result gym.Result
	Raised bool       // it is a new record
	Before gym.Result // the record until then, zero for none
}

// EnterResult logs a result and says whether it raised the record.
func (d *Desk) EnterResult(e Entry) (Entered, error) {
	read, err := d.ReadEntry(e)
	if err != nil {
		return Entered{}, err
	}
	r := read.Result
	r.ID, r.Made = d.NewID(), d.now()
	lift, _ := d.Lift(r.Lift)
	a, _ := d.Athlete(r.Athlete)
	err = d.do(fmt.Sprintf("log %s %s for %s", lift.Name, ResultText(r, lift.Measure), a.Name), gym.AddResult{Result: r})
	return Entered{Result: r, Before: read.Before, Raised: read.Raises}, err
}

// VoidResult takes a result out of every computation and keeps it readable.
func (d *Desk) VoidResult(id gym.ID, reason string) error {
	if strings.TrimSpace(reason) == "" {
		return fmt.Errorf("void result: there is no reason; write a word or two")
	}
	r := d.result(id)
	return d.do(d.whose("void "+d.repMaxText(r.Lift, r.Reps)+" of", r.Athlete), gym.VoidResult{ID: id, Void: gym.Void{At: d.now(), Reason: reason}})
}
