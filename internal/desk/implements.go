package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// KeepImplement keeps the masses of a kind of implement, from light to heavy,
// each once. A kind that is new is added.
func (d *Desk) KeepImplement(i gym.Implement) error {
	i.Masses = slices.Clone(i.Masses)
	slices.Sort(i.Masses)
	i.Masses = slices.Compact(i.Masses)
	return d.changeEquipment(func(e *gym.Equipment) error {
		at := slices.IndexFunc(e.Implements, func(o gym.Implement) bool { return o.Kind == i.Kind })
		if at >= 0 {
			e.Implements[at] = i
			return nil
		}
		e.Implements = append(e.Implements, i)
		return nil
	})
}

// AddImplement adds a kind of implement under a name as a coach writes it, still
// without masses, and returns its kind.
func (d *Desk) AddImplement(name string, unit mass.Unit) (string, error) {
	kind := slug(name)
	if d.book.Equipment.Owns(kind) && kind != "" {
		return kind, fmt.Errorf("add implement %q: the gym has that kind already; change its masses", name)
	}
	return kind, d.KeepImplement(gym.Implement{Kind: kind, Unit: unit})
}

// DropImplement takes a kind of implement out. One that a movement in sight is
// done with is refused: hide those movements first.
func (d *Desk) DropImplement(kind string) error {
	if used := d.movementsWith(kind); len(used) > 0 {
		return fmt.Errorf("remove %s: it is used by %s; hide those first", kind, count(len(used), "movement"))
	}
	return d.changeEquipment(func(e *gym.Equipment) error {
		e.Implements = slices.DeleteFunc(e.Implements, func(i gym.Implement) bool { return i.Kind == kind })
		return nil
	})
}

// movementsWith returns the names of the movements in sight that are done with a
// kind of implement.
func (d *Desk) movementsWith(kind string) []string {
	var names []string
	for _, m := range d.book.Movements {
		if m.Implement == kind && !m.Hidden {
			names = append(names, m.Name)
		}
	}
	return names
}

// OwnImplement is a kind of implement, and how many movements in sight are done
// with it.
type OwnImplement struct {
	gym.Implement
	Movements int
}

// Range says how many masses there are: "11 from 20 to 120 kg".
func (i OwnImplement) Range() string {
	switch n := len(i.Masses); n {
	case 0:
		return "not lifted"
	case 1:
		return i.Masses[0].In(i.Unit)
	default:
		return fmt.Sprintf("%d from %s to %s", n, i.Masses[0].Digits(i.Unit), i.Masses[n-1].In(i.Unit))
	}
}

// Implements returns the gym's implements by kind.
func (d *Desk) Implements() []OwnImplement {
	var all []OwnImplement
	for _, i := range d.book.Equipment.Implements {
		all = append(all, OwnImplement{i, len(d.movementsWith(i.Kind))})
	}
	slices.SortFunc(all, func(a, b OwnImplement) int { return strings.Compare(a.Kind, b.Kind) })
	return all
}
