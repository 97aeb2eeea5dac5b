package gym

import (
	"slices"

	"windlass/internal/mass"
)

// Region is the part of the body that a lift or movement loads most.
type Region string

// The regions; a lift of the whole body loads all of it.
const (
	Lower     Region = "lower"
	Upper     Region = "upper"
	Trunk     Region = "trunk"
	WholeBody Region = "whole"
)

// Pattern is the way a lift or movement moves the body.
type Pattern string

// The patterns, as the trade calls them.
const (
	Squat       Pattern = "squat"
	Hinge       Pattern = "hinge"
	Push        Pattern = "push"
	Press       Pattern = "press"
	Pull        Pattern = "pull"
	Carry       Pattern = "carry"
	Olympic     Pattern = "olympic"
	LoadAndLift Pattern = "load-and-lift"
	Core        Pattern = "trunk"  // bracing, flexing and turning the trunk
	Engine      Pattern = "engine" // running, rowing, riding, skipping
)

// Measure is what one counts of a lift or movement.
type Measure string

// Loads, repetitions and distances are better when larger; a time for fixed
// work is better when smaller, a held time when larger.
const (
	ByLoad     Measure = "load"
	ByReps     Measure = "reps"     // repetitions, for a lift in a fixed time
	ByDistance Measure = "distance" // metres
	ByCalories Measure = "calories" // as the machine shows them
	ByTime     Measure = "time"     // seconds for fixed work
	ByHold     Measure = "hold"     // seconds held
)

// LiftKey and MovementKey name entries of the catalogue by a slug such as
// "back-squat", the same in every gym's file.
type (
	LiftKey     string
	MovementKey string
)

// Lift is a barbell or strongman lift with rep maxes.
type Lift struct {
	Key       LiftKey                `json:"key"`
	Name      string                 `json:"name"`
	Aliases   []string               `json:"aliases"` // other spellings on a coach's sheet
	Region    Region                 `json:"region"`
	Pattern   Pattern                `json:"pattern"`
	Bar       string                 `json:"bar"`     // kind of bar (plates.Bar.Kind) or of implement
	Floor     bool                   `json:"floor"`   // starts from the floor: wants full-diameter discs
	Measure   Measure                `json:"measure"` // ByLoad for all with rep maxes
	Reps      []int                  `json:"reps"`    // the rep counts that are recorded
	Related   LiftKey                `json:"related"` // a lift that gives a first guess, or empty
	RatioLow  float64                `json:"ratioLow"`
	RatioHigh float64                `json:"ratioHigh"` // this lift's 1RM over the related lift's
	Source    string                 `json:"source"`    // of the ratio, or "common practice"
	Reference map[Standard]mass.Mass `json:"reference"` // a usual member's 1RM (common practice)
	Own       bool                   `json:"own"`       // added by this gym
	Hidden    bool                   `json:"hidden"`
}

// Records reports whether the lift keeps a record for so many reps.
func (l Lift) Records(reps int) bool {
	return slices.Contains(l.Reps, reps)
}

// Tier is one of the three loads of a conditioning movement.
type Tier string

// The tiers, heaviest first; Below is a suggestion under all three.
const (
	Full  Tier = "full"
	Mid   Tier = "mid"
	Light Tier = "light"
	Below Tier = "below"
)

// TierLoads are the three loads of a movement for one load standard.
type TierLoads struct {
	Full  mass.Mass `json:"full"`
	Mid   mass.Mass `json:"mid"`
	Light mass.Mass `json:"light"`
}

// Of returns the load of a tier, and zero for [Below].
func (t TierLoads) Of(tier Tier) mass.Mass {
	switch tier {
	case Full:
		return t.Full
	case Mid:
		return t.Mid
	case Light:
		return t.Light
	}
	return 0
}

// Movement is anything done in conditioning.
type Movement struct {
	Key           MovementKey            `json:"key"`
	Name          string                 `json:"name"`
	Region        Region                 `json:"region"`
	Pattern       Pattern                `json:"pattern"`
	Measure       Measure                `json:"measure"`
	Implement     string                 `json:"implement"`     // kind, as in Implement.Kind; empty for body weight
	Pair          bool                   `json:"pair,omitzero"` // an athlete takes two of the implement, each of the load
	Linked        LiftKey                `json:"linked"`        // the lift whose strength speaks for this movement
	ReferenceReps int                    `json:"referenceReps"` // of a usual bout, counted in the measure
	Seconds       float64                `json:"seconds"`       // per rep, metre or calorie, fresh
	Loads         map[Standard]TierLoads `json:"loads"`
	Own           bool                   `json:"own"`
	Hidden        bool                   `json:"hidden"`
}

// Finisher is a small isolation exercise at the end of a day.
type Finisher struct {
	Key    string `json:"key"`
	Name   string `json:"name"`
	Muscle string `json:"muscle"`
	Region Region `json:"region"`
	Spares string `json:"spares"` // what it spares or protects
	Own    bool   `json:"own"`
	Hidden bool   `json:"hidden"`
}

// Takes returns how many implements an athlete has in use at the movement.
func (m Movement) Takes() int {
	switch {
	case m.Implement == "":
		return 0
	case m.Pair:
		return 2
	}
	return 1
}

// Drill is one exercise of a warm-up.
type Drill struct {
	Key     string  `json:"key"`
	Name    string  `json:"name"`
	Pattern Pattern `json:"pattern"`
	Dose    string  `json:"dose"` // as in "2 × 10" or "30 s a side"
	Own     bool    `json:"own"`
	Hidden  bool    `json:"hidden"`
}
