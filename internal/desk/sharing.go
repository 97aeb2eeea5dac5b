package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/climb"
	"windlass/internal/clock"
	"windlass/internal/gym"
	"windlass/internal/station"
)

// Sharing says how a class shares its bars, and what does not work out.
type Sharing struct {
	Moves  int // plates pushed on or pulled off, at all stations together
	Judged int // lifters who need a bar for the climb
	Aside  int // lifters without a climb today, who need bars of their own
	Notes  []SharingNote
}

// SharingNote is one thing that does not work out, with the cheapest mend that was
// found.
type SharingNote struct {
	Text  string
	Err   error                    // instead of a text: why nobody can be seated
	Aside bool                     // another way, not a fault
	Mend  string                   // what the one action does; empty where there is none
	Anew  bool                     // the action shares the stations anew
	Does  []string                 // what the action changes, a sentence each
	Done  string                   // what to say afterwards where it is not that
	Do    func(class gym.ID) error // the action, one step of undo
}

// fewChanges is how many changes of an action are told one by one.
const fewChanges = 4

// Changes tells what the action changes, the first few one by one.
func (n SharingNote) Changes() []string {
	if len(n.Does) <= fewChanges {
		return n.Does
	}
	first := slices.Clone(n.Does[:fewChanges-1])
	return append(first, fmt.Sprintf("And %d changes more.", len(n.Does)-len(first)))
}

// Said is what to say when the action was done.
func (n SharingNote) Said() string {
	if n.Done != "" {
		return n.Done
	}
	return strings.Join(n.Changes(), " ")
}

// rungToCome is the first rung that can still be changed: the present one, and none
// after the end.
func (d *Desk) rungToCome(c gym.Class) int {
	m := clock.Climb(c.Climb, c.Clock, d.now())
	switch {
	case !m.Started:
		return 0
	case m.Finished:
		return len(c.Climb.Rungs)
	}
	return m.Rung
}

// Sharing judges a class where its lifters stand: who has no station, and for the
// rungs that are to come, which are too short and which plates run out.
func (d *Desk) Sharing(c gym.Class) Sharing {
	from := d.rungToCome(c)
	if len(c.Lifters) == 0 || from >= len(c.Climb.Rungs) {
		return Sharing{}
	}
	s, err := d.seating(c, placesOf(c))
	if err != nil {
		return Sharing{Notes: []SharingNote{{Err: err}}}
	}
	sharing := Sharing{Judged: len(s.lifters), Aside: withoutClimb(c)}
	sharing.Notes = append(sharing.Notes, d.numberless(c)...)
	if len(s.lifters) == 0 {
		return sharing
	}
	plan, err := s.solver.Judge(s.lifters)
	if err != nil {
		return Sharing{Notes: []SharingNote{{Err: err}}}
	}
	sharing.Moves = plan.Moves
	sharing.Notes = append(sharing.Notes, d.unseated(c, s, plan)...)
	sharing.Notes = append(sharing.Notes, d.shortOnce(c, from)...)
	sharing.Notes = append(sharing.Notes, d.late(c, s, plan, from)...)
	sharing.Notes = append(sharing.Notes, d.exceptional(c, from)...)
	sharing.Notes = append(sharing.Notes, d.bare(c)...)
	return sharing
}

// withoutClimb counts who lifts by percentages or not at all.
func withoutClimb(c gym.Class) (n int) {
	for _, l := range c.Lifters {
		if l.Lift == "" {
			n++
		}
	}
	return n
}

// numberless names the lifters who cannot be seated for want of a number.
func (d *Desk) numberless(c gym.Class) (notes []SharingNote) {
	for _, l := range c.Lifters {
		if l.Lift != "" && l.Base == 0 && l.Start == 0 {
			a, _ := d.Athlete(l.Athlete)
			notes = append(notes, SharingNote{Text: a.Name + " has no number for the lift and no station: type a first load, and the climb finds the rest."})
		}
	}
	return notes
}

// placesOf is how many share a station at most, by the fullest.
func placesOf(c gym.Class) int {
	most, at := usualPlaces, map[int]int{}
	for _, l := range c.Lifters {
		if l.Station >= 0 {
			at[l.Station]++
			most = max(most, at[l.Station])
		}
	}
	return most
}

// bare names the stations that have no bar, and the lifters who begin under theirs.
func (d *Desk) bare(c gym.Class) []SharingNote {
	var notes []SharingNote
	for _, s := range d.book.Equipment.Stations {
		if _, ok := d.book.Equipment.Bar(s.Bar); !ok {
			notes = append(notes, SharingNote{Text: s.Name + " has no bar and seats nobody: give it one in the Gym room."})
		}
	}
	var under []string
	for _, l := range c.Lifters {
		a, _ := d.Athlete(l.Athlete)
		if path, err := d.Path(c, l); err == nil && slices.ContainsFunc(path.Steps, func(s climb.Step) bool { return s.Under }) {
			under = append(under, a.Name)
		}
	}
	switch {
	case len(under) == 1:
		notes = append(notes, SharingNote{Aside: true, Text: under[0] + " begins with the bar alone, which is more than the climb says."})
	case len(under) > 1:
		notes = append(notes, SharingNote{Aside: true, Text: count(len(under), "lifter") + " begin with the bar alone, which is more than the climb says."})
	}
	return notes
}

// unseated names who has no station: in one note with the mend where sharing anew
// helps before the clock starts, else one by one, with the reason.
func (d *Desk) unseated(c gym.Class, s seating, plan station.Plan) []SharingNote {
	if !c.Clock.Started() {
		if w := d.stationless(c, s, plan); w.Mends() {
			return []SharingNote{{Text: w.Text(), Mend: "Share anew", Anew: true, Do: d.ShareStations}}
		}
	}
	var notes []SharingNote
	for _, x := range plan.Standing {
		notes = append(notes, d.seatless(c, s, x))
	}
	return notes
}

// seatless names a lifter without a station, and offers the emptiest where the
// lift is done, with the bar that lies there.
func (d *Desk) seatless(c gym.Class, s seating, x station.Standing) SharingNote {
	who := c.Lifters[s.who[x.Lifter]]
	note := SharingNote{Text: fmt.Sprintf("%s has no station: %s.", s.lifters[x.Lifter].Name, x.Why)}
	at, fewest := -1, mostPlaces
	for i := range d.book.Equipment.Stations {
		n := 0
		for _, other := range c.Lifters {
			if other.Station == i && other.Lift == who.Lift {
				n++
			}
		}
		if n > 0 && n < fewest {
			at, fewest = i, n
		}
	}
	if at < 0 {
		return note
	}
	note.Mend = "Move there"
	note.Does = []string{fmt.Sprintf("%s joins the %s at %s, with the bar there.",
		s.lifters[x.Lifter].Name, count(fewest, "lifter"), d.book.Equipment.Stations[at].Name)}
	note.Do = func(class gym.ID) error { return d.MoveLifter(class, who.Athlete, at) }
	return note
}
