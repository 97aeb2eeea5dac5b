package desk

import (
	"fmt"

	"windlass/internal/gym"
)

// whose labels a step about one athlete, so that undo can say whom it takes back:
// "call climb for Ada Lund".
func (d *Desk) whose(what string, athlete gym.ID) string {
	a, ok := d.Athlete(athlete)
	if !ok {
		return what + " somebody"
	}
	return what + " " + a.Name
}

// whoseMany is [Desk.whose] for several athletes, who are counted.
func (d *Desk) whoseMany(what string, athletes []gym.ID) string {
	if len(athletes) == 1 {
		return d.whose(what, athletes[0])
	}
	return what + " " + count(len(athletes), "athlete")
}

// repMaxText names a rep max as a coach does: "Back squat 3RM".
func (d *Desk) repMaxText(lift gym.LiftKey, reps int) string {
	return fmt.Sprintf("%s %dRM", d.liftName(lift), reps)
}
