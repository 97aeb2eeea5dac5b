package desk

import (
	"context"
	"fmt"
	"time"

	"windlass/internal/clock"
	"windlass/internal/gym"
)

// Resumed says that a class went on while no desk was open, at the true time;
// nothing for a class whose clocks stand.
func (d *Desk) Resumed(c gym.Class) string {
	switch m := clock.Climb(c.Climb, c.Clock, d.now()); {
	case c.Stage == gym.Conditioning && c.Workout.Running:
		return fmt.Sprintf("%s went on while this window was closed: its clock is at %s.", c.Name, clock.Up(c.Workout.Elapsed(d.now())))
	case c.Stage != gym.Climbing || !c.Clock.Started():
		return ""
	case m.Finished:
		return fmt.Sprintf("The climb of %s ended while this window was closed: enter the results, or finish the class.", c.Name)
	case m.Running:
		return fmt.Sprintf("%s went on while this window was closed: rung %d runs, the clock is at %s.", c.Name, m.Rung+1, clock.Up(m.Elapsed))
	default:
		return fmt.Sprintf("%s is held at %s.", c.Name, clock.Up(m.Elapsed))
	}
}

// watch is the desk's last look at the two clocks of the machine.
type watch struct {
	opened time.Time // with the steady reading of the process
	last   clock.Instant
}

// MindClock compares the wall clock with the machine's steady clock and puts the
// running class right when somebody has set the wall clock. It returns a sentence
// for the coach when it had to; call it at every tick. A time without a steady
// reading, as in a replay, is believed.
func (d *Desk) MindClock(now time.Time) (string, error) {
	if d.watch.opened.IsZero() {
		d.watch = watch{opened: now, last: clock.Instant{Wall: now.Round(0)}}
		return "", nil
	}
	is := clock.Instant{Wall: now.Round(0), Steady: now.Sub(d.watch.opened)}
	return d.mind(is)
}

func (d *Desk) mind(is clock.Instant) (string, error) {
	was := d.watch.last
	c, live := d.LiveClass()
	run := *stageClock(&c)
	// Whether the steady clock counts sleep differs between systems, so a jump
	// forward is taken for sleep, through which the class went on.
	fixed := clock.Corrected(run, was, is, false)
	if fixed.Jump == 0 {
		return "", nil
	}
	d.watch.last = is
	if !live || !run.Running {
		return "", nil
	}
	if !fixed.Done && fixed.Jump < time.Second {
		return "", nil
	}
	if !fixed.Done {
		return fmt.Sprintf("The computer slept, or its clock was set forward, by %s: the class's clock went on. Put it right with the rung keys if it is wrong.",
			fixed.Jump.Round(time.Second)), nil
	}
	*stageClock(&c) = fixed.Run
	if _, err := d.make(context.Background(), []gym.Change{gym.PutClass{Class: c}}); err != nil {
		return "", fmt.Errorf("put the class's clock right: %w", err)
	}
	if fixed.Jump.Abs() < time.Second {
		return "", nil // bent by the network's time; nobody needs to hear of it
	}
	return fmt.Sprintf("The system clock went back by %s; the class's clock was put right.", fixed.Jump.Abs().Round(time.Second)), nil
}
