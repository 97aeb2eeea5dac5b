package desk

import "strings"

// shortNames shortens whole names for where there is no room: the first name and so
// much of the last as tells them apart, "Ada L.", "Ada Lu.", "Ada Ly.". Who cannot
// be told apart keeps the whole name.
func shortNames(names []string) []string {
	short := make([]string, len(names))
	for i, name := range names {
		first, last, ok := ends(name)
		short[i] = name
		for n := 1; ok && n < len(last); n++ {
			if text := first + " " + string(last[:n]) + "."; unlike(text, i, names) {
				short[i] = text
				break
			}
		}
	}
	return short
}

// ends are the first and the last word of a name.
func ends(name string) (first string, last []rune, ok bool) {
	words := strings.Fields(name)
	if len(words) < 2 {
		return name, nil, false
	}
	return words[0], []rune(words[len(words)-1]), true
}

// unlike reports whether a shortened name fits nobody but its own.
func unlike(short string, own int, names []string) bool {
	for i, name := range names {
		first, last, ok := ends(name)
		whole := first
		if ok {
			whole += " " + string(last)
		}
		if i != own && strings.HasPrefix(whole, strings.TrimSuffix(short, ".")) {
			return false
		}
	}
	return true
}
