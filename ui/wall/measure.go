package wall

// rowSize is the room that the parts of a row need, in shares of the text size.
type rowSize struct {
	name, now, next float32
	discs           [2]float32 // with labels as small as they may be, and as large as the text
}

// measured is what the layout of a climb depends on, apart from the screen.
type measured struct {
	stations [][]rowSize
	badge    float32
	words    float32 // widest line of the band
}

// longestName is the width, in shares of the text size, from which a name is cut.
const longestName = 7

// hair is what a text may come out wider than its size makes believe.
const hair = 0.04

// measure sizes what the rows of a climb say, and the lines that stand beside its
// clock in the course of it.
func measure(c Climb, words []string) measured {
	m := measured{}
	for i, s := range c.Stations {
		m.badge = max(m.badge, share(c.Badges[i], true))
		rows := make([]rowSize, len(s.Rows))
		for n, r := range s.Rows {
			rows[n] = sizeOf(r)
		}
		m.stations = append(m.stations, rows)
	}
	for _, text := range words {
		m.words = max(m.words, share(text, true))
	}
	return m
}

func sizeOf(r Row) rowSize {
	return rowSize{
		name: min(share(r.Name, true), longestName) + hair, now: nowWidth(r.Now), next: nextWidth(r),
		discs: [2]float32{discsWidth(r, labelShare), discsWidth(r, 1)},
	}
}

// wider takes the greater room of two measures of the same rows: while a rung
// runs, letters may have to shrink, but a call that is made moves nothing.
func (m measured) wider(than measured) measured {
	if !m.like(than) {
		return m
	}
	for i, rows := range m.stations {
		for n := range rows {
			rows[n] = rows[n].wider(than.stations[i][n])
		}
	}
	m.badge, m.words = max(m.badge, than.badge), max(m.words, than.words)
	return m
}

// like reports whether two measures have the same rows.
func (m measured) like(other measured) bool {
	if len(m.stations) != len(other.stations) {
		return false
	}
	for i, rows := range m.stations {
		if len(rows) != len(other.stations[i]) {
			return false
		}
	}
	return true
}

func (r rowSize) wider(than rowSize) rowSize {
	return rowSize{
		name: max(r.name, than.name), now: max(r.now, than.now), next: max(r.next, than.next),
		discs: [2]float32{max(r.discs[0], than.discs[0]), max(r.discs[1], than.discs[1])},
	}
}

// plates is the room for the discs with labels of a size between the least and
// that of the text. A disc is as wide as it is thick or as its label needs, so its
// width is convex in the label's size: the chord is never too narrow.
func (r rowSize) plates(label float32) float32 {
	along := (label - labelShare) / (1 - labelShare)
	return r.discs[0] + along*(r.discs[1]-r.discs[0])
}

// oneLine is the width of a row in one line.
func (r rowSize) oneLine(label float32) float32 {
	return r.name + r.now + r.plates(label) + r.next + 3*columnGap
}

// twoLines is the width of a row in two: name and load, plates and next load.
func (r rowSize) twoLines(label float32) float32 {
	return max(r.name+columnGap+r.now, r.plates(label)+columnGap+r.next)
}

// nowWidth is the width of the load to be lifted: large, before it the lighter
// number while a call is open, after it the reps and who waits for all others.
func nowWidth(l Load) float32 {
	return share(l.Text, true)*nowShare + share(before(l), true) + share(after(l), true) + 2*hair
}

// before is what stands before the load to be lifted.
func before(l Load) string {
	if l.Or == "" {
		return ""
	}
	return l.Or + " / "
}

// after is what stands after the load to be lifted.
func after(l Load) string {
	words := ""
	if l.Or == "" && l.Reps != "" {
		words = " " + l.Reps
	}
	if l.Last {
		words += " last"
	}
	return words
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

// soon stands before what comes next.
const soon = "› "

func nextText(l Load) string {
	if l.Text == "" {
		return ""
	}
	return soon + l.String()
}

// share is the width of a text in shares of its size.
func share(text string, bold bool) float32 { return widthOf(text, 100, bold) / 100 }
