package desk

import (
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"

	"windlass/internal/conditioning"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// LogBout keeps how a load went for an athlete of a class. What was logged of the
// same movement in this class before is voided.
func (d *Desk) LogBout(class, athlete gym.ID, movement gym.MovementKey, load mass.Mass, outcome gym.Outcome) error {
	c, ok := d.Class(class)
	if !ok {
		return fmt.Errorf("log bout: there is no such class")
	}
	l, err := lifter(&c, athlete)
	if err != nil {
		return fmt.Errorf("log bout: %w", err)
	}
	piece, _ := c.Piece(l.Track)
	m, _ := d.Movement(movement)
	owned := d.book.Equipment.Implement(m.Implement)
	a, _ := d.Athlete(athlete)
	b := gym.Bout{
		ID: d.NewID(), Athlete: athlete, Movement: movement, Load: load, Unit: markedIn(owned, a.Unit),
		Reps:    doneBy(piece.Workout, l.Score).or(d.asked(piece.Workout), movement),
		Outcome: outcome, On: c.On, Workout: WorkoutTitle(piece.Workout), Score: l.Score, Class: class, Made: d.now(),
	}
	if err := b.Valid(); err != nil {
		return err
	}
	if err := d.CheckBoutLoad(movement, load); err != nil {
		return err
	}
	var changes []gym.Change
	if before, ok := d.boutsOf(class)[pair{athlete, movement}]; ok {
		changes = d.voidBout(before, "entered again in class")
	}
	return d.do(fmt.Sprintf("log %s %s for %s", load.In(b.Unit), outcome, a.Name), append(changes, gym.AddBout{Bout: b})...)
}

// CheckBoutLoad says why a load of a movement cannot have been, and nothing for one
// that can.
func (d *Desk) CheckBoutLoad(movement gym.MovementKey, load mass.Mass) error {
	m, _ := d.Movement(movement)
	return conditioning.CheckLoad(m, d.book.Equipment.Implement(m.Implement), load)
}

func (d *Desk) voidBout(b gym.Bout, reason string) []gym.Change {
	return []gym.Change{gym.VoidBout{ID: b.ID, Void: gym.Void{At: d.now(), Reason: reason}}}
}

// SetScore keeps an athlete's score of the conditioning; an empty text takes it
// back. What was logged of the athlete in this class is entered again where the
// score tells how much was done. The error says which kind of score the format has,
// or what does not fit.
func (d *Desk) SetScore(class, athlete gym.ID, text string) error {
	var own gym.Lifter
	c, err := d.edited("keep a score", class, func(c *gym.Class) error {
		l, err := lifter(c, athlete)
		if err != nil {
			return err
		}
		piece, _ := c.Piece(l.Track)
		l.Score, err = d.readScore(piece.Workout, text)
		own = *l
		return err
	})
	if err != nil {
		return err
	}
	a, _ := d.Athlete(athlete)
	return d.do(strings.TrimSpace("keep the score "+own.Score)+" of "+a.Name, append([]gym.Change{gym.PutClass{Class: c}}, d.scored(c, own)...)...)
}

// readScore writes a score as it is kept.
func (d *Desk) readScore(w gym.Workout, text string) (string, error) {
	if strings.TrimSpace(text) == "" {
		return "", nil
	}
	kind := conditioning.KindOf(w.Format)
	score, err := conditioning.ParseScore(text, kind)
	switch {
	case errors.Is(err, conditioning.ErrKind):
		return "", fmt.Errorf("%q is %w; write it %s", text, conditioning.ErrKind, scoreHint(kind))
	case err != nil:
		return "", fmt.Errorf("%q is %w; write it %s", text, conditioning.ErrScore, scoreHint(kind))
	}
	if err := conditioning.CheckScore(w, score); err != nil {
		return "", err
	}
	return score.Text(d.book.Settings.Unit), nil
}

// scored enters the bouts of an athlete again whose score or reps are others by the
// score that the class has now.
func (d *Desk) scored(c gym.Class, l gym.Lifter) []gym.Change {
	piece, _ := c.Piece(l.Track)
	done, asked, logged := doneBy(piece.Workout, l.Score), d.asked(piece.Workout), d.boutsOf(c.ID)
	var changes []gym.Change
	for _, movement := range slices.Sorted(maps.Keys(asked)) {
		b, ok := logged[pair{l.Athlete, movement}]
		reps := done.or(asked, movement)
		if !ok || b.Reps == reps && b.Score == l.Score {
			continue
		}
		changes = append(changes, d.voidBout(b, "entered again with the score")...)
		b.ID, b.Reps, b.Score, b.Made = d.NewID(), reps, l.Score, d.now()
		changes = append(changes, gym.AddBout{Bout: b})
	}
	return changes
}

// DoubtScore returns what makes an athlete's score worth a second look before it is
// kept, in a sentence, and nothing for one that is likely or cannot be kept.
func (d *Desk) DoubtScore(class, athlete gym.ID, text string) string {
	c, _ := d.Class(class)
	l, err := lifter(&c, athlete)
	if err != nil {
		return ""
	}
	piece, _ := c.Piece(l.Track)
	score, err := conditioning.ParseScore(text, conditioning.KindOf(piece.Workout.Format))
	if err != nil {
		return ""
	}
	return conditioning.DoubtScore(piece.Workout, score, d.findMovement, d.Pace())
}

// scoreHint says how a kind of score is written.
func scoreHint(k conditioning.Kind) string {
	return map[conditioning.Kind]string{
		conditioning.ByTime: "as minutes and seconds, 8:45", conditioning.ByRounds: "as rounds and reps, 5+12",
		conditioning.ByReps: "as a number of reps", conditioning.ByLoad: "as a load, 60 kg",
	}[k]
}

// ScoreHint says how the score of a workout is written.
func ScoreHint(w gym.Workout) string { return scoreHint(conditioning.KindOf(w.Format)) }
