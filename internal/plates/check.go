package plates

import (
	"cmp"
	"slices"

	"windlass/internal/mass"
)

// Queue is what one bar carries set after set, while the other bars of the room
// carry their own. A zero Loading is a set without that bar.
type Queue struct {
	Loads *Loads // of the bar with the stock of the whole room
	Sets  []Loading
}

// Clash is a set at which the stacks of all bars together want more of a plate
// than the gym has.
type Clash struct {
	Set        int   `json:"set"`  // from 0
	Disc       Disc  `json:"disc"` // the plate that runs out; the one most missed if there are several
	Need, Have int   // pairs
	Ways       []Way `json:"ways"` // out of it, the cheapest first; never empty
}

// WayOut says how a clash is mended.
type WayOut string

// The ways out, from cheap to dear.
const (
	Restack WayOut = "restack" // the same loads out of other plates
	Swap    WayOut = "swap"    // two bars take each other's load
	Reload  WayOut = "reload"  // one bar takes another load
	Wait    WayOut = "wait"    // bars wait until the others are done
)

// Way is one way out of a clash. For every other bar nothing changes but, it
// may be, which plates make its load.
type Way struct {
	Out      WayOut    `json:"out"`
	Bars     []int     `json:"bars"`     // the queues that change their load or wait
	Loadings []Loading `json:"loadings"` // of all queues at this set; zero where one waits
	Off      mass.Mass `json:"off"`      // by how much a reload leaves the load, either way
}

// Loadable reports whether all bars can carry their loads after all, only out of
// other plates.
func (c Clash) Loadable() bool { return c.Ways[0].Out == Restack }

// Check returns every set at which the queues, loaded all at once, want more
// than the stock behind their Loads. It must be the same stock for all.
func Check(queues []Queue) []Clash {
	var clashes []Clash
	for set := range longest(queues) {
		r := newRoom(queues, set)
		if disc, need, have := r.missing(); need > have {
			clashes = append(clashes, Clash{Set: set, Disc: disc, Need: need, Have: have, Ways: r.ways()})
		}
	}
	return clashes
}

func longest(queues []Queue) int {
	n := 0
	for _, q := range queues {
		n = max(n, len(q.Sets))
	}
	return n
}

// room is all bars at one set.
type room struct {
	loads []*Loads
	sets  []Loading
}

func newRoom(queues []Queue, set int) room {
	r := room{}
	for _, q := range queues {
		var loading Loading
		if set < len(q.Sets) {
			loading = q.Sets[set]
		}
		r.loads = append(r.loads, q.Loads)
		r.sets = append(r.sets, loading)
	}
	return r
}

// missing returns the plate of which most pairs are missing, the heaviest of
// those equally missed.
func (r room) missing() (disc Disc, need, have int) {
	for letter, at := range r.loads[0].order {
		d := r.loads[0].disc(byte(letter))
		wanted, owned := r.wanted(d), r.loads[0].grids[at.grid].plates[at.plate].Pairs
		if wanted-owned > need-have {
			disc, need, have = d, wanted, owned
		}
	}
	return disc, need, have
}

func (r room) wanted(d Disc) int {
	n := 0
	for _, s := range r.sets {
		for _, on := range s.PerSide {
			if on == d {
				n++
			}
		}
	}
	return n
}

func (r room) ways() []Way {
	if loadings, ok := r.stack(r.totals()); ok {
		return []Way{{Out: Restack, Loadings: loadings}}
	}
	var ways []Way
	if way, ok := r.swap(); ok {
		ways = append(ways, way)
	}
	if way, ok := r.reload(); ok {
		ways = append(ways, way)
	}
	return append(ways, r.wait())
}

func (r room) totals() []mass.Mass {
	totals := make([]mass.Mass, len(r.sets))
	for i, s := range r.sets {
		totals[i] = s.Total
	}
	return totals
}

// stack loads all bars at once from one stock; a total of zero is no bar.
func (r room) stack(totals []mass.Mass) ([]Loading, bool) {
	steps := [2][]int{make([]int, len(totals)), make([]int, len(totals))}
	for i, total := range totals {
		if total == 0 {
			continue
		}
		a, ok := r.loads[i].amount(total)
		if !ok {
			return nil, false
		}
		steps[0][i], steps[1][i] = a[0], a[1]
	}
	var counts [2][][]int
	for g := range counts {
		var ok bool
		if counts[g], ok = r.loads[0].grids[g].share(steps[g]); !ok {
			return nil, false
		}
	}
	loadings := make([]Loading, len(totals))
	for i, total := range totals {
		if total > 0 {
			loadings[i] = r.loads[i].pick(counts[0][i], counts[1][i])
		}
	}
	return loadings, true
}

// swap looks for two bars of different mass that may take each other's load.
func (r room) swap() (Way, bool) {
	for i := range r.sets {
		for j := range i {
			a, b := r.loads[i], r.loads[j]
			if a.base == b.base || !a.bar.replaces(b.bar) {
				continue
			}
			totals := r.totals()
			totals[i], totals[j] = totals[j], totals[i]
			if totals[i] == 0 || totals[j] == 0 {
				continue
			}
			if loadings, ok := r.stack(totals); ok {
				return Way{Out: Swap, Bars: []int{j, i}, Loadings: loadings}, true
			}
		}
	}
	return Way{}, false
}

// reloadReach is how far from its load a bar looks for another, as a share of it.
const reloadReach = 20 // a twentieth

// reload looks for the smallest change of one bar's load that lets all be loaded.
func (r room) reload() (best Way, found bool) {
	for i, s := range r.sets {
		for _, total := range r.near(i) {
			off := apart(total, s.Total)
			if found && off >= best.Off {
				break
			}
			totals := r.totals()
			totals[i] = total
			if loadings, ok := r.stack(totals); ok {
				best, found = Way{Out: Reload, Bars: []int{i}, Loadings: loadings, Off: off}, true
				break
			}
		}
	}
	return best, found
}

// near lists the other loads of bar i, the nearest first, the lighter before
// the heavier; a dozen at most.
func (r room) near(i int) []mass.Mass {
	now := r.sets[i].Total
	if now == 0 {
		return nil
	}
	loads := r.loads[i].Between(now-now/reloadReach, now+now/reloadReach)
	loads = slices.DeleteFunc(loads, func(m mass.Mass) bool { return m == now })
	slices.SortStableFunc(loads, func(a, b mass.Mass) int { return cmp.Compare(apart(a, now), apart(b, now)) })
	return loads[:min(len(loads), 12)]
}

// wait lets one bar wait, the heaviest that helps; where one is not enough, the
// heaviest of all and then the next.
func (r room) wait() Way {
	totals := r.totals()
	heavy := make([]int, len(totals))
	for i := range heavy {
		heavy[i] = i
	}
	slices.SortStableFunc(heavy, func(a, b int) int { return cmp.Compare(totals[b], totals[a]) })
	for _, i := range heavy {
		alone := slices.Clone(totals)
		alone[i] = 0
		if loadings, ok := r.stack(alone); ok && totals[i] > 0 {
			return Way{Out: Wait, Bars: []int{i}, Loadings: loadings}
		}
	}
	way := Way{Out: Wait}
	for _, i := range heavy {
		totals[i] = 0
		way.Bars = append(way.Bars, i)
		var ok bool
		if way.Loadings, ok = r.stack(totals); ok {
			break
		}
	}
	return way
}
