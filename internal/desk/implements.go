package desk

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// KeepImplement keeps the masses of a kind of implement, from light to heavy,
// each once, and how many there are. A kind that is new is added.
func (d *Desk) KeepImplement(i gym.Implement) error {
	i.Masses, i.Each = slices.Clone(i.Masses), maps.Clone(i.Each)
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

// KeepMasses keeps the masses that a coach wrote for a kind, with how many there
// are of each as [gym.Implement.WithMasses] reads them.
func (d *Desk) KeepMasses(kind, text string) error {
	i, err := d.implement(kind)
	if err == nil {
		i, err = i.WithMasses(text)
	}
	if err != nil {
		return err
	}
	if len(i.Each) > 0 {
		i.Total = 0 // counted by mass from now on
	}
	return d.KeepImplement(i)
}

// KeepTotal keeps how many there are of a kind that is not lifted, or is loaded to
// each of its masses; an empty text is that nobody has counted.
func (d *Desk) KeepTotal(kind, text string) error {
	i, err := d.implement(kind)
	if err != nil {
		return err
	}
	i.Total = 0
	if strings.TrimSpace(text) != "" {
		if i.Total, err = ReadCount(text); err != nil {
			return err
		}
		switch {
		case len(i.Each) > 0:
			return fmt.Errorf("keep %s: its masses are counted one by one; take those counts out first", plainKind(kind))
		case i.Total < 1 || i.Total > gym.MostPieces:
			return fmt.Errorf("keep %s: %d is no number of them; write 1 to %d, or nothing if nobody has counted", plainKind(kind), i.Total, gym.MostPieces)
		}
	}
	return d.KeepImplement(i)
}

func (d *Desk) implement(kind string) (gym.Implement, error) {
	for _, i := range d.book.Equipment.Implements {
		if i.Kind == kind {
			return i, nil
		}
	}
	return gym.Implement{}, fmt.Errorf("keep %s: the gym has no such implement; add it first", plainKind(kind))
}

// plainKind writes a kind as a coach reads it: "slam-ball" is a slam ball.
func plainKind(kind string) string { return strings.ReplaceAll(kind, "-", " ") }

// OwnImplement is a kind of implement, and how many movements in sight are done
// with it.
type OwnImplement struct {
	gym.Implement
	Movements int
	Bars      int // of the gym's bars that are of this kind, where nothing else was counted
}

// Counted says how many there are: "34 in all", "20 or more" where some masses were
// not counted, "14 bars", or that nobody has counted.
func (i OwnImplement) Counted() string {
	switch n := i.Count(); {
	case n == 0:
		return "not counted"
	case i.Total > 0, len(i.Each) > 0 && len(i.Each) == len(i.Masses):
		return fmt.Sprintf("%d in all", n)
	case len(i.Each) > 0:
		return fmt.Sprintf("%d or more", n)
	}
	return count(i.Bars, "bar")
}

// Count is how many things were counted; 0 is that nobody has.
func (i OwnImplement) Count() int {
	sum := i.Total
	for _, n := range i.Each {
		sum += n
	}
	if sum == 0 {
		return i.Bars
	}
	return sum
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
		own := OwnImplement{Implement: i, Movements: len(d.movementsWith(i.Kind))}
		if i.Total == 0 {
			own.Bars, _ = d.book.Equipment.Pieces(gym.Pool{Kind: i.Kind})
		}
		all = append(all, own)
	}
	slices.SortFunc(all, func(a, b OwnImplement) int { return strings.Compare(a.Kind, b.Kind) })
	return all
}
