package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
)

// HideEntry takes an entry of the catalogue out of sight, or brings it back.
// What names it already goes on as it was.
func (d *Desk) HideEntry(kind CatalogueKind, key string, hide bool) error {
	e, ok := d.entry(kind, key)
	if !ok {
		return fmt.Errorf("hide %q: it is not there any more", key)
	}
	label := "show " + e.Name
	if hide {
		label = "hide " + e.Name
	}
	return d.do(label, d.hidden(kind, key, hide))
}

func (d *Desk) hidden(kind CatalogueKind, key string, hide bool) gym.Change {
	switch kind {
	case LiftEntries:
		l, _ := d.Lift(gym.LiftKey(key))
		l.Hidden = hide
		return gym.PutLift{Lift: l}
	case MovementEntries:
		m, _ := d.Movement(gym.MovementKey(key))
		m.Hidden = hide
		return gym.PutMovement{Movement: m}
	case FinisherEntries:
		f, _ := d.Finisher(key)
		f.Hidden = hide
		return gym.PutFinisher{Finisher: f}
	}
	r, _ := d.Drill(key)
	r.Hidden = hide
	return gym.PutDrill{Drill: r}
}

// DropEntry deletes an entry that the gym added. One of the built-in catalogue,
// and one that anything names, can only be hidden.
func (d *Desk) DropEntry(kind CatalogueKind, key string) error {
	e, ok := d.entry(kind, key)
	switch {
	case !ok:
		return fmt.Errorf("delete %q: it is not there any more", key)
	case !e.Own:
		return fmt.Errorf("delete %s: it is of the built-in catalogue; hide it instead", e.Name)
	}
	if uses := d.EntryUses(kind, key); len(uses) > 0 {
		return fmt.Errorf("delete %s: it stands in %s; hide it instead", e.Name, strings.Join(uses, ", "))
	}
	return d.do("delete "+e.Name, dropOf(kind, key))
}

func dropOf(kind CatalogueKind, key string) gym.Change {
	switch kind {
	case LiftEntries:
		return gym.DropLift{Key: gym.LiftKey(key)}
	case MovementEntries:
		return gym.DropMovement{Key: gym.MovementKey(key)}
	case FinisherEntries:
		return gym.DropFinisher{Key: key}
	}
	return gym.DropDrill{Key: key}
}

// EntryUses says what names an entry: "12 results", "the cycle Spring".
func (d *Desk) EntryUses(kind CatalogueKind, key string) []string {
	var uses []string
	note := func(n int, noun string) {
		if n > 0 {
			uses = append(uses, count(n, noun))
		}
	}
	switch kind {
	case LiftEntries:
		lift := gym.LiftKey(key)
		note(countIf(d.book.Results, func(r gym.Result) bool { return r.Lift == lift }), "result")
		note(countIf(d.book.Lifts, func(l gym.Lift) bool { return l.Related == lift }), "related lift")
		note(countIf(d.book.Movements, func(m gym.Movement) bool { return m.Linked == lift }), "linked movement")
	case MovementEntries:
		move := gym.MovementKey(key)
		note(countIf(d.book.Bouts, func(b gym.Bout) bool { return b.Movement == move }), "bout")
		note(countIf(d.book.Overrides, func(o gym.Override) bool { return o.Movement == move }), "override")
	}
	note(countIf(d.book.Classes, func(c gym.Class) bool { return classNames(c, kind, key) }), "class meeting")
	for _, c := range d.book.Cycles {
		if cycleNames(c, kind, key) {
			uses = append(uses, "the cycle "+c.Name)
		}
	}
	return uses
}

func countIf[T any](rows []T, is func(T) bool) (n int) {
	for _, r := range rows {
		if is(r) {
			n++
		}
	}
	return n
}

func classNames(c gym.Class, kind CatalogueKind, key string) bool {
	lifter := func(l gym.Lifter) bool { return kind == LiftEntries && string(l.Lift) == key }
	return slices.ContainsFunc(c.Lifters, lifter) || slices.ContainsFunc(c.Pieces, func(p gym.Piece) bool {
		return kind == LiftEntries && string(p.Lift) == key || secondNames(p.Second, kind, key) || workoutNames(p.Workout, kind, key)
	})
}

func cycleNames(c gym.Cycle, kind CatalogueKind, key string) bool {
	return slices.ContainsFunc(c.Tracks, func(t gym.TrackPlan) bool {
		return slices.ContainsFunc(t.Days, func(p gym.DayPlan) bool { return dayNames(p, kind, key) })
	})
}

func dayNames(p gym.DayPlan, kind CatalogueKind, key string) bool {
	switch kind {
	case FinisherEntries:
		return slices.ContainsFunc(p.Finisher, func(l gym.FinisherLine) bool { return l.Finisher == key })
	case DrillEntries:
		return slices.ContainsFunc(p.WarmUp, func(l gym.DrillLine) bool { return l.Drill == key })
	case LiftEntries:
		return string(p.Main.Lift) == key || secondNames(p.Second, kind, key)
	}
	return workoutNames(p.Workout, kind, key)
}

func secondNames(s gym.SecondLift, kind CatalogueKind, key string) bool {
	return kind == LiftEntries && (string(s.Lift) == key || string(s.OfLift) == key)
}

func workoutNames(w gym.Workout, kind CatalogueKind, key string) bool {
	return kind == MovementEntries && slices.ContainsFunc(w.Items, func(i gym.Item) bool { return string(i.Movement) == key })
}

// AddEntry adds an entry of the gym's own under a name, with the rest as it is
// most often, and returns its key.
func (d *Desk) AddEntry(kind CatalogueKind, name string) (string, error) {
	switch kind {
	case LiftEntries:
		key, err := d.KeepLift(gym.Lift{
			Name: name, Region: gym.Lower, Pattern: gym.Squat, Bar: "barbell", Measure: gym.ByLoad, Reps: []int{1, 3, 5},
		})
		return string(key), err
	case MovementEntries:
		key, err := d.KeepMovement(gym.Movement{Name: name, Region: gym.WholeBody, Pattern: gym.Core, Measure: gym.ByReps, ReferenceReps: 20, Seconds: 3})
		return string(key), err
	case FinisherEntries:
		return d.KeepFinisher(gym.Finisher{Name: name, Muscle: "to be written", Region: gym.Upper, Spares: "to be written"})
	}
	return d.KeepDrill(gym.Drill{Name: name, Pattern: gym.Squat, Dose: "2 × 10"})
}
