package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// CatalogueKind is one of the four lists of the catalogue.
type CatalogueKind int

// The lists, in the order in which a coach walks them.
const (
	LiftEntries CatalogueKind = iota
	MovementEntries
	FinisherEntries
	DrillEntries
)

// CatalogueRow is one entry as a list shows it.
type CatalogueRow struct {
	Key    string
	Name   string
	Sort   string // "lower, squat"
	With   string // the bar, the implement, the muscle or the dose
	Own    bool   // added by this gym
	Hidden bool
	also   []string // other names by which it is found
}

// CatalogueRows returns the entries of a list that match a search, by name; all
// of its words must be found. Hidden entries are left out unless they are asked
// for.
func (d *Desk) CatalogueRows(kind CatalogueKind, search string, hidden bool) []CatalogueRow {
	words := strings.Fields(strings.ToLower(search))
	rows := slices.DeleteFunc(d.entries(kind), func(r CatalogueRow) bool {
		return r.Hidden && !hidden || !r.matches(words)
	})
	slices.SortFunc(rows, func(a, b CatalogueRow) int {
		return strings.Compare(strings.ToLower(a.Name), strings.ToLower(b.Name))
	})
	return rows
}

func (r CatalogueRow) matches(words []string) bool {
	text := strings.ToLower(strings.Join(append([]string{r.Name, r.Key, r.Sort, r.With}, r.also...), " "))
	for _, w := range words {
		if !strings.Contains(text, w) {
			return false
		}
	}
	return true
}

func (d *Desk) entries(kind CatalogueKind) []CatalogueRow {
	var rows []CatalogueRow
	switch kind {
	case LiftEntries:
		for _, l := range d.book.Lifts {
			rows = append(rows, CatalogueRow{string(l.Key), l.Name, sortOf(l.Region, l.Pattern), plainKey(l.Bar), l.Own, l.Hidden, l.Aliases})
		}
	case MovementEntries:
		for _, m := range d.book.Movements {
			with := plainKey(m.Implement)
			if with == "" {
				with = "body weight"
			}
			rows = append(rows, CatalogueRow{string(m.Key), m.Name, sortOf(m.Region, m.Pattern), with, m.Own, m.Hidden, nil})
		}
	case FinisherEntries:
		for _, f := range d.book.Finishers {
			rows = append(rows, CatalogueRow{f.Key, f.Name, regionText(f.Region), f.Muscle, f.Own, f.Hidden, []string{f.Spares}})
		}
	default:
		for _, r := range d.book.Drills {
			rows = append(rows, CatalogueRow{r.Key, r.Name, plainKey(string(r.Pattern)), r.Dose, r.Own, r.Hidden, nil})
		}
	}
	return rows
}

func sortOf(r gym.Region, p gym.Pattern) string { return regionText(r) + ", " + plainKey(string(p)) }

// regionText writes a region as words.md has it.
func regionText(r gym.Region) string {
	if r == gym.WholeBody {
		return "whole body"
	}
	return string(r)
}

func plainKey(key string) string { return strings.ReplaceAll(key, "-", " ") }

// KeepLift keeps a lift in the place of the one with its key. One without a key is
// new and the gym's own; its key is made from its name and returned.
func (d *Desk) KeepLift(l gym.Lift) (gym.LiftKey, error) {
	l.Name = strings.TrimSpace(l.Name)
	if l.Key == "" {
		l.Own = true
		l.Key = gym.LiftKey(freeKey(l.Name, func(key string) bool { _, used := d.Lift(gym.LiftKey(key)); return used }))
	}
	if err := l.Valid(); err != nil {
		return l.Key, err
	}
	if err := nameFree(gym.LiftNames(d.book.Lifts), "lift", l.Name, l.Key); err != nil {
		return l.Key, err
	}
	return l.Key, d.do("change lift "+l.Name, gym.PutLift{Lift: l})
}

// KeepMovement is [Desk.KeepLift] for a movement.
func (d *Desk) KeepMovement(m gym.Movement) (gym.MovementKey, error) {
	m.Name = strings.TrimSpace(m.Name)
	if m.Key == "" {
		m.Own = true
		m.Key = gym.MovementKey(freeKey(m.Name, func(key string) bool { _, used := d.Movement(gym.MovementKey(key)); return used }))
	}
	if err := m.Valid(); err != nil {
		return m.Key, err
	}
	if m.Implement != "" && !d.book.Equipment.Owns(m.Implement) {
		return m.Key, fmt.Errorf("keep movement %q: the gym has no implement %q; add it to the implements first", m.Name, m.Implement)
	}
	if err := nameFree(gym.MovementNames(d.book.Movements), "movement", m.Name, m.Key); err != nil {
		return m.Key, err
	}
	return m.Key, d.do("change movement "+m.Name, gym.PutMovement{Movement: m})
}

// nameFree refuses a name that means another entry already: a coach's sheet could
// not tell the two apart.
func nameFree[K ~string](names *gym.Names[K], noun, name string, key K) error {
	for _, other := range names.Keys(name) {
		if other != key {
			return fmt.Errorf("keep %s %q: that name means %q already; write a different one", noun, name, string(other))
		}
	}
	return nil
}

// KeepFinisher is [Desk.KeepLift] for a finisher.
func (d *Desk) KeepFinisher(f gym.Finisher) (string, error) {
	f.Name = strings.TrimSpace(f.Name)
	if f.Key == "" {
		f.Own = true
		f.Key = freeKey(f.Name, func(key string) bool { return d.has(FinisherEntries, key) })
	}
	if err := f.Valid(); err != nil {
		return f.Key, err
	}
	if err := d.titleFree(FinisherEntries, "finisher", f.Name, f.Key); err != nil {
		return f.Key, err
	}
	return f.Key, d.do("change finisher "+f.Name, gym.PutFinisher{Finisher: f})
}

// KeepDrill is [Desk.KeepLift] for a drill.
func (d *Desk) KeepDrill(r gym.Drill) (string, error) {
	r.Name = strings.TrimSpace(r.Name)
	if r.Key == "" {
		r.Own = true
		r.Key = freeKey(r.Name, func(key string) bool { return d.has(DrillEntries, key) })
	}
	if err := r.Valid(); err != nil {
		return r.Key, err
	}
	if err := d.titleFree(DrillEntries, "drill", r.Name, r.Key); err != nil {
		return r.Key, err
	}
	return r.Key, d.do("change drill "+r.Name, gym.PutDrill{Drill: r})
}

func (d *Desk) has(kind CatalogueKind, key string) bool {
	_, ok := d.entry(kind, key)
	return ok
}

func (d *Desk) titleFree(kind CatalogueKind, noun, name, key string) error {
	for _, e := range d.entries(kind) {
		if e.Key != key && gym.FoldName(e.Name) == gym.FoldName(name) {
			return fmt.Errorf("keep %s %q: another has that name already; write a different one", noun, name)
		}
	}
	return nil
}

// entry finds one entry of a list.
func (d *Desk) entry(kind CatalogueKind, key string) (CatalogueRow, bool) {
	for _, e := range d.entries(kind) {
		if e.Key == key {
			return e, true
		}
	}
	return CatalogueRow{}, false
}

// Finisher returns the finisher with a key.
func (d *Desk) Finisher(key string) (gym.Finisher, bool) {
	for _, f := range d.book.Finishers {
		if f.Key == key {
			return f, true
		}
	}
	return gym.Finisher{}, false
}

// Drill returns the drill with a key.
func (d *Desk) Drill(key string) (gym.Drill, bool) {
	for _, r := range d.book.Drills {
		if r.Key == key {
			return r, true
		}
	}
	return gym.Drill{}, false
}

// TierText writes the loads of a movement for a standard, the heaviest first, as
// [Desk.KeepTiers] reads them: "24, 20, 16". A movement without loads has none.
func (d *Desk) TierText(m gym.Movement, s gym.Standard) string {
	loads, ok := m.Loads[s]
	if !ok {
		return ""
	}
	return MassesText([]mass.Mass{loads.Full, loads.Mid, loads.Light}, d.unitOf(m.Implement))
}

// KeepTiers keeps the three loads of a movement for a standard, the heaviest
// first; an empty text takes them away.
func (d *Desk) KeepTiers(key gym.MovementKey, s gym.Standard, text string) error {
	m, ok := d.Movement(key)
	if !ok {
		return fmt.Errorf("keep loads: the movement %q is not there any more", key)
	}
	masses, err := ReadMasses(text, d.unitOf(m.Implement))
	if err != nil {
		return err
	}
	loads := map[gym.Standard]gym.TierLoads{}
	for standard, known := range m.Loads {
		loads[standard] = known
	}
	switch len(masses) {
	case 0:
		delete(loads, s)
	case 3:
		loads[s] = gym.TierLoads{Full: masses[0], Mid: masses[1], Light: masses[2]}
	default:
		return fmt.Errorf("keep loads %q: %s where three are wanted; write full, mid and light, as in 24, 20, 16", text, count(len(masses), "load"))
	}
	m.Loads = loads
	_, err = d.KeepMovement(m)
	return err
}

// unitOf is the unit that the masses of a kind of implement are written in.
func (d *Desk) unitOf(kind string) mass.Unit {
	for _, i := range d.book.Equipment.Implements {
		if i.Kind == kind {
			return i.Unit
		}
	}
	return d.book.Settings.Unit
}
