package desk

import (
	"strings"

	"windlass/internal/gym"
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

// MassesText writes masses as [ReadMasses] reads them: "8, 12, 16".
func MassesText(masses []mass.Mass, unit mass.Unit) string {
	return gym.Implement{Unit: unit, Masses: masses}.MassesText()
}
