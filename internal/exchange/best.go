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

func keyOfRecord(r gym.Result) recordKey { return recordKey{r.Athlete, r.Lift, r.Reps} }

func newRecords(book *gym.Book, lifts *liftFinder) records {
	best := records{}
	for _, r := range book.Results {
		key := keyOfRecord(r)
		if before, known := best[key]; r.Void == nil && (!known || beats(r, before, lifts.byKey[r.Lift].Measure)) {
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
