package desk

import (
	"fmt"
	"slices"

	"windlass/internal/climb"
	"windlass/internal/gym"
)

// Path returns a lifter's way through the class's climb under the calls so far.
func (d *Desk) Path(c gym.Class, l gym.Lifter) (climb.Path, error) {
	rig, err := d.rig(l)
	if err != nil {
		return climb.Path{}, err
	}
	return climb.Build(c.Climb, l, rig)
}

// Call notes what a lifter decides: after the rung that the clock is at, or the
// one before it while that call is still open. Any word of package climb counts:
// climb means fair where the rep max is being found.
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
		rung, _, ok := owes(path, d.presentRung(*c))
		if !ok {
			return fmt.Errorf("nothing is to be called at this window")
		}
		if _, err := climb.ParseCalls(string(kind)); err != nil {
			return err
		}
		l.Calls = append(slices.Clone(l.Calls), gym.Call{Rung: rung, Kind: kind})
		return nil
	})
}
