package conditioning

import (
	"errors"
	"fmt"

	"windlass/internal/gym"
)

// ErrFit marks a score that its workout cannot have.
var ErrFit = errors.New("the score does not fit the workout")

// CheckScore says what keeps a score from being one of a workout, and what to write
// instead; the error wraps [ErrKind] or [ErrFit]. Of a workout without items, as a
// log names it, it checks what is said: the kind and the cap.
func CheckScore(w gym.Workout, s Score) error {
	if want := KindOf(w.Format); s.Kind != want {
		return fmt.Errorf("check score: %w: it counts %s and the workout counts %s, as in %s", ErrKind, s.Kind, want, examples[want])
	}
	switch {
	case s.Kind == ByTime && s.Capped:
		return checkCapped(w, s)
	case s.Kind == ByTime && w.Cap > 0 && s.Seconds > w.Cap:
		return misfit("%s is past the cap of %s; write the reps done by then, as in cap 85", clock(s.Seconds), clock(w.Cap))
	case s.Kind == ByTime && s.Seconds > longest:
		return misfit("%s is over %s; check the minutes", clock(s.Seconds), clock(longest))
	case s.Kind == ByRounds && !w.Empty() && Pass(w, 0) > 0 && s.Reps >= Pass(w, 0):
		round := Pass(w, 0)
		return misfit("a round has %d, so %d past the last are a round more; write %d+%d", round, s.Reps, s.Rounds+s.Reps/round, s.Reps%round)
	case s.Rounds > mostAmount || s.Reps > mostAmount:
		return misfit("more than %d is not believable; check the number", mostAmount)
	}
	return nil
}

func checkCapped(w gym.Workout, s Score) error {
	if w.Empty() {
		return nil
	}
	switch all := prescribed(w); {
	case w.Cap == 0:
		return misfit("the workout has no cap; write the time, as in 12:34")
	case s.Reps >= all:
		return misfit("all of it is %d, so %d by the cap is the whole workout; write the time, as in 12:34", all, s.Reps)
	}
	return nil
}

func misfit(format string, a ...any) error {
	return fmt.Errorf("check score: %w: %s", ErrFit, fmt.Sprintf(format, a...))
}

// unlikely is how many times better than a fast athlete's estimate a score must be
// to be asked about (common practice, no source: estimates are not that far off, and
// a digit that is missing is).
const unlikely = 3

// DoubtScore returns what makes a score worth a second look, and "" for nothing. A
// workout that cannot be estimated raises no doubt.
func DoubtScore(w gym.Workout, s Score, find Find, p Pace) string {
	d, err := Estimate(w, find, p)
	if err != nil || w.Empty() {
		return ""
	}
	switch fast := d.Fast; {
	case s.Kind == ByTime && !s.Capped && unlikely*s.Seconds < fast.Seconds:
		return fmt.Sprintf("A fast athlete takes about %s for it.", clock(fast.Seconds))
	case s.Kind == ByRounds && float64(s.Rounds) > unlikely*(fast.Rounds+1):
		return fmt.Sprintf("A fast athlete does about %.0f rounds.", fast.Rounds)
	case s.Kind == ByReps && fast.Reps > 0 && allCounted(w) && s.Reps > unlikely*fast.Reps:
		return fmt.Sprintf("It asks for %d in all.", fast.Reps)
	}
	return ""
}

// allCounted reports whether every movement has an amount.
func allCounted(w gym.Workout) bool {
	for _, item := range w.Items {
		if item.Movement != "" && item.Amount == 0 {
			return false
		}
	}
	return true
}
