package mass

import (
	"errors"
	"fmt"
	"strings"
)

// ErrNotMass marks a text that is no believable mass.
var ErrNotMass = errors.New("not a mass")

// The grammar of a mass, in any case and with spaces anywhere around:
//
//	mass   = number [ unit ]
//	number = digits [ ( "." | "," ) digits ]
//	unit   = "kg" | "kgs" | "kilo" | "kilos" | "lb" | "lbs" | "pound" | "pounds" | "#"
var unitNames = map[string]Unit{
	"kg": KG, "kgs": KG, "kilo": KG, "kilos": KG,
	"lb": LB, "lbs": LB, "lb.": LB, "lbs.": LB, "pound": LB, "pounds": LB, "#": LB,
}

// Parse reads a mass such as "100", "102,5 kg" or "225lbs". A text without a
// unit counts in the given one. It returns the unit that was meant, and an
// error wrapping [ErrNotMass] for a text that is no mass, is negative, has more
// decimals than a nanogram or is over [Max].
func Parse(text string, without Unit) (Mass, Unit, error) {
	number, name := split(strings.ToLower(strings.TrimSpace(text)))
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

// exact multiplies in whole numbers: a float would lose the pound's last digits.
func exact(number string, unit Unit) (m Mass, why string) {
	number = strings.Replace(number, ",", ".", 1)
	whole, fraction, _ := strings.Cut(number, ".")
	if whole == "" && fraction == "" {
		return 0, "it has no number"
	}
	if len(whole) > 5 || len(fraction) > 6 {
		return 0, "it has too many digits"
	}
	one := unit.One()
	for _, d := range whole {
		if d < '0' || d > '9' {
			return 0, "it is not a plain number"
		}
		m = m*10 + Mass(d-'0')*one
	}
	place := one
	for _, d := range fraction {
		if d < '0' || d > '9' {
			return 0, "it is not a plain number"
		}
		place /= 10
		m += Mass(d-'0') * place
	}
	if m > Max {
		return 0, "it is over " + Max.In(unit)
	}
	return m, ""
}
