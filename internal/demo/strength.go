package demo

import (
	"math"
	"slices"

	"windlass/internal/climb"
	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
	"windlass/internal/repmax"
)

// How an invented athlete's strength is spread, as logarithms.
const (
	knackSpread = 0.06 // between one athlete's lifts
	dailySpread = 0.02 // between one athlete's days
)

// badDay is the share of days after a short night, and badDayLeaves what is left of
// the strength on one.
const (
	badDay       = 0.05
	badDayLeaves = 0.88
)

// pastBest is how far a record of the past lies over a usual day: it was a good
// one.
const pastBest = 1.012

// able returns what a person could lift for so many reps on a usual day, 0 for a
// lift that knows no usual member.
func (w *world) able(p *person, lift gym.Lift, reps int, on day.Date) mass.Mass {
	usual := lift.Reference[p.Standard]
	fraction, err := repmax.Handbook().Fraction(reps)
	if usual == 0 || err != nil {
		return 0
	}
	knack, ok := p.knack[lift.Key]
	if !ok {
		knack = w.chance.around(0, knackSpread)
		p.knack[lift.Key] = knack
	}
	weeks := float64(on.Since(w.start)) / 7
	grown := p.gain * weeks
	if weeks < 0 {
		grown *= 0.6 // the winter went slower
	}
	return usual.Scale(math.Exp(p.level+knack+grown) * math.Pow(fraction, p.slope))
}

// onTheDay returns what a person can lift on one day.
func (w *world) onTheDay(p *person, lift gym.Lift, reps int, on day.Date) mass.Mass {
	able := w.able(p, lift, reps, on).Scale(math.Exp(w.chance.around(0, dailySpread)))
	if w.chance.happens(badDay) {
		return able.Scale(badDayLeaves)
	}
	return able
}

// racks answers what can be loaded for a lift.
type racks struct {
	book  *gym.Book
	loads map[string]*plates.Loads
}

// lift returns the lift with a key.
func (r racks) lift(key gym.LiftKey) (gym.Lift, bool) {
	i := slices.IndexFunc(r.book.Lifts, func(l gym.Lift) bool { return l.Key == key })
	if i < 0 {
		return gym.Lift{}, false
	}
	return r.book.Lifts[i], true
}

// of returns the rack of a lift and the key of its bar, which is empty for what is
// lifted whole.
func (r *racks) of(lift gym.Lift, standard gym.Standard) (climb.Rack, string, error) {
	if whole := r.book.Equipment.Implement(lift.Bar); len(whole) > 0 && !r.hasBar(lift.Bar) {
		return climb.Whole(whole), "", nil
	}
	kind := lift.Bar
	if lift.Pattern == gym.Olympic && standard == gym.StandardW {
		kind = plates.LightBarbell
	}
	if !r.hasBar(kind) {
		kind = plates.Barbell
	}
	loads, err := r.bar(kind)
	if err != nil {
		return nil, "", err
	}
	if lift.Floor {
		return loads.FromFloor(), loads.Bar().Key, nil
	}
	return loads, loads.Bar().Key, nil
}

func (r *racks) hasBar(kind string) bool {
	return slices.ContainsFunc(r.book.Equipment.Bars, func(b plates.Bar) bool { return b.Kind == kind })
}

func (r *racks) bar(kind string) (*plates.Loads, error) {
	if l, ok := r.loads[kind]; ok {
		return l, nil
	}
	at := slices.IndexFunc(r.book.Equipment.Bars, func(b plates.Bar) bool { return b.Kind == kind })
	l, err := plates.NewLoads(r.book.Equipment.Bars[at], r.book.Equipment.Stock)
	if err != nil {
		return nil, err
	}
	if r.loads == nil {
		r.loads = map[string]*plates.Loads{}
	}
	r.loads[kind] = l
	return l, nil
}

// records are the best results so far.
type records map[repmax.Key]map[int]gym.Result

// known returns a person's records for a lift, fewest reps first.
func (k records) known(who gym.ID, lift gym.LiftKey) []gym.Result {
	var known []gym.Result
	for reps := 1; reps <= gym.MaxReps; reps++ {
		if r, ok := k[repmax.Key{Athlete: who, Lift: lift}][reps]; ok {
			known = append(known, r)
		}
	}
	return known
}

func (k records) keep(r gym.Result) {
	key := repmax.Key{Athlete: r.Athlete, Lift: r.Lift}
	if k[key] == nil {
		k[key] = map[int]gym.Result{}
	}
	if best, ok := k[key][r.Reps]; !ok || repmax.Better(r, best, gym.ByLoad) {
		k[key][r.Reps] = r
	}
}

// room returns what a result for so many reps must lie between, ends left out, so
// that no record for more reps comes up to one for fewer.
func (k records) room(who gym.ID, lift gym.LiftKey, reps int) (over, under mass.Mass) {
	under = mass.Max
	for _, r := range k.known(who, lift) {
		switch {
		case r.Reps > reps:
			over = max(over, r.Load)
		case r.Reps < reps:
			under = min(under, r.Load)
		}
	}
	return over, under
}
