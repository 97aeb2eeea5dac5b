package clock

import (
	"time"

	"windlass/internal/gym"
)

// None is the index of no rung.
const None = -1

// Moment is what the clock of a climb shows at an instant.
type Moment struct {
	Started  bool
	Running  bool          // goes on: not held and not at the end
	Finished bool          // every rung is over
	Elapsed  time.Duration // from the start, at most the whole climb
	Left     time.Duration // to the end of the climb
	Rung     int           // the present rung; the first before the start, None after the end
	Next     int           // the rung after it, None when there is none
	InRung   time.Duration // since the rung began
	LeftIn   time.Duration // to its end
	Warning  int           // 3, 2, 1 in the last seconds of a rung, else 0
}

// Climb returns what the clock of a climb shows. The plan must pass climb.Check;
// a plan without rungs is over at once.
func Climb(plan gym.ClimbPlan, run gym.Run, now time.Time) Moment {
	total := length(plan)
	m := Moment{Started: run.Started(), Elapsed: min(shown(run, now), total)}
	m.Left = total - m.Elapsed
	m.Rung, m.Next = rungAt(plan, m.Elapsed), None
	if m.Rung == None {
		m.Finished = m.Started
		return m
	}
	rung := plan.Rungs[m.Rung]
	m.Running = run.Running
	m.InRung, m.LeftIn = m.Elapsed-seconds(rung.At), seconds(rung.Until)-m.Elapsed
	m.Warning = warning(m.LeftIn)
	if m.Rung+1 < len(plan.Rungs) {
		m.Next = m.Rung + 1
	}
	return m
}

// rungAt returns the rung that a shown time falls in; its end is the next one's
// beginning.
func rungAt(plan gym.ClimbPlan, shown time.Duration) int {
	for i, r := range plan.Rungs {
		if shown < seconds(r.Until) {
			return i
		}
	}
	return None
}

func length(plan gym.ClimbPlan) time.Duration {
	if n := len(plan.Rungs); n > 0 {
		return seconds(plan.Rungs[n-1].Until)
	}
	return 0
}

func seconds(n int) time.Duration { return time.Duration(n) * time.Second }

// ClimbCues returns what the clock of a climb may let hear after one instant and
// up to another: the start, the last three seconds of every rung, the change to
// the next, the finish. A clock that is held is silent.
func ClimbCues(plan gym.ClimbPlan, run gym.Run, from, to time.Time) []Cue {
	if len(plan.Rungs) == 0 {
		return nil
	}
	ends := make([]time.Duration, len(plan.Rungs))
	for i, r := range plan.Rungs {
		ends[i] = seconds(r.Until)
	}
	return between(marks(ends), run, from, to)
}

// To puts the clock at the beginning of a rung, and at the end of the climb for
// an index behind the last. It goes on or is held as before; a clock that never
// started stays so.
func To(plan gym.ClimbPlan, run gym.Run, rung int, now time.Time) gym.Run {
	if !run.Started() {
		return run
	}
	at := length(plan)
	if rung < len(plan.Rungs) {
		at = seconds(plan.Rungs[max(0, rung)].At)
	}
	return run.Set(at, now)
}

// Skip puts the clock at the beginning of the next rung, and at the end of the
// climb from the last.
func Skip(plan gym.ClimbPlan, run gym.Run, now time.Time) gym.Run {
	m := Climb(plan, run, now)
	if m.Next == None {
		return To(plan, run, len(plan.Rungs), now)
	}
	return To(plan, run, m.Next, now)
}

// Back puts the clock at the beginning of the rung before, and of the last rung
// when the climb is over.
func Back(plan gym.ClimbPlan, run gym.Run, now time.Time) gym.Run {
	m := Climb(plan, run, now)
	if m.Rung == None {
		m.Rung = len(plan.Rungs)
	}
	return To(plan, run, m.Rung-1, now)
}
