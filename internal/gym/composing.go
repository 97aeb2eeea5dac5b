package gym

import (
	"errors"
	"fmt"
	"slices"
)

// Composing is what the composer of conditioning goes by. The zero value, which a
// file has in which nobody has chosen, stands for [UsualComposing].
type Composing struct {
	Shortest int              `json:"shortest"` // seconds that a workout takes a usual athlete, at least
	Longest  int              `json:"longest"`  // and at most
	Apart    int              `json:"apart"`    // days from a movement to the next time; 0 and 1 let it come every day
	Formats  map[int][]Format `json:"formats"`  // for a day of a rep count; one that is missing takes any of them
}

// UsualComposing is what a gym composes by that has chosen nothing: 8 to 15
// minutes, three days apart, long work on the days of many reps and short work on
// those of one, which tire most (common practice, no source).
func UsualComposing() Composing {
	return Composing{
		Shortest: 8 * 60, Longest: 15 * 60, Apart: 3,
		Formats: map[int][]Format{
			5: {ForTime, Chipper, AMRAP},
			3: {AMRAP, EMOM, ForTime},
			1: {Intervals, EMOM},
		},
	}
}

// Bounds of belief for a window and for the days apart.
const (
	leastWindow = 60
	mostWindow  = 60 * 60
	mostApart   = 28
)

// ComposeBy returns what the composer goes by: what was chosen, or what is usual.
func (s Settings) ComposeBy() Composing {
	if s.Composing.chosen() {
		return s.Composing
	}
	return UsualComposing()
}

func (c Composing) chosen() bool {
	return c.Shortest != 0 || c.Longest != 0 || c.Apart != 0 || len(c.Formats) > 0
}

// Valid says what nobody can compose by.
func (c Composing) Valid() error {
	switch {
	case !c.chosen():
		return nil
	case c.Shortest < leastWindow || c.Longest > mostWindow:
		return fmt.Errorf("conditioning from %d to %d seconds is outside 1 to 60 minutes", c.Shortest, c.Longest)
	case c.Longest < c.Shortest:
		return fmt.Errorf("conditioning of at least %d seconds is longer than the most, %d", c.Shortest, c.Longest)
	case c.Apart < 0 || c.Apart > mostApart:
		return fmt.Errorf("a movement that comes again after %d days is outside 0 to %d days", c.Apart, mostApart)
	case len(c.Formats) == 0:
		return errors.New("conditioning has no format on any day; choose one")
	}
	for reps, formats := range c.Formats {
		if err := validFormats(reps, formats); err != nil {
			return err
		}
	}
	return nil
}

func validFormats(reps int, formats []Format) error {
	if reps < 1 || reps > MaxReps {
		return fmt.Errorf("%d reps are not a rep max; write 1 to %d", reps, MaxReps)
	}
	if len(formats) == 0 {
		return fmt.Errorf("days of %d have no format of conditioning; choose one", reps)
	}
	for i, f := range formats {
		switch {
		case !slices.Contains(Formats(), f):
			return fmt.Errorf("%q is no format of conditioning; choose among %v", f, Formats())
		case slices.Contains(formats[:i], f):
			return fmt.Errorf("days of %d have the format %q twice; keep one", reps, f)
		}
	}
	return nil
}
