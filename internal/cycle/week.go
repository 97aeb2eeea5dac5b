package cycle

import (
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Session is one training day of a track's week, as far as spacing goes.
type Session struct {
	Plan   day.Weekday `json:"plan"`  // the weekday on which the track does it
	Title  string      `json:"title"` // unique in the week
	Kind   gym.DayKind `json:"kind"`
	Lift   gym.LiftKey `json:"lift"`
	Region gym.Region  `json:"region"` // empty for recovery and technique days
}

// Sessions returns the training days of a track's week, in the order of the
// cycle's week; rest days are left out. A cycle without that track or week has
// none.
func Sessions(c gym.Cycle, track gym.ID, week int, lifts []gym.Lift) []Session {
	return sessionsOf(c, track, week, knowLifts(lifts))
}

func sessionsOf(c gym.Cycle, track gym.ID, week int, lifts map[gym.LiftKey]*gym.Lift) []Session {
	var list []Session
	for i := range c.Tracks {
		if c.Tracks[i].Track != track {
			continue
		}
		for j := range c.Tracks[i].Days {
			d := &c.Tracks[i].Days[j]
			// Of two plans for one day the first counts, as in TrackPlan.Day.
			if d.Week == week && d.Kind != gym.RestDay && onWeek(d.Weekday) && sessionOf(list, d.Weekday) < 0 {
				list = append(list, session(d, lifts))
			}
		}
	}
	first := c.Start.Weekday()
	slices.SortFunc(list, func(a, b Session) int { return place(a.Plan, first) - place(b.Plan, first) })
	return list
}

// sessionOf returns the index of the session that a track does on a weekday, or -1.
func sessionOf(list []Session, w day.Weekday) int {
	return slices.IndexFunc(list, func(s Session) bool { return s.Plan == w })
}

func session(d *gym.DayPlan, lifts map[gym.LiftKey]*gym.Lift) Session {
	return Session{
		Plan: d.Weekday, Title: d.Title, Kind: d.Kind, Lift: d.Main.Lift,
		Region: loadedRegion(d, lifts[d.Main.Lift]),
	}
}

// onWeek reports whether w is a weekday at all.
func onWeek(w day.Weekday) bool { return day.Monday <= w && w <= day.Sunday }

// place returns how many days after the week's first day a weekday comes.
func place(w, first day.Weekday) int { return int(w-first+7) % 7 }
