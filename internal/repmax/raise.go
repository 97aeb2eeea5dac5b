package repmax

import (
	"fmt"
	"time"

	"windlass/internal/gym"
)

// Raise offers to lift a record to what a record for more reps has proven: who
// moves a load five times has moved it three times.
type Raise struct {
	Record gym.Result // the lighter record for fewer reps
	Proof  gym.Result // the heavier record for more reps
}

// Why says what does not fit and what is offered.
func (r Raise) Why() string {
	return fmt.Sprintf("The %dRM of %s is over the %dRM of %s. A load for %d reps is proof for %d: raise the %dRM to %s?",
		r.Proof.Reps, r.Proof.Load.In(r.Proof.Unit), r.Record.Reps, r.Record.Load.In(r.Record.Unit),
		r.Proof.Reps, r.Record.Reps, r.Record.Reps, r.Proof.Load.In(r.Proof.Unit))
}

// Row returns the result to log when the coach agrees. Whoever writes it gives
// it an ID and the instant.
func (r Raise) Row() gym.Result {
	row := r.Proof
	row.ID, row.Made, row.Reps = "", time.Time{}, r.Record.Reps
	return row
}

func raises(known []gym.Result) []Raise {
	var all []Raise
	for _, record := range known {
		if proof, ok := overtaken(record, known); ok {
			all = append(all, Raise{Record: record, Proof: proof})
		}
	}
	return all
}

func overtaken(record gym.Result, known []gym.Result) (proof gym.Result, ok bool) {
	best := record
	for _, r := range known {
		if r.Reps > record.Reps && r.Load > best.Load {
			best = r
		}
	}
	return best, best.Reps > record.Reps
}
