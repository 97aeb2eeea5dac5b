package exchange

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/repmax"
)

// records are the best standing results, to compare a roster's rep maxes with.
type records map[recordKey]gym.Result

type recordKey struct {
	athlete gym.ID
	lift    gym.LiftKey
	reps    int
}

func keyOfRecord(r gym.Result) recordKey { return recordKey{r.Athlete, r.Lift, r.Reps} }

func newRecords(book *gym.Book, lifts *liftFinder) records {
	best := records{}
	for _, r := range book.Results {
		key := keyOfRecord(r)
		if before, known := best[key]; r.Void == nil && (!known || repmax.Better(r, before, lifts.byKey[r.Lift].Measure)) {
			best[key] = r
		}
	}
	return best
}

// or returns the record that a result has to beat, in b or else in others.
func (b records) or(others records, r gym.Result) (record gym.Result, known bool) {
	if record, known = b[keyOfRecord(r)]; !known {
		record, known = others[keyOfRecord(r)]
	}
	return record, known
}

// shown writes what a result says, for messages.
func shown(r gym.Result) string {
	if r.Load > 0 {
		return writeLoad(r.Load, r.Unit)
	}
	return strconv.FormatFloat(r.Amount, 'f', -1, 64)
}

// The grammar of an amount of seconds, metres, repetitions or calories:
//
//	amount = [ minutes ":" ] number [ word ]
//	number = digits [ ( "." | "," ) digits ]
//	word   = of what the lift counts: "s", "sec", "m", "metres", "reps", "cal", …
//
// as in "1:02.5", "45 s", "200 m" and "31". Another word is refused: "2 min" is
// not two seconds.
func parseAmount(text string, by gym.Measure) (float64, error) {
	plain := strings.ToLower(strings.TrimSpace(strings.ReplaceAll(text, ",", ".")))
	digits := strings.TrimRightFunc(plain, func(r rune) bool { return r != '.' && (r < '0' || r > '9') })
	minutes, seconds, timed := strings.Cut(digits, ":")
	word := strings.TrimSpace(plain[len(digits):])
	if word != "" && !slices.Contains(amountWords[by], word) && !(timed && word == "min") {
		return 0, fmt.Errorf("%q is not an amount: %q is not what it is counted in; write one like %s", text, word, amountExamples[by])
	}
	if !timed {
		minutes, seconds = "0", digits
	}
	m, s := number(minutes), -1.0
	if x, err := strconv.ParseFloat(seconds, 64); err == nil && !strings.ContainsAny(seconds, "eExX+-_nN") {
		s = x
	}
	if m < 0 || m > 600 || s < 0 || timed && s >= 60 || m == 0 && s == 0 || s > 1e6 {
		return 0, fmt.Errorf("%q is not an amount; write one like 45, 31.5 or 1:02", text)
	}
	return float64(m)*60 + s, nil
}

var (
	secondWords = []string{"s", "sec", "secs", "second", "seconds"}
	amountWords = map[gym.Measure][]string{
		gym.ByTime: secondWords, gym.ByHold: secondWords,
		gym.ByDistance: {"m", "metre", "metres", "meter", "meters"},
		gym.ByReps:     {"rep", "reps", "x", "×"},
		gym.ByCalories: {"cal", "cals", "calorie", "calories", "kcal"},
	}
	amountExamples = map[gym.Measure]string{
		gym.ByTime: "62.5 s or 1:02.5", gym.ByHold: "45 s or 1:02", gym.ByDistance: "200 m", gym.ByReps: "31", gym.ByCalories: "31 cal",
		gym.ByLoad: "45, 31.5 or 1:02", "": "45, 31.5 or 1:02",
	}
)
