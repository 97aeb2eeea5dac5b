package store

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/gym"
)

// Every key that an aggregate can name, once each.
func TestUsesAreAllThatIsNamed(t *testing.T) {
	second := gym.SecondLift{Lift: "lift-2", OfLift: "lift-3"}
	workout := gym.Workout{Items: []gym.Item{{Movement: "movement-1"}, {Movement: "movement-2"}, {Movement: "movement-1"}}}
	assert.Equal(t, set("track track-1", "lift lift-1", "lift lift-2", "lift lift-3", "movement movement-1", "movement movement-2",
		"drill drill-1", "drill drill-2", "finisher finisher-1", "climb a climb"),
		cycleUses(gym.Cycle{Tracks: []gym.TrackPlan{{Track: "track-1", Days: []gym.DayPlan{{
			WarmUp: []gym.DrillLine{{Drill: "drill-1"}, {Drill: "drill-2"}},
			Main:   gym.MainLift{Lift: "lift-1", Climb: "a climb"},
			Second: second, Workout: workout, Finisher: []gym.FinisherLine{{Finisher: "finisher-1"}},
		}}}}}))
	assert.Equal(t, set("track track-1", "track track-2", "lift lift-1", "lift lift-2", "lift lift-3", "lift lift-4", "athlete athlete-1",
		"movement movement-1", "movement movement-2"),
		classUses(gym.Class{
			Slot: "slot-1", Climb: gym.ClimbPlan{ID: "climb-1"}, // a held class keeps these when they are gone
			Pieces:  []gym.Piece{{Track: "track-1", Lift: "lift-1", Second: second, Workout: workout}},
			Lifters: []gym.Lifter{{Athlete: "athlete-1", Track: "track-2", Lift: "lift-4"}},
		}))
	assert.Equal(t, set("track track-1", "track track-2"), slotUses(gym.Slot{Tracks: []gym.ID{"track-1", "track-2", "track-1"}}))
}

func set(all ...string) uses {
	u := uses{}
	for _, text := range all {
		column, key, _ := strings.Cut(text, " ")
		u.add(column, key)
	}
	return u
}
