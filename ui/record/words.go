package record

import (
	"fmt"

	"windlass/internal/gym"
	"windlass/internal/repmax"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// sourceMark is the shape that stands beside every number of the card.
func sourceMark(s gym.Source) (kit.Shape, look.Meaning) {
	switch s {
	case gym.Tested:
		return kit.Disc, look.Accent
	case gym.Reported:
		return kit.Ring, look.Text
	case gym.Estimate:
		return kit.Diamond, look.Muted
	}
	return kit.NoShape, look.Muted
}

// sourceWords says where a number comes from, with its day.
func sourceWords(e repmax.Entry) string {
	switch e.Source {
	case gym.Estimate:
		return fmt.Sprintf("estimate from the %dRM", e.From)
	case gym.Tested, gym.Reported:
		return string(e.Source) + " " + e.On.Time().Format("2 Jan 2006")
	}
	return "not known"
}

// TierMark is the shape of a tier.
func TierMark(t gym.Tier) kit.Shape {
	switch t {
	case gym.Full:
		return kit.Disc
	case gym.Mid:
		return kit.Half
	case gym.Light:
		return kit.Ring
	case gym.Below:
		return kit.Dash
	}
	return kit.NoShape
}

// outcomeMark is the shape of an outcome.
func outcomeMark(o gym.Outcome) (kit.Shape, look.Meaning) {
	switch o {
	case gym.Held:
		return kit.Tick, look.Good
	case gym.Slowed:
		return kit.Down, look.Warn
	case gym.Stopped:
		return kit.Cross, look.Bad
	}
	return kit.NoShape, look.Muted
}
