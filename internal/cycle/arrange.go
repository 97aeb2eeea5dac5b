package cycle

import (
	"cmp"
	"slices"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Ask is what an athlete wants of a track's week.
type Ask struct {
	Sessions []Session     // the track's week in its own order, one a weekday at most
	Free     day.Weekdays  // when the athlete can come
	Want     int           // how many sessions; 0 means as many as go
	First    []day.Weekday // sessions that matter most, by the track's weekday, the most important first
	Hand     []gym.HandDay // days that the coach set; they stay, and the rest is arranged around them
}

// Placed is a session on the weekday on which it is done.
type Placed struct {
	Session
	On day.Weekday `json:"on"`
}

// Week is an athlete's own week, or a track's week around closed days.
type Week struct {
	Days    []Placed  `json:"days"`    // in the order of their weekdays
	Dropped []Session `json:"dropped"` // in the track's order
	Why     string    `json:"why"`
}

// On returns the session of a weekday.
func (w Week) On(d day.Weekday) (Placed, bool) {
	for _, p := range w.Days {
		if p.On == d {
			return p, true
		}
	}
	return Placed{}, false
}

// Arrange finds the best week by trying every assignment of sessions to free
// weekdays. No two neighbouring days load the same region, and Sunday and Monday
// are neighbours because the week repeats.
//
// It keeps as many sessions as go, up to Want. When some must go, the most
// important stay: those named in First, then main days, technique days and
// recovery days, each in the track's order. Among weeks with the same sessions
// the best has most of them on the track's own weekdays, main days before others,
// because there the class does them too; then the longest way between days for one
// region; then the track's order; then the earliest days.
func Arrange(a Ask) Week { return arrange(a, nil) }

// edges stand around one week of the calendar, which unlike a usual week does
// not repeat.
type edges struct {
	from          day.Weekday // the week's first day
	before, after gym.Region  // what the days around the week load
}

// arrange takes no edges for a week that repeats.
func arrange(a Ask, e *edges) Week {
	p := newPuzzle(a, e)
	for size := min(len(p.open), len(p.free), p.room); ; size-- { // a week of nothing always stands
		for _, keep := range subsets(len(p.open), size) {
			if p.solve(keep) {
				return p.week()
			}
		}
	}
}

// puzzle is the search for one week.
type puzzle struct {
	ask   Ask
	edges *edges
	open  []Session // sessions that are not set by hand, the most important first
	hand  []Placed
	free  []day.Weekday // without those taken by hand
	room  int           // sessions still wanted beside those set by hand
	on    [7]*Session
	keep  []Session     // sessions being placed, in the track's order
	days  []day.Weekday // one each of keep
	best  []Placed
	score score
	found bool
}

func newPuzzle(a Ask, e *edges) *puzzle {
	p := &puzzle{ask: a, edges: e, room: len(a.Sessions)}
	taken := day.Weekdays(0)
	for _, h := range a.Hand {
		i := sessionOf(a.Sessions, h.Plan)
		if i < 0 || !onWeek(h.On) || taken.Has(h.On) || slices.ContainsFunc(p.hand, func(o Placed) bool { return o.Plan == h.Plan }) {
			continue // JudgeHand tells of it
		}
		taken |= day.WeekdaysOf(h.On)
		p.hand = append(p.hand, Placed{a.Sessions[i], h.On})
		p.on[h.On] = &a.Sessions[i]
	}
	for _, s := range a.Sessions {
		if !slices.ContainsFunc(p.hand, func(o Placed) bool { return o.Plan == s.Plan }) {
			p.open = append(p.open, s)
		}
	}
	slices.SortStableFunc(p.open, func(x, y Session) int { return cmp.Compare(rank(a, x), rank(a, y)) })
	p.free = (a.Free &^ taken).List()
	if a.Want > 0 {
		p.room = max(0, a.Want-len(p.hand))
	}
	return p
}

// rank is how much a session matters, smaller for more.
func rank(a Ask, s Session) int {
	if i := slices.Index(a.First, s.Plan); i >= 0 {
		return i
	}
	switch {
	case s.Kind == gym.MainDay && s.Region != "":
		return 7
	case s.Kind == gym.MainDay:
		return 8
	}
	return 9
}

// solve tries to place the chosen sessions and keeps the best way.
func (p *puzzle) solve(keep []int) bool {
	p.keep, p.best, p.found = p.keep[:0], nil, false
	for _, s := range p.ask.Sessions {
		if slices.ContainsFunc(keep, func(i int) bool { return p.open[i].Plan == s.Plan }) {
			p.keep = append(p.keep, s)
		}
	}
	p.days = make([]day.Weekday, len(p.keep))
	p.try(0)
	return p.found
}

// try puts the nth kept session on every free weekday that spacing allows.
func (p *puzzle) try(n int) {
	if n == len(p.keep) {
		p.weigh()
		return
	}
	s := &p.keep[n]
	for _, d := range p.free {
		if p.on[d] != nil || p.crowded(s.Region, d) {
			continue
		}
		p.on[d], p.days[n] = s, d
		p.try(n + 1)
		p.on[d] = nil
	}
}

// crowded reports whether a region on a weekday would have a neighbour of its own.
func (p *puzzle) crowded(r gym.Region, d day.Weekday) bool {
	return clash(r, p.region(d, -1)) || clash(r, p.region(d, 1))
}

// region returns what is loaded a step before or after a weekday.
func (p *puzzle) region(d day.Weekday, step int) gym.Region {
	if p.edges != nil {
		switch place(d, p.edges.from) + step {
		case -1:
			return p.edges.before
		case 7:
			return p.edges.after
		}
	}
	if s := p.on[(int(d)+step+7)%7]; s != nil {
		return s.Region
	}
	return ""
}
