package gym

import (
	"fmt"
	"io/fs"
	"slices"

	"windlass/internal/mass"
)

// Catalogue is what a gym may train with: the built-in tables, or those that a
// coach has edited.
type Catalogue struct {
	Lifts      []Lift
	Movements  []Movement
	Finishers  []Finisher
	Drills     []Drill
	Implements []Implement
}

// ReadCatalogue reads lifts.csv, movements.csv, finishers.csv, warmups.csv and
// implements.csv of a folder. In what it returns, every entry passes its Valid
// method, keys and names are unique in their table, no spelling could mean two
// lifts, every link leads to an entry, and every tier load is owned. An error
// names the file, the line, the column and what would mend it.
func ReadCatalogue(files fs.FS) (Catalogue, error) {
	lifts, err := readTable(files, "lifts.csv", liftColumns(), readLift)
	if err != nil {
		return Catalogue{}, err
	}
	movements, err := readTable(files, "movements.csv", movementColumns(), readMovement)
	if err != nil {
		return Catalogue{}, err
	}
	finishers, err := readTable(files, "finishers.csv", finisherColumns(), readFinisher)
	if err != nil {
		return Catalogue{}, err
	}
	drills, err := readTable(files, "warmups.csv", drillColumns(), readDrill)
	if err != nil {
		return Catalogue{}, err
	}
	implements, err := readTable(files, "implements.csv", implementColumns(), readImplement)
	if err != nil {
		return Catalogue{}, err
	}
	c := Catalogue{lifts.entries, movements.entries, finishers.entries, drills.entries, implements.entries}
	return c, checkLinks(c, lifts, movements)
}

func checkLinks(c Catalogue, lifts table[Lift], movements table[Movement]) error {
	owner := map[string]LiftKey{}
	for i, l := range lifts.entries {
		if err := lifts.errorAt(i, firstFault(spellingFault(owner, l), relatedFault(c, l))); err != nil {
			return err
		}
	}
	for i, m := range movements.entries {
		if err := movements.errorAt(i, firstFault(linkedFault(c, m), ownedFault(c, m))); err != nil {
			return err
		}
	}
	return nil
}

// spellingFault adds the spellings of l to those that have an owner.
func spellingFault(owner map[string]LiftKey, l Lift) *fault {
	for i, text := range append([]string{l.Name, string(l.Key)}, l.Aliases...) {
		field := colAliases
		if i == 0 {
			field = colName
		}
		s := spelling(text)
		if other, taken := owner[s]; taken && other != l.Key {
			return faultf(field, "%q could also mean %s; keep it with one of the two", text, other)
		}
		owner[s] = l.Key
	}
	return nil
}

func relatedFault(c Catalogue, l Lift) *fault {
	if l.Related == "" || hasLift(c, l.Related) {
		return nil
	}
	return faultf(colRelated, "there is no lift %q; write the key of one, or nothing", l.Related)
}

func linkedFault(c Catalogue, m Movement) *fault {
	if m.Linked == "" || hasLift(c, m.Linked) {
		return nil
	}
	return faultf(colLinked, "there is no lift %q; write the key of one, or nothing", m.Linked)
}

func hasLift(c Catalogue, key LiftKey) bool { return indexOf(c.Lifts, key, liftKey) >= 0 }

func ownedFault(c Catalogue, m Movement) *fault {
	if m.Implement == "" {
		return nil
	}
	i := slices.IndexFunc(c.Implements, func(i Implement) bool { return i.Kind == m.Implement })
	if i < 0 {
		return faultf(colImplement, "there is no implement %q; add it to implements.csv, or write nothing", m.Implement)
	}
	owned := c.Implements[i]
	for _, s := range Standards() {
		loads, ok := m.Loads[s]
		if !ok {
			continue
		}
		for _, tier := range []Tier{Full, Mid, Light} {
			if load := loads.Of(tier); !slices.Contains(owned.Masses, load) {
				return faultf(string(s)+" "+string(tier), "%s", notOwned(owned, load))
			}
		}
	}
	return nil
}

func notOwned(i Implement, load mass.Mass) string {
	at, _ := slices.BinarySearch(i.Masses, load)
	near := "none"
	switch {
	case len(i.Masses) == 0:
	case at == 0:
		near = i.Masses[0].In(i.Unit)
	case at == len(i.Masses):
		near = i.Masses[at-1].In(i.Unit)
	default:
		near = i.Masses[at-1].In(i.Unit) + " and " + i.Masses[at].In(i.Unit)
	}
	return fmt.Sprintf("implements.csv has no %s of %s; the nearest there: %s", i.Kind, load.In(i.Unit), near)
}
