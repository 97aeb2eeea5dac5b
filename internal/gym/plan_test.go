package gym_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/day"
	"windlass/internal/gym"
)

func TestWeekOfACycle(t *testing.T) {
	c := gym.Cycle{Start: on("2026-03-02"), Weeks: make([]gym.WeekKind, 3)}
	assert.Equal(t, on("2026-03-22"), c.End())
	for text, want := range map[string]int{
		"2026-03-01": 0, // the day before
		"2026-03-02": 1, // the first day
		"2026-03-08": 1, // a Sunday
		"2026-03-09": 2,
		"2026-03-22": 3, // the last day
		"2026-03-23": 0, // the day after
	} {
		assert.Equal(t, want, c.WeekOf(on(text)), text)
	}
}

func TestPlanOfADay(t *testing.T) {
	p := gym.TrackPlan{Track: "power", Days: []gym.DayPlan{{Week: 2, Weekday: day.Tuesday, Kind: gym.MainDay, Title: "Bench"}}}
	c := gym.Cycle{Tracks: []gym.TrackPlan{p}}
	found, ok := c.Plan("power")
	assert.True(t, ok)
	assert.Equal(t, "Bench", found.Day(2, day.Tuesday).Title)
	rest := found.Day(3, day.Tuesday)
	assert.Equal(t, gym.RestDay, rest.Kind, "a day without a plan")
	assert.Equal(t, 3, rest.Week)
	_, ok = c.Plan("strongman")
	assert.False(t, ok)
}

func TestEmptyParts(t *testing.T) {
	assert.True(t, gym.MainLift{}.Empty())
	assert.False(t, gym.MainLift{Lift: "snatch"}.Empty())
	assert.True(t, gym.SecondLift{}.Empty())
	assert.False(t, gym.SecondLift{Lift: "snatch"}.Empty())
	assert.True(t, gym.Workout{Format: gym.AMRAP, Seconds: 600}.Empty(), "nothing to do in ten minutes")
	assert.False(t, gym.Workout{Items: []gym.Item{{Movement: "run", Amount: 400}}}.Empty())
	assert.Equal(t, 5, gym.Rung{}.RepsOf(5), "the day's rep count")
	assert.Equal(t, 2, gym.Rung{Reps: 2}.RepsOf(5))
}

func TestSlotValid(t *testing.T) {
	slot := gym.Slot{ID: "s", Weekday: day.Monday, At: day.ClockOf(18, 0), Minutes: 75, Name: "Evening"}
	checkRefusals(t, slot, []refusal[gym.Slot]{
		{"7 is no weekday", func(s *gym.Slot) { s.Weekday = 7 }},
		{"0 minutes from 18:00 do not fit", func(s *gym.Slot) { s.Minutes = 0 }},
		{"75 minutes from 23:30 do not fit", func(s *gym.Slot) { s.At = day.ClockOf(23, 30) }},
		{"do not fit the day", func(s *gym.Slot) { s.At = -1 }},
		{"", func(s *gym.Slot) { s.At, s.Minutes = day.ClockOf(23, 0), 60 }},
	})
}

func TestClosureValid(t *testing.T) {
	closure := gym.Closure{ID: "c", From: on("2026-12-24"), Until: on("2026-12-26"), Name: "Midwinter"}
	checkRefusals(t, closure, []refusal[gym.Closure]{
		{"want a first and a last day", func(c *gym.Closure) { c.From = day.None }},
		{"want a first and a last day", func(c *gym.Closure) { c.Until = day.None }},
		{"last day 2026-12-23 is before the first, 2026-12-24", func(c *gym.Closure) { c.Until = on("2026-12-23") }},
		{"", func(c *gym.Closure) { c.Until = c.From }},
	})
	assert.False(t, closure.Covers(on("2026-12-23")))
	assert.True(t, closure.Covers(on("2026-12-24")))
	assert.True(t, closure.Covers(on("2026-12-26")))
	assert.False(t, closure.Covers(on("2026-12-27")))
}
