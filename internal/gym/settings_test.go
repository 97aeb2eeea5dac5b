package gym_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"windlass/internal/gym"
)

func TestSettingsValid(t *testing.T) {
	require.ErrorContains(t, gym.DefaultSettings().Valid(), "the gym has no name", "a name is all that is missing")
	valid := gym.DefaultSettings()
	valid.Name = "The Boathouse"
	checkRefusals(t, valid, []refusal[gym.Settings]{
		{"the gym has no name", func(s *gym.Settings) { s.Name = " " }},
		{`unit "st" is not kg or lb`, func(s *gym.Settings) { s.Unit = "st" }},
		{`the rounding "sideways" is none of nearest, down and up`, func(s *gym.Settings) { s.Rounding = "sideways" }},
		{`the rounding "" is none of`, func(s *gym.Settings) { s.Rounding = "" }},
		{"a confidence of 0.49 is outside", func(s *gym.Settings) { s.Confidence = 0.49 }},
		{"a confidence of 0.96 is outside", func(s *gym.Settings) { s.Confidence = 0.96 }},
		{"a confidence of NaN is outside", func(s *gym.Settings) { s.Confidence = math.NaN() }},
		{"a reader 0 m from the wall is outside", func(s *gym.Settings) { s.Viewer = 0 }},
		{"a reader NaN m from the wall", func(s *gym.Settings) { s.Viewer = math.NaN() }},
		{"a volume of 1.1 is outside 0 to 1", func(s *gym.Settings) { s.Volume = 1.1 }},
		{"main days have no rep count", func(s *gym.Settings) { s.DayReps = nil }},
		{"21 reps are not a rep max", func(s *gym.Settings) { s.DayReps = []int{21, 5} }},
		{"5 reps come after 3; write the rep counts from many to few", func(s *gym.Settings) { s.DayReps = []int{3, 5} }},
		{"3 reps come after 3", func(s *gym.Settings) { s.DayReps = []int{3, 3} }},
		{"", func(s *gym.Settings) { s.DayReps = []int{8, 2} }},
	})
}
