package gymroom

import (
	"strconv"
	"strings"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
	"windlass/ui/kit"
	"windlass/ui/look"
)

func (e *equipment) newBars() *shelf {
	s := newShelf([]kit.ListColumn{
		{Title: "Name", Width: 96, Grow: 1}, {Title: "Mass", Width: 64, End: true}, {Title: "Count", Width: 56, End: true},
	}, kit.Rows{Len: func() int { return len(e.owned().Bars) }, Cell: e.barCell})
	bar := func() plates.Bar { return e.owned().Bars[s.at()] }
	change := func(saved string, set func(*plates.Bar) error) error {
		b := bar()
		if err := set(&b); err != nil {
			return err
		}
		_, err := e.host.Desk().KeepBar(b)
		return e.saved(saved, err)
	}
	name := s.line("Name", func() string { return bar().Name }, func(text string) error {
		return change("The bar's name is saved.", func(b *plates.Bar) error { b.Name = text; return nil })
	})
	weight := s.line("Mass without collars", func() string { return bar().Mass.In(bar().Unit) }, func(text string) error {
		return change("The bar's mass is saved.", func(b *plates.Bar) (err error) {
			b.Mass, b.Unit, err = mass.Parse(text, b.Unit)
			return err
		})
	})
	count := s.line("How many there are", func() string { return strconv.Itoa(bar().Count) }, func(text string) error {
		return change("The number of bars is saved.", func(b *plates.Bar) (err error) { b.Count, err = desk.ReadCount(text); return err })
	})
	e.barKind = kit.NewChoice("Kind, by which lifts find it", nil, func(o kit.Option) {
		e.host.Fail(change("The bar's kind is saved.", func(b *plates.Bar) error { b.Kind = o.Key; return nil }))
	})
	s.other = func() {
		e.barKind.SetOptions(kindOptions(e.host.Desk().BarKinds()))
		e.barKind.Set(bar().Kind)
		if e.worked == s {
			e.title()
		}
	}
	s.list.OnCursor = func(int) {
		s.show()
		e.reach.refresh()
	}
	s.form = kit.Column(look.Gap2, kit.Equal(look.Gap3, name, e.barKind), kit.Equal(look.Gap3, weight, count),
		kit.NewProse("Barbell, light barbell and technique bars stand in for one another when a load is too light for the bar.", 200).Small().Tone(look.Muted))
	return s
}

func (e *equipment) barCell(row, column int) kit.Cell {
	b := e.owned().Bars[row]
	switch column {
	case 0:
		return kit.Cell{Text: b.Name, Bold: true}
	case 1:
		return kit.Cell{Text: b.Mass.In(b.Unit)}
	}
	return kit.Cell{Text: strconv.Itoa(b.Count), Tone: look.Muted}
}

func kindOptions(kinds []desk.BarKind) []kit.Option {
	var options []kit.Option
	for _, k := range kinds {
		o := kit.Option{Key: k.Kind, Text: plain(k.Kind)}
		if k.Lifts > 0 {
			o.Note = strconv.Itoa(k.Lifts) + " lifts"
		}
		options = append(options, o)
	}
	return options
}

// plain writes a key as a coach reads it: "safety-bar" is a safety bar.
func plain(key string) string { return strings.ReplaceAll(key, "-", " ") }

func (e *equipment) newStations() *shelf {
	s := newShelf([]kit.ListColumn{
		{Title: "Name", Width: 96, Grow: 1}, {Title: "Bar", Width: 96, Grow: 1},
	}, kit.Rows{Len: func() int { return len(e.owned().Stations) }, Cell: e.stationCell})
	station := func() gym.Station { return e.owned().Stations[s.at()] }
	change := func(saved string, set func(*gym.Station)) error {
		own := station()
		set(&own)
		_, err := e.host.Desk().KeepStation(s.at(), own)
		return e.saved(saved, err)
	}
	name := s.line("Name", func() string { return station().Name }, func(text string) error {
		return change("The station's name is saved.", func(s *gym.Station) { s.Name = text })
	})
	e.standing = kit.NewChoice("Bar that stands there", nil, func(o kit.Option) {
		e.host.Fail(change("The station's bar is saved.", func(s *gym.Station) { s.Bar = o.Key }))
	})
	s.other = func() {
		e.standing.SetOptions(barOptions(e.owned().Bars))
		e.standing.Set(station().Bar)
		if e.worked == s {
			e.title()
		}
	}
	s.form = kit.Column(look.Gap2, kit.Equal(look.Gap3, name, e.standing),
		kit.NewProse("A station is a place with a bar and plates that some lifters share. The floor seats them there.", 200).Small().Tone(look.Muted))
	return s
}

func (e *equipment) stationCell(row, column int) kit.Cell {
	own := e.owned()
	station := own.Stations[row]
	if column == 0 {
		return kit.Cell{Text: station.Name, Bold: true}
	}
	bar, _ := own.Bar(station.Bar)
	return kit.Cell{Text: bar.Name, Tone: look.Muted}
}

func barOptions(bars []plates.Bar) []kit.Option {
	var options []kit.Option
	for _, b := range bars {
		options = append(options, kit.Option{Key: b.Key, Text: b.Name, Note: plain(b.Kind)})
	}
	return options
}
