package plates

import (
	"errors"
	"fmt"
	"slices"

	"windlass/internal/mass"
)

// ErrUnderBar marks a target lighter than the bar with its collars.
var ErrUnderBar = errors.New("lighter than the bar")

// Loads is every load that one bar can carry with one stock. Build it once and
// ask it often; it never changes.
type Loads struct {
	bar   Bar
	base  mass.Mass // bar and two collars
	order []place   // every sort of plate, in the order of the bar
	later [][2]int  // for each of them and the end, where in each grid the plates from there on begin
	grids [2]*grid  // kilograms, pounds
	floor bool
}

// place finds a sort of plate in its grid.
type place struct{ grid, plate int }

// amount is a load as steps of the two grids.
type amount [2]int

// NewLoads returns the loads of bar with all of stock. The error wraps
// [ErrStock]. Masses over [mass.Max] are left out.
func NewLoads(bar Bar, stock Stock) (*Loads, error) {
	bars, err := NewBars([]Bar{bar}, stock)
	if err != nil {
		return nil, err
	}
	return bars.loads[0], nil
}

// FromFloor returns the same loads for a lift that starts on the floor: between
// equal loads it takes one with a disc of full diameter, and says when none has.
func (l *Loads) FromFloor() *Loads {
	floor := *l
	floor.floor = true
	return &floor
}

// Bar returns the bar.
func (l *Loads) Bar() Bar { return l.bar }

// Lightest returns the load of the bar alone, collars included.
func (l *Loads) Lightest() mass.Mass { return l.base }

// Heaviest returns the heaviest load that the stock makes.
func (l *Loads) Heaviest() mass.Mass {
	most, _ := l.atMost(mass.Max)
	return l.total(most)
}

// Loadable returns the load for a target: the one just below, just above or
// nearest, the lighter of two equally near. A target over everything gives the
// heaviest load, marked short. The error wraps [ErrUnderBar] for a target
// lighter than the bar.
func (l *Loads) Loadable(target mass.Mass, r Rounding) (Loading, error) {
	if err := l.refuse(target, r); err != nil {
		return Loading{}, err
	}
	return l.round(target, r), nil
}

// round needs a target that the bar itself is not over.
func (l *Loads) round(target mass.Mass, r Rounding) Loading {
	pick, short := l.rounded(target, r)
	loading := l.loading(pick)
	loading.Short = short
	return loading
}

func (l *Loads) rounded(target mass.Mass, r Rounding) (pick amount, short bool) {
	below, _ := l.atMost(target)
	above, ok := l.atLeast(target)
	if ok && (r == Up || r == Nearest && l.total(above)-target < target-l.total(below)) {
		return above, false
	}
	return below, !ok
}

// nearest is the bar alone for a target that it is over.
func (l *Loads) nearest(target mass.Mass) amount {
	pick, _ := l.rounded(max(target, l.base), Nearest)
	return pick
}

func (l *Loads) refuse(target mass.Mass, r Rounding) error {
	switch {
	case !r.Valid():
		return fmt.Errorf("load %s: rounding %q is not nearest, down or up", l.say(target), r)
	case target > mass.Max:
		return fmt.Errorf("load %s: it is over %s; check the number and its unit", l.say(target), l.say(mass.Max))
	case target < l.base:
		return fmt.Errorf("load %s: %w, which is %s with its collars; take a lighter bar or a heavier load",
			l.say(target), ErrUnderBar, l.say(l.base))
	}
	return nil
}

func (l *Loads) say(m mass.Mass) string { return m.In(l.bar.Unit) }

// AtMost returns the heaviest load not over limit, and false when even the bar
// alone is.
func (l *Loads) AtMost(limit mass.Mass) (Loading, bool) {
	best, ok := l.atMost(limit)
	if !ok {
		return Loading{}, false
	}
	return l.loading(best), true
}

// AtLeast returns the lightest load not under limit, and false when the stock
// makes none. The lightest load over a record is AtLeast(record + 1).
func (l *Loads) AtLeast(limit mass.Mass) (Loading, bool) {
	best, ok := l.atLeast(limit)
	if !ok {
		return Loading{}, false
	}
	return l.loading(best), true
}

// Between returns every load from one mass to another, ends included, the
// lightest first.
func (l *Loads) Between(from, to mass.Mass) []mass.Mass {
	var all []mass.Mass
	for a := range l.between(from, to) {
		all = append(all, l.total(a))
	}
	slices.Sort(all)
	return all
}
