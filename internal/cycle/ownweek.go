package cycle

import (
	"cmp"
	"fmt"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// OwnWeek returns an athlete's week around a date: the days of their track on the
// weekdays that they have, with the days that the coach set by hand, around
// closed days. An athlete who said nothing follows the track.
func (k Calendar) OwnWeek(a gym.Athlete, on day.Date) Week {
	return k.weekOf(wishesOf(a), k.TrackOf(a.ID, on), on)
}

// OwnAsk returns what an athlete asks of the week around a date, for [Arrange]
// and [JudgeHand]; closed days are left in. It is empty without a cycle.
func (k Calendar) OwnAsk(a gym.Athlete, on day.Date) Ask {
	return k.ask(wishesOf(a), k.TrackOf(a.ID, on), on)
}

// wishes are all that makes one athlete's week differ from another's.
type wishes struct {
	free day.Weekdays
	want int
	hand [7]gym.HandDay
	set  int // how many of hand
}

func wishesOf(a gym.Athlete) wishes {
	w := wishes{free: a.Free, want: a.Want}
	w.set = copy(w.hand[:], a.Hand)
	return w
}

func (k Calendar) ask(w wishes, track gym.ID, on day.Date) Ask {
	c, ok := k.CycleOn(track, on)
	if !ok {
		return Ask{}
	}
	ask := k.askOf(c, track, on)
	ask.Want, ask.Hand = w.want, w.hand[:w.set]
	if w.free != 0 {
		ask.Free = w.free
	}
	return ask
}

// weekOf is OwnWeek without the athlete.
func (k Calendar) weekOf(w wishes, track gym.ID, on day.Date) Week {
	if w == (wishes{}) {
		return k.TrackWeek(track, on)
	}
	c, ok := k.CycleOn(track, on)
	if !ok {
		return k.TrackWeek(track, on) // says that there is none
	}
	ask := k.ask(w, track, on)
	first := firstOfWeek(c, on)
	closed := closedDays(first, k.book.Closures)
	if closed == 0 {
		return Arrange(ask)
	}
	ask.Free &^= closed
	ask.Hand = slices.DeleteFunc(slices.Clone(ask.Hand), func(h gym.HandDay) bool { return closed.Has(h.On) })
	before, after := first.Add(-1), first.Add(7)
	e := edges{from: first.Weekday(), before: regionOn(k.weekOf(w, track, before), before)}
	if !isClosed(after, k.book.Closures) {
		// The week after gives way to this one, so its own closures do not count.
		e.after = regionOn(Arrange(k.ask(w, track, after)), after)
	}
	return closedWeek(closed, arrange(ask, &e))
}

// Due is an athlete whose own week has a training day on a date.
type Due struct {
	Athlete gym.ID
	Track   gym.ID
	Plan    gym.DayPlan
}

// Expected returns who should come to a class on a date, in the order of the
// roster: active athletes of its tracks whose own week trains on that weekday.
func (k Calendar) Expected(slot gym.Slot, on day.Date) []Due {
	if on.Weekday() != slot.Weekday || isClosed(on, k.book.Closures) {
		return nil
	}
	type key struct {
		wishes
		track gym.ID
	}
	plans := map[key]gym.DayPlan{} // most athletes want what others want too
	var due []Due
	for _, a := range k.book.Athletes {
		track := k.TrackOf(a.ID, on)
		if a.Status != gym.Active || track == "" || (len(slot.Tracks) > 0 && !slices.Contains(slot.Tracks, track)) {
			continue
		}
		w := key{wishesOf(a), track}
		plan, ok := plans[w]
		if !ok {
			plan = k.planOf(track, on, k.weekOf(w.wishes, track, on))
			plans[w] = plan
		}
		if plan.Kind != gym.RestDay {
			due = append(due, Due{a.ID, track, plan})
		}
	}
	return due
}

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
	e.Why = fmt.Sprintf("From %s: %s a week instead of %d. %s", from.Long(), count(len(e.After.Days), "day"), len(e.Before.Days), lacking(e.Lacks))
	return e
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
		if on := dateOf(c, d); on >= from && d.Kind == gym.MainDay {
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

// dateOf returns the date of a day plan.
func dateOf(c gym.Cycle, d *gym.DayPlan) day.Date {
	return c.Start.Add(7*(d.Week-1) + place(d.Weekday, c.Start.Weekday()))
}
