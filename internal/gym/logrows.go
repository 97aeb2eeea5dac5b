package gym

// manyRows is from how many voids on a map of the log is worth its making.
const manyRows = 64

// logRows finds rows of the log. A few are looked for from the end, because rows
// that are voided were mostly made lately; for many, such as a whole sheet that is
// taken back, a map is made once.
type logRows struct {
	book    *Book
	results map[ID]int // nil for a few
	bouts   map[ID]int
}

func newLogRows(b *Book, changes []Change) *logRows {
	rows := &logRows{book: b}
	results, bouts := 0, 0
	for _, c := range changes {
		switch c.(type) {
		case VoidResult:
			results++
		case VoidBout:
			bouts++
		}
	}
	if results >= manyRows {
		rows.results = placesOf(b.Results, resultKey)
	}
	if bouts >= manyRows {
		rows.bouts = placesOf(b.Bouts, boutKey)
	}
	return rows
}

func placesOf[T any](rows []T, of func(T) ID) map[ID]int {
	places := make(map[ID]int, len(rows))
	for i, r := range rows {
		places[of(r)] = i
	}
	return places
}

// result returns the row of a result, or nil.
func (l *logRows) result(id ID) *Result {
	return rowAt(l.book.Results, id, l.results, resultKey)
}

// bout returns the row of a bout, or nil.
func (l *logRows) bout(id ID) *Bout { return rowAt(l.book.Bouts, id, l.bouts, boutKey) }

func rowAt[T any](rows []T, id ID, places map[ID]int, of func(T) ID) *T {
	i, ok := places[id]
	if places == nil {
		i = indexOf(rows, id, of)
		ok = i >= 0
	}
	if !ok {
		return nil
	}
	return &rows[i]
}

// note keeps the maps true after a row was added.
func (l *logRows) note(c Change) {
	switch c := c.(type) {
	case AddResult:
		if l.results != nil {
			l.results[c.Result.ID] = len(l.book.Results) - 1
		}
	case AddBout:
		if l.bouts != nil {
			l.bouts[c.Bout.ID] = len(l.book.Bouts) - 1
		}
	}
}

func (l *logRows) voidResult(c VoidResult) {
	if r := l.result(c.ID); r != nil && r.Void == nil {
		r.Void = &c.Void
	}
}

func (l *logRows) voidBout(c VoidBout) {
	if b := l.bout(c.ID); b != nil && b.Void == nil {
		b.Void = &c.Void
	}
}
