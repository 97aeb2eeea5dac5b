package clock

import (
	"fmt"
	"time"

	"windlass/internal/gym"
)

// CueKind is what a cue tells.
type CueKind string

// The cues, in the order in which a clock comes to them.
const (
	Start  CueKind = "start"
	Tick   CueKind = "tick"   // one of the last three seconds of a part
	Change CueKind = "change" // the next part begins
	Finish CueKind = "finish"
)

// WarningSeconds is how many seconds before a change are ticked off.
const WarningSeconds = 3

// Cue is a change on a clock that may be heard.
type Cue struct {
	At   time.Time
	Kind CueKind
	Part int // the part that begins; for a tick and the finish, the one that ends
	Left int // whole seconds to the change, for a tick
}

// mark is a cue by what the clock shows.
type mark struct {
	shown time.Duration
	kind  CueKind
	part  int
	left  int
}

// marks lists the cues of parts that follow one another from 0 on, given by
// their ends. A part too short for a tick has none, so that no two cues meet.
func marks(ends []time.Duration) []mark {
	all := []mark{{kind: Start}}
	var from time.Duration
	for part, end := range ends {
		for left := WarningSeconds; left > 0; left-- {
			if at := end - time.Duration(left)*time.Second; at > from {
				all = append(all, mark{at, Tick, part, left})
			}
		}
		next := mark{shown: end, kind: Change, part: part + 1}
		if part == len(ends)-1 {
			next.kind, next.part = Finish, part
		}
		all, from = append(all, next), end
	}
	return all
}

// between returns the cues of a clock after one instant and up to another, the
// latter included, so that intervals laid end to end miss none and repeat none.
// A clock that was set or started in between begins to cue at its anchor.
func between(all []mark, run gym.Run, from, to time.Time) []Cue {
	if !run.Running {
		return nil
	}
	var cues []Cue
	for _, m := range all {
		at := run.Anchor.Round(0).Add(m.shown - run.Before)
		if m.shown >= run.Before && at.After(from) && !at.After(to) {
			cues = append(cues, Cue{at, m.kind, m.part, m.left})
		}
	}
	return cues
}

// shown returns what a clock shows, by the wall clock alone: an instant that
// still carries its process's own monotonic time would make two programs differ.
func shown(run gym.Run, now time.Time) time.Duration {
	run.Anchor = run.Anchor.Round(0)
	return run.Elapsed(now.Round(0))
}

// warning returns the whole seconds left of a part's last three, and 0 before.
func warning(left time.Duration) int {
	if left > WarningSeconds*time.Second {
		return 0
	}
	return int((left + time.Second - 1) / time.Second)
}

// Up writes a time that counts up, as minutes and the seconds that are full:
// "07:03".
func Up(d time.Duration) string {
	seconds := int(max(0, d) / time.Second)
	return fmt.Sprintf("%02d:%02d", seconds/60, seconds%60)
}

// Down writes a time that counts down: a second begun still counts, so that
// "00:00" is the end and not the second before.
func Down(d time.Duration) string { return Up(d + time.Second - 1) }

// ToSecond returns how long it is from an instant to the next whole second of the
// clock that runs in a class, and of the wall clock where none runs: whoever draws
// then draws every figure once.
func ToSecond(c gym.Class, now time.Time) time.Duration {
	at := time.Duration(now.Nanosecond())
	switch {
	case c.Workout.Running:
		at = shown(c.Workout, now)
	case c.Clock.Running:
		at = shown(c.Clock, now)
	}
	return time.Second - at%time.Second
}
