package desk

import (
	"fmt"

	"windlass/internal/climb"
	"windlass/internal/gym"
)

// NeedKind says what a need is about.
type NeedKind string

// The kinds of need, the most pressing first.
const (
	NeedRestriction NeedKind = "restriction" // touches what the athlete does today
	NeedNumber      NeedKind = "no number"   // neither record nor estimate for today's lift
	NeedStale       NeedKind = "old number"  // the base is old, or older than a break
	NeedTrack       NeedKind = "no track"    // the athlete is on none
)

// Need is something that wants the coach before class.
type Need struct {
	Kind    NeedKind
	Athlete gym.ID
	Name    string
	Text    string // one sentence
}

// Needs returns what wants the coach today, the most pressing kind first, in each
// kind in the order of the roster.
func (d *Desk) Needs() []Need {
	byKind := map[NeedKind][]Need{}
	seen := map[gym.ID]bool{}
	note := func(kind NeedKind, a gym.Athlete, text string) {
		byKind[kind] = append(byKind[kind], Need{Kind: kind, Athlete: a.ID, Name: a.Name, Text: text})
	}
	for _, m := range d.MeetingsNow() {
		for _, due := range m.Expected {
			if a, ok := d.Athlete(due.Athlete); ok && !seen[a.ID] && m.State != Done {
				seen[a.ID] = true
				d.needsOf(a, withPiece(due.Plan, m.Class, due.Track), note)
			}
		}
	}
	for _, a := range d.book.Athletes {
		if a.Status == gym.Active && d.TrackOn(a.ID, d.Today()).ID == "" {
			note(NeedTrack, a, "Trains here, but is on no track.")
		}
	}
	var all []Need
	for _, kind := range []NeedKind{NeedRestriction, NeedNumber, NeedStale, NeedTrack} {
		all = append(all, byKind[kind]...)
	}
	return all
}

func (d *Desk) needsOf(a gym.Athlete, plan gym.DayPlan, note func(NeedKind, gym.Athlete, string)) {
	lift, ok := d.Lift(plan.Main.Lift)
	for _, r := range d.Restrictions(a.ID, d.Today()) {
		if !ok || r.Touches(d.Today(), lift.Region) {
			note(NeedRestriction, a, r.Text)
		}
	}
	what := TrackDay{Plan: plan, Lift: lift.Name}.Work()
	switch {
	case !ok:
		return
	case len(plan.Main.Scheme) > 0:
		if row := d.bySets(gym.Lifter{Athlete: a.ID}, lift.Key, plan.Main.Scheme[0]); row.Load == "" {
			note(NeedNumber, a, what+": "+row.Why+".")
		}
		return
	case plan.Main.Reps == 0:
		return
	}
	switch base := d.BaseFor(a, lift, plan.Main.Reps); {
	case base.Load == 0:
		note(NeedNumber, a, what+": neither record nor estimate.")
	case base.Stale != nil:
		note(NeedStale, a, staleText(what, base.Stale))
	}
}

func staleText(what string, s *climb.Stale) string {
	if s.Break {
		return what + ": older than the last break."
	}
	return fmt.Sprintf("%s: %d weeks old.", what, s.Weeks)
}
