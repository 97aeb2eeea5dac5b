package gym

import "slices"

// Inverse returns the changes that take the given ones back, in the order in
// which to make them, when they are about to be made of b. What is only ever
// added is taken back by a void, and a void by adding the row again under a name
// of its own, for which newID is asked. renamed tells the new name of each such
// row by its old one: whoever keeps other changes for later calls [Rename] with
// it once these are made.
func (b *Book) Inverse(changes []Change, newID func() ID, undone Void) (inverse []Change, renamed map[ID]ID) {
	renamed = map[ID]ID{}
	rows := rowsOf(b)
	inverse = make([]Change, 0, len(changes))
	for _, change := range slices.Backward(changes) {
		if back := b.inverse(change, rows, newID, undone, renamed); back != nil {
			inverse = append(inverse, back)
		}
	}
	return Rename(inverse, renamed), renamed
}

// Rename returns changes in which rows of the log go by their new names.
func Rename(changes []Change, renamed map[ID]ID) []Change {
	if len(renamed) == 0 {
		return changes
	}
	named := make([]Change, len(changes))
	for i, change := range changes {
		named[i] = rename(change, renamed)
	}
	return named
}

func rename(change Change, renamed map[ID]ID) Change {
	now := func(id ID) ID {
		if to, ok := renamed[id]; ok {
			return to
		}
		return id
	}
	switch c := change.(type) {
	case VoidResult:
		return VoidResult{now(c.ID), c.Void}
	case VoidBout:
		return VoidBout{now(c.ID), c.Void}
	case VoidOverride:
		return VoidOverride{now(c.ID), c.Void}
	case PutClass:
		return PutClass{renameResults(c.Class, now)}
	}
	return change
}

func (b *Book) inverse(change Change, rows *rows, newID func() ID, undone Void, renamed map[ID]ID) Change {
	switch c := change.(type) {
	case AddResult:
		return VoidResult{c.Result.ID, undone}
	case AddBout:
		return VoidBout{c.Bout.ID, undone}
	case AddOverride:
		return VoidOverride{c.Override.ID, undone}
	case VoidResult:
		if r := rows.results.row(c.ID); r != nil && r.Void == nil {
			again := *r
			again.ID = newID()
			renamed[r.ID] = again.ID
			return AddResult{again}
		}
		return nil // it voids nothing: see [Book.Apply]
	case VoidBout:
		if r := rows.bouts.row(c.ID); r != nil && r.Void == nil {
			again := *r
			again.ID = newID()
			renamed[r.ID] = again.ID
			return AddBout{again}
		}
		return nil
	case VoidOverride:
		if r := at(b.Overrides, c.ID, overrideKey); r.ID != "" && r.Void == nil {
			renamed[r.ID] = newID()
			r.ID = renamed[r.ID]
			return AddOverride{r}
		}
		return nil
	}
	if back := rows.inverse(change); back != nil {
		return back
	}
	return b.inversePut(change)
}

// inverse is that of a change to athletes or moves, and nil of another.
func (r *rows) inverse(change Change) Change {
	switch c := change.(type) {
	case PutAthlete:
		return r.athleteBack(c.Athlete.ID)
	case DropAthlete:
		return r.athleteBack(c.ID)
	case PutMove:
		return r.moveBack(c.Move.ID)
	case DropMove:
		return r.moveBack(c.ID)
	}
	return nil
}

func (r *rows) athleteBack(id ID) Change {
	if a := r.athletes.row(id); a != nil {
		return PutAthlete{*a}
	}
	return DropAthlete{id}
}

func (r *rows) moveBack(id ID) Change {
	if m := r.moves.row(id); m != nil {
		return PutMove{*m}
	}
	return DropMove{id}
}

func (b *Book) inversePut(change Change) Change {
	switch c := change.(type) {
	case PutSettings:
		return PutSettings{b.Settings}
	case PutEquipment:
		return PutEquipment{b.Equipment}
	case PutLift:
		return back(b.Lifts, c.Lift.Key, liftKey, func(v Lift) Change { return PutLift{v} }, DropLift{c.Lift.Key})
	case DropLift:
		return back(b.Lifts, c.Key, liftKey, func(v Lift) Change { return PutLift{v} }, c)
	case PutMovement:
		return back(b.Movements, c.Movement.Key, movementKey, func(v Movement) Change { return PutMovement{v} }, DropMovement{c.Movement.Key})
	case DropMovement:
		return back(b.Movements, c.Key, movementKey, func(v Movement) Change { return PutMovement{v} }, c)
	case PutFinisher:
		return back(b.Finishers, c.Finisher.Key, finisherKey, func(v Finisher) Change { return PutFinisher{v} }, DropFinisher{c.Finisher.Key})
	case DropFinisher:
		return back(b.Finishers, c.Key, finisherKey, func(v Finisher) Change { return PutFinisher{v} }, c)
	case PutDrill:
		return back(b.Drills, c.Drill.Key, drillKey, func(v Drill) Change { return PutDrill{v} }, DropDrill{c.Drill.Key})
	case DropDrill:
		return back(b.Drills, c.Key, drillKey, func(v Drill) Change { return PutDrill{v} }, c)
	}
	return b.inverseRow(change)
}

func (b *Book) inverseRow(change Change) Change {
	switch c := change.(type) {
	case PutTrack:
		return back(b.Tracks, c.Track.ID, trackKey, func(v Track) Change { return PutTrack{v} }, DropTrack{c.Track.ID})
	case DropTrack:
		return back(b.Tracks, c.ID, trackKey, func(v Track) Change { return PutTrack{v} }, c)
	case PutRestriction:
		return back(b.Restrictions, c.Restriction.ID, restrictionKey, func(v Restriction) Change { return PutRestriction{v} }, DropRestriction{c.Restriction.ID})
	case DropRestriction:
		return back(b.Restrictions, c.ID, restrictionKey, func(v Restriction) Change { return PutRestriction{v} }, c)
	}
	return b.inversePlan(change)
}

func (b *Book) inversePlan(change Change) Change {
	switch c := change.(type) {
	case PutClimb:
		return back(b.Climbs, c.Climb.ID, climbKey, func(v ClimbPlan) Change { return PutClimb{v} }, DropClimb{c.Climb.ID})
	case DropClimb:
		return back(b.Climbs, c.ID, climbKey, func(v ClimbPlan) Change { return PutClimb{v} }, c)
	case PutSlot:
		return back(b.Slots, c.Slot.ID, slotKey, func(v Slot) Change { return PutSlot{v} }, DropSlot{c.Slot.ID})
	case DropSlot:
		return back(b.Slots, c.ID, slotKey, func(v Slot) Change { return PutSlot{v} }, c)
	case PutClosure:
		return back(b.Closures, c.Closure.ID, closureKey, func(v Closure) Change { return PutClosure{v} }, DropClosure{c.Closure.ID})
	case DropClosure:
		return back(b.Closures, c.ID, closureKey, func(v Closure) Change { return PutClosure{v} }, c)
	case PutCycle:
		return back(b.Cycles, c.Cycle.ID, cycleKey, func(v Cycle) Change { return PutCycle{v} }, DropCycle{c.Cycle.ID})
	case DropCycle:
		return back(b.Cycles, c.ID, cycleKey, func(v Cycle) Change { return PutCycle{v} }, c)
	case PutClass:
		return back(b.Classes, c.Class.ID, classKey, func(v Class) Change { return PutClass{v} }, DropClass{c.Class.ID})
	case DropClass:
		return back(b.Classes, c.ID, classKey, func(v Class) Change { return PutClass{v} }, c)
	}
	return nil
}

// back puts the row that has the key now, or drops the key where there is none.
func back[T any, K comparable](rows []T, key K, of func(T) K, put func(T) Change, drop Change) Change {
	if i := indexOf(rows, key, of); i >= 0 {
		return put(rows[i])
	}
	return drop
}

func at[T any, K comparable](rows []T, key K, of func(T) K) T {
	if i := indexOf(rows, key, of); i >= 0 {
		return rows[i]
	}
	var none T
	return none
}

func renameResults(c Class, now func(ID) ID) Class {
	c.Lifters = slices.Clone(c.Lifters)
	for i := range c.Lifters {
		c.Lifters[i].Result = now(c.Lifters[i].Result)
	}
	return c
}
