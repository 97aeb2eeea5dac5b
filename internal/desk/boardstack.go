package desk

import (
	"fmt"
	"strings"

	"windlass/internal/climb"
	"windlass/internal/mass"
	"windlass/internal/plates"
)

func (bs *Boards) loadsOf(key loadKey) (*plates.Loads, error) {
	if l, ok := bs.loads[key]; ok {
		return l, nil
	}
	l, err := loadsOfBar(bs.book.Equipment, key)
	if err == nil {
		bs.loads[key] = l
	}
	return l, err
}

// Likely is the load that a window most likely brings: while the call is open,
// that of the option which climbs. It is 0 where nothing is lifted.
func (s BoardSet) Likely() mass.Mass { return likely(s.Step) }

func likely(s climb.Step) mass.Mass {
	if s.State == climb.Off || s.State == climb.Skipped {
		return 0
	}
	if s.Load == 0 && len(s.Options) > 0 {
		return s.Options[0].Load
	}
	return s.Load
}

// stack chooses the discs of every set at one station, in lifting order, from the
// station's heap and so that the fewest plates are moved.
func (bs *Boards) stack(lifters []BoardLifter, h heap) {
	if len(lifters) == 0 || lifters[0].Bar == "" {
		return
	}
	sets, targets := inTurn(lifters)
	loads, key, err := bs.from(lifters[0].Bar, h, targets)
	if err != nil {
		return // each lifter of the station carries the fault
	}
	if lifters[0].floor {
		loads = loads.FromFloor()
	}
	for i, step := range bs.sequence(lifters[0], key, loads, targets) {
		sets[i].Discs, sets[i].Blocks = step.PerSide, step.Blocks
		for _, o := range sets[i].Options {
			loading, _ := loads.AtMost(o.Load)
			sets[i].Either = append(sets[i].Either, EitherLoad{Option: o, Discs: loading.PerSide})
		}
	}
	changes(sets)
}

// changes works out what to change on the bar from set to set.
func changes(sets []*BoardSet) {
	var on []plates.Disc
	for _, s := range sets {
		s.Off, s.On = change(on, s.Discs)
		on = s.Discs
	}
}

// inTurn lists the sets of a station in the order in which they are lifted:
// window by window, in each one lifter after the other, and who lifts last after
// the others.
func inTurn(lifters []BoardLifter) (sets []*BoardSet, targets []mass.Mass) {
	for rung := range windows(lifters) {
		for _, last := range []bool{false, true} {
			for i := range lifters {
				if s, ok := lifters[i].lifts(rung); ok && s.Last == last {
					sets, targets = append(sets, s), append(targets, s.Likely())
				}
			}
		}
	}
	return sets, targets
}

// lifts returns a lifter's set in a window; false where nothing is lifted.
func (l *BoardLifter) lifts(rung int) (*BoardSet, bool) {
	if rung >= len(l.Sets) || l.Sets[rung].Likely() == 0 {
		return nil, false
	}
	return &l.Sets[rung], true
}

// planWays is how many ways to make a load are weighed for the board: those with
// the fewest discs. Among many the fewest moves would pile a dozen small discs on a
// sleeve.
const planWays = 6

// keptStacks bounds what is remembered: a class of forty has a few hundred
// different queues in an hour.
const keptStacks = 2000

// sequence is the discs of a queue, worked out once: a call changes one station
// of many.
func (bs *Boards) sequence(first BoardLifter, heap string, loads *plates.Loads, targets []mass.Mass) []plates.Step {
	key := fmt.Sprint(first.Bar, first.floor, heap, targets)
	if steps, ok := bs.stacks[key]; ok {
		return steps
	}
	if len(bs.stacks) > keptStacks {
		clear(bs.stacks)
	}
	steps := plates.NewPlanner(loads, planWays).Sequence(nil, targets).Steps
	bs.stacks[key] = steps
	return steps
}

func windows(lifters []BoardLifter) int {
	n := 0
	for _, l := range lifters {
		n = max(n, len(l.Sets))
	}
	return n
}

// change is what comes off one side and goes on it between two stacks: all
// outside of the first disc that differs.
func change(from, to []plates.Disc) (off, on []plates.Disc) {
	same := 0
	for same < len(from) && same < len(to) && from[same] == to[same] {
		same++
	}
	return from[same:], to[same:]
}

// Plates writes the discs of one side, the first inside: "25 + 10 + 2.5", and
// "bar alone" without any. A disc in the other unit says so.
func Plates(discs []plates.Disc, unit mass.Unit) string {
	if len(discs) == 0 {
		return "bar alone"
	}
	var words []string
	for _, d := range discs {
		if d.Unit == unit {
			words = append(words, d.Mass.Digits(unit))
			continue
		}
		words = append(words, d.String())
	}
	return strings.Join(words, " + ")
}
