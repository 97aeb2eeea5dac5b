package desk

import (
	"strconv"
	"strings"
)

// Count writes a number with its noun: "1 athlete", "3 athletes", "2 classes".
func Count(n int, noun string) string {
	switch {
	case n == 1:
	case strings.HasSuffix(noun, "s"), strings.HasSuffix(noun, "x"):
		noun += "es"
	default:
		noun += "s"
	}
	return strconv.Itoa(n) + " " + noun
}

func count(n int, noun string) string { return Count(n, noun) }
