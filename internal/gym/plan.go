package gym

import (
	"fmt"

	"windlass/internal/day"
)

// DayKind says what a day is for.
type DayKind string

// The kinds of day.
const (
	MainDay     DayKind = "main"
	RecoveryDay DayKind = "recovery"
	RestDay     DayKind = "rest"
)

// WeekKind says what a week is for.
type WeekKind string

// The kinds of week; the last week of a cycle is its test week.
const (
	TrainingWeek WeekKind = "training"
	LightWeek    WeekKind = "light"
	TestWeek     WeekKind = "test"
)

// WaveKind is how rep counts run over the weeks; package cycle computes them.
type WaveKind string

// The waves.
const (
	BlockWave   WaveKind = "block"
	RollingWave WaveKind = "rolling"
	StepWave    WaveKind = "step"
)

// Cycle is a block of weeks with a goal, with the plan of every track in it.
type Cycle struct {
	ID     ID          `json:"id"`
	Name   string      `json:"name"`
	Goal   string      `json:"goal"`
	Start  day.Date    `json:"start"` // the first day of week 1
	Weeks  []WeekKind  `json:"weeks"` // one each, 3 to 26
	Tracks []TrackPlan `json:"tracks"`
}

// End returns the last day of the cycle.
func (c Cycle) End() day.Date { return c.Start.Add(7*len(c.Weeks) - 1) }

// WeekOf returns the week of the cycle, from 1, that a day falls in, and 0 for a
// day outside the cycle.
func (c Cycle) WeekOf(on day.Date) int {
	if on < c.Start || on > c.End() {
		return 0
	}
	return on.Since(c.Start)/7 + 1
}

// Plan returns the plan of a track in the cycle.
func (c Cycle) Plan(track ID) (TrackPlan, bool) {
	for _, p := range c.Tracks {
		if p.Track == track {
			return p, true
		}
	}
	return TrackPlan{}, false
}

// TrackPlan is one track's days through a cycle.
type TrackPlan struct {
	Track    ID        `json:"track"`
	Wave     WaveKind  `json:"wave"`
	MainDays int       `json:"mainDays"` // main days a week that the track promises
	SameReps bool      `json:"sameReps"` // one rep count for all lifts of a week is wanted
	Days     []DayPlan `json:"days"`     // in order of week and weekday; a missing day is a rest day
}

// Day returns the plan of one day; a day without a plan is a rest day.
func (p TrackPlan) Day(week int, on day.Weekday) DayPlan {
	for _, d := range p.Days {
		if d.Week == week && d.Weekday == on {
			return d
		}
	}
	return DayPlan{Week: week, Weekday: on, Kind: RestDay, Title: "Rest"}
}

// DayPlan is what a track does on one day: five parts, each of which may be empty.
type DayPlan struct {
	Week     int            `json:"week"` // from 1
	Weekday  day.Weekday    `json:"weekday"`
	Kind     DayKind        `json:"kind"`
	Title    string         `json:"title"` // unique in its week
	WarmUp   []DrillLine    `json:"warmUp"`
	Main     MainLift       `json:"main"`
	Second   SecondLift     `json:"second"`
	Workout  Workout        `json:"workout"`
	Finisher []FinisherLine `json:"finisher"`
	Notes    string         `json:"notes"`
}

// DrillLine is one line of a warm-up.
type DrillLine struct {
	Drill string `json:"drill"`
	Dose  string `json:"dose"`
}

// MainLift is the day's lift to a rep max, or, where Scheme is set, sets at
// percentages of the 1RM.
type MainLift struct {
	Lift   LiftKey `json:"lift"`
	Reps   int     `json:"reps"`
	Climb  string  `json:"climb"` // ClimbPlan.Name
	Scheme []Sets  `json:"scheme"`
}

// Empty reports whether the day has no main lift.
func (m MainLift) Empty() bool { return m.Lift == "" }

// Sets is a number of sets at one percentage of the 1RM.
type Sets struct {
	Percent float64 `json:"percent"`
	Sets    int     `json:"sets"`
	Reps    int     `json:"reps"`
}

// SecondLift is sets at a percentage of a stated rep max.
type SecondLift struct {
	Lift    LiftKey `json:"lift"`
	Sets    int     `json:"sets"`
	Reps    int     `json:"reps"`
	Percent float64 `json:"percent"`
	OfReps  int     `json:"ofReps"` // of the 5RM: 5
	OfLift  LiftKey `json:"ofLift"` // empty means the lift itself
}

// Empty reports whether the day has no second lift.
func (s SecondLift) Empty() bool { return s.Lift == "" }

// FinisherLine is one exercise of a finisher.
type FinisherLine struct {
	Finisher string `json:"finisher"`
	Dose     string `json:"dose"`
}

// Format is the kind of a conditioning workout.
type Format string

// The formats of conditioning; package conditioning has their rules.
const (
	AMRAP     Format = "amrap"
	ForTime   Format = "for-time"
	Chipper   Format = "chipper"
	EMOM      Format = "emom"
	Intervals Format = "intervals"
	PlainSets Format = "sets"
)

// Formats returns every format, in the order of choice lists.
func Formats() []Format { return []Format{ForTime, AMRAP, EMOM, Intervals, Chipper, PlainSets} }

// Workout is the conditioning of a day. Which fields count depends on the
// format; package conditioning says which and checks them.
type Workout struct {
	Format  Format `json:"format"`
	Seconds int    `json:"seconds"` // length of an AMRAP or EMOM
	Cap     int    `json:"cap"`     // seconds after which a workout for time ends; 0 is none
	Rounds  int    `json:"rounds"`  // of a workout for time, of intervals, of sets
	Reps    []int  `json:"reps"`    // a rep list such as 21-15-9, which takes the place of rounds
	Work    int    `json:"work"`    // seconds, intervals
	Rest    int    `json:"rest"`    // seconds between rounds or sets
	Items   []Item `json:"items"`
}

// Empty reports whether there is no conditioning.
func (w Workout) Empty() bool { return len(w.Items) == 0 }

// Item is one movement of a workout. Amount counts the movement's own measure;
// with a rep list it is 0. An EMOM's items are its slots in turn.
type Item struct {
	Movement MovementKey            `json:"movement"`
	Amount   int                    `json:"amount"`
	Loads    map[Standard]TierLoads `json:"loads"` // where the day differs from the catalogue
}

// Zone is the part of a climb that a rung belongs to.
type Zone string

// The zones, in the order in which a climb goes through them.
const (
	LightZone   Zone = "light"
	WorkingZone Zone = "working"
	TopZone     Zone = "top"
)

// ClimbPlan is a timed way up to the day's rep max, as the coach keeps it.
type ClimbPlan struct {
	ID        ID      `json:"id"`
	Name      string  `json:"name"`
	Rungs     []Rung  `json:"rungs"`
	HeavyLine float64 `json:"heavyLine"` // per cent of the record from which a day counts as heavy
	Ceiling   float64 `json:"ceiling"`   // per cent of the record that may be attempted at most
	Strict    bool    `json:"strict"`    // asks before the clock is held
	BuiltIn   bool    `json:"builtIn"`
}

// Rung is one timed set of a climb.
type Rung struct {
	At      int     `json:"at"`      // seconds from the start of the clock
	Until   int     `json:"until"`   // seconds, over At
	Percent float64 `json:"percent"` // of the record for the day's rep count
	Reps    int     `json:"reps"`    // 0 means the day's rep count
	Zone    Zone    `json:"zone"`
}

// RepsOf returns the reps of the rung on a day of so many.
func (r Rung) RepsOf(dayReps int) int {
	if r.Reps == 0 {
		return dayReps
	}
	return r.Reps
}

// Slot is one class of the weekly timetable.
type Slot struct {
	ID      ID          `json:"id"`
	Weekday day.Weekday `json:"weekday"`
	At      day.Clock   `json:"at"`
	Minutes int         `json:"minutes"`
	Name    string      `json:"name"`
	Tracks  []ID        `json:"tracks"` // empty means all
}

// Valid says what keeps s from being kept. A class does not run past midnight.
func (s Slot) Valid() error {
	switch {
	case s.Weekday < day.Monday || s.Weekday > day.Sunday:
		return fmt.Errorf("keep class hour: %d is no weekday", int(s.Weekday))
	case s.At < 0 || s.Minutes < 1 || int(s.At)+s.Minutes > 24*60:
		return fmt.Errorf("keep class hour: %d minutes from %s do not fit the day", s.Minutes, s.At)
	}
	return nil
}

// Closure is a holiday or another stretch of days on which the gym is closed.
type Closure struct {
	ID    ID       `json:"id"`
	From  day.Date `json:"from"`
	Until day.Date `json:"until"`
	Name  string   `json:"name"`
}

// Valid says what keeps c from being kept.
func (c Closure) Valid() error {
	switch {
	case c.From == day.None || c.Until == day.None:
		return fmt.Errorf("keep closed days %q: they want a first and a last day", c.Name)
	case c.Until < c.From:
		return fmt.Errorf("keep closed days %q: the last day %s is before the first, %s", c.Name, c.Until, c.From)
	}
	return nil
}

// Covers reports whether the gym is closed on a day.
func (c Closure) Covers(on day.Date) bool { return c.From <= on && on <= c.Until }
