package plates

import "windlass/internal/mass"

// Queue is what one bar carries set after set, while the other bars of the room
// carry their own. A zero Loading is a set without that bar.
type Queue struct {
	Loads *Loads    // of the bar with the stock of the whole room
	Sets  []Loading // as those Loads make them
}

// Clash is a set at which the stacks of all bars together want more of a plate
// than the gym has.
type Clash struct {
	Set  int   `json:"set"`  // from 0
	Disc Disc  `json:"disc"` // the plate that runs out; the one most missed if there are several
	Need int   `json:"need"` // pairs of it
	Have int   `json:"have"`
	Ways []Way `json:"ways"` // out of it, the cheapest first; never empty
}

// WayOut says how a clash is mended.
type WayOut string

// The ways out, from cheap to dear.
const (
	Restack WayOut = "restack" // the same loads out of other plates
	Swap    WayOut = "swap"    // two bars take each other's load
	Reload  WayOut = "reload"  // one bar takes another load, or several do
	Wait    WayOut = "wait"    // bars wait until the others are done
)

// Way is one way out of a clash. For every other bar nothing changes but, it
// may be, which plates make its load.
type Way struct {
	Out      WayOut    `json:"out"`
	Bars     []int     `json:"bars"`     // the queues that change their load or wait
	Loadings []Loading `json:"loadings"` // of all queues at this set; zero where one waits
	Off      mass.Mass `json:"off"`      // by how much a reload leaves the loads, either way, summed
}

// Loadable reports whether all bars can carry their loads after all, only out of
// other plates.
func (c Clash) Loadable() bool { return c.Ways[0].Out == Restack }

// Check returns every set at which the queues, loaded all at once, want more
// than the stock behind their Loads, with the ways out. It must be the same stock
// for all.
func Check(queues []Queue) []Clash {
	clashes := Missing(queues)
	for i, c := range clashes {
		clashes[i].Ways = WaysOut(queues, c.Set)
	}
	return clashes
}

// Missing is [Check] without the ways out, which are dear: see [WaysOut].
func Missing(queues []Queue) []Clash {
	var clashes []Clash
	for set := range longest(queues) {
		r := newRoom(queues, set)
		if disc, need, have := r.missing(); need > have {
			clashes = append(clashes, Clash{Set: set, Disc: disc, Need: need, Have: have})
		}
	}
	return clashes
}

// WaysOut returns the ways out of the clash at a set, the cheapest first. They
// follow from the bars and the loads at the set alone.
func WaysOut(queues []Queue, set int) []Way { return newRoom(queues, set).wanting().ways() }

// Restacked makes the loads of a set out of plates of which the stock has enough
// for all at once; false where there is no way.
func Restacked(queues []Queue, set int) ([]Loading, bool) {
	r := newRoom(queues, set).wanting()
	return r.stack(r.now)
}

func longest(queues []Queue) int {
	n := 0
	for _, q := range queues {
		n = max(n, len(q.Sets))
	}
	return n
}
