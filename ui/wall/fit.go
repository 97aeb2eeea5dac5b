package wall

import (
	"slices"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
)

// fit is how a climb is laid out: how large its letters are and which stations
// stand on which page.
type fit struct {
	size    fyne.Size
	arc     float64 // that the lines to be read span at the farthest reader
	text    float32 // their size in units
	small   float32 // of the one line of small text
	two     bool    // a row has two lines
	margin  float32
	band    band
	widths  widths
	row     float32 // height of a row
	columns int
	pages   []page
}

// page is what is shown at once: columns of parts of stations.
type page [][]part

// part is some rows of a station.
type part struct{ station, from, to int }

// widths are those of the columns of a row, in shares of the text size.
type widths struct{ badge, name, now, discs, next float32 }

// Sizes of a row, in shares of the text size.
const (
	rowShare   = 1.52 // of one line
	twoShare   = 2.72 // of two
	groupGap   = 0.22 // between stations
	columnGap  = 0.4  // between the columns of a row
	badgePads  = 0.7  // around the name of a station
	rowPads    = 1.5  // those and the ones around the row
	columnsGap = 0.7  // between columns of rows
	nowShare   = 1.2  // size of the load to be lifted
	smallShare = 0.55
	footShare  = 1.75 // height of the line of small text with a gap, in its own size
)

// fitClimb finds the fewest pages that show every lifter in letters of at least
// the least angle, and of these the largest letters. On a screen too small for
// one lifter the letters get smaller than that.
func fitClimb(m measured, s Screen, size fyne.Size) fit {
	s = s.believed()
	var best fit
	for arc := MostArc; arc >= 3; arc-- {
		for _, two := range []bool{false, true} {
			f := m.at(s, size, arc, two)
			if f.pages == nil {
				continue
			}
			if best.pages == nil || arc >= LeastArc && len(f.pages) < len(best.pages) {
				best = f
			}
		}
		if best.pages != nil && arc <= LeastArc {
			break
		}
	}
	return best
}

// measured is what the layout of a climb depends on, apart from the screen.
type measured struct {
	stations []int // how many rows each has
	widths   widths
	words    float32 // widest line of the band, in shares of the text size
}

// at lays out for letters of an angle; without pages it does not fit.
func (m measured) at(s Screen, size fyne.Size, arc float64, two bool) fit {
	f := fit{size: size, arc: arc, text: s.textSize(arc, size.Height), two: two, widths: m.widths}
	f.margin = max(0.25*f.text, 0.014*size.Height)
	f.small = max(smallShare*f.text, 0.016*size.Height)
	f.row = rowShare * f.text
	if two {
		f.row = twoShare * f.text
	}
	wide, ok := f.band.fit(f.text, m.words, size, f.margin)
	rows := size.Height - f.band.height - footShare*f.small - 2*f.margin
	if !ok || rows < f.row {
		return f
	}
	gap := columnsGap * f.text
	if f.columns = int((wide + gap) / (f.rowWidth() + gap)); f.columns == 0 {
		return f
	}
	f.pages = paged(m.stations, rows, f.row, groupGap*f.text, f.columns)
	f.columns = 1
	for _, p := range f.pages {
		f.columns = max(f.columns, len(p))
	}
	return f
}

// rowWidth is the least width of a row.
func (f fit) rowWidth() float32 {
	w := f.widths
	if f.two {
		return (w.badge + rowPads + max(w.name+columnGap+w.now, w.discs+columnGap+w.next)) * f.text
	}
	return (w.badge + rowPads + w.name + w.now + w.discs + w.next + 3*columnGap) * f.text
}

// paged fills columns with stations from the top, and pages with columns. A
// station that is longer than what is left of a column begins the next one; one
// that is longer than a column is split.
func paged(stations []int, height, row, gap float32, columns int) []page {
	pages := []page{{nil}}
	left := height
	turn := func() {
		last := len(pages) - 1
		if len(pages[last]) < columns {
			pages[last] = append(pages[last], nil)
		} else {
			pages = append(pages, page{nil})
		}
		left = height
	}
	most := int(height / row)
	for station, rows := range stations {
		for from := 0; from < rows; {
			n := min(rows-from, most)
			if need := float32(n) * row; need > left {
				if left < height {
					turn()
				}
			}
			last := len(pages) - 1
			column := len(pages[last]) - 1
			pages[last][column] = append(pages[last][column], part{station, from, from + n})
			from, left = from+n, left-float32(n)*row-gap
		}
	}
	return pages
}

// measure sizes what the rows of stations and their badges say, and the widest of
// some words that stand beside the clock.
func measure(stations []Station, labels []string, words ...string) measured {
	var m measured
	w := &m.widths
	for i, label := range labels {
		m.stations = append(m.stations, len(stations[i].Rows))
		w.badge = max(w.badge, share(label, true))
		for _, r := range stations[i].Rows {
			w.name = max(w.name, min(share(r.Name, true), longestName)+hair)
			w.now = max(w.now, nowWidth(r.Now))
			w.discs = max(w.discs, discsWidth(r))
			w.next = max(w.next, nextWidth(r))
		}
	}
	for _, text := range words {
		m.words = max(m.words, share(text, true))
	}
	return m
}

// longestName is the width, in shares of the text size, from which a name is cut.
const longestName = 7

// wider takes the greater widths of two measures of the same stations: while a
// rung runs, letters may have to shrink, but a call that is made moves nothing.
func (m measured) wider(than measured) measured {
	if !slices.Equal(m.stations, than.stations) {
		return m
	}
	a, b := &m.widths, than.widths
	a.badge, a.name, a.now = max(a.badge, b.badge), max(a.name, b.name), max(a.now, b.now)
	a.discs, a.next = max(a.discs, b.discs), max(a.next, b.next)
	m.words = max(m.words, than.words)
	return m
}

// nowWidth is the width of the load to be lifted: large, before it the lighter
// number while a call is open, after it the reps.
func nowWidth(l Load) float32 {
	return share(l.Text, true)*nowShare + share(before(l), true) + share(after(l), true) + 2*hair
}

// hair is what a text may come out wider than its size makes believe.
const hair = 0.04

// before is what stands before the load to be lifted.
func before(l Load) string {
	if l.Or == "" {
		return ""
	}
	return l.Or + " / "
}

// after is what stands after the load to be lifted.
func after(l Load) string {
	if l.Or != "" || l.Reps == "" {
		return ""
	}
	return " " + l.Reps
}

// nextWidth is the width of the load after this one, or of what stands there for a
// record.
func nextWidth(r Row) float32 {
	if r.Record {
		return share(recordText, true) + 1.1
	}
	return share(nextText(r.Next), false) + hair
}

const recordText = "record"

func nextText(l Load) string {
	if l.Text == "" {
		return ""
	}
	return "› " + l.String()
}

// badges are what tells stations apart: the number in their names where all have
// one of their own, otherwise their names while lifters look for their places, and
// after that their numbers in the gym's list.
func badges(stations []Station, byName bool) []string {
	numbered, places, names := make([]string, len(stations)), make([]string, len(stations)), make([]string, len(stations))
	apart := map[string]bool{}
	for i, s := range stations {
		numbered[i], places[i], names[i] = numberOf(s.Name), strconv.Itoa(s.Number), s.Name
		if s.Number == 0 {
			numbered[i], places[i] = s.Name, s.Name
		}
		if numbered[i] != "" {
			apart[numbered[i]] = true
		}
	}
	switch {
	case len(apart) == len(stations):
		return numbered
	case byName:
		return names
	}
	return places
}

// numberOf is the number at the end of a station's name, or nothing.
func numberOf(name string) string {
	number := name[strings.LastIndex(name, " ")+1:]
	if strings.Trim(number, "0123456789") != "" {
		return ""
	}
	return number
}
