package desk

import (
	"cmp"
	"slices"
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// RosterSort is what the roster stands in order of.
type RosterSort int

// The orders of the roster.
const (
	ByName RosterSort = iota
	ByTrack
	ByLastCame
	ByKnown // records known of those wanted
)

// AnyTrack stands in a [RosterFilter] for athletes of every track and of none.
const AnyTrack gym.ID = "any"

// RosterFilter says which athletes are asked for, and in what order.
type RosterFilter struct {
	Text   string     // words that begin words of the name, in any order; accents and case do not count
	Track  gym.ID     // [AnyTrack] is every one; empty is those on none
	Status gym.Status // empty is every one
	Sort   RosterSort
	Down   bool
}

// RosterList returns the athletes that a filter asks for. Of equal ones the name
// decides.
func (d *Desk) RosterList(f RosterFilter) []gym.ID {
	words := strings.Fields(plain(f.Text))
	rows := make([]rosterKey, 0, len(d.book.Athletes))
	for i := range d.book.Athletes {
		a := &d.book.Athletes[i]
		if f.Status != "" && a.Status != f.Status {
			continue
		}
		folded := plain(a.Name)
		if !begins(folded, words) {
			continue
		}
		if track := d.TrackOn(a.ID, d.Today()); f.Track == AnyTrack || track.ID == f.Track {
			rows = append(rows, rosterKey{id: a.ID, name: folded, track: track.Position})
		}
	}
	d.inOrder(rows, f)
	ids := make([]gym.ID, len(rows))
	for i, r := range rows {
		ids[i] = r.id
	}
	return ids
}

// rosterKey is what rows are ordered by.
type rosterKey struct {
	id    gym.ID
	name  string
	track int
	by    float64
}

func (d *Desk) inOrder(rows []rosterKey, f RosterFilter) {
	for i := range rows {
		switch f.Sort {
		case ByTrack:
			rows[i].by = float64(rows[i].track)
		case ByLastCame:
			rows[i].by = float64(d.LastCame(rows[i].id))
		case ByKnown:
			rows[i].by = d.Known(rows[i].id).share()
		}
	}
	sign := 1
	if f.Down {
		sign = -1
	}
	slices.SortStableFunc(rows, func(a, b rosterKey) int {
		if f.Sort == ByName {
			return sign * cmp.Compare(a.name, b.name)
		}
		return cmp.Or(sign*cmp.Compare(a.by, b.by), cmp.Compare(a.name, b.name))
	})
}

// plain is a name as a coach in a hurry types it: no case and no accents. NFD of
// Unicode (UAX #15) parts a letter from its marks.
func plain(name string) string {
	return strings.Map(func(r rune) rune {
		if unicode.Is(unicode.Mn, r) {
			return -1
		}
		return r
	}, norm.NFD.String(gym.FoldName(name)))
}

// begins reports whether every word begins some word of a name.
func begins(name string, words []string) bool {
	for _, w := range words {
		if !strings.HasPrefix(name, w) && !strings.Contains(name, " "+w) {
			return false
		}
	}
	return true
}

// RosterRow is what the roster says of one athlete.
type RosterRow struct {
	Athlete gym.Athlete
	Track   gym.Track    // of today; the zero track is none
	Days    day.Weekdays // on which the athlete trains this week
	Came    day.Date     // the last class, or day.None
	Known   Known
}

// RosterRow returns an athlete's row; the zero row for nobody.
func (d *Desk) RosterRow(id gym.ID) RosterRow {
	a, ok := d.Athlete(id)
	if !ok {
		return RosterRow{}
	}
	row := RosterRow{Athlete: a, Track: d.TrackOn(id, d.Today()), Came: d.LastCame(id), Known: d.Known(id)}
	if a.Status == gym.Active {
		for _, p := range d.Calendar().OwnWeek(a, d.Today()).Days {
			row.Days |= day.WeekdaysOf(p.On)
		}
	}
	return row
}

// Known counts the rep maxes of an athlete's track that have a result.
type Known struct{ Have, Want int }

func (k Known) share() float64 {
	if k.Want == 0 {
		return -1
	}
	return float64(k.Have) / float64(k.Want)
}

// Known counts the rep maxes that an athlete's plan is counted from: every main
// lift of the track at each of the gym's rep counts that the lift records.
func (d *Desk) Known(athlete gym.ID) Known {
	var k Known
	track := d.TrackOn(athlete, d.Today()).ID
	if track == "" {
		return k
	}
	for _, key := range d.mainLifts(track) {
		lift, ok := d.Lift(key)
		if !ok {
			continue
		}
		for _, reps := range d.countsOf(lift) {
			k.Want++
			if _, have := d.records().Of(athlete, key, reps); have {
				k.Have++
			}
		}
	}
	return k
}

// countsOf returns the gym's rep counts that a lift records; all of them for a
// lift that says none.
func (d *Desk) countsOf(l gym.Lift) []int {
	var counts []int
	for _, n := range d.book.Settings.DayReps {
		if l.Records(n) || len(l.Reps) == 0 {
			counts = append(counts, n)
		}
	}
	return counts
}

// mainLifts is [Desk.MainLifts] of today, kept until the plan changes or the day
// does.
func (d *Desk) mainLifts(track gym.ID) []gym.LiftKey {
	if d.mains.on != d.Today() || d.mains.of == nil {
		d.mains = mainsCache{on: d.Today(), of: map[gym.ID][]gym.LiftKey{}}
	}
	lifts, ok := d.mains.of[track]
	if !ok {
		lifts = d.MainLifts(track, d.Today())
		d.mains.of[track] = lifts
	}
	return lifts
}

type mainsCache struct {
	on day.Date
	of map[gym.ID][]gym.LiftKey
}

// Statuses counts the athletes of each status.
func (d *Desk) Statuses() map[gym.Status]int {
	n := map[gym.Status]int{}
	for i := range d.book.Athletes {
		n[d.book.Athletes[i].Status]++
	}
	return n
}
