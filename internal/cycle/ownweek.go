package cycle

import (
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
