package desk

import (
	"fmt"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/tier"
)

// Overrides returns what the coach decided for an athlete and did not take back,
// the oldest first.
func (d *Desk) Overrides(athlete gym.ID) []gym.Override {
	return slices.DeleteFunc(d.overridesOf(athlete), func(o gym.Override) bool { return o.Void != nil })
}

// overridesOf returns what was ever decided for an athlete, the oldest first.
func (d *Desk) overridesOf(athlete gym.ID) []gym.Override {
	if d.index.overrides[athlete] == 0 {
		return nil
	}
	var made []gym.Override
	for _, o := range d.book.Overrides {
		if o.Athlete == athlete {
			made = append(made, o)
		}
	}
	return made
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
	return d.do("decide "+overrideWhat(o)+" for "+a.Name, gym.AddOverride{Override: o})
}

// VoidOverride takes a decision back, and with it what was decided in the same
// step and is not over: all weeks of a comeback that are left. What is over stays
// as it was.
func (d *Desk) VoidOverride(id gym.ID) error {
	for _, o := range d.book.Overrides {
		if o.ID == id {
			return d.takeBack(o)
		}
	}
	return fmt.Errorf("take a decision back: there is none like that")
}

func (d *Desk) takeBack(one gym.Override) error {
	if one.Void != nil {
		return fmt.Errorf("take a decision back: it was taken back on %s", one.Void.At.In(d.now().Location()).Format("2 January 2006"))
	}
	a, _ := d.Athlete(one.Athlete)
	step, void := d.stepOf(one), gym.Void{At: d.now(), Reason: "taken back"}
	var changes []gym.Change
	for _, o := range step {
		if o.ID == one.ID || !isOver(o, d.Today()) {
			changes = append(changes, gym.VoidOverride{ID: o.ID, Void: void})
		}
	}
	return d.do("take back "+overrideWhat(step...)+" for "+a.Name, changes...)
}

// stepOf returns what was decided in the same step as an override, with it.
func (d *Desk) stepOf(one gym.Override) []gym.Override {
	for _, step := range tier.Steps(d.overridesOf(one.Athlete)) {
		if slices.ContainsFunc(step, func(o gym.Override) bool { return o.ID == one.ID }) {
			return step
		}
	}
	return []gym.Override{one}
}

// isOver reports whether an override's last day is past.
func isOver(o gym.Override, today day.Date) bool { return o.Until != day.None && o.Until < today }

// Comeback leaves a share of every conditioning load of an athlete in each week
// from today, as [tier.Comeback] says.
func (d *Desk) Comeback(athlete gym.ID, shares []float64) error {
	a, ok := d.Athlete(athlete)
	if !ok {
		return fmt.Errorf("plan comeback: there is no such athlete")
	}
	overrides, err := tier.Comeback(athlete, d.Today(), shares)
	if err != nil {
		return err
	}
	made := d.now()
	var changes []gym.Change
	for _, o := range overrides {
		if err := o.Valid(); err != nil {
			return err
		}
		o.ID, o.Made = d.NewID(), made
		changes = append(changes, gym.AddOverride{Override: o})
	}
	return d.do(fmt.Sprintf("go lighter with %s for %s", a.Name, count(len(shares), "week")), changes...)
}
