package wall

import (
	"time"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/ui/kit"
)

// Scene is what the wall says at an instant, without any place or size. Two equal
// scenes are drawn alike.
type Scene struct {
	Idle  *Idle  // nothing runs
	Climb *Climb // a class is set up or climbs
	Work  *Work  // a class is at its conditioning
}

// Idle is a wall without a class: black, with what comes next.
type Idle struct {
	Hour string // "18:00"; empty where nothing comes
	Name string
	Day  string // "today", "tomorrow", "Friday"
}

// Face is a clock as it stands at an instant. It is drawn apart from the scene,
// since it changes every second.
type Face struct {
	Text string
	Tone Tone
	Done float64 // of the part that runs, 0 to 1

	Bright bool // it lies on the bright ground of a rest
}

// Tone is how a clock is to be taken.
type Tone uint8

// The tones of a clock.
const (
	Waiting Tone = iota // not started, or over
	Going
	Soon // the last three seconds
	Held
)

// At returns what the wall says at an instant and what its clocks show: one in a
// climb, and one for each workout.
func (s State) At(now time.Time) (Scene, []Face) {
	switch {
	case !s.Live:
		return Scene{Idle: s.idle(now)}, nil
	case s.Board.Class.Stage == gym.Conditioning:
		work, faces := s.work(now)
		return Scene{Work: &work}, faces
	}
	climb, face := s.climb(now)
	return Scene{Climb: &climb}, []Face{face}
}

func (s State) idle(now time.Time) *Idle {
	slot, on, ok := s.nextClass(now)
	if !ok {
		return &Idle{}
	}
	i := &Idle{Hour: slot.At.String(), Name: slot.Name, Day: on.Weekday().String()}
	switch on {
	case day.From(now):
		i.Day = "today"
	case day.From(now).Add(1):
		i.Day = "tomorrow"
	}
	return i
}

// zones are the drawn zones of a climb.
var zones = map[gym.Zone]kit.Zone{gym.LightZone: kit.Light, gym.WorkingZone: kit.Working, gym.TopZone: kit.Top}
