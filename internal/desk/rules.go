package desk

import (
	"windlass/internal/cycle"
	"windlass/internal/gym"
)

// RuleText says in a few words what a breach of a rule is, for a list.
func RuleText(r cycle.Rule) string {
	if text, ok := ruleTexts()[r]; ok {
		return text
	}
	return string(r)
}

func ruleTexts() map[cycle.Rule]string {
	return map[cycle.Rule]string{
		cycle.RuleLength:       "Length of the cycle",
		cycle.RuleFirstDay:     "First day of the week",
		cycle.RuleOverlap:      "Two cycles at once",
		cycle.RuleTestWeek:     "No test week at the end",
		cycle.RulePlace:        "A day out of place",
		cycle.RuleKind:         "Unknown kind of day",
		cycle.RuleTitle:        "Title missing or twice",
		cycle.RuleUnknown:      "Not in the catalogue",
		cycle.RuleNoRegion:     "A lift without a region",
		cycle.RuleNumber:       "A number that cannot be",
		cycle.RuleEmptyPart:    "A part is left out",
		cycle.RuleMainDays:     "Too many main days",
		cycle.RuleLightWeek:    "A climb in a light week",
		cycle.RuleNotRecorded:  "Rep max not recorded",
		cycle.RuleMissingReps:  "A rep count never comes",
		cycle.RuleSameReps:     "All lifts at one rep count",
		cycle.RuleNeighbours:   "Same region next day",
		cycle.RuleRecovery:     "Too little recovery",
		cycle.RuleFrequency:    "A region waits too long",
		cycle.RulePreTires:     "Conditioning tires the lift",
		cycle.RulePrilepin:     "Outside Prilepin's ranges",
		cycle.RuleTwice:        "A session twice",
		cycle.RuleNotFree:      "A weekday that is not free",
		cycle.RuleOutsideTrack: "Not a day of the track",
	}
}

// LastTraining returns the last training week of a cycle, or 1.
func LastTraining(c gym.Cycle) int {
	for w := len(c.Weeks); w > 1; w-- {
		if c.Weeks[w-1] == gym.TrainingWeek {
			return w
		}
	}
	return 1
}
