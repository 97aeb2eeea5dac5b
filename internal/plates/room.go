package plates

import (
	"cmp"
	"slices"
)

// A bar looks for another load within a tenth of its own, and at no more than a
// dozen.
const (
	reloadReach = 10
	reloadTries = 12
)

// room is all bars at one set.
type room struct {
	loads   []*Loads
	sets    []Loading
	now     []want
	dealers [2]*dealer // each made when it is first asked
}

// want is what a bar is to carry; a bar that is not in use carries nothing.
type want struct {
	amount amount
	inUse  bool
}

func newRoom(queues []Queue, set int) *room {
	r := &room{}
	for _, q := range queues {
		var loading Loading
		if set < len(q.Sets) {
			loading = q.Sets[set]
		}
		r.loads, r.sets = append(r.loads, q.Loads), append(r.sets, loading)
	}
	return r
}

// wanting says for every bar what it is to carry, for the ways out.
func (r *room) wanting() *room {
	for i, l := range r.loads {
		var w want
		w.amount, w.inUse = l.amount(r.sets[i].Total)
		r.now = append(r.now, w)
	}
	return r
}

// missing returns the plate of which most pairs are missing, the heaviest of
// those equally missed.
func (r *room) missing() (disc Disc, need, have int) {
	for letter, at := range r.loads[0].order {
		d := r.loads[0].disc(byte(letter))
		wanted, owned := r.wanted(d), r.loads[0].grids[at.grid].plates[at.plate].Pairs
		if wanted-owned > need-have {
			disc, need, have = d, wanted, owned
		}
	}
	return disc, need, have
}

func (r *room) wanted(d Disc) int {
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

func (r *room) ways() []Way {
	if loadings, ok := r.stack(r.now); ok {
		return []Way{{Out: Restack, Loadings: loadings}}
	}
	var ways []Way
	for _, find := range []func() (Way, bool){r.swap, r.reload, r.wait} {
		if way, ok := find(); ok {
			ways = append(ways, way)
		}
	}
	return ways
}

// stack loads all bars at once from one stock.
func (r *room) stack(wants []want) ([]Loading, bool) {
	var counts [2][][]int
	for g := range r.dealers {
		if r.dealers[g] == nil {
			r.dealers[g] = newDealer(r.loads[0].grids[g])
		}
		steps := make([]int, len(wants))
		for i, w := range wants {
			steps[i] = w.amount[g]
		}
		var ok bool
		if counts[g], ok = r.dealers[g].share(steps); !ok {
			return nil, false
		}
	}
	loadings := make([]Loading, len(wants))
	for i, w := range wants {
		if w.inUse {
			loadings[i] = r.loads[i].pick(counts[0][i], counts[1][i])
		}
	}
	return loadings, true
}

// swap looks for two bars of different mass that may take each other's load.
func (r *room) swap() (Way, bool) {
	for i := range r.now {
		for j := range i {
			wants, ok := r.swapped(i, j)
			if !ok {
				continue
			}
			if loadings, ok := r.stack(wants); ok {
				return Way{Out: Swap, Bars: []int{j, i}, Loadings: loadings}, true
			}
		}
	}
	return Way{}, false
}

func (r *room) swapped(i, j int) ([]want, bool) {
	a, b := r.loads[i], r.loads[j]
	if !r.now[i].inUse || !r.now[j].inUse || a.base == b.base || !a.bar.replaces(b.bar) {
		return nil, false
	}
	wants := slices.Clone(r.now)
	var able, other bool
	wants[i].amount, able = a.amount(r.sets[j].Total)
	wants[j].amount, other = b.amount(r.sets[i].Total)
	return wants, able && other
}

// reload looks for the smallest change of one bar's load that lets all be
// loaded, and where one is not enough for small changes of several.
func (r *room) reload() (Way, bool) {
	best, found := Way{}, false
	for i := range r.now {
		wants := slices.Clone(r.now)
		for _, a := range r.near(i) {
			off := apart(r.loads[i].total(a), r.sets[i].Total)
			if found && off >= best.Off {
				break
			}
			wants[i].amount = a
			if loadings, ok := r.stack(wants); ok {
				best, found = Way{Out: Reload, Bars: []int{i}, Loadings: loadings, Off: off}, true
			}
		}
	}
	if found {
		return best, true
	}
	return r.reloadSeveral()
}

// reloadSeveral takes the bars one after another, the heaviest first, each with
// the nearest load that the plates left by the others allow.
func (r *room) reloadSeveral() (Way, bool) {
	way := Way{Out: Reload}
	wants := make([]want, len(r.now))
	for _, i := range r.heaviestFirst() {
		ok := false
		for _, a := range append([]amount{r.now[i].amount}, r.near(i)...) {
			wants[i] = want{amount: a, inUse: true}
			if way.Loadings, ok = r.stack(wants); ok {
				break
			}
		}
		if !ok {
			return Way{}, false
		}
		if wants[i] != r.now[i] {
			way.Bars = append(way.Bars, i)
			way.Off += apart(way.Loadings[i].Total, r.sets[i].Total)
		}
	}
	return way, true
}

// near lists the other loads of bar i, the nearest first, the lighter before
// the heavier.
func (r *room) near(i int) []amount {
	if !r.now[i].inUse {
		return nil
	}
	l, total := r.loads[i], r.sets[i].Total
	near := slices.Collect(l.between(total-total/reloadReach, total+total/reloadReach))
	near = slices.DeleteFunc(near, func(a amount) bool { return a == r.now[i].amount })
	slices.SortFunc(near, func(a, b amount) int {
		return cmp.Or(cmp.Compare(apart(l.total(a), total), apart(l.total(b), total)), cmp.Compare(l.total(a), l.total(b)))
	})
	return near[:min(len(near), reloadTries)]
}

func (r *room) heaviestFirst() []int {
	var bars []int
	for i, w := range r.now {
		if w.inUse {
			bars = append(bars, i)
		}
	}
	slices.SortStableFunc(bars, func(a, b int) int { return cmp.Compare(r.sets[b].Total, r.sets[a].Total) })
	return bars
}

// wait lets one bar wait, the heaviest that helps; where one is not enough, the
// heaviest of all and then the next, until the others can be loaded.
func (r *room) wait() (Way, bool) {
	for _, i := range r.heaviestFirst() {
		wants := slices.Clone(r.now)
		wants[i] = want{}
		if loadings, ok := r.stack(wants); ok {
			return Way{Out: Wait, Bars: []int{i}, Loadings: loadings}, true
		}
	}
	way, wants := Way{Out: Wait}, slices.Clone(r.now)
	for _, i := range r.heaviestFirst() {
		wants[i] = want{}
		way.Bars = append(way.Bars, i)
		var ok bool
		if way.Loadings, ok = r.stack(wants); ok {
			break
		}
	}
	return way, true
}
