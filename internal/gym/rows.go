package gym

import "slices"

// rows makes changes of the four lists that grow long, each of which would
// otherwise be looked through once for every change of a long sheet.
type rows struct {
	results  places[Result]
	bouts    places[Bout]
	athletes places[Athlete]
	moves    places[TrackMove]
}

func rowsOf(b *Book) *rows {
	return &rows{
		placesOf(&b.Results, resultKey), placesOf(&b.Bouts, boutKey),
		placesOf(&b.Athletes, athleteKey), placesOf(&b.Moves, moveKey),
	}
}

// apply makes a change of one of the four lists and reports whether it was one.
func (r *rows) apply(change Change) bool {
	switch c := change.(type) {
	case AddResult:
		r.results.add(c.Result)
	case VoidResult:
		r.voidResult(c)
	case AddBout:
		r.bouts.add(c.Bout)
	case VoidBout:
		r.voidBout(c)
	case PutAthlete:
		r.athletes.put(c.Athlete)
	case DropAthlete:
		r.athletes.drop(c.ID)
	case PutMove:
		r.moves.put(c.Move)
	case DropMove:
		r.moves.drop(c.ID)
	default:
		return false
	}
	return true
}

func (r *rows) voidResult(c VoidResult) {
	if row := r.results.row(c.ID); row != nil && row.Void == nil {
		row.Void = &c.Void
	}
}

func (r *rows) voidBout(c VoidBout) {
	if row := r.bouts.row(c.ID); row != nil && row.Void == nil {
		row.Void = &c.Void
	}
}

// makeRoom makes the lists that a long list of changes adds to as long as they may
// become, so that they are copied once and not again and again.
func (b *Book) makeRoom(changes []Change) {
	if len(changes) < manyRows {
		return
	}
	results, bouts, athletes, moves := 0, 0, 0, 0
	for _, c := range changes {
		switch c.(type) {
		case AddResult:
			results++
		case AddBout:
			bouts++
		case PutAthlete:
			athletes++
		case PutMove:
			moves++
		}
	}
	b.Results, b.Bouts = slices.Grow(b.Results, results), slices.Grow(b.Bouts, bouts)
	b.Athletes, b.Moves = slices.Grow(b.Athletes, athletes), slices.Grow(b.Moves, moves)
}
