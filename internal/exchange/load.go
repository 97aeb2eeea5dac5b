package exchange

import (
	"fmt"
	"strings"

	"windlass/internal/mass"
)

// million is how fine a load is in a sheet: six decimals of a kilogram are a
// milligram, which no gym weighs.
const million = 1_000_000

// sheetLoad is a load as far as a sheet can say it.
type sheetLoad struct {
	millionths int64 // of the unit
	unit       mass.Unit
}

// newSheetLoad makes no load the same in every unit.
func newSheetLoad(m mass.Mass, u mass.Unit) sheetLoad {
	if m == 0 {
		return sheetLoad{}
	}
	if !u.Valid() {
		u = mass.KG
	}
	one := u.One()
	half := one / 2
	if m > mass.Max-one/million {
		half = 0 // rounded up, the heaviest load could not be read again
	}
	// Whole units first: a heavy load times a million does not fit.
	return sheetLoad{int64(m/one)*million + int64((m%one*million+half)/one), u}
}

// String writes all the decimals that say something: "185 lb", "101.646627 kg".
func (l sheetLoad) String() string {
	text := fmt.Sprintf("%d.%06d", l.millionths/million, l.millionths%million)
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".") + " " + string(l.unit)
}

// writeLoad writes a load for a sheet, and nothing for none.
func writeLoad(m mass.Mass, u mass.Unit) string {
	if m == 0 {
		return ""
	}
	return newSheetLoad(m, u).String()
}
