package gym

import (
	"slices"

	"windlass/internal/mass"
	"windlass/internal/plates"
)

// Equipment is what the gym owns.
type Equipment struct {
	Bars       []plates.Bar `json:"bars"`
	Stock      plates.Stock `json:"stock"`
	Stations   []Station    `json:"stations"`
	Implements []Implement  `json:"implements"`
}

// Station is a place with a bar and plates that some lifters share.
type Station struct {
	Name string `json:"name"`
	Bar  string `json:"bar"` // plates.Bar.Key that stands there
}

// Implement is a kind of thing that is lifted whole or worked on: the masses that
// the gym owns, and how many there are. What nobody has counted is missing from
// the counts, and taken to be enough for everybody.
type Implement struct {
	Kind   string            `json:"kind"` // "kettlebell", "dumbbell", …
	Unit   mass.Unit         `json:"unit"`
	Masses []mass.Mass       `json:"masses"`         // rising; none for what is not lifted, such as a box or a bike
	Each   map[mass.Mass]int `json:"each,omitzero"`  // how many there are of a mass
	Total  int               `json:"total,omitzero"` // how many there are of a kind that is not lifted, or is loaded to each of its masses, such as a sled
}

// Pool is the things that athletes of one load draw on: those of one mass, or all
// of a kind that is loaded or not lifted, whose mass is 0.
type Pool struct {
	Kind string
	Mass mass.Mass
}

// Implement returns the masses the gym owns of a kind.
func (e Equipment) Implement(kind string) []mass.Mass { return e.kind(kind).Masses }

// Owns reports whether the gym has a kind of implement; nothing at all, for body
// weight, every gym has.
func (e Equipment) Owns(kind string) bool { return kind == "" || e.kind(kind).Kind == kind }

// kind returns an implement, the zero one for a kind that the gym does not own.
func (e Equipment) kind(kind string) Implement {
	if i := slices.IndexFunc(e.Implements, func(i Implement) bool { return i.Kind == kind }); i >= 0 {
		return e.Implements[i]
	}
	return Implement{}
}

// Pool returns the pool that a load of a kind comes from.
func (e Equipment) Pool(kind string, load mass.Mass) Pool {
	if i := e.kind(kind); i.Total > 0 || len(i.Masses) == 0 || e.bars(kind) > 0 {
		return Pool{Kind: kind}
	}
	return Pool{Kind: kind, Mass: load}
}

// Pieces returns how many things a pool has, and whether they were counted. Of a
// kind that the gym's bars are, the bars are counted; there are none of a mass
// that the gym does not own.
func (e Equipment) Pieces(p Pool) (n int, counted bool) {
	i, bars := e.kind(p.Kind), e.bars(p.Kind)
	switch {
	case i.Kind == "":
		return 0, true
	case i.Total > 0:
		return i.Total, true
	case p.Mass != 0 && !slices.Contains(i.Masses, p.Mass):
		return 0, true
	case p.Mass != 0:
		n, counted = i.Each[p.Mass]
		return n, counted
	}
	return bars, bars > 0
}

// bars returns how many bars of a kind there are. The light bar is a barbell to
// who is handed one for conditioning; the technique bar, which takes few plates, is
// not.
func (e Equipment) bars(kind string) int {
	n := 0
	for _, b := range e.Bars {
		if b.Kind == kind || kind == plates.Barbell && b.Kind == plates.LightBarbell {
			n += b.Count
		}
	}
	return n
}

// Bar returns the bar with a key.
func (e Equipment) Bar(key string) (plates.Bar, bool) {
	for _, b := range e.Bars {
		if b.Key == key {
			return b, true
		}
	}
	return plates.Bar{}, false
}

// Unit returns the unit in which a kind of implement is marked.
func (e Equipment) Unit(kind string) mass.Unit {
	if i := e.kind(kind); i.Unit.Valid() {
		return i.Unit
	}
	return mass.KG
}
