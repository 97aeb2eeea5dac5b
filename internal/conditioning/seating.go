package conditioning

import (
	"cmp"
	"slices"

	"windlass/internal/gym"
)

// use is how many things of a pool somebody has in hand.
type use struct{ pool, things int }

// sheet is who draws on what in a workout.
type sheet struct {
	size      int
	pools     []gym.Pool
	there     []int // by pool; −1 for what nobody has counted
	uncounted []string
	at        [][]use // by item and athlete; no things for none
	all       [][]use // by athlete, what the whole workout takes
	order     []int   // the athletes, those of the same loads beside each other
}

func newSheet(c Crowd, w gym.Workout, find Find) *sheet {
	s := &sheet{size: c.Size, at: make([][]use, len(w.Items)), all: make([][]use, c.Size)}
	for j, item := range w.Items {
		s.at[j] = make([]use, c.Size)
		m, ok := find(string(item.Movement))
		if !ok || m.Takes() == 0 {
			continue
		}
		for i := range c.Size {
			u := use{s.pool(c.Owned, c.Owned.Pool(m.Implement, c.Load(i, item))), m.Takes()}
			s.at[j][i] = u
			s.hold(i, u)
		}
	}
	for i := range c.Size {
		s.order = append(s.order, i)
	}
	slices.SortStableFunc(s.order, func(a, b int) int {
		return slices.CompareFunc(s.all[a], s.all[b], func(x, y use) int { return cmp.Or(x.pool-y.pool, x.things-y.things) })
	})
	return s
}

// pool numbers a pool.
func (s *sheet) pool(e gym.Equipment, p gym.Pool) int {
	if at := slices.Index(s.pools, p); at >= 0 {
		return at
	}
	n, counted := e.Pieces(p)
	if !counted {
		n = -1
		if !slices.Contains(s.uncounted, p.Kind) {
			s.uncounted = append(s.uncounted, p.Kind)
		}
	}
	s.pools, s.there = append(s.pools, p), append(s.there, n)
	return len(s.pools) - 1
}

// hold has an athlete keep something for the whole workout; what serves for two
// movements is taken once.
func (s *sheet) hold(i int, u use) {
	at := slices.IndexFunc(s.all[i], func(o use) bool { return o.pool == u.pool })
	if at < 0 {
		s.all[i] = append(s.all[i], u)
		return
	}
	s.all[i][at].things = max(s.all[i][at].things, u.things)
}

// short returns what would be lacking if all worked at once.
func (s *sheet) short() []Shortage {
	wanted := make([]int, len(s.pools))
	for _, own := range s.all {
		for _, u := range own {
			wanted[u.pool] += u.things
		}
	}
	var short []Shortage
	for p, n := range wanted {
		if s.there[p] >= 0 && n > s.there[p] {
			short = append(short, Shortage{s.pools[p], n, s.there[p]})
		}
	}
	slices.SortStableFunc(short, func(a, b Shortage) int { return (b.Wanted - b.There) - (a.Wanted - a.There) })
	return short
}

// seats deals the athletes out to the groups of a way, each to the group where it
// strains the scarcest pool least, and reports whether every pool suffices.
func (s *sheet) seats(way Way) bool {
	groups := make([]group, way.groups())
	shifts := make([]shift, way.Turns*way.Heats)
	for h := range shifts {
		shifts[h] = newShift(s, way)
	}
	for g := range groups {
		groups[g] = group{start: g % way.Starts, shift: &shifts[g/way.Starts]}
	}
	for _, i := range s.order {
		best, least := 0, 0.0
		for g := range groups {
			strain := groups[g].shift.strain(i, groups[g].start)
			if g == 0 || strain < least || strain == least && groups[g].size < groups[best].size {
				best, least = g, strain
			}
		}
		if least > 1 {
			return false
		}
		groups[best].size++
		groups[best].shift.take(i, groups[best].start)
	}
	return true
}

// group is a part of the class.
type group struct {
	start, size int
	shift       *shift
}

// shift is what is in use at once, step by step: of the groups that begin at
// different movements, but not of those that rest or wait meanwhile.
type shift struct {
	sheet  *sheet
	starts int
	inUse  [][]int // by step and pool
}

func newShift(s *sheet, way Way) shift {
	h := shift{sheet: s, starts: way.Starts}
	steps := 1
	if way.Starts > 1 {
		steps = len(s.at)
	}
	for range steps {
		h.inUse = append(h.inUse, make([]int, len(s.pools)))
	}
	return h
}

// uses returns what an athlete of a group has in hand at a step.
func (h *shift) uses(athlete, start, step int) []use {
	if h.starts == 1 {
		return h.sheet.all[athlete]
	}
	n := len(h.sheet.at)
	item := h.sheet.at[(start*n/h.starts+step)%n]
	return item[athlete : athlete+1]
}

// strain returns the greatest share of a pool that would be in use with one more
// athlete, over 1 when there is too little.
func (h *shift) strain(athlete, start int) float64 {
	worst := 0.0
	for step, inUse := range h.inUse {
		for _, u := range h.uses(athlete, start, step) {
			if u.things == 0 || h.sheet.there[u.pool] < 0 {
				continue
			}
			share := 2.0
			if there := h.sheet.there[u.pool]; there > 0 {
				share = float64(inUse[u.pool]+u.things) / float64(there)
			}
			worst = max(worst, share)
		}
	}
	return worst
}

func (h *shift) take(athlete, start int) {
	for step, inUse := range h.inUse {
		for _, u := range h.uses(athlete, start, step) {
			if u.things > 0 {
				inUse[u.pool] += u.things
			}
		}
	}
}
