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

// regionText writes a region as a coach reads it.
func regionText(r gym.Region) string {
	if r == gym.WholeBody {
		return "whole body"
	}
	return string(r)
}

func plainKey(key string) string { return strings.ReplaceAll(key, "-", " ") }

// KeepLift keeps a lift in the place of the one with its key. One without a key is
// new and the gym's own; its key is made from its name and returned. A name that
// means another lift already is refused: a coach's sheet could not tell the two
// apart.
func (d *Desk) KeepLift(l gym.Lift) (gym.LiftKey, error) {
	l.Name = strings.TrimSpace(l.Name)
	if l.Key == "" {
		l.Own, l.Key = true, gym.LiftKey(d.newKey(LiftEntries, l.Name))
	}
	return l.Key, d.keepEntry(LiftEntries, string(l.Key), l.Name, l.Valid(), gym.PutLift{Lift: l})
}

// KeepMovement is [Desk.KeepLift] for a movement, whose implement the gym must
// own.
func (d *Desk) KeepMovement(m gym.Movement) (gym.MovementKey, error) {
	m.Name = strings.TrimSpace(m.Name)
	if m.Key == "" {
		m.Own, m.Key = true, gym.MovementKey(d.newKey(MovementEntries, m.Name))
	}
	if !d.book.Equipment.Owns(m.Implement) {
		return m.Key, fmt.Errorf("keep movement %q: the gym has no implement %q; add it to the implements first", m.Name, m.Implement)
	}
	return m.Key, d.keepEntry(MovementEntries, string(m.Key), m.Name, m.Valid(), gym.PutMovement{Movement: m})
}

// KeepFinisher is [Desk.KeepLift] for a finisher.
func (d *Desk) KeepFinisher(f gym.Finisher) (string, error) {
	f.Name = strings.TrimSpace(f.Name)
	if f.Key == "" {
		f.Own, f.Key = true, d.newKey(FinisherEntries, f.Name)
	}
	return f.Key, d.keepEntry(FinisherEntries, f.Key, f.Name, f.Valid(), gym.PutFinisher{Finisher: f})
}

// KeepDrill is [Desk.KeepLift] for a drill.
func (d *Desk) KeepDrill(r gym.Drill) (string, error) {
	r.Name = strings.TrimSpace(r.Name)
	if r.Key == "" {
		r.Own, r.Key = true, d.newKey(DrillEntries, r.Name)
	}
	return r.Key, d.keepEntry(DrillEntries, r.Key, r.Name, r.Valid(), gym.PutDrill{Drill: r})
}

func (d *Desk) newKey(kind CatalogueKind, name string) string {
	return freeKey(name, func(key string) bool {
		_, used := d.entry(kind, key)
		return used
	})
}

// keepEntry makes a change that keeps an entry, unless invalid says why not or
// its name means another.
func (d *Desk) keepEntry(kind CatalogueKind, key, name string, invalid error, change gym.Change) error {
	if invalid != nil {
		return invalid
	}
	for _, other := range d.meanings(kind, name) {
		if other != key {
			return fmt.Errorf("keep %q: that name means %q already; write a different one", name, other)
		}
	}
	return d.do("change "+name, change)
}

// meanings are the keys that a name means in a list.
func (d *Desk) meanings(kind CatalogueKind, name string) (keys []string) {
	switch kind {
	case LiftEntries:
		return plainStrings(gym.LiftNames(d.book.Lifts).Keys(name))
	case MovementEntries:
		return plainStrings(gym.MovementNames(d.book.Movements).Keys(name))
	}
	for _, e := range d.entries(kind) {
		if gym.FoldName(e.Name) == gym.FoldName(name) {
			keys = append(keys, e.Key)
		}
	}
	return keys
}

func plainStrings[K ~string](keys []K) []string {
	all := make([]string, len(keys))
	for i, k := range keys {
		all[i] = string(k)
	}
	return all
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
