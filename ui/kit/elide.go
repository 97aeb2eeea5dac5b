package kit

import (
	"sort"
	"strings"
)

// elide cuts text to a width and ends it with an ellipsis, so that a reader can
// see that something is missing. It returns "" when not even that has room.
func elide(text string, size float32, bold bool, width float32) string {
	if widthOf(text, size, bold) <= width {
		return text
	}
	runes := []rune(text)
	// The first length that is too wide; one less still fits.
	n := sort.Search(len(runes), func(n int) bool {
		return widthOf(string(runes[:n])+"…", size, bold) > width
	})
	if n == 0 {
		return ""
	}
	return string(runes[:n-1]) + "…"
}

// wrap breaks text into lines of at most the given width, at spaces; a newline
// always breaks. A word that is too long stands alone and is cut by elide.
func wrap(text string, size float32, bold bool, width float32) []string {
	var lines []string
	for _, paragraph := range strings.Split(text, "\n") {
		line := ""
		for _, word := range strings.Fields(paragraph) {
			switch {
			case line == "":
				line = word
			case widthOf(line+" "+word, size, bold) <= width:
				line += " " + word
			default:
				lines, line = append(lines, line), word
			}
		}
		lines = append(lines, line)
	}
	for i, line := range lines {
		lines[i] = elide(line, size, bold, width)
	}
	return lines
}
