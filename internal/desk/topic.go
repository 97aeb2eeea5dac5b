package desk

import "windlass/internal/gym"

// Topic says what a change touched, so that a room reads again only what it
// shows. Topics add with |.
type Topic uint

// The topics.
const (
	AboutSettings Topic = 1 << iota
	AboutEquipment
	AboutCatalogue
	AboutRoster // athletes, tracks, moves, restrictions
	AboutResults
	AboutBouts // bouts and overrides
	AboutPlan  // cycles, climbs, timetable, closures
	AboutClass
	AboutAll Topic = 1<<iota - 1
)

func topicOf(changes []gym.Change) Topic {
	var t Topic
	for _, c := range changes {
		t |= topicOfOne(c)
	}
	return t
}

func topicOfOne(change gym.Change) Topic {
	switch change.(type) {
	case gym.PutSettings:
		return AboutSettings
	case gym.PutEquipment:
		return AboutEquipment
	case gym.PutLift, gym.DropLift, gym.PutMovement, gym.DropMovement,
		gym.PutFinisher, gym.DropFinisher, gym.PutDrill, gym.DropDrill:
		return AboutCatalogue
	case gym.AddResult, gym.VoidResult:
		return AboutResults
	case gym.AddBout, gym.VoidBout, gym.AddOverride, gym.VoidOverride:
		return AboutBouts
	case gym.PutClass, gym.DropClass:
		return AboutClass
	case gym.PutCycle, gym.DropCycle, gym.PutClimb, gym.DropClimb,
		gym.PutSlot, gym.DropSlot, gym.PutClosure, gym.DropClosure:
		return AboutPlan
	}
	return AboutRoster
}
