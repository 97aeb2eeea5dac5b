package gym

// peopleRows finds athletes and their moves while a long list of changes is made:
// a roster of a hundred thousand would be looked through once for every row.
type peopleRows struct {
	book     *Book
	athletes map[ID]int // nil for a short list, and after a row was taken away
	moves    map[ID]int
}

func newPeopleRows(b *Book, changes []Change) *peopleRows {
	rows := &peopleRows{book: b}
	if len(changes) >= manyRows {
		rows.athletes, rows.moves = placesOf(b.Athletes, athleteKey), placesOf(b.Moves, moveKey)
	}
	return rows
}

// apply makes a change to athletes or moves and reports whether it was one.
func (p *peopleRows) apply(change Change) bool {
	switch c := change.(type) {
	case PutAthlete:
		putAt(&p.book.Athletes, c.Athlete, p.athletes, athleteKey)
	case PutMove:
		putAt(&p.book.Moves, c.Move, p.moves, moveKey)
	case DropAthlete:
		p.athletes = nil
		return false
	case DropMove:
		p.moves = nil
		return false
	default:
		return false
	}
	return true
}

// putAt is put with the places of rows known; without places it looks for them.
func putAt[T any](rows *[]T, row T, places map[ID]int, of func(T) ID) {
	if places == nil {
		put(rows, row, of)
		return
	}
	if i, ok := places[of(row)]; ok {
		(*rows)[i] = row
		return
	}
	places[of(row)] = len(*rows)
	*rows = append(*rows, row)
}
