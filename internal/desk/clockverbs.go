package desk

import (
	"fmt"

	"windlass/internal/clock"
	"windlass/internal/gym"
)

// NextRung puts the climb's clock at the beginning of the next rung.
func (d *Desk) NextRung(id gym.ID) error {
	return d.tick("go to the next rung", id, func(c *gym.Class) error {
		if !c.Clock.Started() {
			return fmt.Errorf("the clock has not started; start it first")
		}
		c.Clock = clock.Skip(c.Climb, c.Clock, d.now())
		return nil
	})
}

// RungBefore puts the climb's clock at the beginning of the rung before.
func (d *Desk) RungBefore(id gym.ID) error {
	return d.tick("go back a rung", id, func(c *gym.Class) error {
		if !c.Clock.Started() {
			return fmt.Errorf("the clock has not started; start it first")
		}
		c.Clock = clock.Back(c.Climb, c.Clock, d.now())
		return nil
	})
}
