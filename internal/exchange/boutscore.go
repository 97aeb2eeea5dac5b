package exchange

import (
	"fmt"
	"slices"

	"windlass/internal/conditioning"
	"windlass/internal/gym"
)

// titled is what was read of the text of a workout; a sheet says the same text for
// a whole class.
type titled struct {
	workout gym.Workout
	err     error
}

// judgeScore checks the workout's text and the score against it. Where a name of the
// coach's own stands, or nothing, any kind of score will do.
func (r *boutReader) judgeScore(l *line, b gym.Bout) {
	t := r.title(b.Workout)
	if t.err != nil {
		l.faults.add(l.columns.heading(colWorkout), t.err)
		return
	}
	if b.Score == "" {
		return
	}
	if t.workout.Format == "" {
		_, err := conditioning.ReadScore(b.Score)
		l.faults.add(l.columns.heading(colScore), err)
		return
	}
	score, err := conditioning.ParseScore(b.Score, conditioning.KindOf(t.workout.Format))
	if err == nil {
		err = conditioning.CheckScore(t.workout, score)
	}
	l.faults.add(l.columns.heading(colScore), err)
}

func (r *boutReader) title(text string) titled {
	t, known := r.titles[text]
	if !known {
		t.workout, t.err = conditioning.ReadTitle(text, r.findMovement)
		r.titles[text] = t
	}
	return t
}

func (r *boutReader) findMovement(name string) (gym.Movement, bool) {
	key, err := r.movements.find(name)
	return r.byKey[key], err == nil
}

// outcomeBook tells rows that speak of one bout and of two outcomes.
type outcomeBook struct {
	standing     map[boutKey]gym.Outcome  // in the gym's file
	told         map[boutKey][]outcomeRow // in the sheet, refused rows too
	contradicted map[int]Rejection        // by the place of the change it had made
}

type outcomeRow struct {
	outcome      gym.Outcome
	line, change int // refused is the change of a row that makes none
}

const refused = -1

func newOutcomes() outcomeBook {
	return outcomeBook{map[boutKey]gym.Outcome{}, map[boutKey][]outcomeRow{}, map[int]Rejection{}}
}

// enter notes a bout of the gym's file.
func (o outcomeBook) enter(b gym.Bout) {
	if b.Void == nil {
		o.standing[whicheverWay(b)] = b.Outcome
	}
}

// whicheverWay is a bout's key without what came of it.
func whicheverWay(b gym.Bout) boutKey {
	k := keyOfBout(b)
	k.outcome, k.score = "", ""
	return k
}

// judge says what contradicts a bout that is about to be the sheet's change of that
// number, and takes every row of the sheet with it that tells of the same bout.
func (o outcomeBook) judge(line, change int, b gym.Bout, heading string) error {
	key := whicheverWay(b)
	if known, ok := o.standing[key]; ok && known != b.Outcome {
		return fmt.Errorf("the gym has this bout as %s and the row says %s; void the one in the gym first, or take the row out", known, b.Outcome)
	}
	rows := o.told[key]
	i := slices.IndexFunc(rows, func(r outcomeRow) bool { return r.outcome != b.Outcome })
	if i < 0 { // a row of the same outcome differs by its score alone
		o.told[key] = append(rows, outcomeRow{b.Outcome, line, change})
		return nil
	}
	const clash = "line %d has the same bout as %s and this one as %s; keep the one that is true"
	for _, r := range rows {
		if r.change != refused && r.outcome != b.Outcome {
			o.contradicted[r.change] = Rejection{r.line, heading, fmt.Sprintf(clash, line, b.Outcome, r.outcome)}
		}
	}
	o.told[key] = append(rows, outcomeRow{b.Outcome, line, refused})
	return fmt.Errorf(clash, rows[i].line, rows[i].outcome, b.Outcome)
}
