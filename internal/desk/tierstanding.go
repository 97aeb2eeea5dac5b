package desk

import (
	"errors"
	"fmt"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/tier"
)

// TierStanding is the tier at which an athlete stands in conditioning: that of
// the loads suggested for the movements done before.
type TierStanding struct {
	Usual gym.Tier // of most movements, the lighter of two as frequent; empty for none
	Count map[gym.Tier]int
}

// tiersDown are the tiers, lightest first.
var tiersDown = []gym.Tier{gym.Below, gym.Light, gym.Mid, gym.Full}

// TierStanding returns where an athlete stands today.
func (d *Desk) TierStanding(athlete gym.ID) (TierStanding, error) {
	s := TierStanding{Count: map[gym.Tier]int{}}
	for movement := range d.lastBouts(athlete) {
		a, err := d.Advise(athlete, movement, 0)
		if errors.Is(err, tier.ErrUnloaded) {
			continue
		}
		if err != nil {
			return TierStanding{}, err
		}
		s.Count[a.Decision.Suggestion.Tier]++
	}
	for _, t := range tiersDown {
		if s.Count[t] > s.Count[s.Usual] {
			s.Usual = t
		}
	}
	return s, nil
}

// String names the tiers and how many movements stand at each: "mid: full 2, mid
// 5, light 1".
func (s TierStanding) String() string {
	if s.Usual == "" {
		return "no bout yet"
	}
	var parts []string
	for i := len(tiersDown) - 1; i >= 0; i-- {
		if n := s.Count[tiersDown[i]]; n > 0 {
			parts = append(parts, fmt.Sprintf("%s %d", tiersDown[i], n))
		}
	}
	return fmt.Sprintf("%s: %s", s.Usual, strings.Join(parts, ", "))
}
