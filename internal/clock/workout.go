package clock

import (
	"time"

	"windlass/internal/conditioning"
	"windlass/internal/gym"
)

// CountIn is how long a conditioning clock counts in before the work.
const CountIn = 10 * time.Second

// Phase is what the athletes do at an instant of conditioning.
type Phase string

// The phases; a clock that never started is ready.
const (
	Ready     Phase = "ready"
	CountedIn Phase = "count-in"
	Working   Phase = "work"
	Resting   Phase = "rest"
	Over      Phase = "over"
)

// WorkoutMoment is what the clock of a conditioning workout shows at an instant.
// Rounds are those the clock can tell: the minutes of an EMOM and the rounds of
// intervals. How far each athlete is in other formats no clock can see; [Position]
// guesses it.
type WorkoutMoment struct {
	Phase   Phase
	Running bool          // goes on: not held and not at the end
	CountIn int           // whole seconds of the count-in that are left, else 0
	Elapsed time.Duration // of the workout, without the count-in
	Left    time.Duration // to the end; 0 for a workout that the clock does not end
	Open    bool          // the clock does not end it: for time without a cap, and sets
	Up      bool          // the large figure counts up: for time, a chipper, sets
	Part    int           // index of the part; the count-in is 0
	Round   int           // from 1; 0 where the clock cannot tell
	Rounds  int           // of how many
	Item    int           // the item whose turn it is, None when they take no turns; of an EMOM it may be rest
	Next    int           // the item of the next turn, None when there is none; the rest between intervals is no turn
	InPart  time.Duration // since the part began
	LeftIn  time.Duration // to its end; 0 in an open one
	Warning int           // 3, 2, 1 in the last seconds of a part, else 0
}

// Face writes the large figure: the count-in's seconds, the time since the start
// where it counts up, otherwise the time left in the part.
func (m WorkoutMoment) Face() string {
	switch {
	case m.CountIn > 0 || m.Phase == Ready:
		return Down(m.LeftIn)
	case m.Up:
		return Up(m.Elapsed)
	}
	return Down(m.LeftIn)
}

// part is a stretch of a workout's clock, in order; a part's end is the next
// one's beginning.
type part struct {
	end         time.Duration // since the clock started, count-in and all
	phase       Phase
	round, item int
}

// openEnd ends a part that the clock does not end.
const openEnd = 100 * time.Hour

// Workout returns what the clock of a workout shows. The workout must pass
// conditioning.Check; an empty one is over at once.
func Workout(w gym.Workout, run gym.Run, now time.Time) WorkoutMoment {
	parts := partsOf(w)
	if len(parts) == 0 {
		return WorkoutMoment{Phase: Over, Item: None, Next: None}
	}
	end := parts[len(parts)-1].end
	at := min(shown(run, now), end)
	m := WorkoutMoment{
		Elapsed: max(0, at-CountIn), Open: end == openEnd, Up: countsUp(w.Format),
		Rounds: parts[len(parts)-1].round, Part: partAt(parts, at), Next: None,
	}
	if !m.Open {
		m.Left = min(end-at, end-CountIn)
	}
	if m.Part == len(parts) {
		m.Part, m.Phase, m.Item = len(parts)-1, Over, None
		m.Round = m.Rounds
		return m
	}
	m.Running = run.Running
	m.fill(parts, at, run.Started())
	return m
}

// fill tells what there is to tell of the present part.
func (m *WorkoutMoment) fill(parts []part, at time.Duration, started bool) {
	p, begin := parts[m.Part], time.Duration(0)
	if m.Part > 0 {
		begin = parts[m.Part-1].end
	}
	m.Phase, m.Round, m.Item = p.phase, p.round, p.item
	m.InPart = at - begin
	if p.end != openEnd {
		m.LeftIn = p.end - at
		m.Warning = warning(m.LeftIn)
	}
	if p.phase == CountedIn {
		m.CountIn = int((m.LeftIn + time.Second - 1) / time.Second)
		if !started {
			m.Phase = Ready
		}
	}
	for _, next := range parts[m.Part+1:] {
		if next.item != None {
			m.Next = next.item
			break
		}
	}
}

func countsUp(f gym.Format) bool {
	return f == gym.ForTime || f == gym.Chipper || f == gym.PlainSets
}

// partAt returns the index of the part that a shown time falls in, and the number
// of parts after the end.
func partAt(parts []part, shown time.Duration) int {
	for i, p := range parts {
		if shown < p.end {
			return i
		}
	}
	return len(parts)
}

func partsOf(w gym.Workout) []part {
	if w.Empty() {
		return nil
	}
	parts := []part{{CountIn, CountedIn, 0, None}}
	switch w.Format {
	case gym.AMRAP:
		return append(parts, part{CountIn + seconds(w.Seconds), Working, 0, None})
	case gym.EMOM:
		return append(parts, minutesOf(w)...)
	case gym.Intervals:
		return append(parts, intervalsOf(w)...)
	}
	end := openEnd
	if w.Cap > 0 {
		end = CountIn + seconds(w.Cap)
	}
	return append(parts, part{end, Working, 0, None})
}

// minutesOf returns the minutes of an EMOM. A slot without a movement is rest, and
// has its turn like the others.
func minutesOf(w gym.Workout) []part {
	parts := make([]part, w.Seconds/60)
	for i := range parts {
		item := i % len(w.Items)
		parts[i] = part{CountIn + time.Duration(i+1)*time.Minute, Working, i + 1, item}
		if w.Items[item].Movement == "" {
			parts[i].phase = Resting
		}
	}
	return parts
}

// intervalsOf returns work and rest in turn; after the last work there is none.
func intervalsOf(w gym.Workout) []part {
	var parts []part
	at := CountIn
	for i := range w.Rounds {
		at += seconds(w.Work)
		parts = append(parts, part{at, Working, i + 1, i % len(w.Items)})
		if w.Rest > 0 && i+1 < w.Rounds {
			at += seconds(w.Rest)
			parts = append(parts, part{at, Resting, i + 1, None})
		}
	}
	return parts
}

// WorkoutCues returns what the clock of a workout may let hear after one instant
// and up to another: the start of the count-in, the last three seconds of every
// part, the change to the next, the finish. A clock that is held is silent.
func WorkoutCues(w gym.Workout, run gym.Run, from, to time.Time) []Cue {
	parts := partsOf(w)
	if len(parts) == 0 {
		return nil
	}
	ends := make([]time.Duration, len(parts))
	for i, p := range parts {
		ends[i] = p.end
	}
	return between(marks(ends), run, from, to)
}

// Position returns the leg of a course in which a usual athlete is, and None
// during the count-in, after the last leg and without a course.
func Position(course []conditioning.Leg, m WorkoutMoment) int {
	if m.Phase != Working {
		return None
	}
	for i, leg := range course {
		if m.Elapsed < leg.Done {
			return i
		}
	}
	return None
}
