package desk

import (
	"slices"
	"strings"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Place is something a coach can be taken to.
type Place struct {
	Name string // what the coach reads and types
	Kind string // "Athlete", "Day"
	Room string // where it is looked at
	ID   gym.ID
	On   day.Date
}

// Athletes who have left come last.
var statusOrder = []gym.Status{gym.Active, gym.Paused, gym.Archived}

// Places returns every athlete, and the days of a fortnight around today.
func (d *Desk) Places() []Place {
	athletes := slices.Clone(d.book.Athletes)
	slices.SortStableFunc(athletes, func(a, b gym.Athlete) int {
		if by := slices.Index(statusOrder, a.Status) - slices.Index(statusOrder, b.Status); by != 0 {
			return by
		}
		return strings.Compare(strings.ToLower(a.Name), strings.ToLower(b.Name))
	})
	var places []Place
	for _, a := range athletes {
		places = append(places, Place{Name: a.Name, Kind: "Athlete", Room: "Roster", ID: a.ID})
	}
	for i := -7; i <= 7; i++ {
		on := d.Today().Add(i)
		places = append(places, Place{Name: on.Long(), Kind: "Day", Room: "Cycle", ID: d.cycleOf(on), On: on})
	}
	return places
}

func (d *Desk) cycleOf(on day.Date) gym.ID {
	for _, c := range d.book.Cycles {
		if c.WeekOf(on) > 0 {
			return c.ID
		}
	}
	return ""
}
