package conditioning

import (
	"fmt"
	"strings"

	"windlass/internal/gym"
)

// Words says for a coach whether a class can do a workout at once, what it lacks
// and which way it gets by; seconds is how long a usual athlete takes for it.
func (c Crowd) Words(s Sharing, seconds int) string {
	switch {
	case c.Size == 0:
		return ""
	case !s.Asks:
		return fmt.Sprintf("All %d can work at once: it takes no implements.", c.Size)
	case len(s.Short) == 0 && len(s.Uncounted) == 0:
		return fmt.Sprintf("All %d can work at once: there is enough of everything it takes.", c.Size)
	case len(s.Short) == 0:
		return fmt.Sprintf("All %d can work at once, if there are enough of what nobody has counted: %s.", c.Size, kinds(s.Uncounted))
	}
	return fmt.Sprintf("Too few for all %d at once: %s. %s", c.Size, c.lacks(s.Short, 3), s.mend(seconds))
}

// mend says how a class gets by.
func (s Sharing) mend(seconds int) string {
	w := s.Way
	if w.Heats == 0 {
		return fmt.Sprintf("Even %s would not do: choose other loads or another movement.", heats(mostHeats))
	}
	var parts []string
	if w.Starts > 1 {
		parts = append(parts, fmt.Sprintf("begin at different movements, in %d groups", w.Starts))
	}
	if w.Turns > 1 {
		parts = append(parts, fmt.Sprintf("take turns, %s working while the others rest", share(w.Turns)))
	}
	if w.Heats > 1 {
		parts = append(parts, fmt.Sprintf("go in %s, about %d min in all", heats(w.Heats), minutes(w.Heats*seconds)))
	}
	return sentence(list(parts, "and") + ".")
}

// lacks lists the greatest shortages.
func (c Crowd) lacks(short []Shortage, most int) string {
	var parts []string
	for _, s := range short[:min(most, len(short))] {
		parts = append(parts, c.lack(s))
	}
	if n := len(short) - most; n > 0 {
		parts = append(parts, fmt.Sprintf("%d more", n))
	}
	return list(parts, "and")
}

// lack writes a shortage: "16 kg kettlebell, 9 wanted and 4 there".
func (c Crowd) lack(s Shortage) string {
	what := kind(s.Pool.Kind)
	if s.Pool.Mass > 0 {
		what = s.Pool.Mass.In(c.Owned.Unit(s.Pool.Kind)) + " " + what
	}
	return fmt.Sprintf("%s (%d wanted, %d there)", what, s.Wanted, s.There)
}

// kind writes a kind of implement as coaches do.
func kind(slug string) string { return strings.ReplaceAll(slug, "-", " ") }

func kinds(slugs []string) string {
	names := make([]string, len(slugs))
	for i, k := range slugs {
		names[i] = kind(k)
	}
	return list(names, "and")
}

func heats(n int) string { return [...]string{"", "one heat", "two heats", "three heats"}[n] }

// share names a part of so many.
func share(n int) string { return [...]string{"", "all", "half", "a third", "a quarter"}[n] }

// sentence begins a text with a capital letter.
func sentence(text string) string { return strings.ToUpper(text[:1]) + text[1:] }

// leftOut tells which movements a class has too few implements for.
func (c Crowd) leftOut(movements []gym.Movement) string {
	const most = 2
	var parts []string
	for _, m := range movements[:min(most, len(movements))] {
		parts = append(parts, m.Name)
	}
	if n := len(movements) - most; n > 0 {
		parts = append(parts, fmt.Sprintf("%d more", n))
	}
	return fmt.Sprintf("Left out, as there are too few implements for a class of %d: %s.", c.Size, list(parts, "and"))
}
