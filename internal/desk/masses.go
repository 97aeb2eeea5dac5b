package desk

import (
	"strings"

	"windlass/internal/mass"
)

// ReadMasses reads masses with commas, semicolons or line ends between them. One
// without a unit counts in the given one; decimals stand behind a point.
//
//	masses = [ mass { ("," | ";" | line end) mass } ]
func ReadMasses(text string, without mass.Unit) ([]mass.Mass, error) {
	var all []mass.Mass
	for part := range strings.FieldsFuncSeq(text, func(r rune) bool { return strings.ContainsRune(",;\n", r) }) {
		if strings.TrimSpace(part) == "" {
			continue
		}
		m, _, err := mass.Parse(part, without)
		if err != nil {
			return nil, err
		}
		all = append(all, m)
	}
	return all, nil
}

// MassesText writes masses as [ReadMasses] reads them: "8, 12, 16". One that has
// no round figure in the unit is written in the other, so that nothing is lost.
func MassesText(masses []mass.Mass, unit mass.Unit) string {
	texts := make([]string, len(masses))
	for i, m := range masses {
		texts[i] = m.Digits(unit)
		if other := otherUnit(unit); !round(m, unit) && round(m, other) {
			texts[i] = m.In(other)
		}
	}
	return strings.Join(texts, ", ")
}

func otherUnit(u mass.Unit) mass.Unit {
	if u == mass.LB {
		return mass.KG
	}
	return mass.LB
}

// round reports whether two decimals write a mass exactly.
func round(m mass.Mass, u mass.Unit) bool { return m%(u.One()/100) == 0 }
