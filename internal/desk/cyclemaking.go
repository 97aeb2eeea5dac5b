package desk

import (
	"fmt"

	"windlass/internal/cycle"
	"windlass/internal/gym"
)

// MakeCycle makes a cycle and keeps it. The spec's ID is given here.
func (d *Desk) MakeCycle(s cycle.Spec) (gym.Cycle, error) {
	s.ID = d.NewID()
	c, err := cycle.Make(s, &d.book)
	if err != nil {
		return gym.Cycle{}, err
	}
	return c, d.do(fmt.Sprintf("make the cycle %q", c.Name), gym.PutCycle{Cycle: c})
}
