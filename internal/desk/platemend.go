package desk

import (
	"fmt"
	"maps"
	"slices"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// plateMend is a way out where plates run out, worked out and tried: with it none
// does any more.
type plateMend struct {
	label string
	does  []string // what it changes, a line each
	class gym.Class
}

// plateMend finds the cheapest way out for the rungs from one on: another order at
// one station, other loads at single rungs, and where those would not do, to lift
// one after the other.
func (d *Desk) plateMend(c gym.Class, from int) (plateMend, bool) {
	for _, find := range []func(gym.Class, int) (plateMend, bool){d.swapTurns, d.otherLoads, d.takeTurns} {
		if m, ok := find(c, from); ok {
			return m, true
		}
	}
	return plateMend{}, false
}

func (d *Desk) suffices(c gym.Class, from int) bool {
	_, clashes := d.Boards().clashes(d.Boards().Board(c), from)
	return len(clashes) == 0
}

// fewClashes is how many moments a trade of two turns is tried for: it hardly ever
// mends more.
const fewClashes = 2

// swapTurns lets two lifters of one station trade their turns, so that the heavy
// bars do not meet. No load changes.
func (d *Desk) swapTurns(c gym.Class, from int) (plateMend, bool) {
	m, clashes := d.Boards().clashes(d.Boards().Board(c), from)
	if len(clashes) > fewClashes {
		return plateMend{}, false
	}
	for i, on := range m.on {
		who := on[clashes[0].Set].lifter
		if who == nil || on[clashes[0].Set].rests {
			continue
		}
		for _, other := range c.Lifters {
			if other.Station != who.Station || other.Athlete == who.Athlete {
				continue
			}
			trial := withTurnsSwapped(c, who.Athlete, other.Athlete)
			if d.suffices(trial, from) {
				a, _ := d.Athlete(other.Athlete)
				return plateMend{
					label: "Swap turns", class: trial,
					does: []string{fmt.Sprintf("At %s, %s and %s trade turns; no load changes.", m.names[i], who.Name, a.Name)},
				}, true
			}
		}
	}
	return plateMend{}, false
}

func withTurnsSwapped(c gym.Class, one, other gym.ID) gym.Class {
	c.Lifters = slices.Clone(c.Lifters)
	a, _ := lifter(&c, one)
	b, _ := lifter(&c, other)
	a.Place, b.Place = b.Place, a.Place
	return c
}

func (d *Desk) otherLoads(c gym.Class, from int) (plateMend, bool) {
	return d.except(c, from, "Take the nearest loads", moments.reload)
}

func (d *Desk) takeTurns(c gym.Class, from int) (plateMend, bool) {
	return d.except(c, from, "Take turns", func(m moments, trial *gym.Class, x clash) bool {
		return m.reload(trial, x) || m.wait(trial, x)
	})
}

// mendRounds bounds how often a class is looked at again: one exception frees
// plates for what comes after it.
const mendRounds = 24

// except makes exceptions for single rungs until the plates suffice, in each round
// one for every rung that is short.
func (d *Desk) except(c gym.Class, from int, label string, mend func(moments, *gym.Class, clash) bool) (plateMend, bool) {
	trial := c
	trial.Lifters = slices.Clone(c.Lifters)
	for range mendRounds {
		m, clashes := d.Boards().clashes(d.Boards().Board(trial), from)
		if len(clashes) == 0 {
			return plateMend{label: label, class: trial, does: d.exceptionLines(c, trial)}, true
		}
		mended := map[int]bool{}
		for _, x := range clashes {
			if !mended[x.rung] {
				x.Ways = d.Boards().waysOut.at(m, x.Set)
				mended[x.rung] = mend(m, &trial, x)
			}
		}
		if !slices.Contains(slices.Collect(maps.Values(mended)), true) {
			break
		}
	}
	return plateMend{}, false
}

// reload takes the nearest loads for which there are plates, where a lifter may
// take them.
func (m moments) reload(trial *gym.Class, x clash) bool {
	at := slices.IndexFunc(x.Ways, func(w plates.Way) bool { return w.Out == plates.Reload })
	if at < 0 {
		return false
	}
	way := x.Ways[at]
	for _, i := range way.Bars {
		if !m.on[i][x.Set].takes(way.Loadings[i].Total, *trial) {
			return false
		}
	}
	for _, i := range way.Bars {
		c := m.on[i][x.Set]
		c.except(trial, gym.Exception{Rung: c.rung, Load: way.Loadings[i].Total})
	}
	return true
}

// takes reports whether a lifter may take another load than the planned one, and
// does not already: the set is not lifted yet, the loads still rise, a heavy single stays heavy, and an
// attempt stays one that is over the record and not over the ceiling.
func (c carried) takes(load mass.Mass, class gym.Class) bool {
	l, planned := c.lifter, c.set.Likely()
	if c.rests || l.Exception(c.rung).Load > 0 || l.Path.Finding || c.set.State != climb.Planned && c.set.State != climb.Open {
		return false
	}
	for _, near := range []int{c.rung - 1, c.rung + 1} {
		if near < 0 || near >= len(l.Sets) || l.Sets[near].Likely() == 0 {
			continue
		}
		if other := l.load(near, class); near < c.rung && other > load || near > c.rung && other < load {
			return false
		}
	}
	lines := l.Path.Lines
	return load <= max(planned, lines.Ceiling) && (load > lines.Record || planned <= lines.Record) && (load >= lines.Heavy || planned < lines.Heavy)
}

// load is what a lifter lifts at a rung under the exceptions made so far.
func (l *BoardLifter) load(rung int, class gym.Class) mass.Mass {
	if now, err := lifter(&class, l.Athlete); err == nil {
		if e := now.Exception(rung); e.Load > 0 {
			return e.Load
		}
	}
	return l.Sets[rung].Likely()
}

// wait lets one of those who lift at a moment lift last: whom package plates names
// if it can, else the heaviest.
func (m moments) wait(trial *gym.Class, x clash) bool {
	var best carried
	for i, on := range m.on {
		c := on[x.Set]
		if c.set == nil || c.rests || c.set.Last {
			continue
		}
		if x.names(i) {
			best = c
			break
		}
		if best.set == nil || c.set.Likely() > best.set.Likely() {
			best = c
		}
	}
	if best.set == nil {
		return false
	}
	best.except(trial, gym.Exception{Rung: best.rung, Load: best.lifter.Exception(best.rung).Load, Last: true})
	return true
}

// names reports whether a way out lets a bar wait.
func (x clash) names(bar int) bool {
	return slices.ContainsFunc(x.Ways, func(w plates.Way) bool {
		return w.Out == plates.Wait && slices.Contains(w.Bars, bar)
	})
}

func (c carried) except(trial *gym.Class, e gym.Exception) {
	if l, err := lifter(trial, c.lifter.Athlete); err == nil {
		*l = l.Except(e)
	}
}
