package desk

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// OwnWeek is an athlete's week around today, with the track's week it comes from.
type OwnWeek struct {
	Track    gym.Track
	Week     cycle.Week     // as arranged, with its reason
	Ask      cycle.Ask      // what it was arranged from
	Breaches []cycle.Breach // of days that were set by hand
}

// OwnWeek returns an athlete's own week around today.
func (d *Desk) OwnWeek(athlete gym.ID) OwnWeek {
	a, ok := d.Athlete(athlete)
	if !ok {
		return OwnWeek{}
	}
	k := d.Calendar()
	w := OwnWeek{Track: d.TrackOn(athlete, d.Today()), Week: k.OwnWeek(a, d.Today()), Ask: k.OwnAsk(a, d.Today())}
	if len(a.Hand) > 0 {
		w.Breaches = cycle.JudgeHand(w.judged(a), w.Week)
	}
	return w
}

// judged is what a week is held against: of somebody who named no weekday, a day
// that the coach set is as free as the track's.
func (w OwnWeek) judged(a gym.Athlete) cycle.Ask {
	ask := w.Ask
	for _, h := range a.Hand {
		if a.Free == 0 {
			ask.Free |= day.WeekdaysOf(h.On)
		}
	}
	return ask
}

// SetWishes keeps on which weekdays an athlete can come and how many training days
// they want; no weekday and 0 follow the track.
func (d *Desk) SetWishes(athlete gym.ID, free day.Weekdays, want int) error {
	a, ok := d.Athlete(athlete)
	if !ok {
		return fmt.Errorf("keep own week: there is no such athlete")
	}
	a.Free, a.Want = free, want
	return d.keepWeek(a)
}

// SetHand does a track's day on another weekday of an athlete's week, from now on.
// A day that was set onto the same weekday before gives way.
func (d *Desk) SetHand(athlete gym.ID, plan, on day.Weekday) error {
	a, ok := d.Athlete(athlete)
	if !ok {
		return fmt.Errorf("keep own week: there is no such athlete")
	}
	hand := slices.DeleteFunc(slices.Clone(a.Hand), func(h gym.HandDay) bool { return h.Plan == plan || h.On == on })
	a.Hand = append(hand, gym.HandDay{Plan: plan, On: on})
	slices.SortFunc(a.Hand, func(x, y gym.HandDay) int { return cmp.Compare(x.On, y.On) })
	return d.keepWeek(a)
}

// ClearHand lets all days of an athlete's week be arranged again.
func (d *Desk) ClearHand(athlete gym.ID) error {
	a, ok := d.Athlete(athlete)
	if !ok {
		return fmt.Errorf("keep own week: there is no such athlete")
	}
	a.Hand = nil
	return d.keepWeek(a)
}

func (d *Desk) keepWeek(a gym.Athlete) error {
	if err := a.Valid(); err != nil {
		return err
	}
	return d.do("change the week of "+a.Name, gym.PutAthlete{Athlete: a})
}

// MoveEffect says what moving an athlete to a track from a day on does, before it
// is done.
func (d *Desk) MoveEffect(a gym.Athlete, track gym.ID, from day.Date) cycle.Effect {
	return d.Calendar().MoveEffect(a, track, from)
}

// lacksTold is how many rep maxes a sentence names.
const lacksTold = 6

// LacksText names the rep maxes that an athlete would lack, the first needed
// first.
func (d *Desk) LacksText(lacks []cycle.Lack) string {
	var names []string
	for _, l := range lacks[:min(len(lacks), lacksTold)] {
		names = append(names, fmt.Sprintf("%s %dRM", d.liftName(l.Lift), l.Reps))
	}
	text := strings.Join(names, ", ")
	if more := len(lacks) - len(names); more > 0 {
		text += fmt.Sprintf(" and %d more", more)
	}
	return text + "."
}
