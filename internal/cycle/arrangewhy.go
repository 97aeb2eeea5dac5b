package cycle

import (
	"fmt"
	"slices"
	"strings"
)

// why says in a few sentences what became of the track's week.
func (p *puzzle) why(w Week) string {
	if len(p.ask.Sessions) == 0 {
		return "The track has no training days this week."
	}
	var told []string
	if len(w.Dropped) > 0 {
		told = append(told, p.whyDropped(w))
	}
	if moved := movedDays(w.Days); len(moved) > 0 {
		told = append(told, "Moved: "+strings.Join(moved, ", ")+".")
	}
	if len(p.hand) > 0 {
		told = append(told, "Set by hand: "+titles(sessionsIn(p.hand))+".")
	}
	if len(told) == 0 {
		return "Every day stands on the track's own weekday."
	}
	if len(w.Dropped) == 0 {
		told = slices.Insert(told, 0, fmt.Sprintf("All %s of the track fit.", count(len(w.Days), "day")))
	}
	return strings.Join(told, " ")
}

// whyDropped gives the first reason that alone explains the number of days left.
func (p *puzzle) whyDropped(w Week) string {
	lost := titles(w.Dropped)
	switch {
	case p.ask.Free == 0 && len(p.hand) == 0:
		return "No weekday is free, so nothing fits: " + lost + "."
	case p.ask.Want > 0 && len(w.Days) >= p.ask.Want:
		return fmt.Sprintf("Left out, to keep to %s: %s.", count(p.ask.Want, "day"), lost)
	case len(p.best) == len(p.free):
		return "Left out, because no other weekday is free: " + lost + "."
	}
	return fmt.Sprintf("Left out, because on every weekday left it would stand beside a day for the same region: %s. %s",
		lost, p.beside(w))
}

// beside names the neighbours that keep the first dropped session out.
func (p *puzzle) beside(w Week) string {
	s := w.Dropped[0]
	var names []string
	for _, d := range w.Days {
		if clash(d.Region, s.Region) {
			names = append(names, fmt.Sprintf("%s on %s", d.Title, d.On))
		}
	}
	if len(names) == 0 {
		return "The week before or after stands too near."
	}
	return fmt.Sprintf("%s loads %s, and so does %s.", s.Title, body(s.Region), strings.Join(names, " and "))
}

func movedDays(days []Placed) []string {
	var moved []string
	for _, d := range days {
		if d.On != d.Plan {
			moved = append(moved, fmt.Sprintf("%s from %s to %s", d.Title, d.Plan, d.On))
		}
	}
	return moved
}

func sessionsIn(days []Placed) []Session {
	list := make([]Session, len(days))
	for i, d := range days {
		list[i] = d.Session
	}
	return list
}

func titles(list []Session) string {
	names := make([]string, len(list))
	for i, s := range list {
		names[i] = s.Title
	}
	return strings.Join(names, ", ")
}
