package wall

import "math"

// part is some rows of a station, which stand together.
type part struct{ station, from, to int }

// column is what stands under each other on a page.
type column []part

// stack is rows that are to be put into columns: their heights, what stands over
// those of each station wherever a column begins it or goes on with it, and a gap
// between two stations.
type stack struct {
	stations [][]float32 // heights of the rows
	heads    []float32   // over them
	gap      float32
	rows     []place // all of them in their order
}

// place is where a row is found, and where it ends if all are under each other.
type place struct {
	station, row int
	until        float32
}

func newStack(stations [][]float32, heads []float32, gap float32) stack {
	s := stack{stations: stations, heads: heads, gap: gap}
	at := float32(0)
	for i, rows := range stations {
		for n, high := range rows {
			if n == 0 && len(s.rows) > 0 {
				at += gap + heads[i]
			}
			at += high
			s.rows = append(s.rows, place{i, n, at})
		}
	}
	return s
}

// high is how high the rows from one up to another are.
func (s stack) high(from, to int) float32 {
	first := s.rows[from]
	return s.rows[to-1].until - first.until + s.stations[first.station][first.row] + s.heads[first.station]
}

// breaks reports whether a column that begins with a row tears its station apart.
func (s stack) breaks(at int) bool { return at < len(s.rows) && s.rows[at].row > 0 }

// cost of an arrangement: stations torn apart weigh first, then how uneven the
// columns are, since half a page at the end is room that the letters lack.
type cost struct {
	torn   int
	uneven float64 // sum of the squares of the heights
	from   int     // the first row of the last column
}

func (c cost) less(than cost) bool {
	return c.torn < than.torn || c.torn == than.torn && c.uneven < than.uneven
}

var impossible = cost{torn: math.MaxInt}

// fill puts all rows, in their order, into the fewest pages of so many columns of a
// height each, with as few stations torn apart as that allows, or with whole ones
// only, but for a station that is higher than a column. It returns nil where a row
// is too high.
func (s stack) fill(height float32, perPage int, whole bool) []column {
	table := s.arrange(height, perPage, whole)
	n := len(s.rows)
	least := 0
	for ; least < len(table) && table[least][n] == impossible; least++ {
	}
	if least == len(table) {
		return nil
	}
	best, full := least, (least+perPage-1)/perPage*perPage
	for c := least + 1; c <= min(full, n); c++ {
		if table[c][n].less(table[best][n]) {
			best = c
		}
	}
	return s.columns(table, best)
}

// arrange works out what it costs to put the first rows into so many columns: the
// entry of c columns and n rows is the best of all that leave their last column
// beginning somewhere. It ends with the first number of columns that fills pages and
// holds everything.
func (s stack) arrange(height float32, perPage int, whole bool) [][]cost {
	n := len(s.rows)
	table := make([][]cost, n+1)
	for c := range table {
		table[c] = make([]cost, n+1)
		for to := range table[c] {
			table[c][to] = impossible
		}
	}
	table[0][0] = cost{}
	for c := 1; c <= n; c++ {
		for to := c; to <= n; to++ {
			table[c][to] = s.best(table[c-1], to, height, whole)
		}
		if table[c][n] != impossible && c%perPage == 0 {
			break
		}
	}
	return table
}

// best ends a column before a row in the cheapest way.
func (s stack) best(before []cost, to int, height float32, whole bool) cost {
	best := impossible
	for from := to - 1; from >= 0; from-- {
		high := s.high(from, to)
		if high > height {
			break
		}
		was := before[from]
		if was == impossible || whole && s.breaks(from) && s.fits(s.rows[from].station, height) {
			continue
		}
		next := cost{was.torn, was.uneven + float64(high)*float64(high), from}
		if s.breaks(from) {
			next.torn++
		}
		if next.less(best) {
			best = next
		}
	}
	return best
}

// fits reports whether a whole station fits into a column.
func (s stack) fits(station int, height float32) bool {
	all := s.heads[station]
	for _, high := range s.stations[station] {
		all += high
	}
	return all <= height
}

// columns reads an arrangement from its table.
func (s stack) columns(table [][]cost, count int) []column {
	all := make([]column, count)
	for c, to := count, len(s.rows); c > 0; c-- {
		from := table[c][to].from
		all[c-1] = s.parts(from, to)
		to = from
	}
	return all
}

// parts names the rows from one up to another by their stations.
func (s stack) parts(from, to int) column {
	var c column
	for _, r := range s.rows[from:to] {
		if last := len(c) - 1; last >= 0 && c[last].station == r.station {
			c[last].to++
			continue
		}
		c = append(c, part{r.station, r.row, r.row + 1})
	}
	return c
}

// page is what is shown at once: columns side by side.
type page []column

// paged puts columns side by side; without any there is one empty page.
func paged(columns []column, perPage int) []page {
	pages := []page{}
	for from := 0; from < len(columns); from += perPage {
		pages = append(pages, columns[from:min(from+perPage, len(columns))])
	}
	if len(pages) == 0 {
		pages = []page{nil}
	}
	return pages
}

// lengths is how many rows each page has.
func lengths(pages []page) []int {
	all := make([]int, len(pages))
	for i, p := range pages {
		for _, c := range p {
			for _, part := range c {
				all[i] += part.to - part.from
			}
		}
	}
	return all
}

// torn is how many stations stand on more than one page.
func torn(pages []page) int {
	last, torn := map[int]int{}, map[int]bool{}
	for i, p := range pages {
		for _, c := range p {
			for _, part := range c {
				if was, ok := last[part.station]; ok && was != i {
					torn[part.station] = true
				}
				last[part.station] = i
			}
		}
	}
	return len(torn)
}
