package desk

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"windlass/internal/conditioning"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/tier"
)

// BoutRow is one athlete at one movement of the day's conditioning.
type BoutRow struct {
	Athlete  gym.ID
	Name     string
	First    bool // the athlete's first row
	Movement gym.MovementKey
	What     string // the movement as the coach reads it; empty for one without loads
	Reps     int    // of the whole bout, in the movement's measure
	Measure  gym.Measure
	Load     mass.Mass
	Unit     mass.Unit
	Tier     gym.Tier
	Why      string   // where the load comes from
	Logged   gym.Bout // zero until it is logged
	Score    string
}

// BoutSheet returns a row for every athlete of a class and every movement with a
// load, the suggested load filled in. Who has no such movement has one row, for
// the score.
func (d *Desk) BoutSheet(c gym.Class) []BoutRow {
	logged := d.boutsOf(c.ID)
	var rows []BoutRow
	for _, l := range c.Lifters {
		piece, ok := c.Piece(l.Track)
		if !ok || piece.Workout.Empty() {
			continue
		}
		a, _ := d.Athlete(l.Athlete)
		first := BoutRow{Athlete: a.ID, Name: a.Name, First: true, Unit: a.Unit, Score: l.Score}
		own := d.boutRows(piece.Workout, first, logged)
		if len(own) == 0 {
			own = []BoutRow{first}
		}
		rows = append(rows, own...)
	}
	return rows
}

// BoutWork writes what a row asks for: "Thruster × 45", "Sled push × 140 m".
func BoutWork(r BoutRow) string {
	return fmt.Sprintf("%s × %d%s", r.What, r.Reps, amountUnits[r.Measure])
}

// OpenBouts counts the bouts of a class that have a load and are not logged.
func (d *Desk) OpenBouts(c gym.Class) int {
	open := 0
	for _, r := range d.BoutSheet(c) {
		if r.What != "" && r.Logged.ID == "" {
			open++
		}
	}
	return open
}

// pair is one athlete at one movement.
type pair struct {
	athlete  gym.ID
	movement gym.MovementKey
}

func (d *Desk) boutsOf(class gym.ID) map[pair]gym.Bout {
	logged := map[pair]gym.Bout{}
	for i := range d.book.Bouts {
		if b := &d.book.Bouts[i]; b.Class == class && b.Void == nil {
			logged[pair{b.Athlete, b.Movement}] = *b
		}
	}
	return logged
}

func (d *Desk) boutRows(w gym.Workout, row BoutRow, logged map[pair]gym.Bout) []BoutRow {
	var rows []BoutRow
	seen := map[gym.MovementKey]bool{}
	for _, item := range w.Items {
		m, ok := d.Movement(item.Movement)
		if !ok || seen[m.Key] {
			continue
		}
		reps := d.repsIn(w, m.Key)
		advice, err := d.Advise(row.Athlete, m.Key, reps)
		if err != nil {
			continue // it has no load to log
		}
		seen[m.Key] = true
		row.Movement, row.What, row.Reps, row.Measure = m.Key, m.Name, reps, m.Measure
		row.Load, row.Tier, row.Why = advice.Decision.Load, advice.Decision.Tier, reason(advice)
		if row.Logged = logged[pair{row.Athlete, m.Key}]; row.Logged.ID != "" {
			row.Load = row.Logged.Load
			row.Tier = tier.TierOf(row.Load, m.Loads[d.standardOf(row.Athlete)])
		}
		rows = append(rows, row)
		row.First = false
	}
	return rows
}

func (d *Desk) standardOf(athlete gym.ID) gym.Standard {
	a, _ := d.Athlete(athlete)
	return a.Standard
}

// reason says where a load comes from; the coach's own word comes first.
func reason(a Advice) string {
	why := a.Decision.Suggestion.Why
	if n := len(a.Decision.By); n > 0 {
		return fmt.Sprintf("Your choice (%s). Suggested was: %s.", a.Decision.By[n-1].Reason, why)
	}
	if why == "" {
		return ""
	}
	return strings.ToUpper(why[:1]) + why[1:] + "."
}

// repsIn is what a usual athlete does of a movement in a whole workout.
func (d *Desk) repsIn(w gym.Workout, movement gym.MovementKey) int {
	sum, passes := 0, conditioning.Passes(w)
	if w.Format == gym.AMRAP {
		passes = 1
		if e, err := conditioning.Estimate(w, d.findMovement, conditioning.DefaultPace()); err == nil {
			passes = max(1, int(e.Usual.Rounds+0.5))
		}
	}
	for i, item := range w.Items {
		if item.Movement == movement {
			sum += itemReps(w, i, passes)
		}
	}
	if m, _ := d.Movement(movement); sum == 0 {
		sum = m.ReferenceReps
	}
	return max(1, sum)
}

// itemReps sums an item over the passes; in an EMOM and in intervals the items
// take turns.
func itemReps(w gym.Workout, i, passes int) int {
	turns := w.Format == gym.EMOM || w.Format == gym.Intervals
	if w.Format == gym.EMOM {
		passes = w.Seconds / 60
	}
	sum := 0
	for pass := range passes {
		if !turns || pass%len(w.Items) == i {
			sum += conditioning.AmountIn(w, pass, w.Items[i])
		}
	}
	return sum
}

func (d *Desk) findMovement(name string) (gym.Movement, bool) {
	return d.Movement(gym.MovementKey(name))
}

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
	a, _ := d.Athlete(athlete)
	b := gym.Bout{
		ID: d.NewID(), Athlete: athlete, Movement: movement, Load: load, Unit: a.Unit, Reps: d.repsIn(piece.Workout, movement),
		Outcome: outcome, On: c.On, Workout: WorkoutTitle(piece.Workout), Score: l.Score, Class: class, Made: d.now(),
	}
	if err := b.Valid(); err != nil {
		return err
	}
	var changes []gym.Change
	if before, ok := d.boutsOf(class)[pair{athlete, movement}]; ok {
		changes = append(changes, gym.VoidBout{ID: before.ID, Void: gym.Void{At: d.now(), Reason: "entered again in class"}})
	}
	return d.do(fmt.Sprintf("log %s %s for %s", load.In(a.Unit), outcome, a.Name), append(changes, gym.AddBout{Bout: b})...)
}

// SetScore keeps an athlete's score of the conditioning; an empty text takes it
// back. The error says which kind of score the format has.
func (d *Desk) SetScore(class, athlete gym.ID, text string) error {
	return d.change("keep a score", class, func(c *gym.Class) error {
		l, err := lifter(c, athlete)
		if err != nil {
			return err
		}
		piece, _ := c.Piece(l.Track)
		text = strings.TrimSpace(text)
		if text == "" {
			l.Score = ""
			return nil
		}
		kind := conditioning.KindOf(piece.Workout.Format)
		score, err := conditioning.ParseScore(text, kind)
		if err != nil {
			return fmt.Errorf("%w; write it %s", trimHint(err), scoreHint(kind))
		}
		l.Score = score.Text(d.book.Settings.Unit)
		return nil
	})
}

// trimHint takes an error's own advice away where a better one follows.
func trimHint(err error) error {
	if head, _, found := strings.Cut(err.Error(), "; "); found {
		return errors.New(head)
	}
	return err
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

// NextBout returns the row after one that is not logged yet, round to the first;
// false when all are.
func NextBout(rows []BoutRow, after int) (int, bool) {
	for i := range rows {
		at := (after + 1 + i) % len(rows)
		if rows[at].What != "" && rows[at].Logged.ID == "" {
			return at, true
		}
	}
	return after, slices.ContainsFunc(rows, func(r BoutRow) bool { return r.What != "" && r.Logged.ID == "" })
}
