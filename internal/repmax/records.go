package repmax

import (
	"cmp"
	"slices"

	"windlass/internal/gym"
)

// Key names an athlete's way with one lift.
type Key struct {
	Athlete gym.ID
	Lift    gym.LiftKey
}

// Records holds the best result of every athlete, lift and rep count. It is a
// view over a log of results and is built anew when the log changes.
type Records struct {
	best map[Key][]gym.Result // by rising rep count
}

// NewRecords reads the records off a log in any order. Voided results do not
// count. Only a strictly better result raises a record; of equal ones the
// earliest keeps it. Better is heavier, save for lifts that are counted in
// something else: see [Better].
func NewRecords(results []gym.Result, lifts []gym.Lift) Records {
	measures := make(map[gym.LiftKey]gym.Measure, len(lifts))
	for _, l := range lifts {
		measures[l.Key] = l.Measure
	}
	records := Records{map[Key][]gym.Result{}}
	for _, r := range results {
		if r.Void == nil {
			records.add(r, measures[r.Lift])
		}
	}
	return records
}

func (r Records) add(result gym.Result, by gym.Measure) {
	key := Key{result.Athlete, result.Lift}
	best := r.best[key]
	i, held := slices.BinarySearchFunc(best, result.Reps, func(b gym.Result, reps int) int { return cmp.Compare(b.Reps, reps) })
	switch {
	case !held:
		r.best[key] = slices.Insert(best, i, result)
	case Better(result, best[i], by), !Better(best[i], result, by) && earlier(result, best[i]):
		best[i] = result
	}
}

// Better reports whether a is strictly better than b by a measure: the heavier
// load, the larger amount, and for fixed work the shorter time. A lift without a
// measure counts by load. Results of different measures are never compared: a
// result that lacks the measure is never the better one.
func Better(a, b gym.Result, by gym.Measure) bool {
	switch by {
	case gym.ByLoad, "":
		return a.Load > b.Load
	case gym.ByTime:
		return a.Amount > 0 && (a.Amount < b.Amount || b.Amount <= 0)
	}
	return a.Amount > b.Amount
}

// earlier orders results by day, then by when they were written down.
func earlier(a, b gym.Result) bool {
	return cmp.Or(cmp.Compare(a.On, b.On), a.Made.Compare(b.Made), cmp.Compare(a.ID, b.ID)) < 0
}

// Of returns an athlete's record for a lift and a rep count.
func (r Records) Of(athlete gym.ID, lift gym.LiftKey, reps int) (gym.Result, bool) {
	for _, result := range r.best[Key{athlete, lift}] {
		if result.Reps == reps {
			return result, true
		}
	}
	return gym.Result{}, false
}

// Known returns all records of an athlete for a lift, fewest reps first.
func (r Records) Known(athlete gym.ID, lift gym.LiftKey) []gym.Result {
	return slices.Clone(r.best[Key{athlete, lift}])
}
