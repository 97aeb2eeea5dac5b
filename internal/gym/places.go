package gym

import "slices"

// manyRows is from how many searches on a map of a list is worth its making.
const manyRows = 64

// places finds the rows of one list while a list of changes is made of it. Beside
// the row found last is looked first, as a sheet is taken back in its own order; a
// few rows are looked for from the end, because rows that change were mostly made
// lately; for many a map is made once.
type places[T any] struct {
	rows   *[]T
	key    func(T) ID
	last   int        // where a row was found last
	sought int        // how many were looked for from the end
	known  map[ID]int // nil until that was often
}

func placesOf[T any](rows *[]T, key func(T) ID) places[T] {
	return places[T]{rows: rows, key: key, last: len(*rows)}
}

// at returns the place of a row, or -1.
func (p *places[T]) at(id ID) int {
	for _, beside := range []int{p.last - 1, p.last + 1} {
		if beside >= 0 && beside < len(*p.rows) && p.key((*p.rows)[beside]) == id {
			p.last = beside
			return beside
		}
	}
	i := p.seek(id)
	if i >= 0 {
		p.last = i
	}
	return i
}

func (p *places[T]) seek(id ID) int {
	if p.known == nil && p.sought < manyRows {
		p.sought++
		return indexOf(*p.rows, id, p.key)
	}
	if p.known == nil {
		p.known = make(map[ID]int, cap(*p.rows)) // the room for rows to come
		for i, r := range *p.rows {
			p.known[p.key(r)] = i
		}
	}
	if i, ok := p.known[id]; ok {
		return i
	}
	return -1
}

// row returns the row with a key, or nil.
func (p *places[T]) row(id ID) *T {
	if i := p.at(id); i >= 0 {
		return &(*p.rows)[i]
	}
	return nil
}

func (p *places[T]) add(row T) {
	if p.known != nil {
		p.known[p.key(row)] = len(*p.rows)
	}
	*p.rows = append(*p.rows, row)
}

func (p *places[T]) put(row T) {
	if was := p.row(p.key(row)); was != nil {
		*was = row
		return
	}
	p.add(row)
}

// drop takes a row away. The last of the list leaves the others where they were.
func (p *places[T]) drop(id ID) {
	i := p.at(id)
	switch {
	case i < 0:
		return
	case i == len(*p.rows)-1:
		delete(p.known, id)
	default:
		p.known, p.sought = nil, 0
	}
	*p.rows = slices.Delete(*p.rows, i, i+1)
}
