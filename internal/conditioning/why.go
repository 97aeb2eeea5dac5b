package conditioning

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
)

// why gives the reasons of a proposal.
func (c *composer) why(p Proposal, movements []gym.Movement) []string {
	b := c.brief
	why := []string{c.whyFormat()}
	if b.Main.Key != "" {
		if i := slices.IndexFunc(movements, c.supports); i >= 0 {
			why = append(why, fmt.Sprintf("%s supports %s (%s).", movements[i].Name, b.Main.Name, bodyOf(b.Main.Region)))
		} else {
			why = append(why, fmt.Sprintf("Nothing in it supports %s: %s.", b.Main.Name, told(c.lost)))
		}
	}
	if b.Next.Key != "" {
		why = append(why, fmt.Sprintf("No lift of the %s is in it, and nothing moves as %s does, which comes next.", bodyOf(b.Next.Region), b.Next.Name))
	}
	if b.Apart > 1 {
		why = append(why, fmt.Sprintf("No movement in it comes again within %d days, before or after.", b.Apart-1))
	}
	if note := TurnsNote(p.Workout); note != "" {
		why = append(why, note)
	}
	if b.Crowd.Size > 0 {
		why = append(why, b.Crowd.Words(p.Sharing, p.Duration.Usual.Seconds))
		if len(c.scarce) > 0 {
			why = append(why, b.Crowd.leftOut(c.scarce))
		}
	}
	return append(why, fmt.Sprintf("It takes a usual athlete about %s (%s).", clock(p.Duration.Usual.Seconds), p.Duration.Minutes()))
}

// whyFormat says where the format comes from.
func (c *composer) whyFormat() string {
	day := "A day of " + repsOf(c.brief.Reps)
	if _, listed := c.brief.Table[c.brief.Reps]; !listed {
		return day + ": your table has no row for it, so any of its formats may come."
	}
	return day + ": your table gives it " + list(names(c.formats), "or") + "."
}

func repsOf(n int) string {
	switch n {
	case 0:
		return "no rep max"
	case 1:
		return "singles"
	}
	return fmt.Sprintf("sets of %d", n)
}

func names(formats []gym.Format) []string {
	var all []string
	for _, f := range formats {
		all = append(all, nameOf(f))
	}
	return all
}

// bodyOf writes a region as coaches do.
func bodyOf(r gym.Region) string {
	if r == gym.Trunk {
		return string(r)
	}
	return string(r) + " body"
}

// TurnsNote says of a format whose movements take turns that they do; it is empty
// for any other, and for a single movement.
func TurnsNote(w gym.Workout) string {
	if len(w.Items) < 2 {
		return ""
	}
	switch w.Format {
	case gym.EMOM:
		return "One movement a minute, in turn."
	case gym.Intervals:
		return "One movement a round, in turn."
	}
	return ""
}

// NameOf writes a format as coaches do where it stands alone: "For time", "AMRAP".
func NameOf(f gym.Format) string { return sentence(nameOf(f)) }

// nameOf writes a format as coaches do.
func nameOf(f gym.Format) string {
	switch f {
	case gym.AMRAP, gym.EMOM:
		return strings.ToUpper(string(f))
	}
	return strings.ReplaceAll(string(f), "-", " ")
}

// list joins words as in "a, b or c".
func list(words []string, last string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	n := len(words) - 1
	return strings.Join(words[:n], ", ") + " " + last + " " + words[n]
}
