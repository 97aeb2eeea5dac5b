package gym_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"windlass/internal/gym"
)

func TestComposingValid(t *testing.T) {
	checkRefusals(t, gym.UsualComposing(), []refusal[gym.Composing]{
		{"", func(c *gym.Composing) { *c = gym.Composing{} }},
		{"", func(c *gym.Composing) { c.Apart = 0 }},
		{"from 30 to 900 seconds is outside 1 to 60 minutes", func(c *gym.Composing) { c.Shortest = 30 }},
		{"from 480 to 3601 seconds is outside", func(c *gym.Composing) { c.Longest = 3601 }},
		{"of at least 480 seconds is longer than the most, 300", func(c *gym.Composing) { c.Longest = 300 }},
		{"again after 29 days is outside 0 to 28", func(c *gym.Composing) { c.Apart = 29 }},
		{"again after -1 days is outside", func(c *gym.Composing) { c.Apart = -1 }},
		{"conditioning has no format on any day", func(c *gym.Composing) { c.Formats = nil }},
		{"21 reps are not a rep max", func(c *gym.Composing) { c.Formats = map[int][]gym.Format{21: gym.Formats()} }},
		{"days of 4 have no format of conditioning", func(c *gym.Composing) { c.Formats = map[int][]gym.Format{4: {}} }},
		{`"waltz" is no format of conditioning`, func(c *gym.Composing) { c.Formats = map[int][]gym.Format{4: {"waltz"}} }},
		{`have the format "emom" twice`, func(c *gym.Composing) { c.Formats = map[int][]gym.Format{4: {gym.EMOM, gym.EMOM}} }},
	})
}

func TestComposeByIsTheUsualUntilSomethingIsChosen(t *testing.T) {
	s := gym.DefaultSettings()
	assert.Equal(t, gym.UsualComposing(), s.ComposeBy())
	own := gym.UsualComposing()
	own.Shortest, own.Apart = 300, 0
	s.Composing = own
	assert.Equal(t, own, s.ComposeBy())
}
