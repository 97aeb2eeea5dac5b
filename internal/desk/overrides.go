package desk

import (
	"fmt"
	"strings"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/tier"
)

// Overrides returns what the coach decided for an athlete and did not take back,
// the oldest first.
func (d *Desk) Overrides(athlete gym.ID) []gym.Override {
	if d.index.overrides[athlete] == 0 {
		return nil
	}
	var kept []gym.Override
	for _, o := range d.book.Overrides {
		if o.Athlete == athlete && o.Void == nil {
			kept = append(kept, o)
		}
	}
	return kept
}

// KeepOverride keeps what the coach decided instead of a suggestion, from now on.
func (d *Desk) KeepOverride(o gym.Override) error {
	a, ok := d.Athlete(o.Athlete)
	if !ok {
		return fmt.Errorf("keep override: there is no such athlete")
	}
	if o.ID == "" {
		o.ID = d.NewID()
	}
	o.Made = d.now()
	if err := o.Valid(); err != nil {
		return err
	}
	return d.do("decide a load for "+a.Name, gym.AddOverride{Override: o})
}

// VoidOverride lets the suggestion stand again.
func (d *Desk) VoidOverride(id gym.ID) error {
	return d.do("take an override back", gym.VoidOverride{ID: id, Void: gym.Void{At: d.now(), Reason: "taken back"}})
}

// Comeback makes every conditioning load of an athlete lighter for 1 to 4 weeks
// from today, as [tier.Comeback] says.
func (d *Desk) Comeback(athlete gym.ID, weeks int) error {
	a, ok := d.Athlete(athlete)
	if !ok {
		return fmt.Errorf("plan comeback: there is no such athlete")
	}
	overrides, err := tier.Comeback(athlete, d.Today(), weeks)
	if err != nil {
		return err
	}
	var changes []gym.Change
	for _, o := range overrides {
		o.ID, o.Made = d.NewID(), d.now()
		changes = append(changes, gym.AddOverride{Override: o})
	}
	return d.do(fmt.Sprintf("go lighter with %s for %s", a.Name, count(weeks, "week")), changes...)
}

// ComebackText says what [Desk.Comeback] does and where it comes from.
func ComebackText() string {
	weeks, err := tier.Comeback("", 1, 4)
	if err != nil {
		return ""
	}
	var cuts []string
	for _, o := range weeks {
		cuts = append(cuts, fmt.Sprintf("%.0f", 100*(1-o.Share)))
	}
	last := len(cuts) - 1
	return fmt.Sprintf("Every conditioning load is lighter by %s and %s %% in weeks 1 to %d. The cuts are our reading of the %s, which sets them for the volume.",
		strings.Join(cuts[:last], ", "), cuts[last], len(cuts), tier.ComebackSource)
}

// OverrideText says what an override decides, for how long, and why: "12 kg until 3
// Jun: sore wrist".
func OverrideText(o gym.Override) string {
	what := fmt.Sprintf("%.0f %% of the load", 100*o.Share)
	switch {
	case o.Load > 0:
		what = o.Load.In(o.Unit)
	case o.Tier != "":
		what = "the " + string(o.Tier) + " tier"
	}
	if o.Movement == "" {
		what += " for every movement"
	}
	if o.Until != day.None {
		what += " until " + o.Until.Short()
	}
	return what + ": " + o.Reason
}
