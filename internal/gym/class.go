package gym

import (
	"time"

	"windlass/internal/day"
	"windlass/internal/mass"
)

// Stage is how far a class has come.
type Stage string

// The stages of a class, in order.
const (
	SetUp        Stage = "set-up"
	Climbing     Stage = "climb"
	Conditioning Stage = "conditioning"
	Finished     Stage = "finished"
)

// Class is a real meeting at a date and hour, with the athletes who came. The
// state of its clocks is part of it, so that a killed program can go on.
type Class struct {
	ID       ID        `json:"id"`
	Slot     ID        `json:"slot"` // of the timetable; empty for a class outside it
	On       day.Date  `json:"on"`
	At       day.Clock `json:"at"`
	Name     string    `json:"name"`
	Stage    Stage     `json:"stage"`
	Pieces   []Piece   `json:"pieces"`
	Climb    ClimbPlan `json:"climb"` // a copy: a template edited later changes no past class
	Lifters  []Lifter  `json:"lifters"`
	Clock    Run       `json:"clock"`   // of the climb
	Workout  Run       `json:"workout"` // of the conditioning
	Finished time.Time `json:"finished"`

	// Pace is the factor of the gym's own pace on the catalogue's times, as it was
	// when the conditioning began, so that every screen guesses alike; 0 is 1.
	Pace float64 `json:"pace,omitzero"`
	// Ahead is how much further a track is in its conditioning than the usual pace
	// has it, where the coach has looked; it may be less than nothing.
	Ahead map[ID]time.Duration `json:"ahead,omitzero"`
}

// Piece is what one track does in a class.
type Piece struct {
	Track   ID         `json:"track"`
	Lift    LiftKey    `json:"lift"`
	Reps    int        `json:"reps"`
	Scheme  []Sets     `json:"scheme"` // a day by percentages, without a climb
	Second  SecondLift `json:"second"`
	Workout Workout    `json:"workout"`
}

// Piece returns what a track does in the class.
func (c Class) Piece(track ID) (Piece, bool) {
	for _, p := range c.Pieces {
		if p.Track == track {
			return p, true
		}
	}
	return Piece{}, false
}

// Lifter is an athlete in a class.
type Lifter struct {
	Athlete ID        `json:"athlete"`
	Track   ID        `json:"track"`
	Lift    LiftKey   `json:"lift"`
	Reps    int       `json:"reps"`
	Bar     string    `json:"bar"`     // plates.Bar.Key
	Base    mass.Mass `json:"base"`    // record or estimate the climb is counted from; 0 for a finding climb
	Source  Source    `json:"source"`  // of the base
	Start   mass.Mass `json:"start"`   // first load of a finding climb
	Joined  int       `json:"joined"`  // index of the first rung lifted; over 0 for a late comer
	Station int       `json:"station"` // index in Equipment.Stations; -1 for none
	Place   int       `json:"place"`   // order at the station
	Calls   []Call    `json:"calls"`
	Result  ID        `json:"result"` // what was logged of the climb; empty until then
	Missed  bool      `json:"missed"` // the coach logged that nothing counted
	Score   string    `json:"score"`  // of the conditioning, as it was typed

	// Exceptions are what the coach decided for single rungs.
	Exceptions []Exception `json:"exceptions,omitzero"`

	// Laid is what lies on the bar already; without discs nothing is kept.
	Laid Laid `json:"laid,omitzero"`
}

// CallKind is what a lifter decides after a rung.
type CallKind string

// The calls at a top rung, and the answers in a finding climb.
const (
	ClimbCall  CallKind = "climb"
	SettleCall CallKind = "settle"
	MissedCall CallKind = "missed"
	EasyCall   CallKind = "easy"
	FairCall   CallKind = "fair"
	HardCall   CallKind = "hard"
)

// Call is one decision, after the rung with that index.
type Call struct {
	Rung int      `json:"rung"`
	Kind CallKind `json:"kind"`
}

// Run is the state of a clock: how far it had come at an instant, and whether it
// has gone on since. The time it shows is a pure function of Run and now, so two
// programs that read the same file show the same second.
type Run struct {
	Anchor  time.Time     `json:"anchor"`
	Before  time.Duration `json:"before"`
	Running bool          `json:"running"`
}

// Started reports whether the clock ever ran.
func (r Run) Started() bool { return !r.Anchor.IsZero() }

// Elapsed returns what the clock shows at an instant; it is never negative, even
// when the machine's own clock goes backwards.
func (r Run) Elapsed(now time.Time) time.Duration {
	if !r.Running {
		return max(0, r.Before)
	}
	return max(0, r.Before+now.Sub(r.Anchor))
}

// Start lets the clock run on from what it shows.
func (r Run) Start(now time.Time) Run {
	return Run{Anchor: now, Before: r.Elapsed(now), Running: true}
}

// Hold stops the clock at what it shows; one that never ran has not started now.
func (r Run) Hold(now time.Time) Run {
	if !r.Started() {
		return r
	}
	return Run{Anchor: now, Before: r.Elapsed(now)}
}

// Set makes the clock show a given time and leaves it running or held as it was.
func (r Run) Set(shown time.Duration, now time.Time) Run {
	return Run{Anchor: now, Before: max(0, shown), Running: r.Running}
}
