package desk

import (
	"fmt"
	"maps"
	"slices"
	"time"

	"windlass/internal/clock"
	"windlass/internal/conditioning"
	"windlass/internal/gym"
)

// course is where a usual athlete of the gym is in a workout by time, moved by what
// the coach saw of the first track that does it. A workout that cannot be worked out
// has no course, and shows no guess.
func (bs *Boards) course(c gym.Class, p gym.Piece) []conditioning.Leg {
	pace := conditioning.DefaultPace()
	if c.Pace > 0 {
		pace.Factor = c.Pace
	}
	w := p.Workout
	if w.Format == gym.AMRAP { // a class may be quicker than is usual
		w.Seconds = min(2*w.Seconds, 2*60*60)
	}
	legs, err := conditioning.Course(w, bs.findMovement, pace)
	if err != nil {
		return nil
	}
	for i := range legs {
		legs[i].Done -= c.Ahead[p.Track]
	}
	return legs
}

func (bs *Boards) findMovement(name string) (gym.Movement, bool) {
	i := slices.IndexFunc(bs.book.Movements, func(m gym.Movement) bool { return string(m.Key) == name })
	if i < 0 {
		return gym.Movement{}, false
	}
	return bs.book.Movements[i], true
}

// Does reports whether a track does the workout.
func (w BoardWorkout) Does(track gym.ID) bool { return slices.Contains(w.ids, track) }

// UsualAt returns the leg of the course in which the class is thought to be, and
// clock.None where nothing is thought.
func (w BoardWorkout) UsualAt(m clock.WorkoutMoment) int { return clock.Position(w.Course, m) }

// UsualText says how far a class is in a workout of which no clock can see where
// anybody is; the first word tells that it is a guess, or rests on what the coach
// saw. It is empty where the clock can tell.
func (w BoardWorkout) UsualText(m clock.WorkoutMoment) string {
	at := w.UsualAt(m)
	if at == clock.None {
		return ""
	}
	text := legText(w.Workout, w.Course[at])
	switch {
	case text == "":
		return ""
	case w.Seen:
		return "about " + text
	}
	return "usual pace: " + text
}

func legText(w gym.Workout, at conditioning.Leg) string {
	switch {
	case w.Format == gym.AMRAP:
		return fmt.Sprintf("round %d", at.Pass+1)
	case w.Format == gym.PlainSets:
		return fmt.Sprintf("set %d of %d", at.Pass+1, w.Rounds)
	case w.Format == gym.Chipper:
		return fmt.Sprintf("%d of %d", at.Item+1, len(w.Items))
	case len(w.Reps) > 0:
		return fmt.Sprintf("the %ds", w.Reps[at.Pass])
	case w.Rounds > 1:
		return fmt.Sprintf("round %d of %d", at.Pass+1, w.Rounds)
	}
	return ""
}

// MoveOn says that most of a track are a round further than was thought, or in a
// chipper a movement, and with back that they are one behind. Tracks that do the
// same go with it. From then on the guess goes on from there at the usual pace.
func (d *Desk) MoveOn(id, track gym.ID, back bool) error {
	return d.tick("move the round", id, func(c *gym.Class) error {
		board := d.Boards().Board(*c)
		i := slices.IndexFunc(board.Workouts, func(w BoardWorkout) bool { return w.Does(track) })
		if i < 0 || len(board.Workouts[i].Course) == 0 {
			return fmt.Errorf("its clock tells the round by itself")
		}
		w := board.Workouts[i]
		m := w.At(c.Workout, d.now())
		if m.Phase != clock.Working {
			return fmt.Errorf("the work has not begun; start the clock first")
		}
		c.Ahead = maps.Clone(c.Ahead)
		if c.Ahead == nil {
			c.Ahead = map[gym.ID]time.Duration{}
		}
		by := w.begins(w.nextRound(m, back)) - m.Elapsed
		for _, one := range w.ids {
			c.Ahead[one] = w.ahead + by
		}
		return nil
	})
}

// nextRound is the first leg of the round after the one that is thought, or of the
// one before; it stays within the course.
func (w BoardWorkout) nextRound(m clock.WorkoutMoment, back bool) int {
	at := w.UsualAt(m)
	if at == clock.None {
		at = len(w.Course)
	}
	size := len(w.Workout.Items)
	if w.Workout.Format == gym.Chipper {
		size = 1
	}
	round := at/size + 1
	if back {
		round = at/size - 1
	}
	return max(0, min(round*size, (len(w.Course)-1)/size*size))
}

// begins is when a leg of the course is thought to begin, on the workout's clock.
func (w BoardWorkout) begins(leg int) time.Duration {
	if leg == 0 {
		return -w.ahead
	}
	return w.Course[leg-1].Done
}
