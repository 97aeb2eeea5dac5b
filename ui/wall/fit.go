package wall

import (
	"slices"
	"time"

	"fyne.io/fyne/v2"
)

// fit is how a climb is laid out: its rows in their columns.
type fit struct {
	frame
	label float32 // of the masses on the discs, in shares of the text size
	rows  [][]rowSize
	badge float32  // width of the widest, in shares of the text size
	two   [][]bool // the row has two lines
}

// Sizes of a row, in shares of the text size.
const (
	rowShare   = 1.44 // of one line
	twoShare   = 2.66 // of two
	groupGap   = 0.22 // between stations
	columnGap  = 0.4  // between the columns of a row
	badgePads  = 0.7  // around the name of a station
	rowPads    = 1.5  // those and the ones around the row
	columnsGap = 0.5  // between columns of stations
	nowShare   = 1.2  // size of the load to be lifted
	smallShare = 0.55
	footShare  = 1.75 // height of the line of small text with a gap, in its own size
)

// fitClimb chooses how a climb is shown by [merit].
func fitClimb(m measured, s Screen, size fyne.Size, wait time.Duration) fit {
	s = s.believed()
	best, _ := bestOf(wait, func(arc float64) []fit { return m.at(s, size, arc, wait) })
	return best
}

// at lays out for letters of an angle in every way that has room.
func (m measured) at(s Screen, size fyne.Size, arc float64, wait time.Duration) (all []fit) {
	label := min(1, max(labelShare, float32(LeastArc/arc)))
	for _, frame := range s.frames(arc, size, m.words) {
		f := fit{frame: frame, label: label, rows: m.stations, badge: m.badge}
		if !f.setLines() {
			continue
		}
		for _, f.frame = range frame.packed(f.stack(), wait) {
			all = append(all, f)
		}
	}
	return all
}

// room is what a column leaves for a row, in shares of the text size.
func (f fit) room() float32 { return f.wide()/f.text - f.badge - rowPads }

// setLines decides which rows get two lines; it reports whether all have room.
// Side by side all rows are alike: narrow ones of both kinds are hard to follow.
func (f *fit) setLines() bool {
	f.two = make([][]bool, len(f.rows))
	some := false
	for i, rows := range f.rows {
		two, ok := linesOf(rows, f.room(), f.label)
		if !ok {
			return false
		}
		f.two[i], some = two, some || slices.Contains(two, true)
	}
	for i := range f.two {
		if some && f.perPage > 1 {
			f.two[i] = slices.Repeat([]bool{true}, len(f.two[i]))
		}
	}
	return true
}

// linesOf sets the rows of a station under each other, as many in one line as the
// room allows: the longest get two.
func linesOf(rows []rowSize, room, label float32) (two []bool, ok bool) {
	two = make([]bool, len(rows))
	for _, r := range rows {
		if r.twoLines(label) > room {
			return nil, false
		}
	}
	for slices.Contains(two, false) && widest(rows, two).oneLine(label) > room {
		two[longest(rows, two, label)] = true
	}
	return two, true
}

// longest is the one-line row that needs the most room.
func longest(rows []rowSize, two []bool, label float32) int {
	at, most := 0, float32(-1)
	for i, r := range rows {
		if wide := r.oneLine(label); !two[i] && wide > most {
			at, most = i, wide
		}
	}
	return at
}

// widest is the room for the columns of those rows that have one line.
func widest(rows []rowSize, two []bool) rowSize {
	var w rowSize
	for i, r := range rows {
		if !two[i] {
			w = w.wider(r)
		}
	}
	return w
}

// stack is the heights of the rows, in shares of the text size.
func (f fit) stack() stack {
	heights := make([][]float32, len(f.two))
	for i, rows := range f.two {
		for n := range rows {
			heights[i] = append(heights[i], f.rowHigh(i, n))
		}
	}
	return newStack(heights, make([]float32, len(heights)), groupGap)
}

func (f fit) rowHigh(station, row int) float32 {
	if f.two[station][row] {
		return twoShare
	}
	return rowShare
}

// high is the height of a part, in shares of the text size.
func (f fit) high(p part) (high float32) {
	for row := p.from; row < p.to; row++ {
		high += f.rowHigh(p.station, row)
	}
	return high
}

// mostLoose is how much higher than they must be rows are at most.
const mostLoose = 1.3

// loose is how much higher the rows of a page may be: what its fullest column
// leaves is better between the rows than under them.
func (f fit) loose(p page) float32 {
	loose := float32(mostLoose)
	for _, c := range p {
		rows := float32(0)
		for _, part := range c {
			rows += f.high(part)
		}
		if rows > 0 {
			gaps := float32(len(c)-1) * groupGap
			loose = min(loose, (f.height()/f.text-gaps)/rows)
		}
	}
	return max(1, loose)
}

// aligned is the room for the columns of the one-line rows of a part: those of all
// that stand under each other, where there is room, or those of its station.
func (f fit) aligned(c column, p part) rowSize {
	var all rowSize
	for _, other := range c {
		all = all.wider(widest(f.rows[other.station], f.two[other.station]))
	}
	if all.oneLine(f.label) <= f.room() {
		return all
	}
	return widest(f.rows[p.station], f.two[p.station])
}

// pageOf is the page on which a lifter stands first.
func (f fit) pageOf(station, row int) int {
	for i, p := range f.pages {
		for _, c := range p {
			for _, part := range c {
				if part.station == station && row >= part.from && row < part.to {
					return i
				}
			}
		}
	}
	return 0
}
