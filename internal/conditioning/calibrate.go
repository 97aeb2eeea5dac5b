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
// deserve. Where the cap came first, the reps that were done by then tell the time,
// if all of the workout is counted in reps: leaving those scores out would leave
// the slowest out. Scores that tell no time (EMOM, sets) are left out. The error
// names the first score that does not fit its workout.
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
	case l.Score.Kind == ByTime && l.Workout.Cap > 0 && inReps(l.Workout, find):
		return counted(p, l, l.Score.Reps, l.Workout.Cap, find)
	case l.Score.Kind == ByRounds && l.Score.Rounds <= mostAmount:
		reps := l.Score.Reps
		for _, item := range l.Workout.Items {
			reps += l.Score.Rounds * item.Amount
		}
		return counted(p, l, reps, l.Workout.Seconds, find)
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

// counted compares the seconds in which so many reps were done with those that the
// pace would have them take.
func counted(p Pace, l Logged, reps, seconds int, find Find) (float64, bool, error) {
	plan, err := planOf(l.Workout, find)
	if err != nil || reps == 0 {
		return 0, false, err
	}
	t, rest := tempo{pace: p, own: 1}, 0.0
	for i := 0; reps > 0; i++ {
		if i == len(plan.steps) && l.Workout.Format != gym.AMRAP {
			return 0, false, nil // more than there is to do
		}
		s := plan.steps[i%len(plan.steps)]
		if s.reps > reps { // the last of them
			s.fresh *= float64(reps) / float64(s.reps)
			s.rest = 0
		}
		t.do(s, i > 0)
		rest += s.rest
		reps -= s.reps
	}
	worked := t.seconds - rest
	return (float64(seconds) - rest) / worked, worked > 0 && float64(seconds) > rest, nil
}

// inReps reports whether every movement is counted in reps, so that the reps at a
// cap say how far somebody came.
func inReps(w gym.Workout, find Find) bool {
	for _, item := range w.Items {
		if find == nil {
			return false
		}
		if m, ok := find(string(item.Movement)); !ok || m.Measure != gym.ByReps {
			return false
		}
	}
	return true
}

func square(x float64) float64 { return x * x }
