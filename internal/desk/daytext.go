package desk

import (
	"fmt"
	"strconv"
	"strings"

	"windlass/internal/gym"
)

// SchemeText writes sets at percentages as ParseScheme reads them.
func SchemeText(sets []gym.Sets) string {
	parts := make([]string, len(sets))
	for i, s := range sets {
		parts[i] = fmt.Sprintf("%d × %d at %g", s.Sets, s.Reps, s.Percent)
	}
	return strings.Join(parts, ", ")
}

// ParseScheme reads sets at percentages of the 1RM.
//
//	scheme  = sets { "," sets }
//	sets    = number ( "x" | "×" | "*" ) number ( "at" | "@" ) percent [ "%" ]
//	percent = number with at most one decimal point, over 0, at most 110
func ParseScheme(text string) ([]gym.Sets, error) {
	var scheme []gym.Sets
	for part := range strings.SplitSeq(text, ",") {
		s, ok := parseSets(part)
		if !ok {
			return nil, fmt.Errorf("read sets %q: each wants sets, reps and a percentage; write 4 x 2 at 80", strings.TrimSpace(part))
		}
		scheme = append(scheme, s)
	}
	return scheme, nil
}

func parseSets(text string) (gym.Sets, bool) {
	text = strings.NewReplacer("×", "x", "*", "x", "at", "@", "%", "").Replace(strings.ToLower(text))
	head, percent, ok := strings.Cut(text, "@")
	sets, reps, ok2 := strings.Cut(head, "x")
	if !ok || !ok2 {
		return gym.Sets{}, false
	}
	n, reads := wholeIn(sets, 1, 20)
	m, reads2 := wholeIn(reps, 1, 20)
	p, reads3 := ParsePercent(percent)
	return gym.Sets{Percent: p, Sets: n, Reps: m}, reads && reads2 && reads3
}

// ParsePercent reads a percentage over 0 and at most 110, with or without its sign.
func ParsePercent(text string) (float64, bool) {
	text = strings.ReplaceAll(strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(text), "%")), ",", ".")
	if strings.Trim(text, "0123456789.") != "" {
		return 0, false
	}
	p, err := strconv.ParseFloat(text, 64)
	return p, err == nil && p > 0 && p <= 110
}

// wholeIn reads a whole number within bounds.
func wholeIn(text string, low, high int) (int, bool) {
	n, err := strconv.Atoi(strings.TrimSpace(text))
	return n, err == nil && n >= low && n <= high
}

// ParseCount reads a whole number from 1 to most, as a field of the day editor
// wants it.
func ParseCount(text string, most int) (int, error) {
	n, ok := wholeIn(text, 1, most)
	if !ok {
		return 0, fmt.Errorf("read number %q: it is not a whole number; write 1 to %d", strings.TrimSpace(text), most)
	}
	return n, nil
}

// ParseMinutes reads a length of time and returns seconds.
//
//	time = minutes | minutes ":" seconds | seconds "s"
//
// as in "12", "1:30" and "45 s".
func ParseMinutes(text string) (int, error) {
	text = strings.ToLower(strings.TrimSpace(text))
	bad := fmt.Errorf("read time %q: it is not a time; write minutes as 12, or 1:30, or 45 s", text)
	if s, ok := strings.CutSuffix(text, "s"); ok {
		n, ok := wholeIn(s, 1, 7200)
		if !ok {
			return 0, bad
		}
		return n, nil
	}
	text = strings.TrimSpace(strings.TrimSuffix(text, "min"))
	minutes, seconds, parted := strings.Cut(text, ":")
	m, ok := wholeIn(minutes, 0, 120)
	s := 0
	if parted && ok {
		s, ok = wholeIn(seconds, 0, 59)
		ok = ok && len(seconds) == 2
	}
	if !ok || 60*m+s == 0 {
		return 0, bad
	}
	return 60*m + s, nil
}

// clockText writes seconds as ParseMinutes reads them.
func clockText(seconds int) string { return fmt.Sprintf("%d:%02d", seconds/60, seconds%60) }
