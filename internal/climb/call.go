package climb

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
)

// ErrCall marks a call that nobody can make there.
var ErrCall = errors.New("not a call")

// ParseCalls reads calls in the order in which they are made, in any case:
//
//	calls = [ call { "," call } ]
//	call  = "climb" | "settle" | "missed" | "easy" | "fair" | "hard"
func ParseCalls(text string) ([]gym.CallKind, error) {
	if strings.TrimSpace(text) == "" {
		return nil, nil
	}
	var kinds []gym.CallKind
	for part := range strings.SplitSeq(text, ",") {
		kind := gym.CallKind(strings.ToLower(strings.TrimSpace(part)))
		if !slices.Contains(known, kind) {
			return nil, fmt.Errorf("read call %q: %w; write climb, settle or missed, and easy, fair or hard where the climb finds the rep max", part, ErrCall)
		}
		kinds = append(kinds, kind)
	}
	return kinds, nil
}

var known = []gym.CallKind{gym.ClimbCall, gym.SettleCall, gym.MissedCall, gym.EasyCall, gym.FairCall, gym.HardCall}

// Place puts calls, in the order in which they are made, behind the rungs that
// ask for one. The error wraps [ErrCall] when there are more calls than rungs, and
// for one of easy, fair and hard from a lifter who has a base.
func Place(plan gym.ClimbPlan, l gym.Lifter, kinds []gym.CallKind) ([]gym.Call, error) {
	for _, kind := range kinds {
		if !finds(l) && slices.ContainsFunc(jumps, func(j step) bool { return j.call == kind }) {
			return nil, fmt.Errorf("place call %q: %w where a record leads the way up; write climb, settle or missed", kind, ErrCall)
		}
	}
	var calls []gym.Call
	for i, r := range plan.Rungs {
		if len(calls) < len(kinds) && i >= l.Joined && asks(r, l) {
			calls = append(calls, gym.Call{Rung: i, Kind: kinds[len(calls)]})
		}
	}
	if len(calls) < len(kinds) {
		return nil, fmt.Errorf("place call %q: %w: the climb asks for %d calls only; leave out the rest", kinds[len(calls)], ErrCall, len(calls))
	}
	return calls, nil
}

// asks reports whether a lifter makes a call after a rung: at every rung while
// the rep max is being found, else in the top zone.
func asks(r gym.Rung, l gym.Lifter) bool { return finds(l) || r.Zone == gym.TopZone }

// finds reports whether a lifter has nothing to count percentages from.
func finds(l gym.Lifter) bool { return l.Base <= 0 }

// made returns the calls by rung, the last one made where there are several, and
// the index of the last rung with a call, -1 when there is none. Calls before
// the lifter joined do not count.
func made(l gym.Lifter, rungs int) (calls []gym.CallKind, latest int) {
	calls, latest = make([]gym.CallKind, rungs), -1
	for _, c := range l.Calls {
		if c.Rung >= l.Joined && c.Rung < rungs {
			calls[c.Rung], latest = c.Kind, max(latest, c.Rung)
		}
	}
	return calls, latest
}
