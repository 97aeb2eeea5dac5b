package exchange

import "strings"

// A spreadsheet runs a cell that begins with one of these signs as a formula,
// wherever the text came from. An apostrophe before it makes it text.
const formulaSigns = "=+-@\t\r"

// guard makes a text harmless to a spreadsheet. A text that looks guarded gets a
// guard too, so that unguard gives back every text as it was.
func guard(text string) string {
	if text != "" && (strings.Contains(formulaSigns, text[:1]) || guarded(text)) {
		return "'" + text
	}
	return text
}

// guarded reports whether a text begins with apostrophes and then a formula's sign.
func guarded(text string) bool {
	rest := strings.TrimLeft(text, "'")
	return rest != text && rest != "" && strings.Contains(formulaSigns, rest[:1])
}

func unguard(cells []string) []string {
	for i, c := range cells {
		if guarded(c) {
			cells[i] = c[1:]
		}
	}
	return cells
}
