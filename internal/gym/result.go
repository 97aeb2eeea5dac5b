package gym

import (
	"fmt"
	"strings"
	"time"

	"windlass/internal/day"
	"windlass/internal/mass"
)

// Source says where a number for a lift comes from.
type Source string

// A result is tested in front of the coach or reported by the athlete; an
// estimate is computed and never stored as a result.
const (
	Tested   Source = "tested"
	Reported Source = "reported"
	Estimate Source = "estimate"
)

// MaxReps is the highest rep count of a rep max.
const MaxReps = 20

// maxAmount bounds metres, seconds and repetitions by a day's worth of seconds:
// more is a slip of the hand.
const maxAmount = 86_400

// Void takes a logged row out of every computation and leaves it readable.
type Void struct {
	At     time.Time `json:"at"`
	Reason string    `json:"reason"`
}

// Result is one logged attempt at a rep max, or at a lift's other measure. It is
// never edited, only voided.
type Result struct {
	ID      ID        `json:"id"`
	Athlete ID        `json:"athlete"`
	Lift    LiftKey   `json:"lift"`
	Reps    int       `json:"reps"`
	Load    mass.Mass `json:"load"`
	Unit    mass.Unit `json:"unit"`   // as it was entered
	Amount  float64   `json:"amount"` // of the lift's measure where that is not the load
	On      day.Date  `json:"on"`
	Source  Source    `json:"source"`
	Class   ID        `json:"class"` // empty outside a class
	Made    time.Time `json:"made"`
	Void    *Void     `json:"void,omitempty"`
}

// Valid says what keeps r from being kept.
func (r Result) Valid() error {
	switch {
	case r.Athlete == "" || r.Lift == "":
		return fmt.Errorf("keep result: it names no athlete or no lift")
	case r.Reps < 1 || r.Reps > MaxReps:
		return fmt.Errorf("keep result: %d reps are not a rep max; write 1 to %d", r.Reps, MaxReps)
	case r.Load < 0 || !(r.Amount >= 0 && r.Amount <= maxAmount):
		return fmt.Errorf("keep result: a load of %s with an amount of %g is not believable", r.Load, r.Amount)
	case r.Load == 0 && r.Amount == 0:
		return fmt.Errorf("keep result: the load is nothing; write what was lifted")
	case r.Load > mass.Max:
		return fmt.Errorf("keep result: %s is over %s", r.Load, mass.Max)
	case !r.Unit.Valid():
		return fmt.Errorf("keep result: the unit %q is not kg or lb", r.Unit)
	case r.On == day.None:
		return fmt.Errorf("keep result: it has no date")
	case r.Source != Tested && r.Source != Reported:
		return fmt.Errorf("keep result: the source %q is not tested or reported", r.Source)
	}
	return nil
}

// Outcome is how a conditioning load went.
type Outcome string

// Moved as intended; had to slow; could not go on with that load.
const (
	Held    Outcome = "held"
	Slowed  Outcome = "slowed"
	Stopped Outcome = "stopped"
)

// Bout is one athlete's go at one movement in one conditioning part.
type Bout struct {
	ID       ID          `json:"id"`
	Athlete  ID          `json:"athlete"`
	Movement MovementKey `json:"movement"`
	Load     mass.Mass   `json:"load"`
	Unit     mass.Unit   `json:"unit"`
	Reps     int         `json:"reps"`
	Outcome  Outcome     `json:"outcome"`
	On       day.Date    `json:"on"`
	Workout  string      `json:"workout"` // as the coach's sheet names it
	Score    string      `json:"score"`
	Class    ID          `json:"class"`
	Made     time.Time   `json:"made"`
	Void     *Void       `json:"void,omitempty"`
}

// Valid says what keeps b from being kept.
func (b Bout) Valid() error {
	switch {
	case b.Athlete == "" || b.Movement == "":
		return fmt.Errorf("keep bout: it names no athlete or no movement")
	case b.Load <= 0 || b.Load > mass.Max:
		return fmt.Errorf("keep bout: the load %s is not between nothing and %s", b.Load, mass.Max)
	case b.Reps < 1 || b.Reps > 10_000:
		return fmt.Errorf("keep bout: %d reps are not believable; write 1 to 10000", b.Reps)
	case b.Outcome != Held && b.Outcome != Slowed && b.Outcome != Stopped:
		return fmt.Errorf("keep bout: the outcome %q is not held, slowed or stopped", b.Outcome)
	case b.On == day.None:
		return fmt.Errorf("keep bout: it has no date")
	case !b.Unit.Valid():
		return fmt.Errorf("keep bout: the unit %q is not kg or lb", b.Unit)
	}
	return nil
}

// Override is what the coach decided instead of a suggestion. The suggestion
// stays visible beside it.
type Override struct {
	ID       ID          `json:"id"`
	Athlete  ID          `json:"athlete"`
	Movement MovementKey `json:"movement"` // empty means every movement
	Load     mass.Mass   `json:"load"`     // exactly one of Load, Tier and Share is set
	Unit     mass.Unit   `json:"unit"`
	Tier     Tier        `json:"tier"`
	Share    float64     `json:"share"` // of the suggestion, under 1, while coming back from a break
	From     day.Date    `json:"from"`
	Until    day.Date    `json:"until"` // the last day; day.None means until it is voided
	Reason   string      `json:"reason"`
	Made     time.Time   `json:"made"`
	Void     *Void       `json:"void,omitempty"`
}

// Valid says what keeps o from being kept.
func (o Override) Valid() error {
	said := 0
	for _, set := range []bool{o.Load != 0, o.Tier != "", o.Share != 0} {
		if set {
			said++
		}
	}
	switch {
	case o.Athlete == "":
		return fmt.Errorf("keep override: it names no athlete")
	case said != 1:
		return fmt.Errorf("keep override: it says %d of load, tier and share; say exactly one", said)
	case o.Load != 0 && o.Movement == "":
		return fmt.Errorf("keep override: one load does not fit every movement; name the movement, or say a tier or a share")
	case o.Load < 0 || o.Load > mass.Max:
		return fmt.Errorf("keep override: the load %s is not between nothing and %s", o.Load, mass.Max)
	case o.Load != 0 && !o.Unit.Valid():
		return fmt.Errorf("keep override: the unit %q is not kg or lb", o.Unit)
	case o.Tier != "" && o.Tier != Full && o.Tier != Mid && o.Tier != Light:
		return fmt.Errorf("keep override: the tier %q is not full, mid or light", o.Tier)
	case o.Share != 0 && !(o.Share > 0 && o.Share < 1):
		return fmt.Errorf("keep override: a share of %g is not between 0 and 1", o.Share)
	case o.From == day.None:
		return fmt.Errorf("keep override: it has no first day")
	case o.Until != day.None && o.Until < o.From:
		return fmt.Errorf("keep override: its last day %s is before its first, %s", o.Until, o.From)
	case strings.TrimSpace(o.Reason) == "":
		return fmt.Errorf("keep override: it has no reason; write why")
	}
	return nil
}

// Holds reports whether o speaks for a movement on a day.
func (o Override) Holds(m MovementKey, on day.Date) bool {
	return o.Void == nil && (o.Movement == "" || o.Movement == m) &&
		o.From <= on && (o.Until == day.None || on <= o.Until)
}
