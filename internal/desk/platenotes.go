package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
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
	if !d.book.Settings.SmallAll || !d.SmallPlates() {
		return SharingNote{}, false
	}
	spared := d.book
	spared.Settings.SmallAll = false
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
