package desk

import (
	"context"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/repmax"
	"windlass/internal/tier"
)

// StandingOn learns from the log as it was at the end of a day: no bout and no lift
// result of a later day speaks, so that a suggestion for a day gone by is the one
// that could have been made on it. What was voided since stays void. It stops with
// the context's error when the context ends.
func (d *Desk) StandingOn(ctx context.Context, on day.Date) (*tier.Standing, error) {
	book := d.book
	book.Bouts = slices.DeleteFunc(slices.Clone(book.Bouts), func(b gym.Bout) bool { return b.On > on })
	results := slices.DeleteFunc(slices.Clone(book.Results), func(r gym.Result) bool { return r.On > on })
	return tier.Learn(ctx, &book, d.strengthsBy(repmax.NewRecords(results, book.Lifts)))
}
