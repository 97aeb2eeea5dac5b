package mass

import (
	"errors"
	"fmt"
	"math/bits"
	"strconv"
	"strings"
)

// ErrNotMass marks a text that is no believable mass.
var ErrNotMass = errors.New("not a mass")

// The grammar of a mass, in any case and with spaces anywhere around:
//
//	mass   = number [ unit ]
//	number = digits [ ( "." | "," ) digits ]
//	unit   = "kg" | "kgs" | "kilo" | "kilos" | "lb" | "lbs" | "lb." | "lbs." | "pound" | "pounds" | "#"
//
// A comma before exactly three digits is refused where it could part thousands:
// "1,000 lb" is a thousand to one coach and one to another.
var unitNames = map[string]Unit{
	"kg": KG, "kgs": KG, "kilo": KG, "kilos": KG,
	"lb": LB, "lbs": LB, "lb.": LB, "lbs.": LB, "pound": LB, "pounds": LB, "#": LB,
}

// Parse reads a mass such as "100", "102,5 kg" or "225lbs", to the nearest
// nanogram. A text without a unit counts in the given one. It returns the unit
// that was meant, and an error wrapping [ErrNotMass] for a text that is no mass,
// is negative, has more than twelve decimals or is over [Max].
func Parse(text string, without Unit) (Mass, Unit, error) {
	number, name := split(strings.ToLower(strings.TrimSpace(text)))
	if number == "" {
		return 0, "", refuse(text, "it has no number")
	}
	unit := unitOr(without)
	if name != "" {
		known, ok := unitNames[name]
		if !ok {
			return 0, "", refuse(text, "the unit is not kg or lb")
		}
		unit = known
	}
	m, why := exact(number, unit)
	if why != "" {
		return 0, "", refuse(text, why)
	}
	return m, unit, nil
}

// ParseUnit reads the name of a unit, such as "lbs" or "KG".
func ParseUnit(text string) (Unit, error) {
	if u, ok := unitNames[strings.ToLower(strings.TrimSpace(text))]; ok {
		return u, nil
	}
	return "", fmt.Errorf("read unit %q: it is not kg or lb", text)
}

func refuse(text, why string) error {
	return fmt.Errorf("read load %q: %w: %s; write one like 102.5 kg or 225 lb", text, ErrNotMass, why)
}

func split(text string) (number, unit string) {
	end := strings.LastIndexAny(text, "0123456789.,") + 1
	// A full stop after the unit's letters belongs to the unit ("lbs.").
	if i := strings.IndexFunc(text, func(r rune) bool { return r == '#' || (r >= 'a' && r <= 'z') }); i >= 0 && i < end {
		end = i
	}
	return strings.TrimSpace(text[:end]), strings.TrimSpace(text[end:])
}

// exact computes in whole numbers: a float would lose the pound's last digits.
func exact(number string, unit Unit) (m Mass, why string) {
	whole, fraction, comma := strings.Cut(number, ",")
	if !comma {
		whole, fraction, _ = strings.Cut(number, ".")
	}
	if why := doubt(whole, fraction, comma, unit); why != "" {
		return 0, why
	}
	one := uint64(unit.One())
	scale := uint64(1)
	for range fraction {
		scale *= 10
	}
	// whole has at most 4 digits, fraction at most 12: neither product overflows.
	high, low := bits.Mul64(digits(fraction), one)
	low, carry := bits.Add64(low, scale/2, 0)
	part, _ := bits.Div64(high+carry, low, scale)
	m = Mass(digits(whole)*one + part)
	if m > Max {
		return 0, "it is over " + Max.In(unit)
	}
	return m, ""
}

// doubt says why the two sides of a decimal sign are no believable number.
func doubt(whole, fraction string, comma bool, unit Unit) string {
	switch {
	case strings.HasPrefix(whole, "-") || strings.HasPrefix(whole, "−"):
		return "it is less than nothing"
	case whole+fraction == "":
		return "it has no number"
	case strings.Trim(whole+fraction, "0123456789") != "":
		return "it is not a plain number"
	case len(strings.TrimLeft(whole, "0")) > 4:
		return "it is over " + Max.In(unit)
	case len(fraction) > 12:
		return "it has too many digits"
	case comma && thousands(whole, fraction, unit):
		return fmt.Sprintf("the comma could part thousands; write %s%s or %s.%s", whole, fraction, whole, fraction)
	}
	return ""
}

// thousands reports whether a comma between the two may part thousands.
func thousands(whole, fraction string, unit Unit) bool {
	return len(fraction) == 3 && len(whole) >= 1 && len(whole) <= 3 && whole[0] != '0' &&
		Mass(digits(whole+fraction))*unit.One() <= Max
}

// digits reads plain digits that are known to fit; none are 0.
func digits(text string) uint64 {
	n, _ := strconv.ParseUint("0"+text, 10, 64)
	return n
}
