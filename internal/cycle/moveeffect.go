package cycle

import (
	"cmp"
	"fmt"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Lack is a rep max that an athlete's plan is counted from and that nobody has
// seen yet.
type Lack struct {
	Lift gym.LiftKey
	Reps int
	From day.Date // when the plan first asks for it
}

// Effect is what moving an athlete to another track does.
type Effect struct {
	Before Week   // the athlete's week around the day of the move, as it is
	After  Week   // and as it becomes
	Lacks  []Lack // what the new track asks for from that day on, to the end of its cycle
	Why    string
}

// MoveEffect says what moving an athlete to a track from a day on does, before it
// is done.
func (k Calendar) MoveEffect(a gym.Athlete, track gym.ID, from day.Date) Effect {
	w := wishesOf(a)
	e := Effect{Before: k.weekOf(w, k.TrackOf(a.ID, from), from), After: k.weekOf(w, track, from)}
	c, ok := k.CycleOn(track, from)
	if !ok {
		e.Why = fmt.Sprintf("No cycle runs for that track on %s, so there is no week yet.", from.Long())
		return e
	}
	e.Lacks = k.lacks(a.ID, c, track, from)
	e.Why = fmt.Sprintf("From %s: %s. %s", from.Long(), daysChange(len(e.Before.Days), len(e.After.Days)), lacking(e.Lacks))
	return e
}

// daysChange says how many days a week somebody trains, before and after.
func daysChange(before, after int) string {
	if before == after {
		return count(after, "day") + " a week, as before"
	}
	return fmt.Sprintf("%s a week instead of %d", count(after, "day"), before)
}

func lacking(lacks []Lack) string {
	if len(lacks) == 0 {
		return "Every rep max that the plan asks for is known."
	}
	return fmt.Sprintf("%s to find or estimate.", count(len(lacks), "rep max"))
}

// lacks lists the rep maxes that a track's plan asks for from a day on and that
// an athlete has no result for, in the order in which they are needed.
func (k Calendar) lacks(athlete gym.ID, c gym.Cycle, track gym.ID, from day.Date) []Lack {
	type repMax struct {
		lift gym.LiftKey
		reps int
	}
	seen := map[repMax]bool{}
	for _, r := range k.book.Results {
		if r.Athlete == athlete && r.Void == nil {
			seen[repMax{r.Lift, r.Reps}] = true
		}
	}
	var list []Lack
	need := func(on day.Date, lift gym.LiftKey, reps int) {
		if lift != "" && !seen[repMax{lift, reps}] {
			seen[repMax{lift, reps}] = true
			list = append(list, Lack{lift, reps, on})
		}
	}
	p, _ := c.Plan(track)
	for i := range p.Days {
		d := &p.Days[i]
		if on := (At{track, d.Week, d.Weekday}).Date(c); on >= from && d.Kind == gym.MainDay {
			need(on, d.Main.Lift, countedFrom(d.Main))
			need(on, cmp.Or(d.Second.OfLift, d.Second.Lift), d.Second.OfReps)
		}
	}
	return list
}

// countedFrom returns the rep count whose record a main lift is counted from.
func countedFrom(m gym.MainLift) int {
	if len(m.Scheme) > 0 {
		return 1
	}
	return m.Reps
}
