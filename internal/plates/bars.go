package plates

import (
	"fmt"

	"windlass/internal/mass"
)

// Bars is every bar of a gym with the loads that its stock makes on each.
type Bars struct{ loads []*Loads }

// NewBars returns the loads of every bar with all of stock, as if no other bar
// were in use. The error wraps [ErrStock].
func NewBars(bars []Bar, stock Stock) (*Bars, error) {
	if err := stock.Valid(); err != nil {
		return nil, err
	}
	order, later, grids := split(stock.tidy())
	all := &Bars{}
	for _, bar := range bars {
		if err := bar.Valid(); err != nil {
			return nil, err
		}
		all.loads = append(all.loads, &Loads{
			bar: bar, base: bar.Mass + 2*stock.Collar, order: order, later: later, grids: grids,
		})
	}
	return all, nil
}

// split lays the plates of each unit on a grid of their own.
func split(plates []Plate) (order []place, later [][2]int, grids [2]*grid) {
	var units [2][]Plate
	for _, p := range plates {
		later = append(later, [2]int{len(units[0]), len(units[1])})
		g := 0
		if p.Unit == mass.LB {
			g = 1
		}
		order = append(order, place{grid: g, plate: len(units[g])})
		units[g] = append(units[g], p)
	}
	later = append(later, [2]int{len(units[0]), len(units[1])})
	for g := range units {
		grids[g] = newGrid(units[g], mass.Max)
	}
	return order, later, grids
}

// Loads returns the loads of the bar with that key.
func (b *Bars) Loads(key string) (*Loads, bool) {
	for _, l := range b.loads {
		if l.bar.Key == key {
			return l, true
		}
	}
	return nil, false
}

// FromFloor returns the same bars for a lift that starts on the floor.
func (b *Bars) FromFloor() *Bars {
	floor := &Bars{}
	for _, l := range b.loads {
		floor.loads = append(floor.loads, l.FromFloor())
	}
	return floor
}

// Loadable is [Loads.Loadable] on the bar with that key, but a target under the
// bar goes to another: of the gym's lighter bars that stand in for it, the one
// that comes nearest the target, the lightest of those equally near. Where none
// comes nearer than the lifter's bar alone, it is that bar, marked under. The
// loading says which bar it is.
func (b *Bars) Loadable(key string, target mass.Mass, r Rounding) (Loading, error) {
	own, ok := b.Loads(key)
	if !ok {
		return Loading{}, fmt.Errorf("load bar %q: the gym has no such bar; add it to the gym or choose another", key)
	}
	if target >= own.base || !r.Valid() {
		return own.Loadable(target, r)
	}
	alone := own.alone()
	if lighter, ok := b.lighter(own.bar, target, r); ok && apart(lighter.Total, target) < apart(alone.Total, target) {
		return lighter, nil
	}
	return alone, nil
}

func (b *Bars) lighter(own Bar, target mass.Mass, r Rounding) (best Loading, ok bool) {
	for _, l := range b.loads {
		if !l.bar.standsIn(own) {
			continue
		}
		if got := l.orAlone(target, r); !ok || nearer(got, best, target) {
			best, ok = got, true
		}
	}
	return best, ok
}

// standsIn reports whether a lifter of the other bar can take b instead.
func (b Bar) standsIn(other Bar) bool {
	return b.replaces(other) && b.Count > 0 && b.Mass < other.Mass
}

func (b Bar) replaces(other Bar) bool {
	return b.Kind == other.Kind || b.plain() && other.plain()
}

func (b Bar) plain() bool {
	return b.Kind == Barbell || b.Kind == LightBarbell || b.Kind == Technique
}

func (l *Loads) alone() Loading {
	loading := l.loading(amount{})
	loading.Under = true
	return loading
}

func (l *Loads) orAlone(target mass.Mass, r Rounding) Loading {
	if target < l.base {
		return l.alone()
	}
	return l.round(target, r)
}

// nearer prefers the load that is less far off, then the lighter bar.
func nearer(a, b Loading, target mass.Mass) bool {
	if away, other := apart(a.Total, target), apart(b.Total, target); away != other {
		return away < other
	}
	return a.Bar.Mass < b.Bar.Mass
}
