package desk

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/tier"
)

// DecisionState is how a decision stands today, in a word or two.
type DecisionState string

// The states of a decision.
const (
	InForce     DecisionState = "in force"
	StillToCome DecisionState = "to come"
	Replaced    DecisionState = "replaced" // by a later one, for as long as that stands
	Over        DecisionState = "over"
	TakenBack   DecisionState = "taken back"
)

// DecisionRow is one step in which the coach decided something, as the history
// tells it: one override, or the weeks of a comeback.
type DecisionRow struct {
	ID       gym.ID          // of an override of the step; [Desk.VoidOverride] takes the whole step back
	Movement gym.MovementKey // empty for every movement
	What     string          // "12 kg", "50 %, then 30 % lighter", "at most the mid tier"
	For      string          // the movement's name, or "every movement"
	From     day.Date
	Until    day.Date // the last day; day.None is until it is taken back
	Why      string
	Made     day.Date
	State    DecisionState
	Void     *gym.Void
	By       string // the decision that replaces it today
	Left     string // what speaks today once it is taken back; empty where nothing does
	parts    int    // overrides of the step
}

// Days writes the days of a decision: "30 Nov – 13 Dec", "from 30 Nov".
func (r DecisionRow) Days() string {
	switch r.Until {
	case day.None:
		return "from " + r.From.Short()
	case r.From:
		return r.From.Short()
	}
	return r.From.Short() + " – " + r.Until.Short()
}

// String tells all of a decision, and what taking it back does.
func (r DecisionRow) String() string {
	made := r.Made.Time().Format("2 January 2006")
	text := fmt.Sprintf("Decided on %s for %s: %s, %s. Why: %s.", made, r.For, r.What, r.Days(), r.Why)
	switch r.State {
	case TakenBack:
		return text + fmt.Sprintf(" Taken back on %s.", r.Void.At.Format("2 January 2006"))
	case Over:
		return text + " It is over."
	case Replaced:
		return text + " Replaced by " + r.By + ", for as long as that stands."
	}
	return text + " Taking it back " + r.effect() + "."
}

// effect says what taking the decision back does.
func (r DecisionRow) effect() string {
	switch {
	case r.parts > 1 && r.Left == "":
		return "takes back all of it that is left"
	case r.Left != "":
		return "leaves " + r.Left
	case r.State == StillToCome:
		return "keeps it from coming"
	case r.Movement == "":
		return "lets every movement go without it"
	}
	return "lets the suggestion stand again"
}

// Decisions returns everything that was ever decided for an athlete, the latest
// first. A decision that was taken back stays readable.
func (d *Desk) Decisions(athlete gym.ID) []DecisionRow {
	var rows []DecisionRow
	all := latestOverrides(d.overridesOf(athlete))
	for _, step := range slices.Backward(tier.Steps(all)) {
		row := d.decisionRow(step)
		d.weigh(&row, step, all)
		rows = append(rows, row)
	}
	slices.SortStableFunc(rows, func(a, b DecisionRow) int { return cmp.Compare(b.Made, a.Made) })
	return rows
}

func (d *Desk) decisionRow(step []gym.Override) DecisionRow {
	first, last := step[0], step[len(step)-1]
	why, _, _ := strings.Cut(first.Reason, ", week") // the weeks stand in the days
	r := DecisionRow{
		ID: last.ID, Movement: first.Movement, What: overrideWhat(step...), For: d.overrideFor(first),
		From: first.From, Until: last.Until, Why: why, Made: day.From(first.Made.In(d.now().Location())), State: InForce, Void: first.Void, parts: len(step),
	}
	switch today := d.Today(); {
	case r.Void != nil:
		r.State = TakenBack
	case isOver(last, today):
		r.State = Over
	case r.From > today:
		r.State = StillToCome
	}
	return r
}

// weigh sets a step against all that was decided for its athlete: whether another
// speaks in its stead today, and what would speak without it.
func (d *Desk) weigh(r *DecisionRow, step, all []gym.Override) {
	if r.State != InForce {
		return
	}
	mine := func(o gym.Override) bool {
		return slices.ContainsFunc(step, func(s gym.Override) bool { return s.ID == o.ID })
	}
	others := slices.DeleteFunc(slices.Clone(all), mine)
	speaking := tier.Speaking(r.Movement, d.Today(), all)
	var left []string
	for _, o := range tier.Speaking(r.Movement, d.Today(), others) {
		left = append(left, d.OverrideText(o))
	}
	r.Left = strings.Join(left, ", and ")
	if slices.ContainsFunc(speaking, mine) {
		return
	}
	r.State = Replaced
	lighter := step[0].Share > 0
	for _, o := range speaking {
		if (o.Share > 0) == lighter {
			r.By = d.OverrideText(o)
		}
	}
}

// OverrideText says what an override decides, for what and how long, and why: "12
// kg for Kettlebell swing until 3 Jun: sore wrist".
func (d *Desk) OverrideText(o gym.Override) string {
	text := overrideWhat(o) + " for " + d.overrideFor(o)
	if o.Until != day.None {
		text += " until " + o.Until.Short()
	}
	return text + ": " + o.Reason
}

// overrideWhat says what one step decides, without days and reason.
func overrideWhat(step ...gym.Override) string {
	first := step[0]
	switch {
	case first.Load > 0:
		return first.Load.In(first.Unit)
	case first.Tier != "" && first.Movement == "":
		return "at most the " + string(first.Tier) + " tier"
	case first.Tier != "":
		return "the " + string(first.Tier) + " tier"
	}
	var cuts []string
	for _, o := range step {
		cuts = append(cuts, fmt.Sprintf("%.3g %%", 100*(1-o.Share)))
	}
	return strings.Join(cuts, ", then ") + " lighter"
}

func (d *Desk) overrideFor(o gym.Override) string {
	if o.Movement == "" {
		return "every movement"
	}
	m, _ := d.Movement(o.Movement)
	return m.Name
}
