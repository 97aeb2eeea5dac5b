package conditioning

import (
	"fmt"
	"math"

	"windlass/internal/gym"
)

// Pace says how fast a gym works. The zero Pace is not usable; see [DefaultPace].
type Pace struct {
	Factor     float64 // on every time, 1 as the catalogue has it
	Spread     float64 // standard deviation of the log of an athlete's own factor
	Fatigue    float64 // how much slower reps get in the end, 0.5 for half as slow again
	Fade       float64 // minutes of work after which about two thirds of that are reached
	ChangeOver float64 // seconds from one movement to the next
	Scores     int     // that the factor was learnt from
}

// DefaultPace is that of a gym whose scores have taught nothing yet. The spread is
// the relative standard deviation of a measured mixed workout, 12 ± 3 minutes
// (Smith, Bellissimo and Amorim 2025, Front Physiol 15:1511961); fatigue and
// change-over are common practice, no source, and put that workout in its range.
func DefaultPace() Pace {
	return Pace{Factor: 1, Spread: 0.25, Fatigue: 0.8, Fade: 4, ChangeOver: 4}
}

// Estimated is what one athlete makes of a workout.
type Estimated struct {
	Seconds int     // from the start to the end
	Rounds  float64 // of an AMRAP
	Reps    int     // of everything counted, in an AMRAP; else as prescribed
	Capped  bool    // the cap comes first
}

// Duration is an estimate for a fast, a usual and a slow athlete: one standard
// deviation either side of the middle.
type Duration struct{ Fast, Usual, Slow Estimated }

// Minutes writes the estimate for a table: "9 to 15 min".
func (d Duration) Minutes() string {
	lo, hi := minutes(d.Fast.Seconds), minutes(d.Slow.Seconds)
	if lo == hi {
		return fmt.Sprintf("%d min", lo)
	}
	return fmt.Sprintf("%d to %d min", lo, hi)
}

func minutes(seconds int) int { return int(math.Round(float64(seconds) / 60)) }

// Estimate tells how long a workout takes, and how much of an AMRAP is done. The
// error wraps what [Check] says, or [ErrMovement].
func Estimate(w gym.Workout, find Find, p Pace) (Duration, error) {
	if err := Check(w, find); err != nil {
		return Duration{}, err
	}
	if w.Empty() {
		return Duration{}, nil
	}
	plan, err := planOf(w, find)
	if err != nil {
		return Duration{}, err
	}
	return Duration{
		plan.at(p, math.Exp(-p.Spread)), plan.at(p, 1), plan.at(p, math.Exp(p.Spread)),
	}, nil
}

// step is one movement of one pass, with the seconds that it takes when fresh.
type step struct {
	fresh float64
	reps  int
	tires bool // counted in reps: a distance is paced from the start
	rest  float64
}

// plan is a workout as a row of steps.
type plan struct {
	w     gym.Workout
	steps []step
}

func planOf(w gym.Workout, find Find) (plan, error) {
	p := plan{w: w}
	for pass := range max(1, Passes(w)) {
		for _, item := range w.Items {
			s, err := stepOf(w, pass, item, find)
			if err != nil {
				return p, err
			}
			p.steps = append(p.steps, s)
		}
		p.steps[len(p.steps)-1].rest = float64(w.Rest)
	}
	p.steps[len(p.steps)-1].rest = 0
	return p, nil
}

func stepOf(w gym.Workout, pass int, item gym.Item, find Find) (step, error) {
	if item.Movement == "" {
		return step{}, nil
	}
	if find == nil {
		return step{}, fmt.Errorf("estimate duration: %w: there is no catalogue to look %q up in", ErrMovement, item.Movement)
	}
	m, _ := find(string(item.Movement)) // Check has found it before
	n := AmountIn(w, pass, item)
	return step{fresh: float64(n) * m.Seconds, reps: n, tires: m.Measure == gym.ByReps && m.Pattern != gym.Engine}, nil
}

// at goes through the plan with an athlete's own factor.
func (p plan) at(pace Pace, own float64) Estimated {
	switch p.w.Format {
	case gym.EMOM:
		return Estimated{Seconds: p.w.Seconds, Reps: p.inTurn(p.w.Seconds / 60)}
	case gym.Intervals:
		return Estimated{Seconds: p.w.Rounds*(p.w.Work+p.w.Rest) - p.w.Rest, Reps: p.inTurn(p.w.Rounds)}
	case gym.AMRAP:
		return p.amrap(pace, own)
	}
	t := tempo{pace: pace, own: own}
	reps := 0
	for i, s := range p.steps {
		t.do(s, i > 0)
		reps += s.reps
	}
	e := Estimated{Seconds: int(math.Round(t.seconds)), Reps: reps}
	if c := p.w.Cap; c > 0 && e.Seconds > c {
		e.Seconds, e.Capped = c, true
	}
	return e
}

// inTurn counts the reps of so many slots that the items take in turn.
func (p plan) inTurn(slots int) int {
	reps := 0
	for i := range slots {
		reps += p.w.Items[i%len(p.w.Items)].Amount
	}
	return reps
}

func (p plan) amrap(pace Pace, own float64) Estimated {
	t, e := tempo{pace: pace, own: own}, Estimated{Seconds: p.w.Seconds}
	for i := 0; ; i++ {
		s := p.steps[i%len(p.steps)]
		before := t.seconds
		t.do(s, i > 0)
		if t.seconds >= float64(p.w.Seconds) || t.seconds-before < 1e-6 {
			share := 0.0
			if t.seconds > before {
				share = min(1, (float64(p.w.Seconds)-before)/(t.seconds-before))
			}
			e.Reps += int(share * float64(s.reps))
			e.Rounds = (float64(i) + share) / float64(len(p.steps))
			return e
		}
		e.Reps += s.reps
	}
}

// tempo is an athlete under way.
type tempo struct {
	pace    Pace
	own     float64
	seconds float64
	worked  float64 // fresh seconds of the work that tires
}

func (t *tempo) do(s step, changed bool) {
	k := t.pace.Factor * t.own
	if changed && s.fresh > 0 {
		t.seconds += k * t.pace.ChangeOver
	}
	work := s.fresh
	if s.tires {
		work = t.tired(t.worked+s.fresh) - t.tired(t.worked)
		t.worked += s.fresh
	}
	t.seconds += k*work + s.rest
}

// tired returns the seconds that so many fresh ones take: the pace falls off from
// 1 towards 1 + Fatigue, and this is its integral.
func (t *tempo) tired(fresh float64) float64 {
	tau := t.pace.Fade * 60
	if tau <= 0 {
		return fresh
	}
	return fresh + t.pace.Fatigue*(fresh-tau*(1-math.Exp(-fresh/tau)))
}
