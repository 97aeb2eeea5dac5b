package tier

import (
	"cmp"
	"fmt"
	"slices"
	"time"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// ComebackSource names the guidance behind [Comeback].
const ComebackSource = "joint consensus guidelines of the CSCCa and the NSCA on training after a break " +
	"(Caterisano et al. 2019, Strength and Conditioning Journal 41(3), 1–23)"

// comebackShares are what is left after cuts of 50, 30, 20 and 10 % in the weeks
// one to four (from memory of the guidelines, which cut the volume of conditioning;
// applied to its loads, that is the more careful of the two).
var comebackShares = [ComebackGuided]float64{0.5, 0.7, 0.8, 0.9}

// ComebackGuided is for how many weeks the guidance speaks.
const ComebackGuided = 4

// MostComeback is the longest time for which an athlete goes lighter at one go, in
// weeks: half a year. Whoever needs longer is looked at again.
const MostComeback = 26

// ComebackShares proposes what is left of every load in each of so many weeks, 1
// to [MostComeback]: the guidance named in [ComebackSource], which ends with its
// fourth week; the share of that week then stands.
func ComebackShares(weeks int) ([]float64, error) {
	if weeks < 1 || weeks > MostComeback {
		return nil, fmt.Errorf("plan comeback: %d weeks are not 1 to %d", weeks, MostComeback)
	}
	shares := make([]float64, weeks)
	for i := range shares {
		shares[i] = comebackShares[min(i, len(comebackShares)-1)]
	}
	return shares, nil
}

// Comeback returns overrides that leave a share of every conditioning load in each
// week from the day an athlete is back; weeks of the same share that follow each
// other are one. They carry neither ID nor the instant they were made. A doctor's
// word comes before any of it.
func Comeback(athlete gym.ID, from day.Date, shares []float64) ([]gym.Override, error) {
	weeks := len(shares)
	if weeks < 1 || weeks > MostComeback {
		return nil, fmt.Errorf("plan comeback: %d weeks are not 1 to %d", weeks, MostComeback)
	}
	var overrides []gym.Override
	for first := 0; first < weeks; {
		next := first + 1
		for next < weeks && shares[next] == shares[first] {
			next++
		}
		overrides = append(overrides, gym.Override{
			Athlete: athlete, Share: shares[first], From: from.Add(7 * first), Until: from.Add(7*next - 1),
			Reason: fmt.Sprintf("back from a break, %s of %d", weekWords(first+1, next), weeks),
		})
		first = next
	}
	return overrides, nil
}

// weekWords names weeks: "week 2", "weeks 2 to 4".
func weekWords(first, last int) string {
	if first == last {
		return fmt.Sprintf("week %d", first)
	}
	return fmt.Sprintf("weeks %d to %d", first, last)
}

// oneStep is how far apart decisions are written that were made in one step.
const oneStep = time.Second

// Steps puts overrides that were decided in one step together, as the weeks of a
// comeback are, in the order of their first days. The steps stand as their first
// overrides stood. What was taken back apart from the rest is a step of its own.
func Steps(overrides []gym.Override) [][]gym.Override {
	var steps [][]gym.Override
	for _, o := range overrides {
		i := slices.IndexFunc(steps, func(step []gym.Override) bool { return together(step[0], o) })
		if i < 0 {
			i, steps = len(steps), append(steps, nil)
		}
		steps[i] = append(steps[i], o)
	}
	for _, step := range steps {
		slices.SortStableFunc(step, func(a, b gym.Override) int { return cmp.Compare(a.From, b.From) })
	}
	return steps
}

// together reports whether two overrides are weeks of one comeback.
func together(a, b gym.Override) bool {
	return a.Athlete == b.Athlete && a.Share > 0 && b.Share > 0 && a.Movement == b.Movement &&
		a.Made.Sub(b.Made).Abs() <= oneStep && voidedTogether(a.Void, b.Void)
}

func voidedTogether(a, b *gym.Void) bool {
	if a == nil || b == nil {
		return a == b
	}
	return a.At.Sub(b.At).Abs() <= oneStep
}
