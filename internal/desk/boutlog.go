package desk

import (
	"fmt"
	"slices"

	"windlass/internal/gym"
)

// LoggedBout is a bout as the log of a movement tells it.
type LoggedBout struct {
	gym.Bout
	Work  string // "80 reps"
	Where string // where it was logged: "class at 06:00", "outside a class"
}

// BoutLog returns every bout of an athlete at a movement, the latest first, those
// that are void too. The file does not say who typed a bout, only in which class.
func (d *Desk) BoutLog(athlete gym.ID, movement gym.MovementKey) []LoggedBout {
	m, _ := d.Movement(movement)
	var rows []LoggedBout
	for _, b := range slices.Backward(latestBouts(d.Bouts(athlete))) {
		if b.Movement == movement {
			rows = append(rows, d.loggedBout(b, m))
		}
	}
	return rows
}

// loggedBout tells of a bout without the name of its workout what its class did.
func (d *Desk) loggedBout(b gym.Bout, m gym.Movement) LoggedBout {
	row := LoggedBout{Bout: b, Work: WorkText(m, b.Reps), Where: "outside a class"}
	c, ok := d.Class(b.Class)
	if !ok {
		return row
	}
	row.Where = "class at " + c.At.String()
	if l, err := lifter(&c, b.Athlete); err == nil && row.Workout == "" {
		piece, _ := c.Piece(l.Track)
		row.Workout = WorkoutTitle(piece.Workout)
	}
	return row
}

// String tells all of a bout in a sentence or two.
func (b LoggedBout) String() string {
	text := fmt.Sprintf("%s %s for %s on %s", b.Load.In(b.Unit), b.Outcome, b.Work, b.On.Long())
	if b.Workout != "" {
		text += ", in " + b.Workout
	}
	if b.Score != "" {
		text += ", score " + b.Score
	}
	text += "; logged " + b.Where + " on " + b.Made.Format("2 January 2006") + "."
	if b.Void != nil {
		text += fmt.Sprintf(" Void since %s: %s. It counts for nothing.", b.Void.At.Format("2 January 2006"), b.Void.Reason)
	}
	return text
}
