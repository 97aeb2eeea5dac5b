package climb

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"

	"windlass/internal/gym"
)

// The lines of a climb where the coach sets no others; common practice, no
// source.
const (
	HeavyLine = 90.0  // per cent of the record from which a day counts as heavy
	Ceiling   = 102.0 // per cent of the record that may be attempted at most
)

// Limits of belief.
const (
	MaxRungs   = 60
	MaxSeconds = 3 * 60 * 60 // of a whole climb
	MaxCeiling = 120.0
)

// ErrPlan marks a climb that cannot be run.
var ErrPlan = errors.New("not a climb")

// Fault is one thing wrong with a climb.
type Fault struct {
	Rung int    // from 1; 0 for the climb as a whole
	What string // what is wrong, with the value
	Mend string // what would mend it
}

// String writes the fault as one line.
func (f Fault) String() string {
	if f.Rung == 0 {
		return fmt.Sprintf("%s; %s", f.What, f.Mend)
	}
	return fmt.Sprintf("rung %d %s; %s", f.Rung, f.What, f.Mend)
}

// Valid returns an error wrapping [ErrPlan] that says all that [Check] finds,
// and that a climb without a name cannot be kept.
func Valid(plan gym.ClimbPlan) error {
	faults := Check(plan)
	if strings.TrimSpace(plan.Name) == "" {
		faults = append(faults, Fault{What: "the name is empty", Mend: "write one"})
	}
	return asError(plan.Name, faults)
}

func asError(name string, faults []Fault) error {
	if len(faults) == 0 {
		return nil
	}
	lines := make([]string, len(faults))
	for i, f := range faults {
		lines[i] = f.String()
	}
	return fmt.Errorf("use climb %q: %w: %s", name, ErrPlan, strings.Join(lines, ". "))
}

// Check returns everything that is wrong with the rungs and the lines of a
// climb, in the order of the rungs.
func Check(plan gym.ClimbPlan) []Fault {
	faults := checkWhole(plan)
	for i := range plan.Rungs {
		faults = append(faults, checkRung(plan, i)...)
	}
	return faults
}

func checkWhole(plan gym.ClimbPlan) []Fault {
	var faults []Fault
	n := len(plan.Rungs)
	if n == 0 {
		faults = append(faults, Fault{What: "the climb has no rungs", Mend: "add at least one"})
	}
	if n > MaxRungs {
		faults = append(faults, Fault{What: fmt.Sprintf("%d rungs are more than %d", n, MaxRungs), Mend: "take some out"})
	}
	if !(plan.HeavyLine > 0 && plan.HeavyLine <= 100) {
		faults = append(faults, Fault{What: fmt.Sprintf("the heavy line of %g %% is not over 0 and at most 100 %%", plan.HeavyLine), Mend: fmt.Sprintf("write one such as %g", HeavyLine)})
	}
	if !(plan.Ceiling > 100 && plan.Ceiling <= MaxCeiling) {
		faults = append(faults, Fault{What: fmt.Sprintf("the ceiling of %g %% is not over 100 and at most %g %%", plan.Ceiling, MaxCeiling), Mend: fmt.Sprintf("write one such as %g", Ceiling)})
	}
	return faults
}

func checkRung(plan gym.ClimbPlan, i int) []Fault {
	var faults []Fault
	add := func(what, mend string) { faults = append(faults, Fault{i + 1, what, mend}) }
	checkTimes(plan.Rungs, i, add)
	checkLoad(plan, i, add)
	r := plan.Rungs[i]
	if r.Reps < 0 || r.Reps > gym.MaxReps {
		add(fmt.Sprintf("asks for %d reps", r.Reps), fmt.Sprintf("write 1 to %d, or the day's", gym.MaxReps))
	}
	order := slices.Index(zones, r.Zone)
	switch {
	case order < 0:
		add(fmt.Sprintf("is in the zone %q", r.Zone), "write light, working or top")
	case i > 0 && order < slices.Index(zones, plan.Rungs[i-1].Zone):
		add(fmt.Sprintf("goes back from %s to %s", plan.Rungs[i-1].Zone, r.Zone), "keep the order light, working, top")
	}
	return faults
}

var zones = []gym.Zone{gym.LightZone, gym.WorkingZone, gym.TopZone}

func checkTimes(rungs []gym.Rung, i int, add func(what, mend string)) {
	r, from := rungs[i], 0
	if i > 0 {
		from = rungs[i-1].Until
	}
	switch {
	case r.At > from:
		add(fmt.Sprintf("begins at %s and leaves a gap of %d s after %s", Time(r.At), r.At-from, Time(from)), "begin it at "+Time(from))
	case r.At < from:
		add(fmt.Sprintf("begins at %s and overlaps what ends at %s", Time(r.At), Time(from)), "begin it at "+Time(from))
	}
	switch {
	case r.Until == r.At:
		add(fmt.Sprintf("lasts no time, from %s to %s", Time(r.At), Time(r.Until)), "end it later")
	case r.Until < r.At:
		add(fmt.Sprintf("ends at %s, before it begins at %s", Time(r.Until), Time(r.At)), "end it later")
	case r.Until > MaxSeconds:
		add(fmt.Sprintf("ends at %s", Time(r.Until)), "end the climb by "+Time(MaxSeconds))
	}
}

func checkLoad(plan gym.ClimbPlan, i int, add func(what, mend string)) {
	p := plan.Rungs[i].Percent
	switch {
	case math.IsNaN(p) || p <= 0:
		add(fmt.Sprintf("is at %g %%", p), "write a percentage over 0")
	case p > plan.Ceiling:
		add(fmt.Sprintf("is at %g %%, over the ceiling of %g %%", p, plan.Ceiling), "lower it or raise the ceiling")
	case i > 0 && p < plan.Rungs[i-1].Percent:
		add(fmt.Sprintf("falls from %g %% to %g %%", plan.Rungs[i-1].Percent, p), fmt.Sprintf("write %g or more", plan.Rungs[i-1].Percent))
	}
}

// Time writes seconds as minutes and seconds, "02:30"; an hour is 60 minutes.
func Time(seconds int) string {
	if seconds < 0 {
		return "-" + Time(-seconds)
	}
	return fmt.Sprintf("%02d:%02d", seconds/60, seconds%60)
}
