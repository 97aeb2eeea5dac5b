package demo

import (
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// remember logs what everybody had lifted before the cycle: the lifts that their
// track climbs to or counts from, most of the rep counts, some of it long ago.
func (w *world) remember() {
	w.kept = records{}
	for _, p := range w.people {
		switch {
		case p.Name == newcomer:
		case p.track < 0 || p.Name == gone:
			w.past(p, "back-squat", 0.6)
			w.past(p, "deadlift", 0.6)
		default:
			for _, key := range w.liftsOf(p.track) {
				w.past(p, key, usualShare(key))
			}
		}
	}
	slices.SortStableFunc(w.book.Results, func(a, b gym.Result) int { return int(a.On - b.On) })
}

// liftsOf returns the lifts of a track's plan whose rep maxes it needs, and the
// events that strongmen test at the quay.
func (w *world) liftsOf(track int) []gym.LiftKey {
	var keys []gym.LiftKey
	add := func(key gym.LiftKey) {
		if key != "" && !slices.Contains(keys, key) {
			keys = append(keys, key)
		}
	}
	plan, _ := w.book.Cycles[0].Plan(w.book.Tracks[track].ID)
	for _, d := range plan.Days {
		add(d.Main.Lift)
		if d.Second.OfLift != "" {
			add(d.Second.OfLift)
		} else {
			add(d.Second.Lift)
		}
	}
	if trackKeys[track] == "strongman" {
		keys = append(keys, "yoke-walk", "farmers-carry", "stone-over-bar")
	}
	return keys
}

// usualShare is how many of a lift's rep maxes are known when the cycle begins.
func usualShare(key gym.LiftKey) float64 {
	switch key {
	case "back-squat", "bench-press", "deadlift", "shoulder-press", "snatch", "clean-and-jerk", "front-squat":
		return 0.93
	case "axle-deadlift", "deficit-deadlift", "block-deadlift", "floor-press", "seated-press":
		return 0.3 // some are never tested
	}
	return 0.7
}

// past logs the older rep maxes of a person for a lift, the heaviest first, so
// that every other finds its limit.
func (w *world) past(p *person, key gym.LiftKey, share float64) {
	lift, ok := w.racks.lift(key)
	if !ok || lift.Measure != gym.ByLoad {
		return
	}
	for _, reps := range lift.Reps {
		if !w.chance.happens(share) {
			continue
		}
		on := w.start.Add(-w.chance.between(6, 90))
		if w.chance.happens(0.06) {
			on = w.start.Add(-w.chance.between(95, 150)) // stale by now
		}
		load := w.rounded(p, lift, w.onTheDay(p, lift, reps, on).Scale(pastBest))
		over, under := w.kept.room(p.ID, key, reps)
		if load > over && load < under {
			w.log(p, lift, reps, load, on, w.sourceOn(p, on), "")
		}
	}
}

// sourceOn: what was lifted before the athlete joined is hearsay, and some of
// what came after.
func (w *world) sourceOn(p *person, on day.Date) gym.Source {
	if on < p.Joined || w.chance.happens(0.15) {
		return gym.Reported
	}
	return gym.Tested
}

// rounded returns the heaviest load under a limit that the gym can make; who
// reads in pounds gives it in fives of those.
func (w *world) rounded(p *person, lift gym.Lift, limit mass.Mass) mass.Mass {
	if p.Unit == mass.LB {
		return limit / (5 * mass.Pound) * (5 * mass.Pound)
	}
	rack, _, err := w.racks.of(lift, p.Standard)
	if err != nil {
		return 0
	}
	// Nobody puts half-kilogram discs on a bar of the past.
	step := 2500 * mass.Gram
	if load, ok := rack.AtMost(limit / step * step); ok {
		return load.Total
	}
	return 0
}

// log files a result and keeps the record.
func (w *world) log(p *person, lift gym.Lift, reps int, load mass.Mass, on day.Date, source gym.Source, class gym.ID) gym.Result {
	r := gym.Result{
		ID: w.id(on, evening), Athlete: p.ID, Lift: lift.Key, Reps: reps, Load: load, Unit: p.Unit,
		On: on, Source: source, Class: class, Made: instant(on, evening),
	}
	w.book.Results = append(w.book.Results, r)
	w.kept.keep(r)
	return r
}
