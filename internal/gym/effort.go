package gym

import (
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"

	"windlass/internal/mass"
)

// Effort is so many reps with a load, as a coach writes it.
type Effort struct {
	Reps int
	Load mass.Mass
	Unit mass.Unit
}

// ParseEffort reads an effort. A load without a unit counts in the given one.
//
//	effort = reps ( "x" | "X" | "×" | "*" | "@" ) mass
//
// as in "5x142.5", "3 × 225 lb" and "1@100kg".
func ParseEffort(text string, without mass.Unit) (Effort, error) {
	at := strings.IndexAny(text, "xX×*@")
	if at < 0 {
		return Effort{}, fmt.Errorf("read %q: reps and load want an x between them; write one like 5x142.5", text)
	}
	_, size := utf8.DecodeRuneInString(text[at:])
	count, load := text[:at], text[at+size:]
	reps, err := strconv.Atoi(strings.TrimSpace(count))
	if err != nil || reps < 1 || reps > MaxReps {
		return Effort{}, fmt.Errorf("read %q: %q is not a rep count from 1 to %d; write one like 5x142.5", text, strings.TrimSpace(count), MaxReps)
	}
	m, unit, err := mass.Parse(load, without)
	if err != nil {
		return Effort{}, err
	}
	if m == 0 {
		return Effort{}, fmt.Errorf("read %q: the load is nothing; write what was lifted", text)
	}
	return Effort{Reps: reps, Load: m, Unit: unit}, nil
}

// String writes e as [ParseEffort] reads it.
func (e Effort) String() string { return fmt.Sprintf("%dx%s", e.Reps, e.Load.In(e.Unit)) }
