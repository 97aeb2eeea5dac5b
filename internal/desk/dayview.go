package desk

import (
	"fmt"

	"windlass/internal/conditioning"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// SecondLoadsOn returns what everybody of a track would do as a second lift on a
// day, from the records as they stand now.
func (d *Desk) SecondLoadsOn(track gym.ID, on day.Date, s gym.SecondLift) []SecondLoad {
	var rows []SecondLoad
	for _, a := range d.book.Athletes {
		if a.Status == gym.Active && d.TrackOn(a.ID, on).ID == track {
			rows = append(rows, d.secondLoad(gym.Lifter{Athlete: a.ID, Track: track}, s))
		}
	}
	return rows
}

// SecondSummary says how many of a track's athletes a second lift has loads for.
func SecondSummary(rows []SecondLoad) string {
	known := 0
	for _, r := range rows {
		if r.Load != "" {
			known++
		}
	}
	switch {
	case len(rows) == 0:
		return "Nobody is on this track then."
	case known == len(rows):
		return fmt.Sprintf("Loads known for all %d athletes.", known)
	}
	return fmt.Sprintf("Loads known for %d of %d athletes.", known, len(rows))
}

// Lengths is how long a workout takes a fast, a usual and a slow athlete.
type Lengths struct {
	Fast, Usual, Slow string // "9:30", with what is done of an AMRAP
	Turns             string // that movements take turns, if they do
	Note              string // advice about a slot or the rest, or where the estimate comes from
	Long              bool   // the note says that a slot is too short
	Fault             error  // what keeps it from being told
}

// WorkoutLengths estimates a workout, at the pace of the gym's own scores.
func (d *Desk) WorkoutLengths(w gym.Workout) Lengths {
	if w.Empty() {
		return Lengths{}
	}
	p := d.Pace()
	e, err := conditioning.Estimate(w, d.findMovement, p)
	if err != nil {
		return Lengths{Fault: err}
	}
	l := Lengths{Fast: lengthText(w, e.Fast), Usual: lengthText(w, e.Usual), Slow: lengthText(w, e.Slow)}
	l.Turns = conditioning.TurnsNote(w)
	l.Note = conditioning.SlotAdvice(w, d.findMovement, p)
	l.Long = l.Note != ""
	if l.Note == "" {
		l.Note = conditioning.RestAdvice(w)
	}
	if l.Note == "" && p.Scores > 0 {
		l.Note = fmt.Sprintf("At the pace of your gym's last %d scores.", p.Scores)
	}
	if l.Note == "" {
		l.Note = "At the catalogue's pace, until your gym has scores."
	}
	return l
}

func lengthText(w gym.Workout, e conditioning.Estimated) string {
	switch {
	case w.Format == gym.AMRAP:
		return fmt.Sprintf("%.1f rounds", e.Rounds)
	case e.Capped:
		return clockText(e.Seconds) + ", capped"
	}
	return clockText(e.Seconds)
}

// paceScores is how many of the latest scores teach the pace.
const paceScores = 200

// Pace returns how fast the gym works: the catalogue's pace, set by its latest
// scores. A score that does not fit its workout teaches nothing.
func (d *Desk) Pace() conditioning.Pace {
	pace := conditioning.DefaultPace()
	var logged []conditioning.Logged
	for i := len(d.book.Classes) - 1; i >= 0 && len(logged) < paceScores; i-- {
		logged = append(logged, d.scoresOf(d.book.Classes[i])...)
	}
	if learnt, err := conditioning.Calibrate(pace, logged, d.findMovement); err == nil {
		return learnt
	}
	return pace
}

func (d *Desk) scoresOf(c gym.Class) []conditioning.Logged {
	var logged []conditioning.Logged
	for _, l := range c.Lifters {
		p, ok := c.Piece(l.Track)
		if !ok || l.Score == "" || p.Workout.Empty() || d.WorkoutFault(p.Workout) != nil {
			continue
		}
		if s, err := conditioning.ParseScore(l.Score, conditioning.KindOf(p.Workout.Format)); err == nil {
			logged = append(logged, conditioning.Logged{Workout: p.Workout, Score: s})
		}
	}
	return logged
}
