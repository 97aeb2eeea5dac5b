package clock

import (
	"time"

	"windlass/internal/gym"
)

// Tolerance is how far the two clocks of a machine may part before it counts as
// a jump: more than their grain, less than a coach would see.
const Tolerance = 100 * time.Millisecond

// Instant is one look at the two clocks of a machine.
type Instant struct {
	Wall   time.Time     // the date and hour: people and networks set it
	Steady time.Duration // since some fixed moment: nobody sets it
}

// Correction says how the system clock jumped and what became of a class's clock.
type Correction struct {
	Jump time.Duration // positive when the system clock was set forward; 0 when it was not
	Run  gym.Run       // shows the right time again
	Done bool          // Run is not the one handed in, and has to be written down
}

// Corrected compares two looks at the clocks of a machine. A class's clock is
// anchored to the wall clock, so that it survives the program; when the wall
// clock jumps, the anchor has to jump with it. Keep was until a jump is
// reported, so that a clock that is bent little by little is found out too; then
// go on from is.
//
// Where the steady clock stands still while the machine sleeps, a jump forward
// may be sleep, in which the class went on: unless throughSleep says that the
// steady clock counts sleep, a jump forward is reported and the wall clock
// believed.
func Corrected(run gym.Run, was, is Instant, throughSleep bool) Correction {
	jump := is.Wall.Round(0).Sub(was.Wall.Round(0)) - (is.Steady - was.Steady)
	if jump.Abs() < Tolerance {
		return Correction{Run: run}
	}
	c := Correction{Jump: jump, Run: run}
	if run.Running && (jump < 0 || throughSleep) {
		c.Run.Anchor, c.Done = run.Anchor.Round(0).Add(jump), true
	}
	return c
}
