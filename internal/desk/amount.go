package desk

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"windlass/internal/gym"
)

// amountWords are what may stand behind an amount, the one that is written first.
var amountWords = map[gym.Measure][]string{
	gym.ByReps:     {"reps", "rep", "r"},
	gym.ByDistance: {"m", "metres", "meters"},
	gym.ByTime:     {"s", "sec", "seconds"},
	gym.ByHold:     {"s", "sec", "seconds"},
	gym.ByCalories: {"cal"},
}

// ParseAmount reads what is counted of a lift: seconds for a time, metres for a
// distance, a number of reps.
//
//	amount = [ minutes ":" ] number [ word ]
//	number = digits [ ( "." | "," ) digits ]
//
// as in "1:02.5", "45 s", "60 m" and "31". Minutes are for times alone.
func ParseAmount(text string, by gym.Measure) (float64, error) {
	refuse := func(why string) (float64, error) {
		return 0, fmt.Errorf("read amount %q: %s; write one like %s", text, why, AmountText(amountExamples[by], by))
	}
	words, measured := amountWords[by]
	if !measured {
		return 0, fmt.Errorf("read amount %q: a lift counted by %q has no amount", text, by)
	}
	number, word := cutWord(text)
	if word != "" && !slices.Contains(words, word) {
		return refuse(fmt.Sprintf("%q is not what this lift is counted in", word))
	}
	minutes := 0.0
	if before, after, timed := strings.Cut(number, ":"); timed {
		whole, err := strconv.ParseUint(before, 10, 16)
		if err != nil || words[0] != "s" {
			return refuse("minutes do not fit")
		}
		minutes, number = float64(whole), after
	}
	x, err := strconv.ParseFloat(strings.ReplaceAll(number, ",", "."), 64)
	if err != nil || strings.ContainsAny(number, "eExX+-_iInN") {
		return refuse("it is not a number")
	}
	if minutes > 0 && x >= 60 {
		return refuse("a minute has 60 seconds")
	}
	switch x = 60*minutes + x; {
	case !(x > 0 && x <= 86_400):
		return refuse("nobody does that much or that little")
	case by == gym.ByReps && x != math.Trunc(x):
		return refuse("reps are whole")
	}
	return x, nil
}

// amountExamples stand in what is said of an amount that cannot be read.
var amountExamples = map[gym.Measure]float64{gym.ByReps: 31, gym.ByDistance: 60, gym.ByTime: 62.5, gym.ByHold: 45, gym.ByCalories: 20}

// cutWord parts a number from the letters behind it.
func cutWord(text string) (number, word string) {
	text = strings.ToLower(strings.TrimSpace(text))
	at := strings.IndexFunc(text, func(r rune) bool { return r >= 'a' && r <= 'z' })
	if at < 0 {
		return text, ""
	}
	return strings.TrimSpace(text[:at]), strings.TrimSpace(text[at:])
}

// AmountText writes an amount as [ParseAmount] reads it.
func AmountText(amount float64, by gym.Measure) string {
	number := func(x float64) string { return strconv.FormatFloat(math.Round(x*100)/100, 'f', -1, 64) }
	words, measured := amountWords[by]
	switch {
	case !measured:
		return number(amount)
	case words[0] == "s" && amount >= 60:
		minutes := math.Floor(amount / 60)
		seconds := number(amount - 60*minutes)
		if len(seconds) == 1 || strings.Index(seconds, ".") == 1 {
			seconds = "0" + seconds
		}
		return fmt.Sprintf("%.0f:%s", minutes, seconds)
	}
	return number(amount) + " " + words[0]
}
