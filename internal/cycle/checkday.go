package cycle

import (
	"fmt"
	"strings"

	"windlass/internal/gym"
)

// checkShape finds parts that are left out. The finisher is always optional, a
// test week's days may end after the main lift, and a recovery day needs a
// warm-up or some conditioning.
func (t *trackCheck) checkShape(c *cell) {
	d := c.plan
	test := t.kind(c) == gym.TestWeek
	switch d.Kind {
	case gym.MainDay:
		t.missing(c, len(d.WarmUp) == 0, "warm-up", "Add drills for the day's lift.")
		t.missing(c, d.Main.Empty(), "main lift", "Choose a lift and a rep count, or make it a recovery day.")
		t.missing(c, d.Second.Empty() && !test, "second lift", "Choose a lift that helps the main one.")
		t.missing(c, d.Workout.Empty() && !test, "conditioning", "Choose a format and its movements.")
	case gym.RecoveryDay:
		t.missing(c, len(d.WarmUp) == 0 && d.Workout.Empty(), "recovery work", "Add drills or easy conditioning, or make it a rest day.")
	case gym.RestDay:
		if !idle(d) {
			t.breach(RuleKind, c, "The day rests and has work in it, which nobody would see.", "Make it a main or recovery day, or clear it.")
		}
	default:
		t.breach(RuleKind, c, fmt.Sprintf("The day is a %q day, which there is not.", d.Kind), "Make it a main, recovery or rest day.")
	}
	if c.climbs() && t.kind(c) == gym.LightWeek {
		t.breach(RuleLightWeek, c, fmt.Sprintf("The week is light and %s climbs to a rep max.", t.liftName(d.Main.Lift)),
			"Run the wave over this track again, or make the week a training week.")
	}
}

func (t *trackCheck) missing(c *cell, empty bool, part, mend string) {
	if empty {
		t.breach(RuleEmptyPart, c, "The "+part+" is empty.", mend)
	}
}

// The most that a plan may ask for before it looks like a slip of the hand
// (common practice, no source).
const (
	mostSets    = 30
	mostPercent = 120 // pulls go over the lift they are counted from
)

// checkNumbers finds sets, reps and percentages that nobody can do.
func (t *trackCheck) checkNumbers(c *cell) {
	m, s := c.plan.Main, c.plan.Second
	if c.climbs() && (m.Reps < 1 || m.Reps > gym.MaxReps) {
		t.breach(RuleNumber, c, fmt.Sprintf("%d reps of %s are not a rep max.", m.Reps, t.liftName(m.Lift)),
			fmt.Sprintf("Write 1 to %d.", gym.MaxReps))
	}
	for _, set := range m.Scheme {
		t.checkSets(c, m.Lift, set.Sets, set.Reps, set.Percent)
	}
	if s.Empty() {
		return
	}
	t.checkSets(c, s.Lift, s.Sets, s.Reps, s.Percent)
	if s.OfReps < 1 || s.OfReps > gym.MaxReps {
		t.breach(RuleNumber, c, fmt.Sprintf("%s is counted from a %dRM, which does not exist.", t.liftName(s.Lift), s.OfReps),
			fmt.Sprintf("Count it from a rep max of 1 to %d.", gym.MaxReps))
	}
}

func (t *trackCheck) checkSets(c *cell, lift gym.LiftKey, sets, reps int, percent float64) {
	if sets < 1 || sets > mostSets || reps < 1 || reps > gym.MaxReps || !(percent > 0 && percent <= mostPercent) {
		t.breach(RuleNumber, c, fmt.Sprintf("%s at %d × %d and %g %% cannot be done.", t.liftName(lift), sets, reps, percent),
			fmt.Sprintf("Write 1 to %d sets of 1 to %d reps, over 0 and up to %d %%.", mostSets, gym.MaxReps, mostPercent))
	}
}

// checkNames finds what the catalogue does not have, or does not say.
func (t *trackCheck) checkNames(c *cell) {
	d := c.plan
	var lost []string
	lose := func(key string, ok bool) {
		if !ok {
			lost = append(lost, fmt.Sprintf("%q", key))
		}
	}
	lose(string(d.Main.Lift), d.Main.Empty() || c.lift != nil)
	lose(string(d.Second.Lift), d.Second.Empty() || c.second != nil)
	lose(string(d.Second.OfLift), d.Second.OfLift == "" || t.lifts[d.Second.OfLift] != nil)
	for _, i := range d.Workout.Items {
		rest := i.Movement == "" && d.Workout.Format == gym.EMOM // a slot of rest
		lose(string(i.Movement), rest || t.movements[i.Movement] != nil)
	}
	for _, l := range d.WarmUp {
		lose(l.Drill, t.drills[l.Drill])
	}
	for _, l := range d.Finisher {
		lose(l.Finisher, t.finishers[l.Finisher])
	}
	if len(lost) > 0 {
		t.breach(RuleUnknown, c, "Your catalogue does not have "+strings.Join(lost, ", ")+".", "Add what is missing in the Gym room, or choose another.")
	}
	t.checkLiftEntry(c, c.lift)
	if c.second != c.lift {
		t.checkLiftEntry(c, c.second)
	}
	if c.climbs() && c.lift != nil && !c.lift.Records(d.Main.Reps) {
		t.breach(RuleNotRecorded, c, fmt.Sprintf("%s keeps no record for %s, so the climb has nothing to be counted from.", c.lift.Name, aRepMax(d.Main.Reps)),
			fmt.Sprintf("Choose one of its rep counts, or let it record %s in the Gym room.", aRepMax(d.Main.Reps)))
	}
}

func (t *trackCheck) checkLiftEntry(c *cell, l *gym.Lift) {
	if l != nil && l.Region == "" {
		t.breach(RuleNoRegion, c, fmt.Sprintf("%s says no region of the body, so its spacing cannot be judged.", l.Name),
			"Give it a region in the Gym room.")
	}
}

func (t *trackCheck) liftName(key gym.LiftKey) string {
	if l := t.lifts[key]; l != nil {
		return l.Name
	}
	return string(key)
}
