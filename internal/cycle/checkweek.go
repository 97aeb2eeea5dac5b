package cycle

import (
	"fmt"

	"windlass/internal/day"
	"windlass/internal/gym"
)

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
