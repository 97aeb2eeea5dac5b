package cycle

import (
	"fmt"
	"slices"
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

// checkCycle finds what is wrong with the cycle as a whole.
func checkCycle(c gym.Cycle, b *gym.Book) []Breach {
	var found []Breach
	say := func(r Rule, why, mend string) {
		found = append(found, Breach{Rule: r, Weekday: NoWeekday, Why: why, Mend: mend})
	}
	if n := len(c.Weeks); n < MinWeeks || n > MaxWeeks {
		say(RuleLength, fmt.Sprintf("The cycle has %d weeks.", n),
			fmt.Sprintf("Insert or remove weeks until it has %d to %d.", MinWeeks, MaxWeeks))
	}
	if n := len(c.Weeks); n > 0 && c.Weeks[n-1] != gym.TestWeek {
		say(RuleTestWeek, "The last week is not a test week.", "Make the last week the test week, or insert one at the end.")
	}
	for i, kind := range c.Weeks {
		if kind != gym.TrainingWeek && kind != gym.LightWeek && kind != gym.TestWeek {
			say(RuleKind, fmt.Sprintf("Week %d is a %q week, which there is not.", i+1, kind), "Make it a training, light or test week.")
		}
	}
	if c.Start.Weekday() != b.Settings.FirstDay {
		say(RuleFirstDay, fmt.Sprintf("The cycle starts on a %s, and your week begins on %s.", c.Start.Weekday(), b.Settings.FirstDay),
			fmt.Sprintf("Start it on %s.", firstOnOrAfter(c.Start, b.Settings.FirstDay).Long()))
	}
	return append(found, overlaps(c, b)...)
}

// overlaps finds the other cycles that claim a track on the same days.
func overlaps(c gym.Cycle, b *gym.Book) []Breach {
	var found []Breach
	for _, p := range c.Tracks {
		for _, other := range b.Cycles {
			if _, shared := other.Plan(p.Track); !shared || other.ID == c.ID || !meet(c, other) {
				continue
			}
			found = append(found, Breach{
				Rule: RuleOverlap, Track: p.Track, Weekday: NoWeekday,
				Why: fmt.Sprintf("This track also runs through %q from %s to %s.", other.Name, other.Start.Long(), other.End().Long()),
				Mend: fmt.Sprintf("Start on %s or later, or take the track out of one of the two.",
					firstOnOrAfter(other.End().Add(1), b.Settings.FirstDay).Long()),
			})
		}
	}
	return found
}

func meet(a, b gym.Cycle) bool { return a.Start <= b.End() && b.Start <= a.End() }

func firstOnOrAfter(d day.Date, w day.Weekday) day.Date { return d.Add(place(w, d.Weekday())) }

// checkWeeks judges each week as a whole.
func (t *trackCheck) checkWeeks() {
	for n, kind := range t.cycle.Weeks {
		week := t.week(n + 1)
		main := 0
		for i := range week {
			if week[i].plan != nil && week[i].plan.Kind == gym.MainDay {
				main++
			}
		}
		whole := &cell{week: n + 1, on: NoWeekday}
		if main > t.plan.MainDays {
			t.breach(RuleMainDays, whole, fmt.Sprintf("The week has %s and the track promises %d.", count(main, "main day"), t.plan.MainDays),
				"Turn a main day into a recovery day, or raise what the track promises.")
		}
		t.checkWeekly(whole, kind, main)
		t.checkTitles(week)
	}
}

// fewestSessions is the handbook's least number of sessions a week, for a beginner.
const fewestSessions = 2

func (t *trackCheck) checkWeekly(whole *cell, kind gym.WeekKind, main int) {
	switch {
	case kind == gym.TestWeek && whole.week == len(t.cycle.Weeks) && main == 0:
		t.breach(RuleTestWeek, whole, "The test week has no main day, so nothing is tested.", "Give the test week a main day for each lift you test.")
	case kind == gym.TrainingWeek && main < fewestSessions:
		t.breach(RuleFrequency, whole, fmt.Sprintf("The week has %s; the handbook asks even beginners for 2 or 3 sessions a week.", count(main, "main day")),
			"Add a main day, or take the week out.")
	}
}

// checkTitles finds days that share a title: an athlete's week names days by it.
func (t *trackCheck) checkTitles(week []cell) {
	seen := map[string]day.Weekday{}
	for i := range week {
		c := &week[i]
		if c.plan == nil || c.plan.Kind == gym.RestDay {
			continue
		}
		if c.plan.Title == "" {
			t.breach(RuleTitle, c, "The day has no title.", "Write one, such as the name of its main lift.")
		} else if before, ok := seen[c.plan.Title]; ok {
			t.breach(RuleTitle, c, fmt.Sprintf("%s has the title %q too.", before, c.plan.Title), "Write another title for one of them.")
		}
		seen[c.plan.Title] = c.on
	}
}

// checkExposures judges what rep counts the lifts meet over the cycle.
func (t *trackCheck) checkExposures() {
	var order []gym.LiftKey
	met := map[gym.LiftKey][]*cell{}
	byPercent := map[gym.LiftKey]bool{}
	for i := range t.cells {
		c := &t.cells[i]
		if !c.main() {
			continue
		}
		key := c.plan.Main.Lift
		if !c.climbs() {
			byPercent[key] = byPercent[key] || t.kind(c) == gym.TrainingWeek
			continue
		}
		if met[key] == nil {
			order = append(order, key)
		}
		met[key] = append(met[key], c)
	}
	for _, key := range order {
		if !byPercent[key] {
			t.checkMissingReps(met[key])
		}
	}
	for n := range t.cycle.Weeks {
		t.checkSameReps(t.week(n + 1))
	}
}

// checkMissingReps takes the days of one lift that climb. A lift that comes
// oftener than it has rep counts must meet them all; one that only visits, as in
// a strongman rotation, cannot.
func (t *trackCheck) checkMissingReps(days []*cell) {
	lift := days[0].lift
	if lift == nil {
		return
	}
	wanted := slices.DeleteFunc(slices.Clone(t.counts), func(n int) bool { return !lift.Records(n) })
	if len(days) < len(wanted) {
		return
	}
	for _, n := range wanted {
		if !slices.ContainsFunc(days, func(c *cell) bool { return c.plan.Main.Reps == n }) {
			t.breach(RuleMissingReps, days[0], fmt.Sprintf("%s never climbs to %s in this cycle.", lift.Name, aRepMax(n)),
				fmt.Sprintf("Set one of its days to %d, or run the wave again.", n))
		}
	}
}

// checkSameReps finds a training week in which different lifts all climb to the
// same rep count, unless the track wants that.
func (t *trackCheck) checkSameReps(week []cell) {
	if t.plan.SameReps || t.kind(&week[0]) != gym.TrainingWeek {
		return
	}
	var first *cell
	lifts := map[gym.LiftKey]bool{}
	for i := range week {
		c := &week[i]
		if !c.climbs() {
			continue
		}
		if first == nil {
			first = c
		}
		if c.plan.Main.Reps != first.plan.Main.Reps {
			return
		}
		lifts[c.plan.Main.Lift] = true
	}
	if len(lifts) > 1 {
		t.breach(RuleSameReps, first, fmt.Sprintf("All %d lifts of the week climb to %s.", len(lifts), aRepMax(first.plan.Main.Reps)),
			"Run the rolling wave, or say that the track wants one rep count a week.")
	}
}

func aRepMax(n int) string { return fmt.Sprintf("a %dRM", n) }

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
