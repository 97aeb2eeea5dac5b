package conditioning

import (
	"errors"
	"fmt"
	"slices"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// ErrLoad marks a load that cannot have been.
var ErrLoad = errors.New("not a believable load")

// absurd is how many times the heaviest load that a gym knows for a movement is no
// load any more, but a slip (common practice, no source: the strongest at a movement
// do two to three times its standard load, and a lost decimal point makes ten).
const absurd = 4

// CheckLoad says whether a load of a movement can have been, given what the gym owns
// of its implement. The error wraps [ErrLoad]. A movement without standard loads and
// without an implement bounds nothing; there mass.Max does.
func CheckLoad(m gym.Movement, owned []mass.Mass, load mass.Mass) error {
	most := mass.Mass(0)
	for _, t := range m.Loads {
		most = max(most, t.Full)
	}
	if len(owned) > 0 {
		most = max(most, slices.Max(owned))
	}
	if most == 0 || load <= absurd*most {
		return nil
	}
	return fmt.Errorf("check load: %w: %s of %s is more than %d times the heaviest known for it, %s; check the decimal point and the unit",
		ErrLoad, load, m.Name, absurd, most)
}

// Missing reports whether a gym that owns some of an implement owns none of a load.
// A gym without a list of it, as for barbells, which are loaded, misses nothing.
func Missing(owned []mass.Mass, load mass.Mass) bool {
	return len(owned) > 0 && !slices.Contains(owned, load)
}
