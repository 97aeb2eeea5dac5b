package conditioning

import (
	"errors"
	"fmt"
	"math/rand/v2"
	"slices"

	"windlass/internal/gym"
)

// ErrNoProposal says that no workout meets every wish of a brief.
var ErrNoProposal = errors.New("no workout fits")

// Brief is what a workout is wanted for.
type Brief struct {
	Main      gym.Lift                // the day's main lift; the zero value is none
	Reps      int                     // the day's rep count
	Next      gym.Lift                // the next day's main lift, to be spared; the zero value is none
	Near      map[gym.MovementKey]int // days to the nearest other time of a movement, before or after
	Apart     int                     // a movement that comes at fewer days from this one is left out
	Crowd     Crowd                   // the class, and what the gym has for it
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
	Sharing  Sharing
	Why      []string // a sentence each: format, movements, spared, implements, length
}

const (
	// tries is how many workouts are drawn before giving up.
	tries = 400
	// composeHeats is how many heats a proposal may need: every heat takes the
	// class as long again (common practice, no source).
	composeHeats = 2
)

// Compose proposes a workout. The same brief and seed give the same one, another
// seed likely another. Heats are proposed only where nothing else fits. The error
// wraps [ErrNoProposal] and says which wish left too little to choose from.
func Compose(b Brief, seed uint64) (p Proposal, err error) {
	for heats := 1; heats <= composeHeats; heats++ {
		if p, err = compose(b, seed, heats); err == nil {
			return p, nil
		}
	}
	return Proposal{}, err
}

// compose draws until something fits that needs at most so many heats.
func compose(b Brief, seed uint64, heats int) (Proposal, error) {
	c, err := newComposer(b, seed, heats)
	if err != nil {
		return Proposal{}, err
	}
	for range tries {
		if p, ok := c.draw(); ok {
			return p, nil
		}
	}
	return Proposal{}, c.nothing()
}

// nothing says why no draw was good.
func (c *composer) nothing() error {
	if c.lacking {
		return refuse("what came up takes more implements than there are for a class of %d, even in %s; widen the table of formats, or let movements come again sooner",
			c.brief.Crowd.Size, heats(c.heats))
	}
	return refuse("nothing of %s to %s came up; widen the window or the table of formats", clock(c.brief.Shortest), clock(c.brief.Longest))
}

func refuse(format string, a ...any) error {
	return fmt.Errorf("compose workout: %w: %s", ErrNoProposal, fmt.Sprintf(format, a...))
}

// composer draws workouts for a brief.
type composer struct {
	brief   Brief
	heats   int // that a workout may need
	random  *rand.Rand
	formats []gym.Format
	support []gym.Movement // of the main lift's region
	other   []gym.Movement
	lost    map[reason]int // why movements that would support it are left out
	scarce  []gym.Movement // left out for want of implements
	lacking bool           // something came up that was too much for the implements
	byKey   map[gym.MovementKey]gym.Movement
}

func newComposer(b Brief, seed uint64, heats int) (*composer, error) {
	c := &composer{
		brief: b, heats: heats, random: rand.New(rand.NewPCG(seed, 0x9e3779b97f4a7c15)),
		formats: b.Table.of(b.Reps), byKey: map[gym.MovementKey]gym.Movement{},
	}
	if b.Shortest < 0 || b.Longest < b.Shortest || b.Longest == 0 {
		return nil, refuse("the window from %s to %s is none", clock(max(0, b.Shortest)), clock(max(0, b.Longest)))
	}
	if len(c.formats) == 0 {
		return nil, refuse("the table of formats is empty")
	}
	left := c.sort(b.Movements)
	if len(c.support)+len(c.other) < 2 {
		return nil, refuse("of %d movements %s", len(b.Movements), told(left))
	}
	return c, nil
}

// sort parts the movements that fit from the others, which it counts by reason.
func (c *composer) sort(movements []gym.Movement) map[reason]int {
	left := map[reason]int{}
	c.lost = map[reason]int{}
	for _, m := range movements {
		c.byKey[m.Key] = m
		why := c.unfit(m)
		switch {
		case why != fits:
			left[why]++
			if why == missing {
				c.scarce = append(c.scarce, m)
			}
			if c.supports(m) {
				c.lost[why]++
			}
		case c.supports(m):
			c.support = append(c.support, m)
		default:
			c.other = append(c.other, m)
		}
	}
	return left
}

func (c *composer) find(name string) (gym.Movement, bool) {
	m, ok := c.byKey[gym.MovementKey(name)]
	return m, ok
}

// draw makes one workout, and reports whether it fits the window and the class.
func (c *composer) draw() (Proposal, bool) {
	format := pick(c.random, c.formats)
	movements := c.choose(sizes[format])
	if len(movements) < rules[format].least {
		return Proposal{}, false
	}
	w := c.build(format, movements)
	if len(w.Reps) == 0 && slices.ContainsFunc(w.Items, func(i gym.Item) bool { return i.Amount == 0 }) {
		return Proposal{}, false
	}
	d, err := Estimate(w, c.find, c.brief.Pace)
	if err != nil || d.Usual.Seconds < c.brief.Shortest || d.Usual.Seconds > c.brief.Longest {
		return Proposal{}, false
	}
	sharing := c.brief.Crowd.share(w, c.find, c.heats)
	if !sharing.Enough() {
		c.lacking = true
		return Proposal{}, false
	}
	p := Proposal{Workout: w, Duration: d, Sharing: sharing}
	p.Why = c.why(p, movements)
	return p, true
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
