package repmax

import (
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Down returns the heaviest load that the gym can make and that is not over a
// limit, and false when even its lightest is over it.
type Down func(limit mass.Mass) (mass.Mass, bool)

// Card is what one athlete can do in one lift, and what does not fit together.
type Card struct {
	Entries []Entry // in the order asked for
	Raises  []Raise // records that a record for more reps has overtaken
}

// Entry is one rep max of a card.
type Entry struct {
	Reps   int
	Load   mass.Mass  // 0 when nothing is known
	Unit   mass.Unit  // as the result was entered
	Source gym.Source // empty when nothing is known
	On     day.Date   // of the result, or of the one that an estimate rests on
	Result gym.ID     // that result
	From   int        // the rep count that an estimate rests on; 0 for a result
	Under  bool       // the estimate is lighter than all that the gym can load, and not rounded
}

// Known reports whether the entry has a number.
func (e Entry) Known() bool { return e.Source != "" }

// NewCard fills in a card for the wanted rep counts. Known rep maxes stay as
// they are. A missing one is estimated on the curve from the nearest known rep
// count (of two equally near, the one that gives the heavier estimate), then
// held between what other records prove, then rounded down. Rep counts that the
// curve does not reach stay unknown.
//
// A record for more reps proves the same load for fewer, so no estimate is under
// one; nor is it over a record for fewer reps, unless another record proves it.
func NewCard(known []gym.Result, want []int, c Curve, down Down) Card {
	card := Card{Raises: raises(known)}
	for _, reps := range want {
		card.Entries = append(card.Entries, entry(known, reps, c, down))
	}
	return card
}

// Entry returns the entry for a rep count, and one without a number when the
// card was not asked for it.
func (c Card) Entry(reps int) Entry {
	for _, e := range c.Entries {
		if e.Reps == reps {
			return e
		}
	}
	return Entry{Reps: reps}
}

func entry(known []gym.Result, reps int, c Curve, down Down) Entry {
	i := slices.IndexFunc(known, func(r gym.Result) bool { return r.Reps == reps && r.Load > 0 })
	if i >= 0 {
		r := known[i]
		return Entry{Reps: reps, Load: r.Load, Unit: r.Unit, Source: r.Source, On: r.On, Result: r.ID}
	}
	evidence, load := nearest(known, reps, c)
	if load == 0 {
		return Entry{Reps: reps}
	}
	e := Entry{Reps: reps, Unit: evidence.Unit, Source: gym.Estimate, On: evidence.On, Result: evidence.ID, From: evidence.Reps}
	proven, limit := bounds(known, reps)
	e.Load = max(proven, min(load, limit))
	if e.Load == proven {
		return e // it was lifted, so it can be loaded
	}
	rounded, ok := down(e.Load)
	if !ok {
		e.Under = true
		return e
	}
	e.Load = max(proven, rounded)
	return e
}

// nearest returns the record nearest in reps and the estimate from it, and a
// load of 0 when there is none that the curve can use.
func nearest(known []gym.Result, reps int, c Curve) (evidence gym.Result, estimate mass.Mass) {
	for _, r := range known {
		load, err := Convert(r.Reps, r.Load, reps, c)
		if err != nil {
			continue // out of the curve's reach: no evidence here
		}
		nearer := distance(r.Reps, reps) - distance(evidence.Reps, reps)
		if estimate == 0 || nearer < 0 || nearer == 0 && load > estimate {
			evidence, estimate = r, load
		}
	}
	return evidence, estimate
}

func distance(a, b int) int { return max(a-b, b-a) }

// bounds returns the heaviest load proven for reps by records for more, and the
// lightest record for fewer.
func bounds(known []gym.Result, reps int) (proven, limit mass.Mass) {
	limit = mass.Max
	for _, r := range known {
		switch {
		case r.Load <= 0:
		case r.Reps > reps:
			proven = max(proven, r.Load)
		default:
			limit = min(limit, r.Load)
		}
	}
	return proven, limit
}
