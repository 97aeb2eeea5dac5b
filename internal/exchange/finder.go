package exchange

import (
	"fmt"
	"strings"

	"windlass/internal/gym"
)

// guessLimit bounds how many wrong names get the nearest right ones beside them:
// looking for those takes a while, and a sheet may have a hundred thousand.
const guessLimit = 200

// finder is gym.Names with a memory of what it said of wrong names.
type finder[K ~string] struct {
	*gym.Names[K]
	faults map[string]error
}

func newFinder[K ~string](names *gym.Names[K]) finder[K] {
	return finder[K]{names, map[string]error{}}
}

func (f finder[K]) find(name string) (K, error) {
	if keys := f.Keys(name); len(keys) == 1 {
		return keys[0], nil
	}
	if err, said := f.faults[name]; said {
		return "", err
	}
	if len(f.faults) >= guessLimit {
		return "", fmt.Errorf("find %q: %w; check how it is spelt", name, gym.ErrUnknownName)
	}
	_, err := f.Find(name)
	f.faults[name] = err
	return "", err
}

// knows reports whether a name could mean anything.
func (f finder[K]) knows(name string) bool { return len(f.Keys(name)) > 0 }

// liftFinder knows the lifts by every name that a heading or a cell may give them.
type liftFinder struct {
	finder[gym.LiftKey]
	byKey map[gym.LiftKey]gym.Lift
}

func newLiftFinder(lifts []gym.Lift) *liftFinder {
	f := &liftFinder{newFinder(gym.LiftNames(lifts)), map[gym.LiftKey]gym.Lift{}}
	for _, l := range lifts {
		f.byKey[l.Key] = l
	}
	return f
}

func (f *liftFinder) lift(name string) (gym.Lift, error) {
	key, err := f.find(name)
	return f.byKey[key], err
}

// heading finds the lift of a roster's column, at first with every word: a lift's
// own name may have one of those that are left out then.
func (f *liftFinder) heading(h heading) (gym.Lift, error) {
	if all := strings.Join(h.words, " "); f.knows(all) {
		return f.lift(all)
	}
	return f.lift(strings.Join(h.withoutBest().words, " "))
}
