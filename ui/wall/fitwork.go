package wall

import (
	"slices"
	"time"

	"fyne.io/fyne/v2"
)

// workFit is how conditioning is laid out: the size of its letters, and which
// movements stand on which page.
type workFit struct {
	size    fyne.Size
	arc     float64
	text    float32
	small   float32
	margin  float32
	band    band
	load    float32   // width of a tier's load, in shares of the text size
	two     [][]bool  // the loads of the movement stand under it
	heads   []float32 // height over the movements of each panel, in shares of the text size
	perPage int       // columns
	pages   []page    // the stations of a part are panels, its rows movements
	stands  []time.Duration
}

// Sizes of a panel, in shares of the text size.
const (
	itemShare = 1.26 // a line
	loadGap   = 0.8  // between the loads of two tiers
	panelPads = 1.2  // beside what it says
	panelPad  = 0.4  // over and under it
	markShare = 0.85 // before a movement that has a mark
)

// fitWork chooses how conditioning is shown by [merit]. Where movements take turns
// and do not all fit, only those whose turn it is and comes next are shown.
func fitWork(w Work, s Screen, size fyne.Size) (Work, workFit) {
	s = s.believed()
	best, _ := bestOf(func(arc float64) []workFit { return w.at(s, size, arc) },
		func(f workFit) merit { return meritOf(f.pages, f.stands, longestWait, f.arc) })
	if few := w.narrow(); len(best.pages) > 1 && few.items() < w.items() {
		return fitWork(few, s, size)
	}
	return w, best
}

// narrow leaves only the movements whose turn it is or comes next, where there are
// such.
func (w Work) narrow() Work {
	few := Work{Unit: w.Unit, Held: w.Held}
	for _, p := range w.Panels {
		items := slices.DeleteFunc(slices.Clone(p.Items), func(i Item) bool { return !i.Present && !i.Next })
		if len(items) > 0 {
			p.Items = items
		}
		few.Panels = append(few.Panels, p)
	}
	return few
}

func (w Work) items() (n int) {
	for _, p := range w.Panels {
		n += len(p.Items)
	}
	return n
}

// at lays out for letters of an angle in every way that has room.
func (w Work) at(s Screen, size fyne.Size, arc float64) []workFit {
	f := workFit{arc: arc, text: s.textSize(arc, size.Height), size: size, load: w.load()}
	f.margin = max(0.25*f.text, 0.014*size.Height)
	f.small = max(smallShare*f.text, 0.016*size.Height)
	var all []workFit
	for _, low := range []bool{false, true} {
		ok := false
		if f.band, ok = newBand(f.text, w.words(), size, f.margin, low); !ok {
			continue
		}
		for f.perPage = 1; f.perPage <= mostColumns && f.setLines(w); f.perPage++ {
			all = append(all, f.packed()...)
		}
	}
	return all
}

// words is the width of the widest line beside the clock, in shares of its size.
func (w Work) words() float32 {
	words := share(longestRound, false)
	for _, p := range w.Panels {
		words = max(words, share(p.Head, true), share(p.Round, false))
	}
	return words
}

const longestRound = "usual pace: round 88 of 88"

// load is the width of the widest load, in shares of the text size.
func (w Work) load() (load float32) {
	for _, p := range w.Panels {
		for _, i := range p.Items {
			for _, l := range i.Loads {
				load = max(load, share(l, true))
			}
		}
	}
	return load
}

// wide is the width of a column of panels.
func (f workFit) wide() float32 {
	return (f.size.Width - 2*f.margin - float32(f.perPage-1)*columnsGap*f.text) / float32(f.perPage)
}

// setLines decides which movements have their loads under them; it reports whether
// all have room.
func (f *workFit) setLines(w Work) bool {
	room := f.wide()/f.text - panelPads
	f.two, f.heads = nil, nil
	for _, p := range w.Panels {
		two := make([]bool, len(p.Items))
		for i, item := range p.Items {
			name, loads := markShare+share(item.Text, true)+hair, f.loadsWidth(item)
			if max(name, loads) > room {
				return false
			}
			two[i] = name+loads > room
		}
		f.two = append(f.two, two)
		f.heads = append(f.heads, panelPad+itemShare*float32(len(p.titles(f.titled(w)))))
	}
	return true
}

// loadsWidth is the width of a movement's loads, in shares of the text size.
func (f workFit) loadsWidth(i Item) float32 {
	if i.Loads[0] == "" {
		return 0
	}
	return float32(len(i.Loads)) * (f.load + loadGap)
}

// titled is whether panels have their names on them: one on the whole wall is named
// beside the clock.
func (f workFit) titled(w Work) bool { return len(w.Panels) > 1 }

// packed puts the panels on pages, whole ones and as they come.
func (f workFit) packed() []workFit {
	heights := make([][]float32, len(f.two))
	for i, rows := range f.two {
		for n := range rows {
			heights[i] = append(heights[i], f.rowHigh(i, n))
		}
	}
	stack := newStack(heights, f.heads, groupGap)
	room := (f.size.Height - f.band.height - footShare*f.small - 2*f.margin) / f.text
	var all []workFit
	for _, whole := range []bool{true, false} {
		if columns := stack.fill(room, f.perPage, whole); columns != nil {
			g := f
			g.pages = paged(columns, f.perPage)
			g.stands = standing(lengths(g.pages), longestWait)
			all = append(all, g)
		}
	}
	return all
}

// rowHigh is the height of a movement, in shares of the text size.
func (f workFit) rowHigh(panel, item int) float32 {
	if f.two[panel][item] {
		return 2 * itemShare
	}
	return itemShare
}

// high is the height of a part of a panel, in shares of the text size.
func (f workFit) high(p part) float32 {
	high := f.heads[p.station]
	for item := p.from; item < p.to; item++ {
		high += f.rowHigh(p.station, item)
	}
	return high
}
