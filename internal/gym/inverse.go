package gym

// Inverse returns the changes that take the given ones back, in the order in
// which to make them, when they are about to be made of b. What is only ever
// added is taken back by a void, and a void by adding the row again under a name
// of its own, for which newID is asked; rows of the same list that name the old
// one name the new one instead.
func (b *Book) Inverse(changes []Change, newID func() ID, undone Void) []Change {
	inverse := make([]Change, 0, len(changes))
	renamed := map[ID]ID{}
	for i := len(changes) - 1; i >= 0; i-- {
		inverse = append(inverse, b.inverse(changes[i], newID, undone, renamed))
	}
	for i, c := range inverse {
		if p, ok := c.(PutClass); ok {
			inverse[i] = PutClass{renameResults(p.Class, renamed)}
		}
	}
	return inverse
}

func (b *Book) inverse(change Change, newID func() ID, undone Void, renamed map[ID]ID) Change {
	switch c := change.(type) {
	case AddResult:
		return VoidResult{c.Result.ID, undone}
	case AddBout:
		return VoidBout{c.Bout.ID, undone}
	case AddOverride:
		return VoidOverride{c.Override.ID, undone}
	case VoidResult:
		r := at(b.Results, c.ID, resultKey)
		renamed[r.ID] = newID()
		r.ID, r.Void = renamed[r.ID], nil
		return AddResult{r}
	case VoidBout:
		r := at(b.Bouts, c.ID, boutKey)
		r.ID, r.Void = newID(), nil
		return AddBout{r}
	case VoidOverride:
		r := at(b.Overrides, c.ID, overrideKey)
		r.ID, r.Void = newID(), nil
		return AddOverride{r}
	}
	return b.inversePut(change)
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
		return PutLift{at(b.Lifts, c.Key, liftKey)}
	case PutMovement:
		return back(b.Movements, c.Movement.Key, movementKey, func(v Movement) Change { return PutMovement{v} }, DropMovement{c.Movement.Key})
	case DropMovement:
		return PutMovement{at(b.Movements, c.Key, movementKey)}
	case PutFinisher:
		return back(b.Finishers, c.Finisher.Key, finisherKey, func(v Finisher) Change { return PutFinisher{v} }, DropFinisher{c.Finisher.Key})
	case DropFinisher:
		return PutFinisher{at(b.Finishers, c.Key, finisherKey)}
	case PutDrill:
		return back(b.Drills, c.Drill.Key, drillKey, func(v Drill) Change { return PutDrill{v} }, DropDrill{c.Drill.Key})
	case DropDrill:
		return PutDrill{at(b.Drills, c.Key, drillKey)}
	}
	return b.inverseRow(change)
}

func (b *Book) inverseRow(change Change) Change {
	switch c := change.(type) {
	case PutTrack:
		return back(b.Tracks, c.Track.ID, trackKey, func(v Track) Change { return PutTrack{v} }, DropTrack{c.Track.ID})
	case DropTrack:
		return PutTrack{at(b.Tracks, c.ID, trackKey)}
	case PutAthlete:
		return back(b.Athletes, c.Athlete.ID, athleteKey, func(v Athlete) Change { return PutAthlete{v} }, DropAthlete{c.Athlete.ID})
	case DropAthlete:
		return PutAthlete{at(b.Athletes, c.ID, athleteKey)}
	case PutMove:
		return back(b.Moves, c.Move.ID, moveKey, func(v TrackMove) Change { return PutMove{v} }, DropMove{c.Move.ID})
	case DropMove:
		return PutMove{at(b.Moves, c.ID, moveKey)}
	case PutRestriction:
		return back(b.Restrictions, c.Restriction.ID, restrictionKey, func(v Restriction) Change { return PutRestriction{v} }, DropRestriction{c.Restriction.ID})
	case DropRestriction:
		return PutRestriction{at(b.Restrictions, c.ID, restrictionKey)}
	}
	return b.inversePlan(change)
}

func (b *Book) inversePlan(change Change) Change {
	switch c := change.(type) {
	case PutClimb:
		return back(b.Climbs, c.Climb.ID, climbKey, func(v ClimbPlan) Change { return PutClimb{v} }, DropClimb{c.Climb.ID})
	case DropClimb:
		return PutClimb{at(b.Climbs, c.ID, climbKey)}
	case PutSlot:
		return back(b.Slots, c.Slot.ID, slotKey, func(v Slot) Change { return PutSlot{v} }, DropSlot{c.Slot.ID})
	case DropSlot:
		return PutSlot{at(b.Slots, c.ID, slotKey)}
	case PutClosure:
		return back(b.Closures, c.Closure.ID, closureKey, func(v Closure) Change { return PutClosure{v} }, DropClosure{c.Closure.ID})
	case DropClosure:
		return PutClosure{at(b.Closures, c.ID, closureKey)}
	case PutCycle:
		return back(b.Cycles, c.Cycle.ID, cycleKey, func(v Cycle) Change { return PutCycle{v} }, DropCycle{c.Cycle.ID})
	case DropCycle:
		return PutCycle{at(b.Cycles, c.ID, cycleKey)}
	case PutClass:
		return back(b.Classes, c.Class.ID, classKey, func(v Class) Change { return PutClass{v} }, DropClass{c.Class.ID})
	case DropClass:
		return PutClass{at(b.Classes, c.ID, classKey)}
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

func renameResults(c Class, renamed map[ID]ID) Class {
	lifters := append([]Lifter(nil), c.Lifters...)
	for i, l := range lifters {
		if id, ok := renamed[l.Result]; ok {
			lifters[i].Result = id
		}
	}
	c.Lifters = lifters
	return c
}
