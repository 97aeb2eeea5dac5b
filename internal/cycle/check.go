package cycle

import (
	"fmt"
	"strings"

	"windlass/internal/day"
	"windlass/internal/gym"
)

// Check returns every breach of the rules in a cycle, in the order in which a
// coach reads it. The book is that of the gym: its settings, its catalogue and
// its other cycles. A cycle without breaches gives none.
func Check(c gym.Cycle, b *gym.Book) []Breach {
	found := checkCycle(c, b)
	k := know(b)
	counts := countsOf(b.Settings)
	for i := range c.Tracks {
		t := newTrackCheck(c, &c.Tracks[i], k, counts)
		t.run()
		found = append(found, t.found...)
	}
	sortBreaches(found, c)
	return found
}

// countsOf returns the gym's rep counts for main days, or the usual ones.
func countsOf(s gym.Settings) []int {
	if len(s.DayReps) > 0 {
		return s.DayReps
	}
	return gym.DefaultSettings().DayReps
}

// cell is one day of a track in the order of the calendar; plan is nil on a rest
// day.
type cell struct {
	week   int
	on     day.Weekday
	plan   *gym.DayPlan
	lift   *gym.Lift  // of the main part, nil when there is none or it is unknown
	second *gym.Lift  // of the second part
	region gym.Region // what the main part loads, as spacing counts it
}

// main reports whether the cell is a main day with a main lift.
func (c *cell) main() bool {
	return c.plan != nil && c.plan.Kind == gym.MainDay && !c.plan.Main.Empty()
}

// climbs reports whether the day works up to a rep max.
func (c *cell) climbs() bool { return c.main() && len(c.plan.Main.Scheme) == 0 }

// trackCheck is one track while its rules run.
type trackCheck struct {
	known
	cycle  gym.Cycle
	plan   *gym.TrackPlan
	counts []int
	cells  []cell // seven a week
	found  []Breach
}

func newTrackCheck(c gym.Cycle, p *gym.TrackPlan, k known, counts []int) *trackCheck {
	t := &trackCheck{known: k, cycle: c, plan: p, counts: counts, cells: make([]cell, 7*len(c.Weeks))}
	first := c.Start.Weekday()
	for i := range t.cells {
		t.cells[i].week, t.cells[i].on = i/7+1, (first+day.Weekday(i%7))%7
	}
	for i := range p.Days {
		t.lay(&p.Days[i], first)
	}
	return t
}

// lay puts a plan on its cell, or says why it has none.
func (t *trackCheck) lay(d *gym.DayPlan, first day.Weekday) {
	if d.Week < 1 || d.Week > len(t.cycle.Weeks) || !onWeek(d.Weekday) {
		t.breach(RulePlace, &cell{week: d.Week, on: d.Weekday},
			fmt.Sprintf("%q stands on a day of week %d that the cycle does not have.", d.Title, d.Week),
			"Move it into a week of the cycle, or clear it.")
		return
	}
	at := &t.cells[7*(d.Week-1)+place(d.Weekday, first)]
	if at.plan != nil {
		t.breach(RulePlace, at, fmt.Sprintf("%q and %q both stand on this day.", at.plan.Title, d.Title),
			"Move one of them to another day.")
		return
	}
	at.plan = d
	at.lift, at.second = t.lifts[d.Main.Lift], t.lifts[d.Second.Lift]
	at.region = loadedRegion(d, at.lift)
}

func (t *trackCheck) run() {
	for i := range t.cells {
		if c := &t.cells[i]; c.plan != nil {
			t.checkShape(c)
			t.checkNumbers(c)
			t.checkNames(c)
			t.checkPrilepin(c)
		}
	}
	t.checkSpacing()
	t.checkFrequency()
	t.checkWeeks()
	t.checkExposures()
}

func (t *trackCheck) breach(r Rule, at *cell, why, mend string) {
	t.found = append(t.found, Breach{Rule: r, Track: t.plan.Track, Week: at.week, Weekday: at.on, Why: why, Mend: mend})
}

// week returns the seven cells of a week, from 1.
func (t *trackCheck) week(n int) []cell { return t.cells[7*(n-1) : 7*n] }

func (t *trackCheck) kind(c *cell) gym.WeekKind { return t.cycle.Weeks[c.week-1] }

// How numbers are told in sentences.

func aRepMax(n int) string {
	if n == 8 || n == 11 || n == 18 {
		return fmt.Sprintf("an %dRM", n)
	}
	return fmt.Sprintf("a %dRM", n)
}

func count(n int, noun string) string {
	switch n {
	case 0:
		return "no " + noun
	case 1:
		return "1 " + noun
	}
	if strings.HasSuffix(noun, "x") {
		noun += "e"
	}
	return fmt.Sprintf("%d %ss", n, noun)
}
