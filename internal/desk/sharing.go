package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/plates"
	"windlass/internal/station"
)

// Sharing says how a class shares its bars, and what does not work out.
type Sharing struct {
	Moves int // plates pushed on or pulled off, at all stations together
	Notes []SharingNote
}

// SharingNote is one thing that does not work out, with what would mend it.
type SharingNote struct {
	Text string
	Mend string                   // what the one action does; empty where there is none
	Do   func(class gym.ID) error // the action
}

// Sharing judges a class where its lifters stand: who has no station, which
// windows are too short, and which plates run out.
func (d *Desk) Sharing(c gym.Class) Sharing {
	if len(c.Lifters) == 0 || len(c.Climb.Rungs) == 0 {
		return Sharing{}
	}
	s, err := d.seating(c, placesOf(c))
	if err != nil {
		return Sharing{Notes: []SharingNote{{Text: sentence(err)}}}
	}
	if len(s.lifters) == 0 {
		return Sharing{}
	}
	plan, err := s.solver.Judge(s.lifters)
	if err != nil {
		return Sharing{Notes: []SharingNote{{Text: sentence(err)}}}
	}
	sharing := Sharing{Moves: plan.Moves}
	sharing.Notes = append(sharing.Notes, s.standing(plan)...)
	sharing.Notes = append(sharing.Notes, d.late(c, s, plan)...)
	sharing.Notes = append(sharing.Notes, s.short(plan)...)
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

func sentence(err error) string {
	text := err.Error()
	return strings.ToUpper(text[:1]) + text[1:] + "."
}

func (s seating) standing(plan station.Plan) []SharingNote {
	var notes []SharingNote
	for _, x := range plan.Standing {
		notes = append(notes, SharingNote{Text: fmt.Sprintf("%s has no station: %s.", s.lifters[x.Lifter].Name, x.Why)})
	}
	return notes
}

// late says where the clock cannot be kept, and offers what helps.
func (d *Desk) late(c gym.Class, s seating, plan station.Plan) []SharingNote {
	var notes []SharingNote
	for at, g := range plan.Groups {
		worst := 0
		for w := range g.Windows {
			if g.Windows[w].Over() > g.Windows[worst].Over() {
				worst = w
			}
		}
		if len(g.Windows) > 0 && g.Windows[worst].Over() > 0 {
			notes = append(notes, SharingNote{Text: fmt.Sprintf("%s needs %d s more than rung %d has.",
				s.stations[at].Name, g.Windows[worst].Over(), worst+1)})
		}
	}
	if len(notes) == 0 && len(plan.Standing) == 0 {
		return nil
	}
	mends, err := s.solver.Mends(s.lifters)
	if err != nil {
		return notes
	}
	return append(notes, d.mends(c, s, mends)...)
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
				Text: fmt.Sprintf("%s at %s would leave %d s short in all.", s.lifters[m.Lifters[0]].Name, s.stations[m.To].Name, m.Over),
				Mend: "Move",
				Do:   func(class gym.ID) error { return d.MoveLifter(class, who, to) },
			})
		case station.Longer:
			if c.Clock.Started() {
				continue
			}
			notes = append(notes, SharingNote{
				Text: fmt.Sprintf("Rung %d could last %d s longer, and the climb with it.", m.Window+1, m.Seconds),
				Mend: "Make it longer",
				Do:   func(class gym.ID) error { return d.LengthenRung(class, m.Window, m.Seconds) },
			})
		case station.Wave:
			notes = append(notes, SharingNote{Text: "Or a second wave: " + s.names(m.Lifters) + " lift after the others."})
		}
	}
	return notes
}

func (s seating) names(lifters []int) string {
	var names []string
	for _, i := range lifters {
		names = append(names, s.lifters[i].Name)
	}
	return strings.Join(names, ", ")
}

// short says which plates run out. The same loads out of other plates are no
// trouble; else it names the cheapest way that the coach has.
func (s seating) short(plan station.Plan) []SharingNote {
	var notes []SharingNote
	for _, c := range s.solver.Clashes(plan) {
		text := fmt.Sprintf("At rung %d all stations together want %d pairs of %s; the gym has %d.", c.Window+1, c.Need, c.Disc, c.Have)
		if slices.ContainsFunc(notes, func(n SharingNote) bool { return strings.HasPrefix(n.Text, text) }) {
			continue
		}
		notes = append(notes, SharingNote{Text: text + " " + s.wayOut(c)})
	}
	return notes
}

func (s seating) wayOut(c station.Clash) string {
	way := c.Ways[0]
	var at []string
	for _, i := range way.Bars {
		at = append(at, s.stations[i].Name)
	}
	names := strings.Join(at, " and ")
	switch way.Out {
	case plates.Restack:
		return "Other plates make the same loads."
	case plates.Swap:
		return names + " take each other's turn."
	case plates.Reload:
		return names + " take the next load the plates allow."
	}
	return names + " wait until the others have lifted."
}

// LengthenRung makes one rung of a class's climb longer, and moves the later ones.
func (d *Desk) LengthenRung(class gym.ID, rung, seconds int) error {
	c, ok := d.Class(class)
	if !ok || rung < 0 || rung >= len(c.Climb.Rungs) {
		return fmt.Errorf("lengthen rung %d: the class has no such rung", rung+1)
	}
	plan := c.Climb
	plan.Rungs = slices.Clone(plan.Rungs)
	for i := rung; i < len(plan.Rungs); i++ {
		plan.Rungs[i].Until += seconds
		if i > rung {
			plan.Rungs[i].At += seconds
		}
	}
	return d.KeepClimb(class, plan)
}
