package conditioning

import (
	"fmt"
	"math"

	"windlass/internal/gym"
)

// Logged is one athlete's score at a workout.
type Logged struct {
	Workout gym.Workout
	Score   Score
}

const (
	// factorDoubt is how far, in log time, a gym's factor may lie from the
	// catalogue's before its scores are seen (common practice, no source).
	factorDoubt = 0.25
	// spreadWeight is how many scores the default spread counts for.
	spreadWeight = 10
)

// Calibrate sets a pace by a gym's own scores. The factor of a score is what it
// took over what the pace would have it take; its log is normal, so a gym's factor
// is the mean of the logs, drawn towards the pace's own by as much as few scores
// deserve. Scores that tell no time (EMOM, sets, a cap that came first) are left
// out. The error names the first score that does not fit its workout.
func Calibrate(p Pace, scores []Logged, find Find) (Pace, error) {
	var logs []float64
	for i, l := range scores {
		r, told, err := ratio(p, l, find)
		if err != nil {
			return p, fmt.Errorf("calibrate pace: score %d: %w", i+1, err)
		}
		if told {
			logs = append(logs, math.Log(r))
		}
	}
	n := float64(len(logs))
	if n == 0 {
		return p, nil
	}
	sum, squares := 0.0, 0.0
	for _, x := range logs {
		sum += x
	}
	mean := sum / (n + square(p.Spread/factorDoubt))
	for _, x := range logs {
		squares += square(x - mean)
	}
	p.Spread = math.Sqrt((spreadWeight*square(p.Spread) + squares) / (spreadWeight + n))
	p.Factor *= math.Exp(mean)
	p.Scores += len(logs)
	return p, nil
}

// ratio returns how much longer a score took than estimated.
func ratio(p Pace, l Logged, find Find) (r float64, told bool, err error) {
	if want := KindOf(l.Workout.Format); l.Score.Kind != want {
		return 0, false, fmt.Errorf("%w: it counts %s and the workout %s", ErrKind, l.Score.Kind, want)
	}
	if err := Check(l.Workout, find); err != nil {
		return 0, false, err
	}
	switch {
	case l.Score.Kind == ByTime && !l.Score.Capped:
		return timed(p, l, find)
	case l.Score.Kind == ByRounds:
		return rounds(p, l, find)
	}
	return 0, false, nil
}

func timed(p Pace, l Logged, find Find) (float64, bool, error) {
	w := l.Workout
	w.Cap = 0
	d, err := Estimate(w, find, p)
	rest := w.Rest * (Passes(w) - 1) // rests take what they take
	told := l.Score.Seconds > rest && d.Usual.Seconds > rest
	return float64(l.Score.Seconds-rest) / float64(d.Usual.Seconds-rest), told, err
}

// rounds turns an AMRAP into the work for time that was done in it.
func rounds(p Pace, l Logged, find Find) (float64, bool, error) {
	plan, err := planOf(l.Workout, find)
	if err != nil || l.Score.Rounds+l.Score.Reps == 0 || l.Score.Rounds > mostAmount {
		return 0, false, err
	}
	t, left := tempo{pace: p, own: 1}, l.Score.Reps
	for i := range l.Score.Rounds * len(plan.steps) {
		t.do(plan.steps[i%len(plan.steps)], i > 0)
	}
	for _, s := range plan.steps {
		if left <= 0 || s.reps == 0 {
			break
		}
		done := min(left, s.reps)
		s.fresh *= float64(done) / float64(s.reps)
		t.do(s, l.Score.Rounds > 0 || left < l.Score.Reps)
		left -= done
	}
	return float64(l.Workout.Seconds) / t.seconds, t.seconds > 0, nil
}

func square(x float64) float64 { return x * x }
