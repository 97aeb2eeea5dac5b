package desk

import (
	"strconv"

	"windlass/internal/gym"
)

// WorkText writes the bout that a load is for: "80 reps", "140 m", or for 0 "a
// usual bout of 40 reps".
func WorkText(m gym.Movement, amount int) string {
	usual := ""
	if amount == 0 {
		usual, amount = "a usual bout of ", m.ReferenceReps
	}
	if amount == 0 {
		return ""
	}
	unit, ok := amountUnits[m.Measure]
	switch {
	case !ok && amount == 1:
		unit = " rep"
	case !ok:
		unit = " reps"
	}
	return usual + strconv.Itoa(amount) + unit
}

// WorkToday returns how much of a movement today's conditioning asks of an
// athlete; false when it does not have the movement.
func (d *Desk) WorkToday(athlete gym.ID, movement gym.MovementKey) (amount int, ok bool) {
	w := d.workoutToday(athlete)
	for _, item := range w.Items {
		if item.Movement == movement {
			return d.repsIn(w, movement), true
		}
	}
	return 0, false
}

// workoutToday is the conditioning of the class that an athlete is in today, or
// failing that of the track's plan.
func (d *Desk) workoutToday(athlete gym.ID) gym.Workout {
	for _, c := range d.book.Classes {
		if c.On != d.Today() {
			continue
		}
		if l, err := lifter(&c, athlete); err == nil {
			piece, _ := c.Piece(l.Track)
			return piece.Workout
		}
	}
	return d.PlanOn(d.TrackOn(athlete, d.Today()).ID, d.Today()).Workout
}
