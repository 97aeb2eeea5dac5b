package desk

import (
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
	Reps     int    // of the whole bout, in the movement's measure: asked for, or done where that is known
	Measure  gym.Measure
	Load     mass.Mass
	Unit     mass.Unit // in which the load is marked
	Tier     gym.Tier
	Why      string   // where the load comes from
	Logged   gym.Bout // zero until it is logged
	Score    string
}

// BoutSheet returns a row for every athlete of a class and every movement with a
// load, the suggested load filled in. Who has no such movement has one row, for
// the score.
func (d *Desk) BoutSheet(c gym.Class) []BoutRow {
	logged, asked := d.boutsOf(c.ID), map[gym.ID]amounts{}
	var rows []BoutRow
	for _, l := range c.Lifters {
		piece, ok := c.Piece(l.Track)
		if !ok || piece.Workout.Empty() {
			continue
		}
		if asked[l.Track] == nil {
			asked[l.Track] = d.asked(piece.Workout)
		}
		a, _ := d.Athlete(l.Athlete)
		first := BoutRow{Athlete: a.ID, Name: a.Name, First: true, Unit: a.Unit, Score: l.Score}
		own := d.boutRows(piece.Workout, first, asked[l.Track], logged)
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

// boutRows are an athlete's rows; what is asked is that of the workout.
func (d *Desk) boutRows(w gym.Workout, row BoutRow, asked amounts, logged map[pair]gym.Bout) []BoutRow {
	done := doneBy(w, row.Score)
	var rows []BoutRow
	seen := map[gym.MovementKey]bool{}
	for _, item := range w.Items {
		m, ok := d.Movement(item.Movement)
		if !ok || seen[m.Key] {
			continue
		}
		advice, err := d.Advise(row.Athlete, m.Key, asked[m.Key])
		if err != nil && !learning(err) {
			continue // it has no load to log
		}
		seen[m.Key] = true
		row.Movement, row.What, row.Measure = m.Key, m.Name, m.Measure
		row.Reps = done.or(asked, m.Key)
		row.Load, row.Tier, row.Why = advice.Decision.Load, advice.Decision.Tier, reason(advice)
		if learning(err) {
			row.Why = "The log is still being read; the suggestion comes in a moment."
		} else {
			row.Unit = advice.Unit
		}
		if row.Logged = logged[pair{row.Athlete, m.Key}]; row.Logged.ID != "" {
			row.Load = row.Logged.Load
			row.Tier = tier.TierOf(row.Load, m.Loads[d.standardOf(row.Athlete)])
		}
		rows = append(rows, row)
		row.First = false
	}
	return rows
}

// HoldAt returns the chance that a row's athlete holds a load for its reps; 0 for a
// movement that has no load.
func (d *Desk) HoldAt(r BoutRow, load mass.Mass) float64 {
	holds, err := d.Holds(r.Athlete, r.Movement, r.Reps, load)
	if err != nil {
		return 0
	}
	return holds[0]
}

// BoutChance writes the chance that a row's athlete holds a load, rounded down: "15
// kg has a chance of 81 % of being held"; nothing while none is known.
func (d *Desk) BoutChance(r BoutRow, load mass.Mass) string {
	if load == 0 {
		return ""
	}
	return fmt.Sprintf("%s has a chance of %s of being held.", load.In(r.Unit), tier.Percent(d.HoldAt(r, load)))
}

// StrangeLoad says what is odd about a load of a row, in a sentence for the coach,
// and nothing where the gym owns one.
func (d *Desk) StrangeLoad(r BoutRow, load mass.Mass) string {
	m, _ := d.Movement(r.Movement)
	if !conditioning.Missing(d.book.Equipment.Implement(m.Implement), load) {
		return ""
	}
	return fmt.Sprintf("The gym owns no %s of %s.", m.Implement, load.In(r.Unit))
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
