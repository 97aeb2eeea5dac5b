package desk

import (
	"cmp"
	"fmt"
	"slices"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// MeetingState says how far a class of a day has come.
type MeetingState string

// The states of a meeting.
const (
	ToCome  MeetingState = "to come"
	OnFloor MeetingState = "on the floor"
	Done    MeetingState = "done"
	Missed  MeetingState = "not held"
)

// Meeting is one class of a day: of the timetable, opened, or both.
type Meeting struct {
	Slot     gym.Slot
	Class    gym.Class // zero until it is opened
	State    MeetingState
	Tracks   []TrackDay
	Expected []cycle.Due
}

// TrackDay is what a track does on a day.
type TrackDay struct {
	Track gym.Track
	Plan  gym.DayPlan // with the main lift that the class was given, once it is opened
	Lift  string      // the main lift as the coach reads it; empty for none
}

// Work says what the day's main lift asks for: "Back squat 3RM", or "Snatch by
// percentages"; nothing without one.
func (t TrackDay) Work() string {
	switch {
	case t.Lift == "":
		return ""
	case len(t.Plan.Main.Scheme) > 0:
		return t.Lift + " by percentages"
	}
	return fmt.Sprintf("%s %dRM", t.Lift, t.Plan.Main.Reps)
}

// MeetingsNow returns what a coach can open or go on with today: the classes of the
// day, and before them one of another day that is not finished. A class goes on
// past midnight, and a machine may be told another time zone.
func (d *Desk) MeetingsNow() []Meeting {
	today := d.Meetings(d.Today())
	live, ok := d.LiveClass()
	if !ok || live.On == d.Today() {
		return today
	}
	return append([]Meeting{d.meeting(d.slotNamed(live), live, live.On)}, today...)
}

// slotNamed is the place of a class in the timetable, as the class has it where
// the timetable has none any more.
func (d *Desk) slotNamed(c gym.Class) gym.Slot {
	for _, s := range d.book.Slots {
		if s.ID == c.Slot {
			return s
		}
	}
	return gym.Slot{Name: c.Name, At: c.At, Weekday: c.On.Weekday()}
}

// Meetings returns the classes of a day in order of their hour; none on a closed
// day, unless one was opened.
func (d *Desk) Meetings(on day.Date) []Meeting {
	var meetings []Meeting
	_, closed := d.ClosedOn(on)
	for _, s := range d.book.Slots {
		class, opened := d.classOf(s.ID, on)
		if s.Weekday != on.Weekday() || closed && !opened {
			continue
		}
		meetings = append(meetings, d.meeting(s, class, on))
	}
	for _, c := range d.book.Classes {
		if c.On == on && c.Slot == "" {
			slot := gym.Slot{Name: c.Name, At: c.At, Weekday: on.Weekday()}
			meetings = append(meetings, d.meeting(slot, c, on))
		}
	}
	slices.SortStableFunc(meetings, func(a, b Meeting) int { return cmp.Compare(a.Slot.At, b.Slot.At) })
	return meetings
}

func (d *Desk) classOf(slot gym.ID, on day.Date) (gym.Class, bool) {
	for i := len(d.book.Classes) - 1; i >= 0; i-- {
		if c := d.book.Classes[i]; c.Slot == slot && c.On == on {
			return c, true
		}
	}
	return gym.Class{}, false
}

func (d *Desk) meeting(s gym.Slot, c gym.Class, on day.Date) Meeting {
	m := Meeting{Slot: s, Class: c, State: d.meetingState(s, c, on)}
	for _, t := range d.Tracks() {
		if len(s.Tracks) > 0 && !slices.Contains(s.Tracks, t.ID) {
			continue
		}
		plan := withPiece(d.PlanOn(t.ID, on), c, t.ID)
		lift, _ := d.Lift(plan.Main.Lift)
		m.Tracks = append(m.Tracks, TrackDay{Track: t, Plan: plan, Lift: lift.Name})
	}
	if s.ID != "" {
		m.Expected = d.Expected(s, on)
	}
	return m
}

// withPiece is a day plan with the main lift that a class gave the track, which the
// coach may have changed.
func withPiece(plan gym.DayPlan, c gym.Class, track gym.ID) gym.DayPlan {
	if p, ok := c.Piece(track); ok {
		plan.Main.Lift, plan.Main.Reps, plan.Main.Scheme = p.Lift, p.Reps, p.Scheme
	}
	return plan
}

func (d *Desk) meetingState(s gym.Slot, c gym.Class, on day.Date) MeetingState {
	switch {
	case c.Stage == gym.Finished:
		return Done
	case c.ID != "":
		return OnFloor
	case d.now().Sub(on.At(s.At, d.now().Location())).Minutes() > float64(max(s.Minutes, 60)):
		return Missed
	}
	return ToCome
}

// usualWeeks is how far back a habit of coming is looked for.
const usualWeeks = 8

// Expected returns who should come to a class: those whose own week trains on
// that day, except athletes who in the last eight weeks came more often at
// another hour of the same weekday.
func (d *Desk) Expected(s gym.Slot, on day.Date) []cycle.Due {
	due := d.Calendar().Expected(s, on)
	habits := d.habits(on)
	return slices.DeleteFunc(due, func(x cycle.Due) bool {
		usual, known := habits[x.Athlete]
		return known && usual != s.ID && d.runs(usual, x.Track, on)
	})
}

// runs reports whether a slot of the timetable takes a track on that weekday.
func (d *Desk) runs(slot, track gym.ID, on day.Date) bool {
	for _, s := range d.book.Slots {
		if s.ID == slot {
			return s.Weekday == on.Weekday() && (len(s.Tracks) == 0 || slices.Contains(s.Tracks, track))
		}
	}
	return false
}

// habits tells for each athlete the slot of a weekday that they came to most in
// the weeks before a day; of two equally often, the later class counts.
func (d *Desk) habits(on day.Date) map[gym.ID]gym.ID {
	type visit struct{ athlete, slot gym.ID }
	times := map[visit]int{}
	usual := map[gym.ID]gym.ID{}
	for _, c := range d.book.Classes {
		if c.Slot == "" || c.On >= on || on.Since(c.On) > 7*usualWeeks || c.On.Weekday() != on.Weekday() {
			continue
		}
		for _, l := range c.Lifters {
			v := visit{l.Athlete, c.Slot}
			times[v]++
			if times[v] >= times[visit{l.Athlete, usual[l.Athlete]}] {
				usual[l.Athlete] = c.Slot
			}
		}
	}
	return usual
}
