package desk

import (
	"fmt"
	"strconv"
	"strings"

	"windlass/internal/tier"
)

// ComebackText says where the proposal for a comeback comes from.
func ComebackText() string {
	shares, err := tier.ComebackShares(4)
	if err != nil {
		return ""
	}
	return fmt.Sprintf("Proposed is every conditioning load lighter by %s %% in weeks 1 to 4. The cuts are our reading of the %s, which sets them for the volume.",
		CutsText(shares), tier.ComebackSource)
}

// CutsText writes by how many per cent each week's loads are lighter, as
// [ReadCuts] reads it: "50, 30, 20".
func CutsText(shares []float64) string {
	cuts := make([]string, len(shares))
	for i, s := range shares {
		cuts[i] = fmt.Sprintf("%.0f", 100*(1-s))
	}
	return strings.Join(cuts, ", ")
}

// ReadComebackWeeks reads for how many weeks an athlete goes lighter, 1 to
// [tier.MostComeback].
func ReadComebackWeeks(text string) (int, error) {
	n, err := strconv.Atoi(strings.TrimSpace(text))
	if err != nil || n < 1 || n > tier.MostComeback {
		return 0, fmt.Errorf("read weeks %q: write a number from 1 to %d", text, tier.MostComeback)
	}
	return n, nil
}

// ReadCuts reads by how many per cent each week's loads are lighter, and returns
// what is left of them, a share a week.
//
//	cuts = cut { separator cut }
//	cut  = whole number from 1 to 99 [ "%" ]
//
// A separator is a comma, a semicolon, a slash or a space. One cut stands for
// every week; else there is one for each.
func ReadCuts(text string, weeks int) ([]float64, error) {
	parts := strings.FieldsFunc(strings.ReplaceAll(text, "%", " "), func(r rune) bool { return strings.ContainsRune(",;/ \t", r) })
	if len(parts) != 1 && len(parts) != weeks {
		return nil, fmt.Errorf("read cuts %q: write one number for every week, or %d for %s, as in 30 or 50, 30", text, weeks, count(weeks, "week"))
	}
	shares := make([]float64, weeks)
	for i := range shares {
		part := parts[min(i, len(parts)-1)]
		cut, err := strconv.ParseUint(part, 10, 8)
		if err != nil || cut < 1 || cut > 99 {
			return nil, fmt.Errorf("read cuts %q: %q is no whole number from 1 to 99 per cent", text, part)
		}
		shares[i] = float64(100-cut) / 100
	}
	return shares, nil
}

// ComebackCaution says in which weeks shares are heavier than the guidance
// proposes; empty when none are.
func ComebackCaution(shares []float64) string {
	proposed, err := tier.ComebackShares(len(shares))
	if err != nil {
		return ""
	}
	var heavier []string
	for i, s := range shares {
		if s > proposed[i] && i < tier.ComebackGuided {
			heavier = append(heavier, fmt.Sprintf("in week %d (proposed: %.0f %% lighter)", i+1, 100*(1-proposed[i])))
		}
	}
	if len(heavier) == 0 {
		return ""
	}
	return "That is heavier than proposed " + strings.Join(heavier, ", ") + "."
}
