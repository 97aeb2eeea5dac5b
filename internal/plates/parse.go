package plates

import (
	"fmt"
	"strconv"
	"strings"

	"windlass/internal/mass"
)

// ParsePairs reads how many pairs of each plate there are:
//
//	pairs = pair { "," pair }
//	pair  = mass "*" count
//
// as in "25kg*4, 45 lb*2". A mass without a unit counts in the given one; its
// decimals stand behind a point, since the comma parts the pairs. The error
// wraps [ErrStock] or [mass.ErrNotMass].
func ParsePairs(text string, without mass.Unit) ([]Plate, error) {
	var plates []Plate
	for _, pair := range strings.Split(text, ",") {
		p, err := parsePair(pair, without)
		if err != nil {
			return nil, fmt.Errorf("read pairs %q: %w", text, err)
		}
		plates = append(plates, p)
	}
	return plates, nil
}

func parsePair(text string, without mass.Unit) (Plate, error) {
	face, count, ok := strings.Cut(text, "*")
	if !ok {
		return Plate{}, fmt.Errorf("%q: %w: write the plate and its pairs as in 25kg*4", strings.TrimSpace(text), ErrStock)
	}
	m, unit, err := mass.Parse(face, without)
	if err != nil {
		return Plate{}, err
	}
	pairs, err := strconv.Atoi(strings.TrimSpace(count))
	if err != nil {
		return Plate{}, fmt.Errorf("%q: %w: %q is not a number of pairs", strings.TrimSpace(text), ErrStock, count)
	}
	p := Plate{Mass: m, Unit: unit, Pairs: pairs}
	return p, p.Valid()
}
