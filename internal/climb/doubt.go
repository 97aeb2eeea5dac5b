package climb

import (
	"fmt"

	"windlass/internal/mass"
)

// farOver is the share of what is known from which a result is rather a slip of
// the hand than a lift, in per cent; common practice, no source.
const farOver = 125

// Doubt says in one sentence why a load is hardly what somebody has lifted, and
// nothing where it may well be. lightest is the least that can be lifted there, the
// bar alone; known is what the lifter is known to lift for so many reps. Either is
// 0 where nobody knows.
func Doubt(load, lightest, known mass.Mass, u mass.Unit) string {
	switch {
	case load < lightest:
		return fmt.Sprintf("%s is less than the lightest that can be lifted here, %s.", load.In(u), lightest.In(u))
	case known > 0 && load > share(known, farOver):
		return fmt.Sprintf("%s is %.0f %% of %s, what is known so far.", load.In(u), percentOf(load, known), known.In(u))
	}
	return ""
}
