package gym

import (
	"errors"
	"fmt"
	"slices"
	"strings"
)

// The two ways in which a name can fail to mean one thing.
var (
	ErrUnknownName   = errors.New("nothing has that name")
	ErrAmbiguousName = errors.New("the name could mean several")
)

// Names finds what a name written by hand means. Names match without regard to
// case and to spaces around and between the words; those of lifts and movements
// also without regard to anything but letters and digits. A key is a name too.
type Names[K ~string] struct {
	noun    string
	fold    func(string) string
	keys    map[K]bool
	names   map[string][]K // by what fold makes of them
	others  map[string][]K // aliases and keys, asked when no name matches
	nearest []string       // the names as they are written, for suggestions
}

// AthleteNames finds athletes by name or ID, archived ones too.
func AthleteNames(athletes []Athlete) *Names[ID] {
	n := newNames[ID]("athlete", FoldName, len(athletes))
	for _, a := range athletes {
		n.Add(a.Name, a.ID)
	}
	return n
}

// TrackNames finds tracks by name or ID.
func TrackNames(tracks []Track) *Names[ID] {
	n := newNames[ID]("track", FoldName, len(tracks))
	for _, t := range tracks {
		n.Add(t.Name, t.ID)
	}
	return n
}

// LiftNames finds lifts by name, key or alias, hidden ones too.
func LiftNames(lifts []Lift) *Names[LiftKey] {
	n := newNames[LiftKey]("lift", spelling, len(lifts))
	for _, l := range lifts {
		n.Add(l.Name, l.Key)
		for _, alias := range l.Aliases {
			n.addOther(alias, l.Key)
		}
	}
	return n
}

// MovementNames finds movements by name or key, hidden ones too.
func MovementNames(movements []Movement) *Names[MovementKey] {
	n := newNames[MovementKey]("movement", spelling, len(movements))
	for _, m := range movements {
		n.Add(m.Name, m.Key)
	}
	return n
}

func newNames[K ~string](noun string, fold func(string) string, size int) *Names[K] {
	return &Names[K]{noun: noun, fold: fold, keys: make(map[K]bool, size), names: make(map[string][]K, size), others: make(map[string][]K, size)}
}

// Add makes a name, and the key itself, mean a key.
func (n *Names[K]) Add(name string, key K) {
	n.keys[key] = true
	insert(n.names, n.fold(name), key)
	n.addOther(string(key), key)
	n.nearest = append(n.nearest, name)
}

func (n *Names[K]) addOther(name string, key K) { insert(n.others, n.fold(name), key) }

func insert[K comparable](to map[string][]K, name string, key K) {
	if name != "" && !slices.Contains(to[name], key) {
		to[name] = append(to[name], key)
	}
}

// Find returns the key that a name means. The error wraps ErrUnknownName and
// lists the nearest names, or ErrAmbiguousName and lists the keys it could mean.
func (n *Names[K]) Find(name string) (K, error) {
	keys := n.Keys(name)
	switch len(keys) {
	case 1:
		return keys[0], nil
	case 0:
		return "", fmt.Errorf("find %s %q: %w%s", n.noun, name, ErrUnknownName, n.suggest(name))
	}
	return "", fmt.Errorf("find %s %q: %w: %s; write one of these instead", n.noun, name, ErrAmbiguousName, list(keys))
}

// Keys returns all that a name could mean. A key to the letter means itself; then
// a name comes before an alias or a key that looks the same.
func (n *Names[K]) Keys(name string) []K {
	if key := K(strings.TrimSpace(name)); n.keys[key] {
		return []K{key}
	}
	folded := n.fold(name)
	if keys := n.names[folded]; len(keys) > 0 {
		return keys
	}
	return n.others[folded]
}

// few is how many names are all told when none is near.
const few = 12

func (n *Names[K]) suggest(name string) string {
	near := Nearest(name, n.nearest, 3)
	switch {
	case len(n.nearest) == 0:
		return "; there is no " + n.noun + " yet"
	case len(near) > 0:
		return "; nearest: " + strings.Join(near, ", ")
	case len(n.nearest) <= few:
		return "; there are " + strings.Join(n.nearest, ", ")
	}
	return "; check how it is spelt"
}

func list[K ~string](keys []K) string {
	quoted := make([]string, len(keys))
	for i, k := range keys {
		quoted[i] = string(k)
	}
	return strings.Join(quoted, ", ")
}

// FoldName is what two spellings of one person's name have in common: no case,
// no spaces around it, one space between words, one sort of apostrophe and hyphen.
func FoldName(name string) string {
	return typographic.Replace(strings.Join(strings.Fields(strings.ToLower(name)), " "))
}

var typographic = strings.NewReplacer("’", "'", "‘", "'", "ʼ", "'", "‐", "-", "‑", "-", "–", "-")

// Nearest returns up to most of the names that are near to one, the nearest
// first: those that begin with it or have a word that does, and those within a
// few slips of the pen, which are one for every three letters and at least two.
// A slip is a letter too many, missing, wrong, or changed with its neighbour. A
// single word is also held against each word of a name, and the words of a name
// may be turned round, as in "Ash, Ann".
func Nearest(name string, among []string, most int) []string {
	want := FoldName(name)
	if want == "" {
		return nil
	}
	type near struct {
		name  string
		slips int
	}
	var found []near
	allowed := max(2, len([]rune(want))/3)
	for _, n := range among {
		if slips := slipsBetween(want, FoldName(n), allowed); slips <= allowed {
			found = append(found, near{n, slips})
		}
	}
	slices.SortStableFunc(found, func(a, b near) int { return a.slips - b.slips })
	var out []string
	for _, f := range found {
		if len(out) < most && !slices.Contains(out, f.name) {
			out = append(out, f.name)
		}
	}
	return out
}

// slipsBetween counts a beginning of the name, or of a word in it, as one slip,
// and words left out or turned round as one more.
func slipsBetween(want, name string, allowed int) int {
	if strings.HasPrefix(name, want) || strings.Contains(name, " "+want) {
		return min(1, len(name)-len(want))
	}
	best := slips([]rune(want), []rune(name), allowed)
	if last, first, turned := strings.Cut(want, ", "); turned {
		return min(best, 1+slips([]rune(first+" "+last), []rune(name), allowed))
	}
	if strings.Contains(want, " ") || len(want) < shortWord {
		return best
	}
	for word := range strings.FieldsSeq(name) {
		best = min(best, 1+slips([]rune(want), []rune(word), allowed))
	}
	return best
}

// shortWord is how many letters a word must have for a slip in it to say
// anything: with two of three letters wrong it could be any.
const shortWord = 4

// slips is the restricted Damerau–Levenshtein distance, row by row; it gives up
// with allowed+1 as soon as no way through a row stays within allowed.
func slips(a, b []rune, allowed int) int {
	if len(a)-len(b) > allowed || len(b)-len(a) > allowed {
		return allowed + 1
	}
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+differ(a[i-1], b[j-1]))
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		if slices.Min(row) > allowed && slices.Min(last) > allowed {
			return allowed + 1
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}

func differ(a, b rune) int {
	if a == b {
		return 0
	}
	return 1
}
