package desk

import (
	"fmt"

	"windlass/internal/gym"
	"windlass/internal/plates"
)

// loadCache keeps the loads of each bar, which are dear to work out and change
// only with the equipment.
type loadCache map[string]*plates.Loads

// Loads returns every load of one of the gym's bars with its whole stock.
func (d *Desk) Loads(bar string) (*plates.Loads, error) {
	if l, ok := d.loads[bar]; ok {
		return l, nil
	}
	l, err := loadsOfBar(d.book.Equipment, bar)
	if err != nil {
		return nil, err
	}
	if d.loads == nil {
		d.loads = loadCache{}
	}
	d.loads[bar] = l
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

func loadsOfBar(e gym.Equipment, bar string) (*plates.Loads, error) {
	b, ok := e.Bar(bar)
	if !ok {
		return nil, fmt.Errorf("load a bar: the gym has no bar %q; add one in the Gym room", bar)
	}
	return plates.NewLoads(b, e.Stock)
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
