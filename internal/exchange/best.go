package exchange

import (
	"fmt"
	"strconv"
	"strings"

	"windlass/internal/gym"
)

// records are the best standing results, to compare a roster's rep maxes with.
type records map[recordKey]gym.Result

type recordKey struct {
	athlete gym.ID
	lift    gym.LiftKey
	reps    int
}

func newRecords(book *gym.Book, lifts *liftFinder) records {
	best := records{}
	for _, r := range book.Results {
		if r.Void == nil {
			best.raise(r, lifts.byKey[r.Lift].Measure)
		}
	}
	return best
}

// raise keeps r if it is the first or beats the record, and reports whether it is
// as good as the record at least.
func (b records) raise(r gym.Result, by gym.Measure) (before gym.Result, raised bool) {
	key := recordKey{r.Athlete, r.Lift, r.Reps}
	before, known := b[key]
	if known && !beats(r, before, by) {
		return before, false
	}
	b[key] = r
	return before, true
}

func beats(r, best gym.Result, by gym.Measure) bool {
	switch by {
	case gym.ByTime:
		return r.Amount < best.Amount
	case gym.ByLoad, "":
		return r.Load > best.Load
	}
	return r.Amount > best.Amount
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
//
// as in "1:02.5", "45 s", "200 m" and "31".
func parseAmount(text string) (float64, error) {
	plain := strings.TrimRightFunc(strings.ReplaceAll(text, ",", "."), func(r rune) bool { return r != '.' && (r < '0' || r > '9') })
	minutes, seconds, timed := strings.Cut(plain, ":")
	if !timed {
		minutes, seconds = "0", plain
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
