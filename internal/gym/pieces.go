package gym

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"windlass/internal/mass"
)

// MostPieces is how many things of one sort a gym may own: more is a slip of the
// hand.
const MostPieces = 999

// WithMasses returns the implement with the masses and counts that a coach wrote,
// from light to heavy. A mass without a unit counts in the implement's; decimals
// stand behind a point. A mass without a count was not counted.
//
//	masses = [ piece { ( "," | ";" | line end ) piece } ]
//	piece  = mass [ times count ] | count times mass-with-unit
//	times  = "×" | "x" | "*"
//
// So "8×2, 12×4" and "2 × 8 kg, 4 × 12 kg" say the same.
func (i Implement) WithMasses(text string) (Implement, error) {
	i.Masses, i.Each = nil, nil
	each := map[mass.Mass]int{}
	for part := range strings.FieldsFuncSeq(text, func(r rune) bool { return strings.ContainsRune(",;\n", r) }) {
		if strings.TrimSpace(part) == "" {
			continue
		}
		p, err := readPiece(part, i.Unit)
		if err != nil {
			return i, err
		}
		_, counted := each[p.mass]
		if slices.Contains(i.Masses, p.mass) && (counted || p.count > 0) {
			return i, fmt.Errorf("read masses: %s stands there twice; write it once, with how many there are", p.mass.In(i.Unit))
		}
		i.Masses = append(i.Masses, p.mass)
		if p.count > 0 {
			each[p.mass] = p.count
		}
	}
	slices.Sort(i.Masses)
	i.Masses = slices.Compact(i.Masses)
	if len(each) > 0 {
		i.Each = each
	}
	return i, nil
}

// MassesText writes the masses and counts as [Implement.WithMasses] reads them:
// "8×2, 12×4, 16". A mass that has no round figure in the unit is written in the
// other, so that nothing is lost.
func (i Implement) MassesText() string {
	texts := make([]string, len(i.Masses))
	for at, m := range i.Masses {
		texts[at] = m.Digits(i.Unit)
		if other := otherUnit(i.Unit); !round(m, i.Unit) && round(m, other) {
			texts[at] = m.In(other)
		}
		if n := i.Each[m]; n > 0 {
			texts[at] += "×" + strconv.Itoa(n)
		}
	}
	return strings.Join(texts, ", ")
}

// piece is a mass as it was written, with how many there are; 0 was not counted.
type piece struct {
	mass  mass.Mass
	unit  mass.Unit
	bare  bool // written without a unit
	count int
}

// readPiece reads one mass with or without a count.
func readPiece(text string, without mass.Unit) (piece, error) {
	parts := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return strings.ContainsRune("×x*", r) })
	switch {
	case len(parts) == 1 && parts[0] == strings.ToLower(text):
		m, unit, err := mass.Parse(text, without)
		return piece{mass: m, unit: unit, bare: !hasUnit(text)}, err
	case len(parts) != 2:
		return piece{}, fmt.Errorf("read masses: %q is not a mass and a count; write 16×4 for four of 16, and commas between", strings.TrimSpace(text))
	case hasUnit(parts[1]) && !hasUnit(parts[0]):
		parts[0], parts[1] = parts[1], parts[0]
	}
	m, unit, err := mass.Parse(parts[0], without)
	if err != nil {
		return piece{}, err
	}
	n, err := strconv.Atoi(strings.TrimSpace(parts[1]))
	if err != nil || n < 1 || n > MostPieces {
		return piece{}, fmt.Errorf("read masses: %q is no count of %s; write 1 to %d behind the ×, or only the mass if nobody has counted",
			strings.TrimSpace(parts[1]), m.In(unit), MostPieces)
	}
	return piece{m, unit, !hasUnit(parts[0]), n}, nil
}

// hasUnit reports whether a mass was written with its unit.
func hasUnit(text string) bool {
	text = strings.TrimSpace(text)
	return strings.ContainsAny(text, "0123456789") && !strings.ContainsRune("0123456789.,", rune(text[len(text)-1]))
}

func otherUnit(u mass.Unit) mass.Unit {
	if u == mass.LB {
		return mass.KG
	}
	return mass.LB
}

// round reports whether two decimals write a mass exactly.
func round(m mass.Mass, u mass.Unit) bool { return m%(u.One()/100) == 0 }
