package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/climb"
	"windlass/internal/gym"
)

// Path returns a lifter's way through the class's climb under the calls so far.
func (d *Desk) Path(c gym.Class, l gym.Lifter) (climb.Path, error) {
	return d.Boards().path(c.Climb, l)
}

// Call notes what a lifter decides: after the rung that the clock is at, or the
// one before it while that call is still open. Only what is asked for counts:
// climb, settle or missed, and where the rep max is being found easy, fair, hard or
// missed.
func (d *Desk) Call(class, athlete gym.ID, kind gym.CallKind) error {
	return d.change(d.whose("call "+string(kind)+" for", athlete), class, func(c *gym.Class) error {
		l, err := lifter(c, athlete)
		if err != nil {
			return err
		}
		path, err := d.Path(*c, *l)
		if err != nil {
			return err
		}
		rung, kinds, ok := path.Owes(d.presentRung(*c))
		if !ok {
			return fmt.Errorf("nothing is to be called at this window")
		}
		if !slices.Contains(kinds, kind) {
			return fmt.Errorf("that is not asked here; choose %s", either(kinds))
		}
		l.Calls = append(slices.Clone(l.Calls), gym.Call{Rung: rung, Kind: kind})
		return nil
	})
}

// either lists calls to choose from: "climb, settle or missed".
func either(kinds []gym.CallKind) string {
	words := make([]string, len(kinds))
	for i, k := range kinds {
		words[i] = string(k)
	}
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " or " + words[last]
}
