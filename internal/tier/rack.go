package tier

import (
	"slices"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Rack is what a movement offers an athlete.
type Rack struct {
	Usual      int           // reps of a usual bout
	Owned      []mass.Mass   // what the gym owns for the movement, rising
	Tiers      gym.TierLoads // for the athlete's load standard
	Confidence float64       // chance of being held that a suggestion needs, as in the settings
}

// RackOf returns what a gym offers at a movement for a load standard. A gym that
// owns nothing of the movement's kind is taken to own the loads of its tiers.
func RackOf(e gym.Equipment, m gym.Movement, standard gym.Standard, confidence float64) Rack {
	owned := slices.Clone(e.Implement(m.Implement))
	if len(owned) == 0 {
		for _, t := range m.Loads {
			for _, load := range []mass.Mass{t.Light, t.Mid, t.Full} {
				if load > 0 {
					owned = append(owned, load)
				}
			}
		}
	}
	slices.Sort(owned)
	return Rack{m.ReferenceReps, slices.Compact(owned), m.Loads[standard], confidence}
}

// heavier returns the next load over one that a suggestion could have been: the
// next tier for a tier's load, otherwise the next implement. Zero is none.
func (r *Rack) heavier(load mass.Mass) mass.Mass {
	switch load {
	case r.Tiers.Full:
		return 0
	case r.Tiers.Mid:
		return r.Tiers.Full
	case r.Tiers.Light:
		return r.Tiers.Mid
	}
	if i := atMost(r.Owned, load) + 1; i < len(r.Owned) {
		return r.Owned[i]
	}
	return 0
}

// course is what a log says beside the chances: it sets the limits.
type course struct {
	last, held, stopped mass.Mass // latest load; heaviest ever held; latest load if it was stopped
}

func (c course) then(b *gym.Bout) course {
	c.last, c.stopped = b.Load, 0
	switch b.Outcome {
	case gym.Held:
		c.held = max(c.held, b.Load)
	case gym.Stopped:
		c.stopped = b.Load
	}
	return c
}

// limit returns the index of the heaviest implement that the log allows, and the
// rule that says so.
func (c course) limit(owned []mass.Mass) (int, Bound) {
	top, bound := len(owned)-1, ByStock
	if c.held > 0 {
		if i := atMost(owned, c.held) + 1; i < top {
			top, bound = i, ByStep
		}
	}
	if c.stopped > 0 {
		i := atMost(owned, c.held)
		if c.held == 0 {
			i = atMost(owned, c.stopped-1)
		}
		if i < top {
			top, bound = i, ByStop
		}
	}
	return max(0, top), bound
}

// atMost returns the index of the heaviest implement of at most a load, -1 when
// all are heavier.
func atMost(owned []mass.Mass, load mass.Mass) int {
	i, found := slices.BinarySearch(owned, load)
	if found {
		return i
	}
	return i - 1
}
