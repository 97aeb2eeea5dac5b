package gym

// Changes returns the changes that make an empty book say what b says, in an
// order in which every row finds the rows that it names.
func (b *Book) Changes() []Change {
	changes := []Change{PutSettings{b.Settings}, PutEquipment{b.Equipment}}
	changes = each(changes, b.Lifts, func(v Lift) Change { return PutLift{v} })
	changes = each(changes, b.Movements, func(v Movement) Change { return PutMovement{v} })
	changes = each(changes, b.Finishers, func(v Finisher) Change { return PutFinisher{v} })
	changes = each(changes, b.Drills, func(v Drill) Change { return PutDrill{v} })
	changes = each(changes, b.Tracks, func(v Track) Change { return PutTrack{v} })
	changes = each(changes, b.Climbs, func(v ClimbPlan) Change { return PutClimb{v} })
	changes = each(changes, b.Slots, func(v Slot) Change { return PutSlot{v} })
	changes = each(changes, b.Closures, func(v Closure) Change { return PutClosure{v} })
	changes = each(changes, b.Athletes, func(v Athlete) Change { return PutAthlete{v} })
	changes = each(changes, b.Moves, func(v TrackMove) Change { return PutMove{v} })
	changes = each(changes, b.Restrictions, func(v Restriction) Change { return PutRestriction{v} })
	changes = each(changes, b.Cycles, func(v Cycle) Change { return PutCycle{v} })
	changes = each(changes, b.Classes, func(v Class) Change { return PutClass{v} })
	return append(changes, b.logged()...)
}

// logged adds the rows that are never edited, and then voids those that are.
func (b *Book) logged() []Change {
	var adds, voids []Change
	for _, r := range b.Results {
		if r.Void != nil {
			voids = append(voids, VoidResult{r.ID, *r.Void})
			r.Void = nil
		}
		adds = append(adds, AddResult{r})
	}
	for _, r := range b.Bouts {
		if r.Void != nil {
			voids = append(voids, VoidBout{r.ID, *r.Void})
			r.Void = nil
		}
		adds = append(adds, AddBout{r})
	}
	for _, o := range b.Overrides {
		if o.Void != nil {
			voids = append(voids, VoidOverride{o.ID, *o.Void})
			o.Void = nil
		}
		adds = append(adds, AddOverride{o})
	}
	return append(adds, voids...)
}

func each[T any](changes []Change, rows []T, change func(T) Change) []Change {
	for _, r := range rows {
		changes = append(changes, change(r))
	}
	return changes
}
