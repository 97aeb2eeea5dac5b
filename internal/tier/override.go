package tier

import (
	"fmt"
	"strings"

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
// set for the movement stands, failing that the latest for every movement. The
// latest share then makes whatever stands lighter, down to a load the gym owns.
func Decide(s Suggestion, r Rack, movement gym.MovementKey, on day.Date, overrides []gym.Override) Decision {
	d := Decision{Load: s.Load, Tier: s.Tier, Suggestion: s}
	var set, share *gym.Override
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
	if set != nil {
		d.Load = set.Load
		if set.Tier != "" {
			d.Load = r.Tiers.Of(set.Tier)
		}
		d.By = append(d.By, *set)
	}
	if share != nil {
		d.Load = lighter(d.Load, share.Share, r.Owned)
		d.By = append(d.By, *share)
	}
	d.Tier = TierOf(d.Load, r.Tiers)
	return d
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

// CheckOverride says what keeps an override from being kept.
func CheckOverride(o gym.Override) error {
	says := 0
	for _, said := range []bool{o.Load > 0, o.Tier != "", o.Share != 0} {
		if said {
			says++
		}
	}
	switch {
	case o.Athlete == "":
		return fmt.Errorf("keep override: it names no athlete")
	case says != 1:
		return fmt.Errorf("keep override: it says %d things; set a load, a tier or a share, and only one", says)
	case o.Movement == "" && o.Load > 0:
		return fmt.Errorf("keep override: %s for every movement makes no sense; name the movement", o.Load.In(o.Unit))
	case o.Tier != "" && o.Tier != gym.Full && o.Tier != gym.Mid && o.Tier != gym.Light:
		return fmt.Errorf("keep override: the tier %q is not full, mid or light", o.Tier)
	case o.Share < 0 || o.Share >= 1:
		return fmt.Errorf("keep override: a share of %g is not between 0 and 1", o.Share)
	case o.From == day.None:
		return fmt.Errorf("keep override: it has no first day")
	case o.Until != day.None && o.Until < o.From:
		return fmt.Errorf("keep override: it ends on %s, before it begins on %s", o.Until, o.From)
	case strings.TrimSpace(o.Reason) == "":
		return fmt.Errorf("keep override: it has no reason; a word is enough")
	}
	return nil
}
