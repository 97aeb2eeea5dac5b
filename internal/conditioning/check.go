package conditioning

import (
	"errors"
	"fmt"
	"slices"

	"windlass/internal/gym"
)

// What can be wrong with a workout. Every error of [Check] wraps one of them.
var (
	ErrFormat   = errors.New("unknown format")
	ErrEmpty    = errors.New("no movements")
	ErrLength   = errors.New("unusable length")
	ErrCap      = errors.New("unusable cap")
	ErrRounds   = errors.New("unusable number of rounds")
	ErrReps     = errors.New("unusable rep list")
	ErrWork     = errors.New("unusable work time")
	ErrRest     = errors.New("unusable rest")
	ErrAmount   = errors.New("unusable amount")
	ErrMovement = errors.New("unknown movement")
	ErrLoads    = errors.New("unusable loads")
	ErrExtra    = errors.New("does not belong to the format")
)

// Bounds of belief: more is a slip of the hand.
const (
	longest    = 2 * 60 * 60 // seconds
	mostRounds = 100
	mostItems  = 40
	mostAmount = 10_000

	// longestWork is the most seconds of one interval. Endurance training works in
	// intervals of up to twenty minutes (common practice, no source); more is a
	// number of seconds written as minutes.
	longestWork = 20 * 60

	// shortestWay is the fewest metres that the longest pass of a rep list may have
	// (common practice, no source): 21-15-9 counts reps, 500-400-300 metres.
	shortestWay = 50
)

// Find looks a movement up by its key or name.
type Find func(name string) (gym.Movement, bool)

// Check says what keeps a workout from being whole; an empty one is whole too,
// as a day need not have conditioning. Which fields count depends on the format:
//
//	amrap      Seconds; amounts
//	for-time   Rounds and amounts, or Reps and no amounts; may have Cap, Rest
//	chipper    amounts of two movements or more; may have Cap
//	emom       Seconds in whole minutes; the items are slots of a minute in turn,
//	           with an amount or, for rest, without a movement
//	intervals  Rounds, Work; may have Rest; the items take turns round by round,
//	           an amount of 0 meaning as much as possible
//	sets       Rounds, amounts; may have Rest
//
// All other fields must be zero. A nil find takes any movement's key.
func Check(w gym.Workout, find Find) error {
	if w.Empty() && w.Format == "" {
		return nil
	}
	rule, ok := rules[w.Format]
	switch {
	case !ok:
		return wrong(w, ErrFormat, "%q is none of amrap, for-time, chipper, emom, intervals and sets", w.Format)
	case w.Empty():
		return wrong(w, ErrEmpty, "it has none; add one")
	case len(w.Items) > mostItems:
		return wrong(w, ErrAmount, "%d movements are too many; write at most %d", len(w.Items), mostItems)
	}
	if err := checkFields(w, rule); err != nil {
		return err
	}
	return checkItems(w, rule, find)
}

// rule says which fields a format takes; the ones named may or must be set.
type rule struct {
	seconds, cap, rounds, reps, work, rest demand
	minutes                                bool // the length is in whole minutes
	least                                  int  // items
	open                                   bool // an amount of 0 is as much as possible
	pause                                  bool // an item may be rest
}

type demand int

const (
	never demand = iota
	maybe
	must
)

var rules = map[gym.Format]rule{
	gym.AMRAP:     {seconds: must, least: 1},
	gym.ForTime:   {cap: maybe, rounds: maybe, reps: maybe, rest: maybe, least: 1},
	gym.Chipper:   {cap: maybe, least: 2},
	gym.EMOM:      {seconds: must, minutes: true, least: 1, open: true, pause: true},
	gym.Intervals: {rounds: must, work: must, rest: maybe, least: 1, open: true},
	gym.PlainSets: {rounds: must, rest: maybe, least: 1},
}

func checkFields(w gym.Workout, r rule) error {
	for _, f := range []struct {
		name  string
		value int
		want  demand
		most  int
		err   error
	}{
		{"length", w.Seconds, r.seconds, longest, ErrLength},
		{"cap", w.Cap, r.cap, longest, ErrCap},
		{"number of rounds", w.Rounds, r.rounds, mostRounds, ErrRounds},
		{"work time", w.Work, r.work, longest, ErrWork},
		{"rest", w.Rest, r.rest, longest, ErrRest},
	} {
		switch {
		case f.value != 0 && f.want == never:
			return wrong(w, ErrExtra, "it has a %s; take it away", f.name)
		case f.value == 0 && f.want == must:
			return wrong(w, f.err, "it has no %s; write one", f.name)
		case f.value < 0 || f.value > f.most:
			return wrong(w, f.err, "a %s of %d is not 1 to %d", f.name, f.value, f.most)
		}
	}
	switch {
	case r.minutes && w.Seconds%60 != 0:
		return wrong(w, ErrLength, "%s is not in whole minutes", clock(w.Seconds))
	case w.Format == gym.Intervals && w.Work > longestWork:
		return wrong(w, ErrWork, "work of %s is no interval; for %d seconds write %s", clock(w.Work), w.Work/60, clock(w.Work/60))
	case w.Format == gym.Intervals && w.Rounds*(w.Work+w.Rest) > longest:
		return wrong(w, ErrWork, "%d × %s take %s, over %s; check the work and the rest", w.Rounds, clock(w.Work+w.Rest), clock(w.Rounds*(w.Work+w.Rest)), clock(longest))
	case len(w.Items) < r.least:
		return wrong(w, ErrEmpty, "one movement makes none; add a second")
	case len(w.Reps) > 0 && r.reps == never:
		return wrong(w, ErrExtra, "it has a rep list; take it away")
	}
	return checkReps(w)
}

// checkReps checks the choice of a workout for time between rounds and a list.
func checkReps(w gym.Workout) error {
	if w.Format != gym.ForTime {
		return nil
	}
	switch {
	case len(w.Reps) == 0 && w.Rounds == 0:
		return wrong(w, ErrRounds, "it has neither rounds nor a rep list; write one of them")
	case len(w.Reps) > 0 && w.Rounds > 0:
		return wrong(w, ErrExtra, "it has both rounds and a rep list; take one away")
	case len(w.Reps) == 1:
		return wrong(w, ErrReps, "one number is no list; write rounds instead")
	case len(w.Reps) > mostRounds:
		return wrong(w, ErrReps, "%d numbers are too many; write at most %d", len(w.Reps), mostRounds)
	}
	for i, n := range w.Reps {
		if n < 1 || n > mostAmount {
			return wrong(w, ErrReps, "number %d, %d, is not 1 to %d", i+1, n, mostAmount)
		}
	}
	return nil
}

func checkItems(w gym.Workout, r rule, find Find) error {
	for i, item := range w.Items {
		name := string(item.Movement)
		if item.Movement != "" && find != nil {
			m, ok := find(name)
			if !ok {
				return wrong(w, ErrMovement, "movement %d, %q, is not in the catalogue; choose another or add it", i+1, name)
			}
			name = m.Name
			if err := checkList(w, m); err != nil {
				return err
			}
		}
		if err := checkAmount(w, r, i, item, name); err != nil {
			return err
		}
		if err := checkLoads(w, i, item, name); err != nil {
			return err
		}
	}
	return nil
}

// checkList holds a movement against a rep list, which counts reps, calories or
// seconds; so few metres are no way to go.
func checkList(w gym.Workout, m gym.Movement) error {
	if m.Measure != gym.ByDistance || len(w.Reps) == 0 || slices.Max(w.Reps) >= shortestWay {
		return nil
	}
	return wrong(w, ErrReps, "the rep list would have %s of %d m; write rounds with a distance, or choose a movement counted in reps or calories", m.Name, w.Reps[0])
}

func checkAmount(w gym.Workout, r rule, i int, item gym.Item, name string) error {
	listed := len(w.Reps) > 0
	switch {
	case item.Movement == "" && !(r.pause && item.Amount == 0 && len(item.Loads) == 0):
		return wrong(w, ErrMovement, "movement %d has no name; choose one", i+1)
	case item.Amount < 0 || item.Amount > mostAmount:
		return wrong(w, ErrAmount, "movement %d, %q: %d is not 1 to %d", i+1, name, item.Amount, mostAmount)
	case listed && item.Amount != 0:
		return wrong(w, ErrAmount, "movement %d, %q: the rep list already says how many; take %d away", i+1, name, item.Amount)
	case !listed && item.Amount == 0 && !r.open:
		return wrong(w, ErrAmount, "movement %d, %q: it says not how many; write a number", i+1, name)
	}
	return nil
}

func checkLoads(w gym.Workout, i int, item gym.Item, name string) error {
	for standard, t := range item.Loads {
		switch {
		case standard != gym.StandardM && standard != gym.StandardW:
			return wrong(w, ErrLoads, "movement %d, %q: the load standard %q is not M or W", i+1, name, standard)
		case !(t.Full >= t.Mid && t.Mid >= t.Light && t.Light > 0):
			return wrong(w, ErrLoads, "movement %d, %q: full, mid and light must fall and be over nothing", i+1, name)
		}
	}
	return nil
}

func wrong(w gym.Workout, err error, format string, a ...any) error {
	return fmt.Errorf("check %s workout: %w: %s", named(w.Format), err, fmt.Sprintf(format, a...))
}

func named(f gym.Format) string {
	if f == "" {
		return "unnamed"
	}
	return string(f)
}
