package conditioning

import (
	"errors"
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"

	"windlass/internal/gym"
)

// ErrNoProposal says that no workout meets every wish of a brief.
var ErrNoProposal = errors.New("no workout fits")

// Table is the coach's own: the formats for a day of a rep count. A rep count
// that it lacks takes any of its formats.
type Table map[int][]gym.Format

// DefaultTable gives long work to the days of many reps and short work to those of
// one, which tire most (common practice, no source).
func DefaultTable() Table {
	return Table{
		5: {gym.ForTime, gym.Chipper, gym.AMRAP},
		3: {gym.AMRAP, gym.EMOM, gym.ForTime},
		1: {gym.Intervals, gym.EMOM},
	}
}

// Brief is what a workout is wanted for.
type Brief struct {
	Main      gym.Lift                // the day's main lift; the zero value is none
	Reps      int                     // the day's rep count
	Next      gym.Lift                // the next day's main lift, to be spared; the zero value is none
	Since     map[gym.MovementKey]int // days since a movement was last done
	Apart     int                     // a movement done fewer days ago is left out
	Class     int                     // athletes in the class
	Places    map[string]int          // by kind of implement, how many can work at once; a kind that is missing has none
	Shortest  int                     // seconds of the window the workout has to fit, for a usual athlete
	Longest   int
	Movements []gym.Movement
	Table     Table
	Pace      Pace
}

// Proposal is a workout with the reasons for it.
type Proposal struct {
	Workout  gym.Workout
	Duration Duration
	Why      []string // a sentence each: format, movements, spared, length
}

// tries is how many workouts are drawn before giving up.
const tries = 400

// Compose proposes a workout. The same brief and seed give the same one, another
// seed likely another. The error wraps [ErrNoProposal] and says which wish left
// too little to choose from.
func Compose(b Brief, seed uint64) (Proposal, error) {
	c, err := newComposer(b, seed)
	if err != nil {
		return Proposal{}, err
	}
	for range tries {
		if p, ok := c.draw(); ok {
			return p, nil
		}
	}
	return Proposal{}, refuse("nothing of %s to %s came up; widen the window or the table of formats",
		clock(b.Shortest), clock(b.Longest))
}

func refuse(format string, a ...any) error {
	return fmt.Errorf("compose workout: %w: %s", ErrNoProposal, fmt.Sprintf(format, a...))
}

type composer struct {
	brief   Brief
	random  *rand.Rand
	formats []gym.Format
	support []gym.Movement // of the main lift's region
	other   []gym.Movement
	byKey   map[gym.MovementKey]gym.Movement
}

func newComposer(b Brief, seed uint64) (*composer, error) {
	c := &composer{brief: b, random: rand.New(rand.NewPCG(seed, 0x9e3779b97f4a7c15)), byKey: map[gym.MovementKey]gym.Movement{}}
	if b.Shortest < 0 || b.Longest < b.Shortest || b.Longest == 0 {
		return nil, refuse("the window from %s to %s is none", clock(max(0, b.Shortest)), clock(max(0, b.Longest)))
	}
	if c.formats = b.Table.of(b.Reps); len(c.formats) == 0 {
		return nil, refuse("the table of formats is empty")
	}
	left := map[reason]int{}
	for _, m := range b.Movements {
		c.byKey[m.Key] = m
		switch why := b.unfit(m); {
		case why != fits:
			left[why]++
		case c.supports(m):
			c.support = append(c.support, m)
		default:
			c.other = append(c.other, m)
		}
	}
	switch {
	case len(c.support)+len(c.other) < 2:
		return nil, refuse("of %d movements %s", len(b.Movements), told(left))
	case b.Main.Key != "" && len(c.support) == 0 && !b.clash():
		return nil, refuse("no movement supports the %s of %s: %s", bodyOf(b.Main.Region), b.Main.Name, told(left))
	}
	return c, nil
}

// of returns the formats for a rep count, or all of them in order of rep counts.
func (t Table) of(reps int) []gym.Format {
	if formats, ok := t[reps]; ok {
		return formats
	}
	var all []gym.Format
	for _, n := range slices.Sorted(func(yield func(int) bool) {
		for n := range t {
			if !yield(n) {
				return
			}
		}
	}) {
		for _, f := range t[n] {
			if !slices.Contains(all, f) {
				all = append(all, f)
			}
		}
	}
	return all
}

// reason is why a movement is left out.
type reason string

const (
	fits    reason = ""
	recent  reason = "was done too lately"
	tires   reason = "would tire the next day's lift"
	missing reason = "lacks implements for the class"
	unclear reason = "cannot be timed"
)

func told(left map[reason]int) string {
	var parts []string
	for _, why := range []reason{recent, tires, missing, unclear} {
		if n := left[why]; n > 0 {
			parts = append(parts, fmt.Sprintf("%d × %s", n, why))
		}
	}
	if len(parts) == 0 {
		return "there are too few"
	}
	return strings.Join(parts, ", ")
}

// unfit returns why a movement is left out of the choice.
func (b Brief) unfit(m gym.Movement) reason {
	places, listed := b.Places[m.Implement]
	days, done := b.Since[m.Key]
	switch {
	case m.Hidden || m.Seconds <= 0:
		return unclear
	case done && days < b.Apart:
		return recent
	case b.Next.Key != "" && loads(m, b.Next):
		return tires
	case m.Implement != "" && (!listed || places < b.needed()):
		return missing
	}
	return fits
}

// loads reports whether a movement tires a lift: it loads the same region, moves
// the same way, or loads the whole body before a lower-body lift.
func loads(m gym.Movement, l gym.Lift) bool {
	whole := m.Region == gym.WholeBody && l.Region == gym.Lower && m.Pattern != gym.Engine
	return m.Region == l.Region || m.Pattern == l.Pattern || whole
}

// needed is how many places a movement must have: a class works on several
// movements at once, so half of it at the same one.
func (b Brief) needed() int { return (b.Class + 1) / 2 }

// clash reports whether the next day's lift asks to be spared what the day's own
// asks to be supported; sparing comes first.
func (b Brief) clash() bool {
	return b.Next.Key != "" && b.Next.Region == b.Main.Region
}

func (c *composer) supports(m gym.Movement) bool {
	return c.brief.Main.Key != "" && m.Region == c.brief.Main.Region && m.Pattern != gym.Engine
}

// draw makes one workout, and reports whether it fits the window.
func (c *composer) draw() (Proposal, bool) {
	format := pick(c.random, c.formats)
	movements := c.choose(sizes[format])
	if len(movements) < rules[format].least {
		return Proposal{}, false
	}
	w := c.build(format, movements)
	find := func(name string) (gym.Movement, bool) { m, ok := c.byKey[gym.MovementKey(name)]; return m, ok }
	d, err := Estimate(w, find, c.brief.Pace)
	if err != nil || d.Usual.Seconds < c.brief.Shortest || d.Usual.Seconds > c.brief.Longest {
		return Proposal{}, false
	}
	return Proposal{w, d, c.why(w, movements, d)}, true
}

// sizes is from how few to how many movements a format takes (common practice).
var sizes = map[gym.Format][2]int{
	gym.AMRAP: {2, 4}, gym.ForTime: {2, 3}, gym.Chipper: {4, 6},
	gym.EMOM: {2, 3}, gym.Intervals: {1, 2}, gym.PlainSets: {1, 2},
}

// choose draws movements: one that supports the main lift first, then others of
// patterns and implements not yet taken.
func (c *composer) choose(size [2]int) []gym.Movement {
	n := size[0] + c.random.IntN(size[1]-size[0]+1)
	var chosen []gym.Movement
	if len(c.support) > 0 {
		chosen = append(chosen, pick(c.random, c.support))
	}
	pool := slices.Concat(c.other, c.support)
	c.random.Shuffle(len(pool), func(i, j int) { pool[i], pool[j] = pool[j], pool[i] })
	for _, m := range pool {
		if len(chosen) < n && !slices.ContainsFunc(chosen, func(o gym.Movement) bool { return alike(m, o) }) {
			chosen = append(chosen, m)
		}
	}
	return chosen
}

// alike reports whether two movements are too much of a kind for one workout.
func alike(a, b gym.Movement) bool {
	return a.Key == b.Key || a.Pattern == b.Pattern || (a.Implement != "" && a.Implement == b.Implement && a.Measure != b.Measure)
}

func pick[T any](r *rand.Rand, from []T) T { return from[r.IntN(len(from))] }

// why gives the reasons of a proposal.
func (c *composer) why(w gym.Workout, movements []gym.Movement, d Duration) []string {
	b := c.brief
	why := []string{fmt.Sprintf("A day of %s: your table gives it %s.", repsOf(b.Reps), list(names(c.formats), "or"))}
	if b.Main.Key != "" {
		if i := slices.IndexFunc(movements, c.supports); i >= 0 {
			why = append(why, fmt.Sprintf("%s supports %s (%s).", movements[i].Name, b.Main.Name, bodyOf(b.Main.Region)))
		} else {
			why = append(why, fmt.Sprintf("Nothing supports %s, because %s comes next.", b.Main.Name, b.Next.Name))
		}
	}
	if b.Next.Key != "" {
		why = append(why, fmt.Sprintf("Nothing in it loads the %s or moves as %s does, which comes next.", bodyOf(b.Next.Region), b.Next.Name))
	}
	if b.Apart > 0 {
		why = append(why, fmt.Sprintf("No movement in it was done in the last %d days.", b.Apart))
	}
	if b.Class > 0 {
		why = append(why, fmt.Sprintf("There are implements for a class of %d, half of it at one movement.", b.Class))
	}
	return append(why, fmt.Sprintf("It takes a usual athlete about %s (%s).", clock(d.Usual.Seconds), d.Minutes()))
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

// plenty stands for a kind of implement of which nobody counts the pieces.
const plenty = 1000

// PlacesOf returns, for a gym that does not count its implements, as many places
// as any class wants for every kind it owns. The coach lowers what is scarce.
func PlacesOf(e gym.Equipment) map[string]int {
	places := map[string]int{}
	for _, i := range e.Implements {
		places[i.Kind] = plenty
	}
	return places
}
