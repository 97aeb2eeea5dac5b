package desk

import (
	"errors"
	"fmt"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/tier"
)

// TierStanding is the tier at which an athlete stands in conditioning: that of
// today's loads for the movements done before.
type TierStanding struct {
	Usual     gym.Tier // of most movements as decided, the lighter of two as frequent; empty for none
	Suggested gym.Tier // the same of the suggestions
	Count     map[gym.Tier]int
	Decided   int // movements of which the load was decided otherwise than suggested
}

// tiersDown are the tiers, lightest first.
var tiersDown = []gym.Tier{gym.Below, gym.Light, gym.Mid, gym.Full}

// TierStanding returns where an athlete stands today.
func (d *Desk) TierStanding(athlete gym.ID) (TierStanding, error) {
	s := TierStanding{Count: map[gym.Tier]int{}}
	suggested := map[gym.Tier]int{}
	err := d.eachDone(athlete, func(a Advice) {
		s.Count[a.Decision.Tier]++
		suggested[a.Decision.Suggestion.Tier]++
		if a.Decided() {
			s.Decided++
		}
	})
	if err != nil {
		return TierStanding{}, err
	}
	s.Usual, s.Suggested = most(s.Count), most(suggested)
	return s, nil
}

// eachDone hands on today's advice for every movement that an athlete did before
// and that has a load.
func (d *Desk) eachDone(athlete gym.ID, do func(Advice)) error {
	for movement := range d.lastBouts(athlete) {
		a, err := d.Advise(athlete, movement, 0)
		if errors.Is(err, tier.ErrUnloaded) {
			continue
		}
		if err != nil {
			return err
		}
		do(a)
	}
	return nil
}

// most returns the tier that counts most, the lighter of two that are equal.
func most(count map[gym.Tier]int) gym.Tier {
	var usual gym.Tier
	for _, t := range tiersDown {
		if count[t] > count[usual] {
			usual = t
		}
	}
	return usual
}

// Beside says what is suggested where the coach decided otherwise: "suggested
// tier: full"; empty where nothing is decided.
func (s TierStanding) Beside() string {
	switch {
	case s.Usual != s.Suggested:
		return "suggested tier: " + TierWord(s.Suggested)
	case s.Decided > 0:
		return count(s.Decided, "load") + " decided"
	}
	return ""
}

// String tells how many movements stand at each tier: "2 full, 5 mid, 1 under
// light".
func (s TierStanding) String() string {
	if s.Usual == "" {
		return "no bout yet"
	}
	var parts []string
	for i := len(tiersDown) - 1; i >= 0; i-- {
		if n := s.Count[tiersDown[i]]; n > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", n, TierWord(tiersDown[i])))
		}
	}
	return strings.Join(parts, ", ")
}

// TierWord names a tier in a sentence.
func TierWord(t gym.Tier) string {
	if t == gym.Below {
		return "under light"
	}
	return string(t)
}
