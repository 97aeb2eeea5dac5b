package gym

import "slices"

// Book is everything that one file knows. Slices are in the order in which rows
// were made, unless their noun has a position of its own.
type Book struct {
	Settings     Settings
	Equipment    Equipment
	Lifts        []Lift
	Movements    []Movement
	Finishers    []Finisher
	Drills       []Drill
	Tracks       []Track
	Athletes     []Athlete
	Moves        []TrackMove
	Restrictions []Restriction
	Results      []Result
	Bouts        []Bout
	Overrides    []Override
	Climbs       []ClimbPlan
	Slots        []Slot
	Closures     []Closure
	Cycles       []Cycle
	Classes      []Class
}

// Change is one thing that the book is to say from now on. The store writes a
// list of changes in one transaction; [Book.Apply] makes the same of a book in
// memory, so the two can be checked against each other.
type Change interface{ apply(*Book) }

// Apply makes the changes in order, in place. What a change does not find it
// leaves as it is: a drop or a void of nothing is nothing, and the first void of
// a row stands. The store refuses such a void instead.
func (b *Book) Apply(changes ...Change) {
	b.makeRoom(changes)
	rows := rowsOf(b)
	for _, change := range changes {
		if !rows.apply(change) {
			change.apply(b)
		}
	}
}

// The changes. A Put keeps a value in the place of the one with its key, or adds
// it. A Drop takes away a value that nothing else names.
type (
	PutSettings     struct{ Settings Settings }
	PutEquipment    struct{ Equipment Equipment }
	PutLift         struct{ Lift Lift }
	DropLift        struct{ Key LiftKey }
	PutMovement     struct{ Movement Movement }
	DropMovement    struct{ Key MovementKey }
	PutFinisher     struct{ Finisher Finisher }
	DropFinisher    struct{ Key string }
	PutDrill        struct{ Drill Drill }
	DropDrill       struct{ Key string }
	PutTrack        struct{ Track Track }
	DropTrack       struct{ ID ID }
	PutAthlete      struct{ Athlete Athlete }
	DropAthlete     struct{ ID ID } // only to undo an addition
	PutMove         struct{ Move TrackMove }
	DropMove        struct{ ID ID } // only to undo a move
	PutRestriction  struct{ Restriction Restriction }
	DropRestriction struct{ ID ID }
	AddResult       struct{ Result Result } // results, bouts and overrides are only ever added
	VoidResult      struct {
		ID   ID
		Void Void
	}
	AddBout  struct{ Bout Bout }
	VoidBout struct {
		ID   ID
		Void Void
	}
	AddOverride  struct{ Override Override }
	VoidOverride struct {
		ID   ID
		Void Void
	}
	PutClimb    struct{ Climb ClimbPlan }
	DropClimb   struct{ ID ID }
	PutSlot     struct{ Slot Slot }
	DropSlot    struct{ ID ID }
	PutClosure  struct{ Closure Closure }
	DropClosure struct{ ID ID }
	PutCycle    struct{ Cycle Cycle }
	DropCycle   struct{ ID ID }
	PutClass    struct{ Class Class }
	DropClass   struct{ ID ID } // only before the class has started
)

func (c PutSettings) apply(b *Book)  { b.Settings = c.Settings }
func (c PutEquipment) apply(b *Book) { b.Equipment = c.Equipment }

func (c PutLift) apply(b *Book)         { put(&b.Lifts, c.Lift, liftKey) }
func (c DropLift) apply(b *Book)        { drop(&b.Lifts, c.Key, liftKey) }
func (c PutMovement) apply(b *Book)     { put(&b.Movements, c.Movement, movementKey) }
func (c DropMovement) apply(b *Book)    { drop(&b.Movements, c.Key, movementKey) }
func (c PutFinisher) apply(b *Book)     { put(&b.Finishers, c.Finisher, finisherKey) }
func (c DropFinisher) apply(b *Book)    { drop(&b.Finishers, c.Key, finisherKey) }
func (c PutDrill) apply(b *Book)        { put(&b.Drills, c.Drill, drillKey) }
func (c DropDrill) apply(b *Book)       { drop(&b.Drills, c.Key, drillKey) }
func (c PutTrack) apply(b *Book)        { put(&b.Tracks, c.Track, trackKey) }
func (c DropTrack) apply(b *Book)       { drop(&b.Tracks, c.ID, trackKey) }
func (c PutAthlete) apply(b *Book)      { rowsOf(b).apply(c) }
func (c DropAthlete) apply(b *Book)     { rowsOf(b).apply(c) }
func (c PutMove) apply(b *Book)         { rowsOf(b).apply(c) }
func (c DropMove) apply(b *Book)        { rowsOf(b).apply(c) }
func (c PutRestriction) apply(b *Book)  { put(&b.Restrictions, c.Restriction, restrictionKey) }
func (c DropRestriction) apply(b *Book) { drop(&b.Restrictions, c.ID, restrictionKey) }
func (c PutClimb) apply(b *Book)        { put(&b.Climbs, c.Climb, climbKey) }
func (c DropClimb) apply(b *Book)       { drop(&b.Climbs, c.ID, climbKey) }
func (c PutSlot) apply(b *Book)         { put(&b.Slots, c.Slot, slotKey) }
func (c DropSlot) apply(b *Book)        { drop(&b.Slots, c.ID, slotKey) }
func (c PutClosure) apply(b *Book)      { put(&b.Closures, c.Closure, closureKey) }
func (c DropClosure) apply(b *Book)     { drop(&b.Closures, c.ID, closureKey) }
func (c PutCycle) apply(b *Book)        { put(&b.Cycles, c.Cycle, cycleKey) }
func (c DropCycle) apply(b *Book)       { drop(&b.Cycles, c.ID, cycleKey) }
func (c PutClass) apply(b *Book)        { put(&b.Classes, c.Class, classKey) }
func (c DropClass) apply(b *Book)       { drop(&b.Classes, c.ID, classKey) }

func (c AddResult) apply(b *Book)   { rowsOf(b).apply(c) }
func (c AddBout) apply(b *Book)     { rowsOf(b).apply(c) }
func (c AddOverride) apply(b *Book) { b.Overrides = append(b.Overrides, c.Override) }

func (c VoidResult) apply(b *Book) { rowsOf(b).apply(c) }
func (c VoidBout) apply(b *Book)   { rowsOf(b).apply(c) }

func (c VoidOverride) apply(b *Book) {
	if i := indexOf(b.Overrides, c.ID, overrideKey); i >= 0 && b.Overrides[i].Void == nil {
		b.Overrides[i].Void = &c.Void
	}
}

func liftKey(v Lift) LiftKey             { return v.Key }
func movementKey(v Movement) MovementKey { return v.Key }
func finisherKey(v Finisher) string      { return v.Key }
func drillKey(v Drill) string            { return v.Key }
func trackKey(v Track) ID                { return v.ID }
func athleteKey(v Athlete) ID            { return v.ID }
func moveKey(v TrackMove) ID             { return v.ID }
func restrictionKey(v Restriction) ID    { return v.ID }
func resultKey(v Result) ID              { return v.ID }
func boutKey(v Bout) ID                  { return v.ID }
func overrideKey(v Override) ID          { return v.ID }
func climbKey(v ClimbPlan) ID            { return v.ID }
func slotKey(v Slot) ID                  { return v.ID }
func closureKey(v Closure) ID            { return v.ID }
func cycleKey(v Cycle) ID                { return v.ID }
func classKey(v Class) ID                { return v.ID }

func indexOf[T any, K comparable](rows []T, key K, of func(T) K) int {
	// Rows that change were mostly made lately: look from the end.
	for i := len(rows) - 1; i >= 0; i-- {
		if of(rows[i]) == key {
			return i
		}
	}
	return -1
}

func put[T any, K comparable](rows *[]T, row T, of func(T) K) {
	if i := indexOf(*rows, of(row), of); i >= 0 {
		(*rows)[i] = row
		return
	}
	*rows = append(*rows, row)
}

func drop[T any, K comparable](rows *[]T, key K, of func(T) K) {
	if i := indexOf(*rows, key, of); i >= 0 {
		*rows = slices.Delete(*rows, i, i+1)
	}
}
