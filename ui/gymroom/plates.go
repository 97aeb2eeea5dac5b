package gymroom

import (
	"strconv"

	"windlass/internal/desk"
	"windlass/internal/mass"
	"windlass/internal/plates"
	"windlass/ui/kit"
	"windlass/ui/look"
)

func (e *equipment) newPlates() *shelf {
	s := newShelf([]kit.ListColumn{
		{Title: "Plate", Width: 72, Grow: 1, End: true}, {Title: "Pairs", Width: 56, End: true}, {Title: "Diameter", Width: 80, Grow: 1},
	}, kit.Rows{Len: func() int { return len(e.owned().Stock.Plates) }, Cell: e.plateCell})
	plate := func() plates.Plate { return e.owned().Stock.Plates[s.at()] }
	change := func(saved string, set func(*plates.Plate) error) error {
		p := plate()
		if err := set(&p); err != nil {
			return err
		}
		row, err := e.host.Desk().KeepPlates(s.at(), p)
		if err == nil {
			s.list.Select(row)
		}
		return e.saved(saved, err)
	}
	face := s.line("What is printed on it", func() string { return plate().Disc().String() }, func(text string) error {
		return change("The plate is saved.", func(p *plates.Plate) (err error) {
			p.Mass, p.Unit, err = mass.Parse(text, p.Unit)
			return err
		})
	})
	pairs := s.line("Pairs", func() string { return strconv.Itoa(plate().Pairs) }, func(text string) error {
		return change("The number of pairs is saved.", func(p *plates.Plate) (err error) { p.Pairs, err = desk.ReadCount(text); return err })
	})
	e.full = kit.NewToggle("Full diameter, 450 mm", false, func(on bool) {
		e.host.Fail(change("The plate's diameter is saved.", func(p *plates.Plate) error { p.Full = on; return nil }))
		e.full.Set(plate().Full)
	})
	e.collar = keep(kit.NewField("One collar weighs"), e.collarText, e.keepCollar)
	e.collar.SetNote("Two are on every bar; 0 for none.")
	e.small = kit.NewToggle("Plates under 1 kg on top rungs only", false, func(on bool) {
		said := "Every rung takes the nearest load, with small plates too."
		if on {
			said = "Light and working rungs do without plates under 1 kg; top rungs have them."
		}
		e.host.Fail(e.saved(said, e.host.Desk().KeepSmallOnTop(on)))
		e.showSmall()
	})
	s.other = func() {
		e.full.Set(plate().Full)
		if e.worked == s {
			e.title()
		}
	}
	s.form = kit.Column(look.Gap2, kit.Equal(look.Gap3, face, pairs), kit.Equal(look.Gap3, e.full, e.collar), e.small,
		kit.NewProse("Write kg or lb behind the number. A lift from the floor wants one plate of full diameter a side.", 200).Small().Tone(look.Muted))
	return s
}

// showSmall shows how climbs use the small plates, where the gym has any.
func (e *equipment) showSmall() {
	d := e.host.Desk()
	e.small.Set(!d.Settings().SmallAll)
	if d.SmallPlates() {
		e.small.Show()
	} else {
		e.small.Hide()
	}
}

func (e *equipment) plateCell(row, column int) kit.Cell {
	p := e.owned().Stock.Plates[row]
	switch column {
	case 0:
		return kit.Cell{Text: p.Disc().String(), Bold: true}
	case 1:
		return kit.Cell{Text: strconv.Itoa(p.Pairs)}
	}
	if p.Full {
		return kit.Cell{Text: "full", Shape: kit.Disc, Tone: look.Muted}
	}
	return kit.Cell{Text: "small", Shape: kit.Ring, Tone: look.Muted}
}

func (e *equipment) collarText() string {
	unit := e.host.Desk().Settings().Unit
	return e.owned().Stock.Collar.In(unit)
}

func (e *equipment) keepCollar(text string) error {
	m, _, err := mass.Parse(text, e.host.Desk().Settings().Unit)
	if err != nil {
		return err
	}
	return e.saved("The collars are saved.", e.host.Desk().KeepCollar(m))
}
