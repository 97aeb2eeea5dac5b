package tier

import (
	"fmt"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Ask is what a suggestion is wanted for.
type Ask struct {
	Reps int       // of the bout; 0 is a usual bout
	On   day.Date  // the day of the bout
	Unit mass.Unit // in which the reason is written
	Work string    // the bout in words for the reason, as in "80 reps"; empty leaves it out
}

// Bound is what kept a suggestion from being heavier.
type Bound string

// The bounds, of which the tightest counts.
const (
	ByChance   Bound = "chance"   // the next implement is not likely enough to be held
	ByDoubt    Bound = "doubt"    // too little is known to rule out that it is too heavy
	ByStep     Bound = "step"     // one implement above the heaviest ever held, no more
	ByStop     Bound = "stop"     // the latest bout was stopped
	ByStock    Bound = "stock"    // the gym owns nothing heavier
	ByLightest Bound = "lightest" // even the lightest is not likely enough to be held
)

// Suggestion is a load with its tier, its chance and its reason.
type Suggestion struct {
	Load  mass.Mass
	Tier  gym.Tier
	Hold  float64 // chance that the load is held
	Bound Bound
	Next  mass.Mass // the next heavier implement; 0 when there is none
	Above float64   // the chance that it is held
	Heavy float64   // the chance that it is too heavy: held less than half of the time
	Why   string    // one sentence, built from the log
}

const (
	// mostHeavy is the most that the chance of being too heavy may be of a load that
	// no bout vouches for: one in twenty (the project's own choice). Somebody of whom
	// little is known may well hold a load and yet, if not, be overloaded by it. A
	// step up from a load just held needs no more than the confidence: so much care
	// would keep people too low for ever.
	mostHeavy = 0.05
	// longAway is how many weeks of absence not yet made good take the vouching from
	// the bouts before.
	longAway = 2
)

// Suggest returns the heaviest load the gym owns that is held with the wanted
// confidence, at most one implement above the heaviest ever held, and at most the
// heaviest held when the latest bout was stopped. A load that no bout vouches for, as
// at a first go and at the first one back, must hardly be too heavy besides. It lets
// the model's time pass until the day asked for.
func (m *Model) Suggest(a Ask) (Suggestion, error) {
	owned, confidence := m.rack.Owned, m.rack.Confidence
	if len(owned) == 0 {
		return Suggestion{}, fmt.Errorf("suggest load: the gym owns no implement for this movement; add its masses to the equipment")
	}
	if !(confidence > 0 && confidence < 1) {
		return Suggestion{}, fmt.Errorf("suggest load: a confidence of %g is not between 0 and 1", confidence)
	}
	m.Advance(a.On)
	limit, bound := m.course.limit(owned)
	at, vouched := 0, m.vouched()
	for at < limit && m.Hold(owned[at+1], a.Reps) >= confidence &&
		(at+1 <= vouched || m.TooHeavy(owned[at+1], a.Reps) <= mostHeavy) {
		at++
	}
	s := Suggestion{Load: owned[at], Hold: m.Hold(owned[at], a.Reps), Bound: bound}
	if at+1 < len(owned) {
		s.Next = owned[at+1]
		s.Above, s.Heavy = m.Hold(s.Next, a.Reps), m.TooHeavy(s.Next, a.Reps)
	}
	switch {
	case at == 0 && s.Hold < confidence:
		s.Bound = ByLightest
	case at < limit && s.Above >= confidence:
		s.Bound = ByDoubt
	case at < limit:
		s.Bound = ByChance
	}
	s.Tier = TierOf(s.Load, m.rack.Tiers)
	s.Why = m.why(s, a)
	return s, nil
}

// vouched returns the index of the heaviest implement that something speaks for on
// the model's day: at a first go and at the first one back the coach's own light
// load, else the latest bout, for one implement more than its load when that was held.
func (m *Model) vouched() int {
	light := atMost(m.rack.Owned, m.rack.Tiers.Light)
	if len(m.bouts) == 0 {
		return light
	}
	last := m.bouts[len(m.bouts)-1]
	since := m.time.between(last.On, m.at)
	i := atMost(m.rack.Owned, last.Load)
	switch {
	case since.owing-since.owed > longAway:
		return min(i, light)
	case last.Outcome == gym.Held:
		return i + 1
	case last.Outcome == gym.Stopped:
		return i - 1
	}
	return i
}

// TierOf returns the heaviest tier whose load is not over a load.
func TierOf(load mass.Mass, tiers gym.TierLoads) gym.Tier {
	for _, t := range []gym.Tier{gym.Full, gym.Mid, gym.Light} {
		if of := tiers.Of(t); of > 0 && of <= load {
			return t
		}
	}
	return gym.Below
}
