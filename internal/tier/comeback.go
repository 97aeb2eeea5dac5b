package tier

import (
	"fmt"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// ComebackSource names the guidance behind [Comeback].
const ComebackSource = "joint consensus guidelines of the CSCCa and the NSCA on training after a break " +
	"(Caterisano et al. 2019, Strength and Conditioning Journal 41(3), 1–23)"

// comebackShares are what is left after cuts of 50, 30, 20 and 10 % in the weeks
// one to four (from memory of the guidelines, which cut the volume of conditioning;
// applied to its loads, that is the more careful of the two).
var comebackShares = []float64{0.5, 0.7, 0.8, 0.9}

// Comeback returns overrides that make every conditioning load lighter for so many
// weeks, 1 to 4, from the day an athlete is back. They carry neither ID nor the
// instant they were made. A doctor's word comes before any of it.
func Comeback(athlete gym.ID, from day.Date, weeks int) ([]gym.Override, error) {
	if weeks < 1 || weeks > len(comebackShares) {
		return nil, fmt.Errorf("plan comeback: %d weeks are not 1 to %d", weeks, len(comebackShares))
	}
	overrides := make([]gym.Override, weeks)
	for i := range overrides {
		first := from.Add(7 * i)
		overrides[i] = gym.Override{
			Athlete: athlete, Share: comebackShares[i], From: first, Until: first.Add(6),
			Reason: fmt.Sprintf("back from a break, week %d of %d", i+1, weeks),
		}
	}
	return overrides, nil
}
