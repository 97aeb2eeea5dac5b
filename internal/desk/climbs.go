package desk

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"windlass/internal/climb"
	"windlass/internal/gym"
)

// Climbs returns the gym's climbs by name.
func (d *Desk) Climbs() []gym.ClimbPlan {
	climbs := slices.Clone(d.book.Climbs)
	slices.SortFunc(climbs, func(a, b gym.ClimbPlan) int { return strings.Compare(a.Name, b.Name) })
	return climbs
}

// ClimbNamed returns the climb with a name, in any case.
func (d *Desk) ClimbNamed(name string) (gym.ClimbPlan, bool) {
	for _, c := range d.book.Climbs {
		if strings.EqualFold(c.Name, name) {
			return c, true
		}
	}
	return gym.ClimbPlan{}, false
}

// SaveClimb keeps a climb in the place of the one with its ID, or as a new one
// where it has none, and returns the ID. A climb that cannot be run is refused,
// and so is a name that another climb has. Cycles that run the climb follow it to
// a new name; classes have copies of their own and do not change.
func (d *Desk) SaveClimb(plan gym.ClimbPlan) (gym.ID, error) {
	plan.Name = strings.TrimSpace(plan.Name)
	if err := climb.Valid(plan); err != nil {
		return plan.ID, err
	}
	if other, ok := d.ClimbNamed(plan.Name); ok && other.ID != plan.ID {
		return plan.ID, fmt.Errorf("save climb %q: another climb has that name; write a different one", plan.Name)
	}
	var changes []gym.Change
	if plan.ID == "" {
		plan.ID = d.NewID()
	} else if before, ok := d.climbByID(plan.ID); ok && before.Name != plan.Name {
		changes = d.followClimb(before.Name, plan.Name)
	}
	plan.Rungs = slices.Clone(plan.Rungs)
	return plan.ID, d.do("change climb "+plan.Name, append([]gym.Change{gym.PutClimb{Climb: plan}}, changes...)...)
}

func (d *Desk) climbByID(id gym.ID) (gym.ClimbPlan, bool) {
	for _, c := range d.book.Climbs {
		if c.ID == id {
			return c, true
		}
	}
	return gym.ClimbPlan{}, false
}

// followClimb is what gives a climb's new name to the cycles that run it.
func (d *Desk) followClimb(from, to string) []gym.Change {
	var changes []gym.Change
	for _, c := range d.book.Cycles {
		if runsClimb(c, from) {
			changes = append(changes, gym.PutCycle{Cycle: withClimb(c, from, to)})
		}
	}
	return changes
}

func runsClimb(c gym.Cycle, name string) bool {
	for _, p := range c.Tracks {
		if slices.ContainsFunc(p.Days, func(day gym.DayPlan) bool { return strings.EqualFold(day.Main.Climb, name) }) {
			return true
		}
	}
	return false
}

func withClimb(c gym.Cycle, from, to string) gym.Cycle {
	c.Tracks = slices.Clone(c.Tracks)
	for t := range c.Tracks {
		days := slices.Clone(c.Tracks[t].Days)
		for i := range days {
			if strings.EqualFold(days[i].Main.Climb, from) {
				days[i].Main.Climb = to
			}
		}
		c.Tracks[t].Days = days
	}
	return c
}

// ClimbUses returns the names of the cycles that run a climb.
func (d *Desk) ClimbUses(name string) []string {
	var uses []string
	for _, c := range d.book.Cycles {
		if runsClimb(c, name) {
			uses = append(uses, c.Name)
		}
	}
	return uses
}

// RemoveClimb takes a climb out. One that a cycle runs is refused.
func (d *Desk) RemoveClimb(id gym.ID) error {
	plan, ok := d.climbByID(id)
	if !ok {
		return fmt.Errorf("remove climb: it is not there any more")
	}
	if uses := d.ClimbUses(plan.Name); len(uses) > 0 {
		return fmt.Errorf("remove climb %q: it is run in %s; give those days another climb first", plan.Name, strings.Join(uses, ", "))
	}
	return d.do("remove climb "+plan.Name, gym.DropClimb{ID: id})
}

// NewClimb saves a generated climb of so many minutes, written as a coach types
// them, and returns its ID.
func (d *Desk) NewClimb(minutes string) (gym.ID, error) {
	n, err := ReadCount(strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(minutes), "min")))
	if err != nil {
		return "", err
	}
	plan, err := climb.Generate(n)
	if err != nil {
		return "", err
	}
	return d.addClimb(plan)
}

// CopyClimb saves a copy of a climb under a name of its own and returns its ID.
func (d *Desk) CopyClimb(id gym.ID) (gym.ID, error) {
	plan, ok := d.climbByID(id)
	if !ok {
		return "", fmt.Errorf("copy climb: it is not there any more")
	}
	return d.addClimb(plan)
}

// addClimb saves a climb as a new one whose name no other has.
func (d *Desk) addClimb(plan gym.ClimbPlan) (gym.ID, error) {
	plan.ID, plan.BuiltIn = "", false
	plan.Name = freeName(plan.Name, d.book.Climbs, func(c gym.ClimbPlan) string { return c.Name })
	return d.SaveClimb(plan)
}

// ImportClimb saves the climb that a CSV file holds, named after the file, and
// returns its ID. package climb says how the file is written.
func (d *Desk) ImportClimb(path string) (gym.ID, error) {
	file, err := os.Open(path)
	if err != nil {
		return "", fmt.Errorf("read climb: %w", err)
	}
	name := strings.TrimSuffix(filepath.Base(path), filepath.Ext(path))
	plan, err := climb.ReadCSV(name, file)
	if err := errors.Join(err, file.Close()); err != nil {
		return "", err
	}
	return d.addClimb(plan)
}

// ExportClimb writes the rungs of a climb as a CSV file, which must not be there
// yet. The heavy line, the ceiling and strictness are no part of it.
func (d *Desk) ExportClimb(id gym.ID, path string) error {
	plan, ok := d.climbByID(id)
	if !ok {
		return fmt.Errorf("write climb: it is not there any more")
	}
	file, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return fmt.Errorf("write climb %q: %w; choose another name", plan.Name, err)
	}
	if err := errors.Join(climb.WriteCSV(file, plan), file.Close()); err != nil {
		return errors.Join(err, os.Remove(path))
	}
	return nil
}
