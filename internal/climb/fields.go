package climb

import (
	"fmt"
	"strconv"
	"strings"

	"windlass/internal/gym"
)

func (r row) rung(comma rune) (gym.Rung, error) {
	at, err := parseTime(r.fields["at"])
	if err != nil {
		return gym.Rung{}, err
	}
	until, err := parseTime(r.fields["until"])
	if err != nil {
		return gym.Rung{}, err
	}
	percent, err := parsePercent(r.fields["percent"], comma)
	if err != nil {
		return gym.Rung{}, err
	}
	reps, err := parseReps(r.fields["reps"])
	if err != nil {
		return gym.Rung{}, err
	}
	return gym.Rung{At: at, Until: until, Percent: percent, Reps: reps, Zone: gym.Zone(strings.ToLower(r.fields["zone"]))}, nil
}

func parseTime(text string) (int, error) {
	minutes, seconds, clock := strings.Cut(text, ":")
	if !clock {
		minutes, seconds = "0", text
	}
	m, okM := digits(minutes, 3)
	s, okS := digits(seconds, 5)
	if !okM || !okS || clock && (s > 59 || len(seconds) != 2) {
		return 0, fmt.Errorf("%w: time %q is not minutes and seconds; write one like 02:30", ErrPlan, text)
	}
	return 60*m + s, nil
}

func parsePercent(text string, comma rune) (float64, error) {
	number := strings.TrimSpace(strings.TrimSuffix(text, "%"))
	if comma != ',' {
		number = strings.Replace(number, ",", ".", 1)
	}
	whole, fraction, point := strings.Cut(number, ".")
	_, okWhole := digits(whole, 3)
	_, okFraction := digits(fraction, 6)
	percent, err := strconv.ParseFloat(number, 64)
	if err != nil || !okWhole || point && !okFraction {
		return 0, fmt.Errorf("%w: percentage %q is not a number; write one like 62.5", ErrPlan, text)
	}
	return percent, nil
}

func parseReps(text string) (int, error) {
	if text == "" || strings.EqualFold(text, "day") {
		return 0, nil
	}
	n, ok := digits(text, 2)
	if !ok || n == 0 {
		return 0, fmt.Errorf("%w: reps %q are not a number from 1 to %d; write one, or day for the day's rep count", ErrPlan, text, gym.MaxReps)
	}
	return n, nil
}

// digits reads a plain whole number of at most so many digits.
func digits(text string, most int) (int, bool) {
	if text == "" || len(text) > most || strings.Trim(text, "0123456789") != "" {
		return 0, false
	}
	n, err := strconv.Atoi(text)
	return n, err == nil
}
