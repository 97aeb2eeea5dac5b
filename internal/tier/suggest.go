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
	Why   string    // one sentence, built from the log
}

// Suggest returns the heaviest load the gym owns that is held with the wanted
// confidence, at most one implement above the heaviest ever held, and at most
// the heaviest held when the latest bout was stopped. It lets the model's time
// pass until the day asked for.
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
	at := 0
	for at < limit && m.Hold(owned[at+1], a.Reps) >= confidence {
		at++
	}
	s := Suggestion{Load: owned[at], Hold: m.Hold(owned[at], a.Reps), Bound: bound}
	if at < limit {
		s.Bound = ByChance
	}
	if at == 0 && s.Hold < confidence {
		s.Bound = ByLightest
	}
	if at+1 < len(owned) {
		s.Next, s.Above = owned[at+1], m.Hold(owned[at+1], a.Reps)
	}
	s.Tier = TierOf(s.Load, m.rack.Tiers)
	s.Why = m.why(s, a)
	return s, nil
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
