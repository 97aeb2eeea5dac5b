package desk

import (
	"fmt"
	"slices"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// loadCache keeps loads, which are dear to work out and change only with the
// equipment.
type loadCache map[loadKey]*plates.Loads

// loadKey is a bar and the plates it is loaded with: the whole stock, a station's
// heap of it, or the stock without its small plates.
type loadKey struct {
	bar    string
	heap   string
	coarse bool
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
	if !key.coarse {
		return plates.NewLoads(b, e.Stock)
	}
	coarse := e.Stock
	coarse.Plates = slices.DeleteFunc(slices.Clone(coarse.Plates), func(p plates.Plate) bool { return p.Mass < small })
	if len(coarse.Plates) == 0 {
		return plates.NewLoads(b, e.Stock)
	}
	return plates.NewLoads(b, coarse)
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

// small is from which mass on a plate is no small one. Lighter ones are few and for
// records: common practice, no source.
const small = mass.Kilogram

// SmallPlates reports whether the gym has plates that the coach may keep for top
// rungs, see [gym.Settings].
func (d *Desk) SmallPlates() bool {
	return slices.ContainsFunc(d.book.Equipment.Stock.Plates, func(p plates.Plate) bool { return p.Mass < small && p.Pairs > 0 })
}

// KeepSmallOnTop keeps plates under a kilogram for top rungs, or lets them on every
// rung.
func (d *Desk) KeepSmallOnTop(yes bool) error {
	return d.ChangeSettings(func(s *gym.Settings) error { s.SmallAll = !yes; return nil })
}
