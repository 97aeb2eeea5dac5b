package climb

import (
	"fmt"

	"windlass/internal/day"
	"windlass/internal/mass"
)

// A base is stale after so many weeks, and then a base lowered by so much is
// offered; common practice, no source.
const (
	StaleWeeks = 16
	StaleLower = 5.0 // per cent
)

// Stale says that a base may be more than the lifter can do today. It is an
// offer: the coach chooses the base.
type Stale struct {
	Weeks   int       // whole weeks since the base was lifted
	Break   bool      // the lifter has come back from a break since
	Lowered mass.Mass // the base that is offered instead
}

// StaleBase looks at a base that was lifted on a day, for a lifter who came back
// from the last break on backOn, day.None without one. It reports false for a
// base that is fresh, or that has no date.
func StaleBase(base mass.Mass, on, backOn, today day.Date) (Stale, bool) {
	if on == day.None {
		return Stale{}, false
	}
	s := Stale{Weeks: today.Since(on) / 7, Break: on < backOn && backOn <= today}
	if today.Since(on) <= 7*StaleWeeks && !s.Break {
		return Stale{}, false
	}
	s.Lowered = share(base, 100-StaleLower)
	return s, true
}

// Why says what makes the base stale and what is offered.
func (s Stale) Why(u mass.Unit) string {
	since := fmt.Sprintf("It is %d weeks old", s.Weeks)
	if s.Break {
		since = "It is older than the break"
	}
	return fmt.Sprintf("%s: climb from %s, %g %% less?", since, s.Lowered.In(u), StaleLower)
}
