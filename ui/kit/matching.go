package kit

import (
	"slices"
	"sort"
	"strings"
)

// matching are the options whose name or note has every typed word, those first that
// begin with the whole text, then those with a word that does. A number is looked for
// in names alone: who types a load does not mean a chance that stands beside it.
func matching(options []Option, text string) []Option {
	text = strings.ToLower(strings.TrimSpace(text))
	var found []Option
	for _, o := range options {
		name, note := strings.ToLower(o.Text), strings.ToLower(o.Note)
		if hasAll(text, func(part string) bool {
			return strings.Contains(name, part) || !isNumber(part) && strings.Contains(note, part)
		}) {
			found = append(found, o)
		}
	}
	sort.SliceStable(found, func(i, j int) bool {
		return nearness(found[i].Text, text) < nearness(found[j].Text, text)
	})
	return found
}

// named are the options that a text can mean when nobody looks at the list: those
// that are called so, else those that begin with these words ("50" is "50 kg"), else
// those whose names have all its parts. A number is no part of another.
func named(options []Option, text string) []Option {
	text = strings.ToLower(strings.TrimSpace(text))
	for _, means := range []func(name string) bool{
		func(name string) bool { return name == text || unspaced(name) == unspaced(text) },
		func(name string) bool { return strings.HasPrefix(name, text+" ") },
		func(name string) bool {
			return hasAll(text, func(part string) bool {
				if isNumber(part) {
					return slices.Contains(strings.Fields(name), part)
				}
				return strings.Contains(name, part)
			})
		},
	} {
		var found []Option
		for _, o := range options {
			if means(strings.ToLower(o.Text)) {
				found = append(found, o)
			}
		}
		if len(found) > 0 {
			return found
		}
	}
	return nil
}

func unspaced(s string) string { return strings.ReplaceAll(s, " ", "") }

// hasAll reports whether every word of a text is there.
func hasAll(text string, there func(part string) bool) bool {
	for _, part := range strings.Fields(text) {
		if !there(part) {
			return false
		}
	}
	return true
}

// isNumber reports whether a word is written in digits.
func isNumber(word string) bool { return strings.Trim(word, "0123456789.,") == "" }

func nearness(name, text string) int {
	name = strings.ToLower(name)
	switch {
	case strings.HasPrefix(name, text):
		return 0
	case strings.Contains(name, " "+text):
		return 1
	}
	return 2
}
