package conditioning

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
)

// ErrTitle marks a text that sets out to be a format and is none.
var ErrTitle = errors.New("no format that is known")

// The grammar of what stands under "workout" in a log. Words are told apart by
// spaces and commas; case does not matter.
//
//	workout = line                       with its movements, as [Parse] reads it
//	        | title                      any words with the name of a format among them
//	        | name                       what a coach calls it: "Monday", "Week 3 day 2"
//	title   = { word } format { word }
//	format  = "amrap" | "emom" | "chipper" | "for time" | "intervals" | "sets"
//	        | number "rounds" | number "x" length | reps
//	length  = clock | number [ "min" | "s" ]     of an AMRAP, of an EMOM, after "cap"
//
// A word that is nearly a format is a slip of the hand, and so is an unknown word
// with a number behind it, as the number can only be a length or a count. A number
// that only tells one day from the next stands behind a word like "week".

// ReadTitle reads what a log says of a workout as far as a score needs it: the
// format, and the length, the cap and the rounds where they are said. A name has no
// format. The error wraps [ErrTitle], or says what is wrong with a whole line.
func ReadTitle(text string, find Find) (gym.Workout, error) {
	if isLine(text) {
		return Parse(text, find)
	}
	words := titleWords(text)
	w := gym.Workout{Format: titleFormat(words)}
	switch w.Format {
	case "":
		return w, strangeTitle(text, words)
	case gym.AMRAP, gym.EMOM:
		w.Seconds = firstLength(words)
	case gym.ForTime, gym.Chipper:
		if at := slices.Index(words, "cap"); at >= 0 {
			w.Cap = firstLength(words[at+1:])
		}
	}
	if w.Seconds > longest || w.Cap > longest {
		return w, fmt.Errorf("read workout %q: %w: %s is over %s; check the minutes", text, ErrLength, clock(max(w.Seconds, w.Cap)), clock(longest))
	}
	return w, strangeItems(text, find)
}

// strangeItems refuses a title that goes on as a whole line does, an amount and a
// movement in every part behind its colon, when not one of them is known.
func strangeItems(text string, find Find) error {
	head, body, ok := cutHead(text)
	if !ok || find == nil || titleFormat(titleWords(head)) == "" {
		return nil
	}
	strange := ""
	for _, part := range strings.FieldsFunc(body, func(r rune) bool { return r == ',' || r == ';' }) {
		item, why := parseItem(part, nil)
		if why != "" || item.Amount == 0 || titleFormat(titleWords(part)) != "" {
			return nil
		}
		if _, why = parseItem(part, find); why == "" {
			return nil
		}
		if strange == "" {
			strange = why
		}
	}
	if strange == "" {
		return nil
	}
	return fmt.Errorf("read workout %q: %w: %s, nor is anything else in it; write movements as there, or the format alone", text, ErrMovement, strange)
}

// isLine knows a whole line by its head; a name may have a colon in it too.
func isLine(text string) bool {
	head, body, ok := cutHead(text)
	if !ok || strings.TrimSpace(body) == "" {
		return false
	}
	_, why := parseHead(strings.Fields(strings.ToLower(head)))
	return why == ""
}

// titleWords parts a title into its words; a multiplication sign is an "x".
func titleWords(text string) []string {
	return strings.Fields(strings.NewReplacer(",", " ", ";", " ", "×", " x ", ": ", " ").Replace(strings.ToLower(text)))
}

// formatWords are the words that name a format by themselves.
var formatWords = map[string]gym.Format{
	"amrap": gym.AMRAP, "emom": gym.EMOM, "chipper": gym.Chipper,
	"intervals": gym.Intervals, "interval": gym.Intervals, "sets": gym.PlainSets, "set": gym.PlainSets,
}

// titleFormat finds the format of a title; a name has none.
func titleFormat(words []string) gym.Format {
	for _, word := range words {
		if f, ok := formatWords[word]; ok {
			return f
		}
	}
	for i, word := range words {
		before, after := "", ""
		if i > 0 {
			before = words[i-1]
		}
		if i+1 < len(words) {
			after = words[i+1]
		}
		switch {
		case word == "for" && after == "time":
			return gym.ForTime
		case (word == "rounds" || word == "round") && whole(before) > 0:
			return gym.ForTime
		case word == "x" && whole(before) > 0 && lengthOf(after, "") > 0:
			return gym.Intervals
		case descends(word):
			return gym.ForTime
		}
	}
	return ""
}

// descends knows a rep list by itself; three numbers whose first has four digits are
// a date.
func descends(word string) bool {
	reps := parseReps(word)
	return reps != nil && reps[0] < 1000
}

// counters are words before a number that only tells one day from the next.
var counters = []string{
	"week", "wk", "w", "day", "d", "session", "class", "workout", "conditioning", "metcon", "block", "cycle", "test",
	"part", "phase", "round", "bout", "no", "no.", "nr", "number", "month", "training", "group", "track", "wod", "piece",
	"series", "event", "run", "trial", "entry", "meeting", "version", "v", "year", "lesson", "hour",
}

// strangeTitle says why a text without a format is no name either.
func strangeTitle(text string, words []string) error {
	for i, word := range words {
		if near := nearFormat(words[i:]); near != "" {
			return fmt.Errorf("read workout %q: %w; nearest: %s", text, ErrTitle, near)
		}
		if i > 0 && lengthOf(word, "") > 0 && !slices.Contains(counters, words[i-1]) {
			return fmt.Errorf("read workout %q: %w: %q with a number is none of amrap, for time, chipper, emom, intervals and sets; write one of them, or a name without the number",
				text, ErrTitle, strings.Join(words[:i], " "))
		}
	}
	return nil
}

// nearFormat returns the format that the next word, or the next two, may be meant
// for: one slip of the pen away. Of a short word too much would be near.
func nearFormat(words []string) string {
	tries := []string{words[0]}
	if len(words) > 1 {
		tries = append(tries, words[0]+" "+words[1])
	}
	for _, known := range []string{"amrap", "emom", "chipper", "intervals", "for time"} {
		for _, try := range tries {
			if len(try) >= 4 && oneSlip(try, known) {
				return known
			}
		}
	}
	return ""
}

// oneSlip reports whether two words differ by one letter that is missing, too many,
// wrong, or changed with its neighbour.
func oneSlip(a, b string) bool {
	if len(a) > len(b) {
		a, b = b, a
	}
	i := 0
	for i < len(a) && a[i] == b[i] {
		i++
	}
	if len(a) < len(b) {
		return a[i:] == b[i+1:]
	}
	swapped := i+1 < len(a) && a[i] == b[i+1] && a[i+1] == b[i] && a[i+2:] == b[i+2:]
	return i < len(a) && (a[i+1:] == b[i+1:] || swapped)
}

// firstLength returns the first length among words in seconds, and 0 for none.
func firstLength(words []string) int {
	for i, word := range words {
		unit := ""
		if i+1 < len(words) {
			unit = words[i+1]
		}
		if n := lengthOf(word, unit); n > 0 {
			return n
		}
	}
	return 0
}

// lengthOf reads a length in seconds: a clock's time, seconds, or else minutes.
func lengthOf(word, unit string) int {
	if n, ok := parseClock(word); ok {
		return n
	}
	digits := strings.TrimRight(word, "abcdefghijklmnopqrstuvwxyz")
	if mark := word[len(digits):]; mark != "" {
		unit = mark
	}
	n := whole(digits)
	switch unit {
	case "s", "sec", "secs", "second", "seconds":
		return n
	}
	if mark := word[len(digits):]; mark == "" || strings.HasPrefix(mark, "min") || mark == "m" {
		return 60 * n
	}
	return 0
}
