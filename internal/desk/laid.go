package desk

import (
	"slices"

	"windlass/internal/clock"
	"windlass/internal/gym"
)

// layDown keeps what is on the bars in the running rung: whoever comes, goes or
// calls, nobody changes plates under a set whose load stays.
func (d *Desk) layDown(before gym.Class, after *gym.Class) {
	m := clock.Climb(before.Climb, before.Clock, d.now())
	if !m.Started || m.Rung == clock.None || after.Stage != gym.Climbing {
		return
	}
	was := d.Boards().Board(before)
	for _, row := range d.Boards().Board(*after).Lifters() {
		old, ok := was.Lifter(row.Athlete)
		if !ok || old.Station != row.Station || old.Bar != row.Bar {
			continue
		}
		then, lifted := old.lifts(m.Rung)
		now, lifts := row.lifts(m.Rung)
		if !lifted || !lifts || then.Likely() != now.Likely() || slices.Equal(then.Discs, now.Discs) {
			continue
		}
		if l, err := lifter(after, row.Athlete); err == nil {
			l.Laid = gym.Laid{Rung: m.Rung, Discs: slices.Clone(then.Discs)}
		}
	}
}

// lay puts what lies on the bars in place of what was planned, where it still makes
// the load.
func (bs *Boards) lay(b Board) {
	for _, s := range b.Stations {
		for i := range s.Lifters {
			l := &s.Lifters[i]
			set, ok := l.lifts(l.Laid.Rung)
			if ok && len(l.Laid.Discs) > 0 && bs.makes(l.Lifter, set) {
				set.Discs, set.Blocks = l.Laid.Discs, l.floor && !full(l.Laid.Discs)
			}
		}
	}
}

// makes reports whether what lies on a lifter's bar weighs what a set is to weigh.
func (bs *Boards) makes(l gym.Lifter, set *BoardSet) bool {
	loads, err := bs.loadsOf(loadKey{bar: l.Bar})
	if err != nil {
		return false
	}
	total := loads.Lightest()
	for _, disc := range l.Laid.Discs {
		total += 2 * disc.Mass
	}
	return total == set.Likely()
}
