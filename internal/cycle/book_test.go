package cycle_test

import (
	"fmt"

	"github.com/stretchr/testify/require"

	"windlass/data"
	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/gym"
)

// aMonday is the first day of every cycle in these tests.
var aMonday = day.Of(2026, 3, 2)

// builtInBook is a gym with the built-in catalogue and nothing else.
func builtInBook(t require.TestingT) *gym.Book {
	c, err := gym.ReadCatalogue(data.Files())
	require.NoError(t, err)
	return &gym.Book{
		Settings: gym.DefaultSettings(), Lifts: c.Lifts, Movements: c.Movements, Finishers: c.Finishers, Drills: c.Drills,
	}
}

// makeCycle makes a cycle of built-in tracks, whose IDs are their keys.
func makeCycle(t require.TestingT, b *gym.Book, weeks int, wave gym.WaveKind, templates ...string) gym.Cycle {
	s := cycle.Spec{ID: "c", Name: "Spring", Start: aMonday, Weeks: weeks}
	for _, key := range templates {
		s.Tracks = append(s.Tracks, cycle.TrackSpec{Track: gym.ID(key), Template: key, Wave: wave})
	}
	c, err := cycle.Make(s, b)
	require.NoError(t, err)
	return c
}

// told writes breaches for a failure's message.
func told(found []cycle.Breach) []string {
	var lines []string
	for _, f := range found {
		lines = append(lines, fmt.Sprintf("%s: %s week %d weekday %d: %s %s", f.Rule, f.Track, f.Week, f.Weekday, f.Why, f.Mend))
	}
	return lines
}
