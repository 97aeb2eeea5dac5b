package conditioning

import (
	"fmt"
	"math"

	"windlass/internal/gym"
)

// dragConstant makes watts of the cube of a rowing ergometer's speed, in kg/m:
// power is 2.80 times the cube of metres a second (the air-brake law; Dudhia, The
// Physics of Ergometers; the constant is the makers' common one).
const dragConstant = 2.80

// RowWatts returns the power in watts of a pace on a rowing ergometer, in seconds
// for 500 m, and 0 for a pace that is not over 0.
func RowWatts(split float64) float64 {
	if !(split > 0) {
		return 0
	}
	speed := 500 / split
	return dragConstant * speed * speed * speed
}

// RowSplit returns the pace in seconds for 500 m of a power in watts, and 0 for a
// power that is not over 0.
func RowSplit(watts float64) float64 {
	if !(watts > 0) {
		return 0
	}
	return 500 / math.Cbrt(watts/dragConstant)
}

// restGuide is a range of rest for a length of work.
type restGuide struct {
	from, to  int // seconds of work
	low, high int // times the work that is rested
}

// restGuides are work-to-rest ratios for interval training by the length of the
// work: Haff and Triplett (eds), Essentials of Strength Training and Conditioning,
// 4th ed., table 3.6. A length between two rows belongs to none.
var restGuides = []restGuide{
	{5, 10, 12, 20},
	{15, 30, 3, 5},
	{60, 180, 3, 4},
	{181, longest, 1, 3},
}

// guideFor returns the guide for a length of work in seconds.
func guideFor(work int) (restGuide, bool) {
	for _, g := range restGuides {
		if g.from <= work && work <= g.to {
			return g, true
		}
	}
	return restGuide{}, false
}

// RestAdvice returns a sentence when the rest of intervals lies outside the guide
// for their work, and nothing else. Shorter rests are used on purpose; it forbids
// none.
func RestAdvice(w gym.Workout) string {
	if w.Format != gym.Intervals {
		return ""
	}
	g, ok := guideFor(w.Work)
	if !ok || (w.Rest >= g.low*w.Work && w.Rest <= g.high*w.Work) {
		return ""
	}
	effect := "is shorter, which trains staying power more than speed"
	if w.Rest > g.high*w.Work {
		effect = "is longer than it needs to be"
	}
	return fmt.Sprintf("For all-out work of %s the handbook rests %s to %s; %s %s.",
		clock(w.Work), clock(g.low*w.Work), clock(g.high*w.Work), clock(w.Rest), effect)
}

// SlotAdvice returns a sentence about the first movement of an EMOM or of intervals
// that takes a usual athlete longer than its slot, and nothing where all fit.
func SlotAdvice(w gym.Workout, find Find, p Pace) string {
	slot, where := 60, "the minute"
	switch w.Format {
	case gym.EMOM:
	case gym.Intervals:
		slot, where = w.Work, "the work"
	default:
		return ""
	}
	for _, item := range w.Items {
		m, ok := find(string(item.Movement))
		if took := float64(item.Amount) * m.Seconds * p.Factor; ok && took > float64(slot) {
			return fmt.Sprintf("%s takes a usual athlete %s when fresh, longer than %s has.", m.Name, clock(int(math.Round(took))), where)
		}
	}
	return ""
}
