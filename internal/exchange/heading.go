package exchange

import (
	"slices"
	"strconv"
	"strings"
	"unicode"

	"windlass/internal/mass"
)

// The grammar of a column's heading, in any case and with any signs between the
// words:
//
//	heading = { word | reps | unit }
//	reps    = number "rm" | "rm" number | number "rep" | number "reps"
//	unit    = as package mass reads it
//
// as in "Back Squat 1RM", "back squat 1 rm (lb)", "5RM bench [kg]", "Load (kg)".
type heading struct {
	words []string // what is left: the name of a column or of a lift
	reps  int      // 0 when none stands there
	unit  mass.Unit
}

func readHeading(text string) heading {
	var h heading
	tokens := tokens(text)
	for i := 0; i < len(tokens); i++ {
		var next string
		if i+1 < len(tokens) {
			next = tokens[i+1]
		}
		used := h.take(tokens[i], next)
		i += max(0, used-1)
		if used == 0 {
			h.words = append(h.words, tokens[i])
		}
	}
	return h
}

// take reads reps or a unit and returns how many tokens that were.
func (h *heading) take(token, next string) int {
	if n, ok := count(token); ok && isRM(next) && h.reps == 0 {
		h.reps = n
		return 2
	}
	if n, ok := count(next); ok && (token == "rm" || token == "x") && h.reps == 0 {
		h.reps = n
		return 2
	}
	// In a heading "#" means a number: "Athlete #".
	if unit, err := mass.ParseUnit(token); err == nil && token != "#" && h.unit == "" {
		h.unit = unit
		return 1
	}
	return 0
}

func isRM(token string) bool {
	return slices.Contains([]string{"rm", "rms", "rep", "reps"}, token)
}

func count(token string) (int, bool) {
	n, err := strconv.Atoi(token)
	return n, err == nil && n >= 1
}

// tokens splits a heading into words and numbers, in lower case.
func tokens(text string) []string {
	var out []string
	var word strings.Builder
	flush := func() {
		if word.Len() > 0 {
			out = append(out, word.String())
			word.Reset()
		}
	}
	var last rune
	for _, r := range strings.ToLower(text) {
		letter, digit := unicode.IsLetter(r) || unicode.IsMark(r), unicode.IsDigit(r)
		switch {
		case !letter && !digit && !strings.ContainsRune("&+'#", r):
			flush()
		case digit != unicode.IsDigit(last):
			flush()
			word.WriteRune(r)
		default:
			word.WriteRune(r)
		}
		last = r
	}
	flush()
	return out
}

// key is the words run together: what a column's names are compared by.
func (h heading) key() string { return strings.Join(h.words, "") }

// bestWords stand beside the name of a lift and say nothing more than its reps do.
var bestWords = []string{"max", "maximum", "best", "pr", "pb", "record", "rm", "current"}

// withoutBest leaves those words out.
func (h heading) withoutBest() heading {
	h.words = slices.DeleteFunc(slices.Clone(h.words), func(w string) bool { return slices.Contains(bestWords, w) })
	return h
}
