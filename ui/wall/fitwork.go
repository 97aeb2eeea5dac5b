package wall

import (
	"slices"
	"time"

	"fyne.io/fyne/v2"
)

// workPage is a page of a workout. Workouts have pages of their own: each has its own
// clock, and the one beside what is shown must be its clock.
type workPage struct {
	panel Panel // as much of it as is shown
	index int   // of it in the work
	fit   workFit
	page  int // of the fit
}

// workFit is how a workout is laid out. The rows of its pages are movements.
type workFit struct {
	frame
	load float32 // width of a tier's load, in shares of the text size
	two  []bool  // the loads of the movement stand under it
	head float32 // height over the movements, in shares of the text size

	abreast bool // the names of the tiers stand beside the tracks
}

// Sizes of a panel, in shares of the text size.
const (
	itemShare = 1.26 // a line
	loadGap   = 0.8  // between the loads of two tiers
	panelPads = 1.2  // beside what it says
	panelPad  = 0.4  // over and under it
	markShare = 0.85 // before a movement that has a mark
)

// loads reports whether some movement of the page has loads.
func (at workPage) loads() bool {
	for _, c := range at.fit.pages[at.page] {
		for _, part := range c {
			for _, item := range at.panel.Items[part.from:part.to] {
				if item.Loads[0] != "" {
					return true
				}
			}
		}
	}
	return false
}

// fitWork lays out every workout and says how long each page stands. Work without a
// workout has one empty page.
func fitWork(w Work, s Screen, size fyne.Size) (pages []workPage, stands []time.Duration) {
	s = s.believed()
	var lines []int
	panels := w.Panels
	if len(panels) == 0 {
		panels = []Panel{{Head: "Conditioning"}}
	}
	for i, p := range panels {
		p, f := fitPanel(p, s, size)
		for n, length := range lengths(f.pages) {
			pages, lines = append(pages, workPage{p, i, f, n}), append(lines, length+len(p.titles()))
		}
	}
	return pages, standing(lines, longestWait)
}

// fitPanel chooses how a workout is shown by [merit]. Where movements take turns and
// do not all fit, only those whose turn it is and comes next are shown.
func fitPanel(p Panel, s Screen, size fyne.Size) (Panel, workFit) {
	best, _ := bestOf(longestWait, func(arc float64) []workFit { return p.at(s, size, arc) })
	if few := p.narrow(); len(best.pages) > 1 && len(few.Items) < len(p.Items) {
		return fitPanel(few, s, size)
	}
	return p, best
}

// narrow leaves only the movements whose turn it is or comes next, where there are
// such.
func (p Panel) narrow() Panel {
	items := slices.DeleteFunc(slices.Clone(p.Items), func(i Item) bool { return !i.Present && !i.Next })
	if len(items) > 0 {
		p.Items = items
	}
	return p
}

// at lays out for letters of an angle in every way that has room.
func (p Panel) at(s Screen, size fyne.Size, arc float64) (all []workFit) {
	for _, frame := range s.frames(arc, size, p.words()) {
		f := workFit{frame: frame, load: p.load()}
		if !f.setLines(p) {
			continue
		}
		for _, f.frame = range frame.packed(f.stack(), longestWait) {
			all = append(all, f)
		}
	}
	return all
}

// words is the width of the widest line beside the clock, in shares of its size.
func (p Panel) words() float32 {
	return max(share(longestRound, false), share(p.Head, true), share(p.Round, false))
}

const longestRound = "usual pace: round 88 of 88"

// load is the width of the widest load, in shares of the text size.
func (p Panel) load() (load float32) {
	for _, i := range p.Items {
		for _, l := range i.Loads {
			load = max(load, share(l, true))
		}
	}
	return load
}

// setLines decides which movements have their loads under them; it reports whether
// all have room.
func (f *workFit) setLines(p Panel) bool {
	room := f.wide()/f.text - panelPads
	f.two = make([]bool, len(p.Items))
	for i, item := range p.Items {
		name, loads := markShare+share(item.Text, true)+hair, f.loadsWidth(item)
		if max(name, loads) > room {
			return false
		}
		f.two[i] = name+loads > room
	}
	lines := len(p.titles())
	f.abreast = lines > 1 && share(p.Tracks, true)+hair+f.tiersWidth() <= room
	if f.abreast {
		lines = 1
	}
	f.head = panelPad + itemShare*float32(lines)
	return true
}

// tiers are the names of the loads of a movement.
var tiers = [3]string{"Full", "Mid", "Light"}

// tiersWidth is the width of the names of the tiers, each over its loads, in shares of
// the text size.
func (f workFit) tiersWidth() float32 {
	first := max(0, share(tiers[0], false)-f.load) // it may begin before its loads
	return first + hair + float32(len(tiers))*(f.load+loadGap)
}

// loadsWidth is the width of a movement's loads, in shares of the text size.
func (f workFit) loadsWidth(i Item) float32 {
	if i.Loads[0] == "" {
		return 0
	}
	return float32(len(i.Loads)) * (f.load + loadGap)
}

// stack is the heights of the movements under their titles, which every column
// repeats.
func (f workFit) stack() stack {
	heights := make([]float32, len(f.two))
	for n := range f.two {
		heights[n] = f.rowHigh(n)
	}
	return newStack([][]float32{heights}, []float32{f.head}, 0)
}

// rowHigh is the height of a movement, in shares of the text size.
func (f workFit) rowHigh(item int) float32 {
	if f.two[item] {
		return 2 * itemShare
	}
	return itemShare
}

// high is the height of a part, in shares of the text size.
func (f workFit) high(p part) float32 {
	high := f.head
	for item := p.from; item < p.to; item++ {
		high += f.rowHigh(item)
	}
	return high
}
