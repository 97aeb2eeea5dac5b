package desk

import (
	"fmt"
	"slices"

	"windlass/internal/climb"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// loadCache keeps loads, which are dear to work out and change only with the
// equipment.
type loadCache map[loadKey]*plates.Loads

// loadKey is a bar and the plates it is loaded with: the whole stock, a station's
// heap of it, or the stock without fractional plates.
type loadKey struct {
	bar   string
	heap  string
	usual bool
}

// Loads returns every load of one of the gym's bars with its whole stock.
func (d *Desk) Loads(bar string) (*plates.Loads, error) { return d.loadsOf(loadKey{bar: bar}) }

func (d *Desk) loadsOf(key loadKey) (*plates.Loads, error) {
	if l, ok := d.loads[key]; ok {
		return l, nil
	}
	l, err := loadsOfBar(d.book.Equipment, key)
	if err != nil {
		return nil, err
	}
	if d.loads == nil {
		d.loads = loadCache{}
	}
	d.loads[key] = l
	return l, nil
}

// Boards returns what draws up the boards of classes, the same until the equipment
// changes.
func (d *Desk) Boards() *Boards {
	if d.boards == nil {
		d.boards = NewBoards(&d.book)
	}
	return d.boards
}

func loadsOfBar(e gym.Equipment, key loadKey) (*plates.Loads, error) {
	b, ok := e.Bar(key.bar)
	if !ok {
		return nil, fmt.Errorf("load a bar: the gym has no bar %q; add one in the Gym room", key.bar)
	}
	if !key.usual {
		return plates.NewLoads(b, e.Stock)
	}
	usual := e.Stock
	usual.Plates = slices.DeleteFunc(slices.Clone(usual.Plates), func(p plates.Plate) bool { return p.Mass < leastUsual })
	if len(usual.Plates) == 0 {
		return plates.NewLoads(b, e.Stock)
	}
	return plates.NewLoads(b, usual)
}

// BarFor returns the bar on which an athlete does a lift: one of the lift's kind,
// and for the Olympic lifts of standard W the light bar of those rules, where the
// gym owns one.
func (d *Desk) BarFor(lift gym.Lift, standard gym.Standard) (plates.Bar, bool) {
	kind := lift.Bar
	if kind == plates.Barbell && lift.Pattern == gym.Olympic && standard == gym.StandardW {
		kind = plates.LightBarbell
	}
	var first plates.Bar
	for _, b := range d.book.Equipment.Bars {
		switch {
		case b.Kind == kind:
			return b, true
		case b.Kind == lift.Bar, first.Key == "" && b.Kind == plates.Barbell:
			first = b
		}
	}
	return first, first.Key != ""
}

// LoadsFor returns the loads of the bar on which an athlete does a lift.
func (d *Desk) LoadsFor(lift gym.Lift, standard gym.Standard) (*plates.Loads, error) {
	b, ok := d.BarFor(lift, standard)
	if !ok {
		return nil, fmt.Errorf("load %s: the gym owns no bar for it; add one in the Gym room", lift.Name)
	}
	l, err := d.Loads(b.Key)
	if err != nil || !lift.Floor {
		return l, err
	}
	return l.FromFloor(), nil
}

// leastUsual is the lightest plate that goes on a bar on the way up. Lighter ones
// are few and for records: common practice, no source.
const leastUsual = mass.Kilogram

// sparing is the rack of a climb: fractional plates only over what the climb is
// counted from, and none where the rep max is still being found.
type sparing struct {
	usual, all climb.Rack
	base       mass.Mass
}

func (s sparing) at(limit mass.Mass) climb.Rack {
	if s.base > 0 && limit > s.base {
		return s.all
	}
	return s.usual
}

// AtMost implements climb.Rack.
func (s sparing) AtMost(limit mass.Mass) (plates.Loading, bool) { return s.at(limit).AtMost(limit) }

// AtLeast implements climb.Rack.
func (s sparing) AtLeast(limit mass.Mass) (plates.Loading, bool) { return s.at(limit).AtLeast(limit) }
