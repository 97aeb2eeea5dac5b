package desk

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// short says which plates run out from a rung on, with the cheapest way out.
func (d *Desk) short(c gym.Class, from int) []SharingNote {
	all := d.Boards().Shortages(d.Boards().Board(c), from)
	if len(all) == 0 {
		return nil
	}
	var texts []string
	for _, x := range all {
		texts = append(texts, x.Text())
	}
	note := SharingNote{Text: strings.Join(texts, " ")}
	if n, ok := d.spareSmall(c, from); ok {
		note.Mend, note.Does, note.Do = n.Mend, n.Does, n.Do
		return []SharingNote{note}
	}
	if m, ok := d.plateMend(c, from); ok {
		note.Mend, note.Does = m.label, m.does
		note.Do = func(class gym.ID) error {
			return d.change(strings.ToLower(m.label), class, func(c *gym.Class) error {
				adopt(c, m.class)
				return nil
			})
		}
	}
	return []SharingNote{note}
}

// spareSmall offers to keep the small plates for top rungs, where at least half of
// the clashes come from loads that a kilogram more or less would do for.
func (d *Desk) spareSmall(c gym.Class, from int) (SharingNote, bool) {
	if d.book.Settings.SmallOnTop || !d.SmallPlates() {
		return SharingNote{}, false
	}
	spared := d.book
	spared.Settings.SmallOnTop = true
	boards := NewBoards(&spared)
	_, now := d.Boards().clashes(d.Boards().Board(c), from)
	board := boards.Board(c)
	if _, then := boards.clashes(board, from); 2*len(then) > len(now) {
		return SharingNote{}, false
	}
	return SharingNote{
		Mend: "Small plates on top rungs only",
		Does: []string{d.sparedText(d.Boards().Board(c), board)},
		Do:   func(gym.ID) error { return d.KeepSmallOnTop(true) },
	}, true
}

// sparedText says how many loads change between two boards of a class.
func (d *Desk) sparedText(before, after Board) string {
	n, most := 0, mass.Mass(0)
	for _, l := range after.Lifters() {
		was, _ := before.Lifter(l.Athlete)
		for i, s := range l.Sets {
			if i < len(was.Sets) && s.Likely() != was.Sets[i].Likely() {
				n++
				most = max(most, s.Likely()-was.Sets[i].Likely(), was.Sets[i].Likely()-s.Likely())
			}
		}
	}
	return fmt.Sprintf("Light and working rungs do without plates under 1 kg, here and from now on: %s change, by at most %s.",
		count(n, "load"), most.In(d.book.Settings.Unit))
}

// exceptional tells how many lifters do otherwise than the climb says, and offers
// the way back.
func (d *Desk) exceptional(c gym.Class, from int) []SharingNote {
	plain, who := c, 0
	plain.Lifters = slices.Clone(c.Lifters)
	for i, l := range c.Lifters {
		toCome := func(e gym.Exception) bool { return e.Rung >= from }
		if slices.ContainsFunc(l.Exceptions, toCome) {
			plain.Lifters[i].Exceptions = slices.DeleteFunc(slices.Clone(l.Exceptions), toCome)
			who++
		}
	}
	if who == 0 {
		return nil
	}
	return []SharingNote{{
		Text:  "Exceptions from the climb, for want of plates: " + count(who, "lifter") + ".",
		Aside: true, Mend: "Back to the climb", Does: d.exceptionLines(plain, c),
		Done: "Everybody lifts what the climb says again.",
		Do: func(class gym.ID) error {
			return d.change("go back to the climb", class, func(c *gym.Class) error {
				adopt(c, plain)
				return nil
			})
		},
	}}
}

// adopt takes the turns and exceptions of another state of the class.
func adopt(c *gym.Class, other gym.Class) {
	for _, l := range other.Lifters {
		if mine, err := lifter(c, l.Athlete); err == nil {
			mine.Place, mine.Exceptions = l.Place, l.Exceptions
		}
	}
}

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
			mended[x.rung] = mended[x.rung] || mend(m, &trial, x)
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
