package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/station"
)

// Sharing says how a class shares its bars, and what does not work out.
type Sharing struct {
	Moves int // plates pushed on or pulled off, at all stations together
	Notes []SharingNote
}

// SharingNote is one thing that does not work out, with what would mend it.
type SharingNote struct {
	Text  string
	Err   error                    // instead of a text: why nobody can be seated
	Aside bool                     // another way, not a fault
	Mend  string                   // what the one action does; empty where there is none
	Anew  bool                     // the action shares the stations anew
	Do    func(class gym.ID) error // the action
}

// Sharing judges a class where its lifters stand: who has no station, which
// windows are too short, and which plates run out.
func (d *Desk) Sharing(c gym.Class) Sharing {
	if len(c.Lifters) == 0 || len(c.Climb.Rungs) == 0 {
		return Sharing{}
	}
	s, err := d.seating(c, placesOf(c))
	if err != nil {
		return Sharing{Notes: []SharingNote{{Err: err}}}
	}
	if len(s.lifters) == 0 {
		return Sharing{}
	}
	plan, err := s.solver.Judge(s.lifters)
	if err != nil {
		return Sharing{Notes: []SharingNote{{Err: err}}}
	}
	sharing := Sharing{Moves: plan.Moves}
	sharing.Notes = append(sharing.Notes, d.unseated(c, s, plan)...)
	sharing.Notes = append(sharing.Notes, d.late(c, s, plan)...)
	sharing.Notes = append(sharing.Notes, d.short(c)...)
	sharing.Notes = append(sharing.Notes, d.bare(c)...)
	return sharing
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
		notes = append(notes, SharingNote{Aside: true, Text: under[0] + " begins under the bar: the bar alone is the lightest load."})
	case len(under) > 1:
		notes = append(notes, SharingNote{Aside: true, Text: count(len(under), "lifter") + " begin under the bar: the bar alone is the lightest load."})
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
		notes = append(notes, SharingNote{Text: fmt.Sprintf("%s has no station: %s.", s.lifters[x.Lifter].Name, x.Why)})
	}
	return notes
}

// late says where the clock cannot be kept, and offers what helps.
func (d *Desk) late(c gym.Class, s seating, plan station.Plan) []SharingNote {
	short := shortfalls(plan)
	if len(short.rungs) == 0 && len(plan.Standing) == 0 {
		return nil
	}
	var notes []SharingNote
	if len(short.rungs) > 0 {
		note := SharingNote{Text: fmt.Sprintf("The clock cannot be kept: %s too short, by %d s at %s.",
			listed("rung", short.rungs, len(short.by)), short.worst, s.stations[short.at].Name)}
		if !c.Clock.Started() {
			longer := lengthened(c.Climb, short.by)
			note.Text += " Made long enough, the climb takes " + climb.Time(longer.Rungs[len(longer.Rungs)-1].Until) + "."
			note.Mend = "Lengthen the rungs"
			note.Do = func(class gym.ID) error { return d.KeepClimb(class, longer) }
		}
		notes = append(notes, note)
	}
	mends, err := s.solver.Mends(s.lifters)
	if err != nil {
		return notes
	}
	return append(notes, d.mends(c, s, mends)...)
}

// shortfall is where and by how much a class's windows are too short.
type shortfall struct {
	by    []int // seconds, for each rung
	rungs []int // from 1, those that are too short
	worst int   // seconds
	at    int   // the station of the worst
}

func shortfalls(plan station.Plan) shortfall {
	var f shortfall
	for at, g := range plan.Groups {
		if f.by == nil {
			f.by = make([]int, len(g.Windows))
		}
		for w := range g.Windows {
			over := g.Windows[w].Over()
			f.by[w] = max(f.by[w], over)
			if over > f.worst {
				f.worst, f.at = over, at
			}
		}
	}
	for w, by := range f.by {
		if by > 0 {
			f.rungs = append(f.rungs, w+1)
		}
	}
	return f
}

// listed writes "rung 2 is", "rungs 1, 2 and 4 are", "all rungs are".
func listed(noun string, numbers []int, of int) string {
	if len(numbers) == of {
		return "all " + noun + "s are"
	}
	if len(numbers) == 1 {
		return fmt.Sprintf("%s %d is", noun, numbers[0])
	}
	var words []string
	for _, n := range numbers[:len(numbers)-1] {
		words = append(words, fmt.Sprint(n))
	}
	return fmt.Sprintf("%ss %s and %d are", noun, strings.Join(words, ", "), numbers[len(numbers)-1])
}

// lengthened is a climb with so many more seconds in each rung.
func lengthened(plan gym.ClimbPlan, by []int) gym.ClimbPlan {
	plan.Rungs = slices.Clone(plan.Rungs)
	later := 0
	for i := range plan.Rungs {
		plan.Rungs[i].At += later
		later += by[i]
		plan.Rungs[i].Until += later
	}
	return plan
}

// mends turns what would help into actions; a second wave is the coach's to call.
func (d *Desk) mends(c gym.Class, s seating, mends []station.Mend) []SharingNote {
	var notes []SharingNote
	for _, m := range mends {
		switch m.Do {
		case station.Move:
			who := c.Lifters[s.who[m.Lifters[0]]].Athlete
			to := s.where[m.To]
			notes = append(notes, SharingNote{
				Text:  fmt.Sprintf("One move helps most: %s to %s.", s.lifters[m.Lifters[0]].Name, s.stations[m.To].Name),
				Aside: true, Mend: "Move",
				Do: func(class gym.ID) error { return d.MoveLifter(class, who, to) },
			})
		case station.Wave:
			notes = append(notes, SharingNote{Aside: true, Text: "Or let a second wave climb after the others: " + s.names(m.Lifters) + "."})
		}
	}
	return notes
}

// fewNames is how many names a sentence lists.
const fewNames = 3

func (s seating) names(lifters []int) string {
	if len(lifters) > fewNames {
		return count(len(lifters), "lifter")
	}
	var names []string
	for _, i := range lifters {
		names = append(names, s.lifters[i].Name)
	}
	return strings.Join(names, ", ")
}

// short says which plates run out, and what way the coach has.
func (d *Desk) short(c gym.Class) []SharingNote {
	boards := d.Boards()
	var notes []SharingNote
	for _, clash := range boards.Clashes(boards.Board(c)) {
		notes = append(notes, SharingNote{Text: clash.Text(), Aside: clash.Restack})
	}
	return notes
}
