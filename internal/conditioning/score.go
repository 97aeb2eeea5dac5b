package conditioning

import (
	"cmp"
	"errors"
	"fmt"
	"strconv"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

var (
	// ErrScore marks a text that is no score.
	ErrScore = errors.New("not a score")
	// ErrKind marks a score of another kind than the workout's.
	ErrKind = errors.New("the wrong kind of score")
)

// Kind is what a score counts.
type Kind string

// The kinds of score.
const (
	ByTime   Kind = "time"   // less is better; past the cap, more reps are
	ByRounds Kind = "rounds" // rounds + reps, more is better
	ByReps   Kind = "reps"   // more is better
	ByLoad   Kind = "load"   // more is better
)

// KindOf returns the kind of score that a format has.
func KindOf(f gym.Format) Kind {
	switch f {
	case gym.AMRAP:
		return ByRounds
	case gym.ForTime, gym.Chipper:
		return ByTime
	case gym.PlainSets:
		return ByLoad
	}
	return ByReps
}

// Score is how an athlete did.
type Score struct {
	Kind    Kind
	Seconds int  // by time
	Capped  bool // by time: the cap ended it, and Reps were done
	Rounds  int  // whole rounds, by rounds
	Reps    int  // by reps; past the last whole round, by rounds
	Load    mass.Mass
}

// The grammar of a score:
//
//	score  = time | capped | rounds | reps | load
//	time   = [ hours ":" ] minutes ":" seconds     "12:34"
//	capped = "cap" [ "+" ] number                  "cap 85": reps at the cap
//	rounds = number "+" number                     "5+12"
//	reps   = number [ "reps" ]                     "143"
//	load   = a mass with its unit                  "100 kg"

// ParseScore reads a score of a kind. The error wraps [ErrScore] for a text that
// is none, and [ErrKind] for a score of another kind.
func ParseScore(text string, kind Kind) (Score, error) {
	s, ok := parseScore(strings.ToLower(strings.TrimSpace(text)))
	if !ok {
		return Score{}, fmt.Errorf("read score %q: %w: write one like %s", text, ErrScore, examples[kind])
	}
	if s.Kind == ByReps && kind == ByRounds {
		return Score{}, fmt.Errorf("read score %q: %w: say the rounds too, as in %s", text, ErrKind, examples[kind])
	}
	if s.Kind != kind {
		return Score{}, fmt.Errorf("read score %q: %w: it counts %s and the workout counts %s, as in %s",
			text, ErrKind, s.Kind, kind, examples[kind])
	}
	return s, nil
}

// ReadScore reads a score of whatever kind it is. The error wraps [ErrScore].
func ReadScore(text string) (Score, error) {
	s, ok := parseScore(strings.ToLower(strings.TrimSpace(text)))
	if !ok {
		return Score{}, fmt.Errorf("read score %q: %w: write one like 12:34, 5+12, 143 or 100 kg", text, ErrScore)
	}
	return s, nil
}

var examples = map[Kind]string{ByTime: "12:34 or cap 85", ByRounds: "5+12", ByReps: "143", ByLoad: "100 kg"}

func parseScore(text string) (Score, bool) {
	if seconds, ok := parseClock(text); ok {
		return Score{Kind: ByTime, Seconds: seconds}, seconds > 0
	}
	if rest, ok := strings.CutPrefix(text, "cap"); ok {
		n, ok := count(strings.TrimPrefix(strings.TrimSpace(rest), "+"))
		return Score{Kind: ByTime, Capped: true, Reps: n}, ok
	}
	if a, b, ok := strings.Cut(text, "+"); ok {
		rounds, ok1 := count(a)
		reps, ok2 := count(b)
		return Score{Kind: ByRounds, Rounds: rounds, Reps: reps}, ok1 && ok2
	}
	if n, ok := count(strings.TrimSuffix(text, "reps")); ok {
		return Score{Kind: ByReps, Reps: n}, true
	}
	m, _, err := mass.Parse(text, mass.KG)
	return Score{Kind: ByLoad, Load: m}, err == nil && m > 0
}

// count reads a number that may be nothing at all.
func count(text string) (int, bool) {
	text = strings.TrimSpace(text)
	n := whole(text)
	return n, n > 0 || (text != "" && strings.Trim(text, "0") == "")
}

// Text writes a score as [ParseScore] reads it, a load in a unit.
func (s Score) Text(unit mass.Unit) string {
	switch {
	case s.Kind == ByTime && s.Capped:
		return fmt.Sprintf("cap %d", s.Reps)
	case s.Kind == ByTime:
		return clock(s.Seconds)
	case s.Kind == ByRounds:
		return fmt.Sprintf("%d+%d", s.Rounds, s.Reps)
	case s.Kind == ByLoad:
		return s.Load.In(unit)
	}
	return strconv.Itoa(s.Reps)
}

// Compare returns 1 when s is better than another score of the same kind, -1 when
// it is worse and 0 when they are equal. Scores of two kinds do not compare; the
// error wraps [ErrKind].
func (s Score) Compare(o Score) (int, error) {
	if s.Kind != o.Kind {
		return 0, fmt.Errorf("compare scores: %w: one counts %s and one %s", ErrKind, s.Kind, o.Kind)
	}
	switch {
	case s.Kind == ByTime && s.Capped != o.Capped:
		if o.Capped {
			return 1, nil
		}
		return -1, nil
	case s.Kind == ByTime && !s.Capped:
		return cmp.Compare(o.Seconds, s.Seconds), nil
	case s.Kind == ByLoad:
		return cmp.Compare(s.Load, o.Load), nil
	}
	return cmp.Or(cmp.Compare(s.Rounds, o.Rounds), cmp.Compare(s.Reps, o.Reps)), nil
}

// Better reports whether s is better than another score of the same kind.
func (s Score) Better(than Score) (bool, error) {
	c, err := s.Compare(than)
	return c > 0, err
}
