package gym

import (
	"fmt"
	"strings"

	"windlass/internal/day"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

// Settings are the coach's choices for the whole gym.
type Settings struct {
	Name       string          `json:"name"`
	Town       string          `json:"town"`
	Unit       mass.Unit       `json:"unit"`
	FirstDay   day.Weekday     `json:"firstDay"`   // of the week
	Rounding   plates.Rounding `json:"rounding"`   // of light and working rungs
	Confidence float64         `json:"confidence"` // chance of being held that a suggestion needs, 0.5 to 0.95
	DayReps    []int           `json:"dayReps"`    // the rep counts of main days, heaviest last: 5, 3, 1
	Composing  Composing       `json:"composing,omitzero"`
	Dark       bool            `json:"dark"` // the desk's look
	Sound      bool            `json:"sound"`
	Volume     float64         `json:"volume"`            // 0 to 1
	Viewer     float64         `json:"viewer"`            // metres to the farthest reader of the wall
	SportDiscs bool            `json:"sportDiscs"`        // discs in the sport's colours
	SmallAll   bool            `json:"smallAll,omitzero"` // plates under a kilogram go on every rung, and not on top rungs only
	Caution    bool            `json:"caution"`           // the first-run caution was read
}

// DefaultSettings are those of a gym that has chosen nothing yet.
func DefaultSettings() Settings {
	return Settings{
		Unit: mass.KG, FirstDay: day.Monday, Rounding: plates.Nearest, Confidence: 0.75,
		DayReps: []int{5, 3, 1}, Dark: true, Sound: true, Volume: 0.8, Viewer: 8,
	}
}

// Valid says what keeps s from being kept.
func (s Settings) Valid() error {
	switch {
	case strings.TrimSpace(s.Name) == "":
		return fmt.Errorf("keep settings: the gym has no name; write one")
	case !s.Unit.Valid():
		return fmt.Errorf("keep settings: the unit %q is not kg or lb", s.Unit)
	case !s.Rounding.Valid():
		return fmt.Errorf("keep settings: the rounding %q is none of %s, %s and %s", s.Rounding, plates.Nearest, plates.Down, plates.Up)
	case !(s.Confidence >= 0.5 && s.Confidence <= 0.95):
		return fmt.Errorf("keep settings: a confidence of %g is outside 0.5 to 0.95", s.Confidence)
	case !(s.Viewer >= 1 && s.Viewer <= 50):
		return fmt.Errorf("keep settings: a reader %g m from the wall is outside 1 to 50 m", s.Viewer)
	case !(s.Volume >= 0 && s.Volume <= 1):
		return fmt.Errorf("keep settings: a volume of %g is outside 0 to 1", s.Volume)
	}
	if err := s.Composing.Valid(); err != nil {
		return fmt.Errorf("keep settings: %w", err)
	}
	return validDayReps(s.DayReps)
}

func validDayReps(reps []int) error {
	if len(reps) == 0 {
		return fmt.Errorf("keep settings: main days have no rep count; write some, as in 5, 3, 1")
	}
	for i, n := range reps {
		if n < 1 || n > MaxReps {
			return fmt.Errorf("keep settings: %d reps are not a rep max; write 1 to %d", n, MaxReps)
		}
		if i > 0 && n >= reps[i-1] {
			return fmt.Errorf("keep settings: %d reps come after %d; write the rep counts from many to few", n, reps[i-1])
		}
	}
	return nil
}
