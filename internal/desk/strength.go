package desk

import (
	"math"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/repmax"
)

// Strength tells how strong an athlete is at a lift against a usual member of the
// same load standard: the log of the 1RM, or of its estimate on the handbook's
// curve, over the lift's reference. It is what package tier asks for, and not
// known without a record.
func (d *Desk) Strength(athlete gym.ID, key gym.LiftKey) (relative float64, known bool) {
	a, _ := d.Athlete(athlete)
	lift, _ := d.Lift(key)
	return strengthOf(a, lift, d.records())
}

// strengths is [Desk.Strength] of now, for work beside the desk.
func (d *Desk) strengths() func(gym.ID, gym.LiftKey) (relative float64, known bool) {
	return d.strengthsBy(d.records()) // built anew when results change, and never changed
}

// strengthsBy is [Desk.Strength] by some records.
func (d *Desk) strengthsBy(records repmax.Records) func(gym.ID, gym.LiftKey) (relative float64, known bool) {
	athletes, lifts := map[gym.ID]gym.Athlete{}, map[gym.LiftKey]gym.Lift{}
	for _, a := range d.book.Athletes {
		athletes[a.ID] = a
	}
	for _, l := range d.book.Lifts {
		lifts[l.Key] = l
	}
	return func(athlete gym.ID, lift gym.LiftKey) (float64, bool) {
		return strengthOf(athletes[athlete], lifts[lift], records)
	}
}

func strengthOf(a gym.Athlete, lift gym.Lift, records repmax.Records) (relative float64, known bool) {
	reference := lift.Reference[a.Standard]
	if reference == 0 {
		return 0, false
	}
	unrounded := func(limit mass.Mass) (mass.Mass, bool) { return limit, true }
	e := repmax.NewCard(records.Known(a.ID, lift.Key), []int{1}, repmax.Handbook(), unrounded).Entry(1)
	if !e.Known() || e.Load == 0 {
		return 0, false
	}
	return math.Log(e.Load.Ratio(reference)), true
}

// LifterFor returns an athlete as they would climb to a rep max of a lift today,
// outside any class: on their bar, from their record, estimate or first load.
func (d *Desk) LifterFor(a gym.Athlete, lift gym.LiftKey, reps int) gym.Lifter {
	l := gym.Lifter{Athlete: a.ID, Station: -1}
	d.dress(&l, a, gym.Piece{Lift: lift, Reps: reps})
	return l
}
