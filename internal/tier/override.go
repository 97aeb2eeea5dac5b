package tier

import (
	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
)

// Decision is what an athlete does: the suggestion, or what the coach decided
// instead, with the suggestion still beside it.
type Decision struct {
	Load       mass.Mass
	Tier       gym.Tier
	Suggestion Suggestion
	By         []gym.Override // that spoke, empty when the suggestion stands
}

// Decide puts the coach's overrides over a suggestion. The latest load or tier
// set for the movement stands. Failing that, the latest tier for every movement
// is the most: nobody weighed it against this movement, so it never makes a load
// heavier. The latest share then makes whatever stands lighter, down to a load the
// gym owns.
func Decide(s Suggestion, r Rack, movement gym.MovementKey, on day.Date, overrides []gym.Override) Decision {
	d := Decision{Load: s.Load, Suggestion: s}
	set, share := loudest(movement, on, overrides)
	if set != nil {
		if load := r.setTo(*set, s.Load); set.Movement != "" || load != s.Load {
			d.Load, d.By = load, append(d.By, *set)
		}
	}
	if share != nil {
		d.Load = lighter(d.Load, share.Share, r.Owned)
		d.By = append(d.By, *share)
	}
	d.Tier = TierOf(d.Load, r.Tiers)
	return d
}

// Speaking returns the overrides that [Decide] heeds for a movement on a day: at most
// one that sets a load and one that makes it lighter. For the empty movement they are
// those for every movement.
func Speaking(movement gym.MovementKey, on day.Date, overrides []gym.Override) []gym.Override {
	var speaking []gym.Override
	set, share := loudest(movement, on, overrides)
	for _, o := range []*gym.Override{set, share} {
		if o != nil {
			speaking = append(speaking, *o)
		}
	}
	return speaking
}

// loudest returns the override that sets what a movement is done with on a day,
// and the one that makes it lighter; nil is none.
func loudest(movement gym.MovementKey, on day.Date, overrides []gym.Override) (set, share *gym.Override) {
	for i := range overrides {
		o := &overrides[i]
		if !o.Holds(movement, on) {
			continue
		}
		if o.Share > 0 {
			share = closer(share, o)
		} else {
			set = closer(set, o)
		}
	}
	return set, share
}

// setTo returns the load that an override sets where another is suggested.
func (r Rack) setTo(o gym.Override, suggested mass.Mass) mass.Mass {
	if o.Load > 0 {
		return o.Load
	}
	load := r.Tiers.Of(o.Tier)
	switch {
	case load == 0: // the movement has no such tier
		return suggested
	case o.Movement == "":
		return min(suggested, lighter(load, 1, r.Owned))
	}
	return load
}

// closer returns the override that speaks louder: one for the movement before
// one for all, then the later one.
func closer(a, b *gym.Override) *gym.Override {
	switch {
	case a == nil:
		return b
	case (a.Movement == "") != (b.Movement == ""):
		if a.Movement != "" {
			return a
		}
		return b
	case b.Made.Before(a.Made):
		return a
	}
	return b
}

// lighter returns the heaviest implement of at most a share of a load, and the
// lightest when all are heavier.
func lighter(load mass.Mass, share float64, owned []mass.Mass) mass.Mass {
	if len(owned) == 0 {
		return load.Scale(share)
	}
	return owned[max(0, atMost(owned, load.Scale(share)))]
}
