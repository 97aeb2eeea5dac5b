package desk

import (
	"slices"

	"windlass/internal/plates"
)

// moments are the bars of a class side by side: what every station carries while
// all lift at once, first their first lifters, then their second, and so on; and
// after those, one by one, who lifts last. A bar whose lifter rests keeps what it
// carried.
type moments struct {
	queues []plates.Queue
	on     [][]carried // of each queue, at each moment
	rungs  []int       // of each moment, from 0
	names  []string    // of each queue's station
}

// carried is the set for which a bar is loaded at a moment; without a set it is
// bare.
type carried struct {
	lifter *BoardLifter
	set    *BoardSet
	rung   int
	rests  bool // it was lifted before, and stays on the bar
}

func (bs *Boards) moments(b Board) moments {
	var m moments
	var stations []BoardStation
	for _, s := range b.Stations {
		if len(s.Lifters) == 0 || s.Lifters[0].Bar == "" {
			continue
		}
		if loads, err := bs.loadsOf(loadKey{bar: s.Lifters[0].Bar}); err == nil {
			stations = append(stations, s)
			m.queues, m.names = append(m.queues, plates.Queue{Loads: loads}), append(m.names, s.Name)
		}
	}
	m.on = make([][]carried, len(stations))
	now := make([]carried, len(stations))
	for rung := range b.Class.Climb.Rungs {
		for turn := range turns(b) {
			for i, s := range stations {
				now[i] = now[i].turn(s.Lifters, turn, rung)
			}
			m.add(rung, now)
		}
		m.addLast(stations, rung, now)
	}
	return m
}

// turn is what a bar carries when it is the turn of one of its lifters: who lifts
// last leaves the plates to others until then.
func (c carried) turn(lifters []BoardLifter, turn, rung int) carried {
	if turn >= len(lifters) {
		c.rests = true
		return c
	}
	set, ok := lifters[turn].lifts(rung)
	switch {
	case !ok:
		c.rests = true
		return c
	case set.Last:
		return carried{}
	}
	return carried{lifter: &lifters[turn], set: set, rung: rung}
}

// addLast adds a moment for each who lifts last in a window; the plates of all
// others are free then.
func (m *moments) addLast(stations []BoardStation, rung int, now []carried) {
	for i, s := range stations {
		for k := range s.Lifters {
			if set, ok := s.Lifters[k].lifts(rung); ok && set.Last {
				clear(now)
				now[i] = carried{lifter: &s.Lifters[k], set: set, rung: rung}
				m.add(rung, now)
			}
		}
	}
}

func (m *moments) add(rung int, now []carried) {
	m.rungs = append(m.rungs, rung)
	for i, c := range now {
		var l plates.Loading
		if c.set != nil {
			l = plates.Loading{Bar: m.queues[i].Loads.Bar(), Total: c.set.Likely(), PerSide: c.set.Discs}
		}
		m.queues[i].Sets = append(m.queues[i].Sets, l)
		m.on[i] = append(m.on[i], c)
	}
}

// turns is how many lifters the fullest station has.
func turns(b Board) (most int) {
	for _, s := range b.Stations {
		most = max(most, len(s.Lifters))
	}
	return most
}

// restackRounds is how often stations are restacked: a bar that rests shares its
// plates with two moments, and mending one may spoil the other.
const restackRounds = 4

// restack takes other plates for the same loads where the stations together want
// more of a plate than the gym has.
func (bs *Boards) restack(b Board) {
	for range restackRounds {
		m, changed := bs.moments(b), false
		for _, c := range plates.Missing(m.queues) {
			stacks, ok := bs.waysOut.restack(m, c.Set)
			changed = ok && m.take(c.Set, stacks) || changed
		}
		if !changed {
			break
		}
	}
	bs.lay(b)
	for _, s := range b.Stations {
		sets, _ := inTurn(s.Lifters)
		changes(sets)
	}
}

// take puts other plates on the bars of a moment; false where nothing changes, or a
// lift from the floor would lose its only disc of full diameter.
func (m *moments) take(at int, stacks []plates.Loading) (changed bool) {
	for i, on := range m.on {
		if x := on[at]; x.set != nil && x.lifter.floor && full(x.set.Discs) && !full(stacks[i].PerSide) {
			return false
		}
	}
	for i, on := range m.on {
		if x := on[at]; x.set != nil && !slices.Equal(x.set.Discs, stacks[i].PerSide) {
			x.set.Discs, x.set.Blocks = stacks[i].PerSide, x.lifter.floor && !full(stacks[i].PerSide)
			changed = true
		}
	}
	return changed
}

func full(discs []plates.Disc) bool {
	return slices.ContainsFunc(discs, func(d plates.Disc) bool { return d.Full })
}
