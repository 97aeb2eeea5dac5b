package plates

import (
	"fmt"

	"windlass/internal/mass"
)

// Rounding says which way a load may leave its target.
type Rounding string

// The ways to round. Nearest takes the lighter of two loads equally near.
const (
	Nearest Rounding = "nearest"
	Down    Rounding = "down"
	Up      Rounding = "up"
)

// Valid reports whether r is one of the three ways.
func (r Rounding) Valid() bool { return r == Nearest || r == Down || r == Up }

// ParseRounding reads "nearest", "down" or "up".
func ParseRounding(text string) (Rounding, error) {
	if r := Rounding(text); r.Valid() {
		return r, nil
	}
	return "", fmt.Errorf("read rounding %q: it is not nearest, down or up", text)
}

// Loading is a bar with its plates.
type Loading struct {
	Bar     Bar       `json:"bar"`
	Total   mass.Mass `json:"total"`    // bar, collars and plates
	PerSide []Disc    `json:"per_side"` // heaviest inside, first
	Short   bool      `json:"short"`    // the target is heavier than all the plates together make
	Under   bool      `json:"under"`    // the target is lighter than the bar with its collars
	Blocks  bool      `json:"blocks"`   // a lift from the floor without a disc of full diameter: raise the bar on blocks
}
