package desk

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"windlass/internal/climb"
	"windlass/internal/gym"
)

// ClimbDraft is a climb as a coach writes it, before it is one: every figure is
// still a text. [ClimbDraft.Plan] says what it would be and what is wrong.
type ClimbDraft struct {
	ID        gym.ID
	Name      string
	HeavyLine string
	Ceiling   string
	Strict    bool
	Rungs     []RungDraft
}

// RungDraft is one line of a draft.
type RungDraft struct {
	At, Until string // "02:30"
	Percent   string // "62.5"
	Reps      string // "3", or "day"
	Zone      gym.Zone
}

// DraftFault is one thing that keeps a draft from being a climb. Its error reads
// as a sentence.
type DraftFault struct {
	Rung int // from 0; −1 for the climb as a whole
	Err  error
}

// DraftOf writes a climb down to be changed.
func DraftOf(plan gym.ClimbPlan) ClimbDraft {
	c := ClimbDraft{
		ID: plan.ID, Name: plan.Name, Strict: plan.Strict,
		HeavyLine: percentText(plan.HeavyLine), Ceiling: percentText(plan.Ceiling),
	}
	for _, r := range plan.Rungs {
		reps := "day"
		if r.Reps != 0 {
			reps = strconv.Itoa(r.Reps)
		}
		c.Rungs = append(c.Rungs, RungDraft{climb.Time(r.At), climb.Time(r.Until), percentText(r.Percent), reps, r.Zone})
	}
	return c
}

func percentText(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// Plan reads the draft. With faults, the climb is what could be read of it.
func (c ClimbDraft) Plan() (gym.ClimbPlan, []DraftFault) {
	plan := gym.ClimbPlan{ID: c.ID, Name: strings.TrimSpace(c.Name), Strict: c.Strict}
	var faults []DraftFault
	note := func(rung int, where string, err error) {
		if err != nil {
			text := strings.TrimPrefix(err.Error(), climb.ErrPlan.Error()+": ")
			faults = append(faults, DraftFault{rung, fmt.Errorf("%s %s", where, text)})
		}
	}
	var err error
	plan.HeavyLine, err = climb.ReadPercent(c.HeavyLine)
	note(-1, "of the heavy line the", err)
	plan.Ceiling, err = climb.ReadPercent(c.Ceiling)
	note(-1, "of the ceiling the", err)
	for i, r := range c.Rungs {
		rung, errs := r.read()
		for _, err := range errs {
			note(i, fmt.Sprintf("in rung %d the", i+1), err)
		}
		plan.Rungs = append(plan.Rungs, rung)
	}
	if len(faults) == 0 {
		faults = faultsOf(plan)
	}
	return plan, faults
}

func (r RungDraft) read() (gym.Rung, []error) {
	rung := gym.Rung{Zone: r.Zone}
	errs := make([]error, 4)
	rung.At, errs[0] = climb.ReadTime(r.At)
	rung.Until, errs[1] = climb.ReadTime(r.Until)
	rung.Percent, errs[2] = climb.ReadPercent(r.Percent)
	rung.Reps, errs[3] = climb.ReadReps(r.Reps)
	return rung, errs
}

// faultsOf is what package climb finds wrong, and the lack of a name.
func faultsOf(plan gym.ClimbPlan) []DraftFault {
	var faults []DraftFault
	if plan.Name == "" {
		faults = append(faults, DraftFault{-1, fmt.Errorf("the climb has no name; write one")})
	}
	for _, f := range climb.Check(plan) {
		faults = append(faults, DraftFault{f.Rung - 1, fmt.Errorf("%s", f)})
	}
	return faults
}

// Same reports whether the draft says what a climb says.
func (c ClimbDraft) Same(plan gym.ClimbPlan) bool {
	of := DraftOf(plan)
	return c.ID == of.ID && c.Name == of.Name && c.HeavyLine == of.HeavyLine && c.Ceiling == of.Ceiling &&
		c.Strict == of.Strict && slices.Equal(c.Rungs, of.Rungs)
}

// Insert adds a rung after the one with that number, as long as that one and like
// it, and moves the later ones on. In a draft without rungs it adds the first.
func (c *ClimbDraft) Insert(after int) {
	if len(c.Rungs) == 0 {
		c.Rungs = []RungDraft{{climb.Time(0), climb.Time(60), "40", "5", gym.LightZone}}
		return
	}
	after = max(0, min(after, len(c.Rungs)-1))
	like := c.Rungs[after]
	length := like.length()
	like.At, like.Until = like.Until, later(like.Until, length)
	c.Rungs = slices.Insert(slices.Clone(c.Rungs), after+1, like)
	c.shift(after+2, length)
}

// Remove takes a rung out and moves the later ones up.
func (c *ClimbDraft) Remove(at int) {
	if at < 0 || at >= len(c.Rungs) {
		return
	}
	length := c.Rungs[at].length()
	c.Rungs = slices.Delete(slices.Clone(c.Rungs), at, at+1)
	c.shift(at, -length)
}

func (c *ClimbDraft) shift(from, by int) {
	for i := from; i < len(c.Rungs); i++ {
		c.Rungs[i].At, c.Rungs[i].Until = later(c.Rungs[i].At, by), later(c.Rungs[i].Until, by)
	}
}

// length is how long a rung lasts in seconds, and 0 where its times are none.
func (r RungDraft) length() int {
	rung, errs := r.read()
	if errs[0] != nil || errs[1] != nil {
		return 0
	}
	return max(0, rung.Until-rung.At)
}

// later moves a time on by seconds; a text that is no time stays.
func later(text string, by int) string {
	at, err := climb.ReadTime(text)
	if err != nil || at+by < 0 {
		return text
	}
	return climb.Time(at + by)
}
