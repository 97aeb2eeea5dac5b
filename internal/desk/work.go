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

// AskedText is [WorkText] for an athlete with some bouts, oldest first: it says how
// much the last was where a usual bout is another amount by more than a quarter, as
// what slowed them then was not this.
func AskedText(m gym.Movement, amount int, bouts []gym.Bout) string {
	text := WorkText(m, amount)
	if amount != 0 || len(bouts) == 0 {
		return text
	}
	last := bouts[len(bouts)-1].Reps
	if last == 0 || 4*last <= 5*m.ReferenceReps && 4*m.ReferenceReps <= 5*last {
		return text
	}
	return text + " (the last was " + WorkText(m, last) + ")"
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
