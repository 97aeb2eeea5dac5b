package cycle_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

func TestMakeMixesWavesOverSharedWeeks(t *testing.T) {
	b := builtInBook(t)
	c, err := cycle.Make(cycle.Spec{
		ID: "c", Name: "Autumn", Goal: "A heavier squat", Start: aMonday, Weeks: 9,
		Tracks: []cycle.TrackSpec{
			{Track: "a", Template: "powerlifting", Wave: gym.BlockWave},
			{Track: "b", Template: "strongman", Wave: gym.StepWave},
			{Track: "c", Wave: gym.RollingWave},
		},
	}, b)
	require.NoError(t, err)
	assert.Equal(t, gym.LightWeek, c.Weeks[3], "a week is light for the whole gym")
	assert.Equal(t, gym.LightWeek, c.Weeks[7])
	assert.Equal(t, gym.TestWeek, c.Weeks[8])
	empty, ok := c.Plan("c")
	require.True(t, ok)
	assert.Empty(t, empty.Days, "a track without a template is the coach's to write")
	assert.Equal(t, "A heavier squat", c.Goal)
}

func TestMakeRefuses(t *testing.T) {
	b := builtInBook(t)
	good := cycle.Spec{
		ID: "c", Name: "Autumn", Start: aMonday, Weeks: 9,
		Tracks: []cycle.TrackSpec{{Track: power, Template: "powerlifting", Wave: gym.RollingWave}},
	}
	_, err := cycle.Make(good, b)
	require.NoError(t, err)
	before := makeCycle(t, b, 6, gym.BlockWave, "strongman")
	before.ID = "before"
	b.Cycles = []gym.Cycle{before}
	for _, test := range []struct {
		name  string
		spoil func(*cycle.Spec)
		tells string
	}{
		{"no name", func(s *cycle.Spec) { s.Name = "  " }, "write one"},
		{"no start", func(s *cycle.Spec) { s.Start = day.None }, "choose one"},
		{"no tracks", func(s *cycle.Spec) { s.Tracks = nil }, "choose one at least"},
		{"a track twice", func(s *cycle.Spec) { s.Tracks = append(s.Tracks, s.Tracks[0]) }, "take one out"},
		{"too long", func(s *cycle.Spec) { s.Weeks = 27 }, "choose 3 to 26"},
		{"too short", func(s *cycle.Spec) { s.Weeks = 2 }, "choose 3 to 26"},
		{"a Tuesday", func(s *cycle.Spec) { s.Start++ }, "start it on Monday 9 March 2026"},
		{"an unknown wave", func(s *cycle.Spec) { s.Tracks[0].Wave = "zigzag" }, "choose block, rolling or step"},
		{"an unknown wave for an empty track", func(s *cycle.Spec) { s.Tracks[0] = cycle.TrackSpec{Track: "x"} }, "choose block, rolling or step"},
		{"an unknown built-in track", func(s *cycle.Spec) { s.Tracks[0].Template = "chess" }, "choose powerlifting, strongman or weightlifting"},
		{"a track that is taken", func(s *cycle.Spec) { s.Tracks[0].Track = "strongman" }, "start on Monday 13 April 2026 or later"},
	} {
		t.Run(test.name, func(t *testing.T) {
			s := good
			s.Tracks = append([]cycle.TrackSpec(nil), good.Tracks...)
			test.spoil(&s)
			c, err := cycle.Make(s, b)
			require.ErrorContains(t, err, test.tells)
			assert.Zero(t, c)
		})
	}
}

func TestNext(t *testing.T) {
	b := builtInBook(t)
	last := makeCycle(t, b, 6, gym.RollingWave, "powerlifting")
	last.Goal = "A heavier squat"
	b.Cycles = []gym.Cycle{last}

	next, err := cycle.Next(last, "n", "Summer", last.End().Add(8), b)
	require.NoError(t, err)
	assert.Equal(t, gym.ID("n"), next.ID)
	assert.Equal(t, last.Weeks, next.Weeks)
	assert.Equal(t, last.Tracks, next.Tracks)
	assert.Empty(t, next.Goal, "the new goal is still to be written")
	assert.Empty(t, told(cycle.Check(next, b)))

	for name, try := range map[string]struct {
		title string
		start day.Date
		tells string
	}{
		"no name":           {" ", last.End().Add(1), "write one"},
		"too early":         {"Summer", last.End().Add(-6), "start on Monday 13 April 2026 or later"},
		"not a first day":   {"Summer", last.End().Add(2), "start it on Monday 20 April 2026"},
		"as early as it is": {"Summer", last.Start, "runs until"},
	} {
		_, err := cycle.Next(last, "n", try.title, try.start, b)
		assert.ErrorContains(t, err, try.tells, name)
	}
}
