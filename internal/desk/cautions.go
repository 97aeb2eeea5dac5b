package desk

import (
	"fmt"
	"slices"
	"strings"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/tier"
)

// CapEffect is of how many of the movements that an athlete did before a tier for
// every movement makes today's load lighter. It makes none heavier.
type CapEffect struct{ Lighter, All int }

// CapEffect tells what a tier for every movement would do today.
func (d *Desk) CapEffect(athlete gym.ID, most gym.Tier) (CapEffect, error) {
	var e CapEffect
	asked := gym.Override{Athlete: athlete, Tier: most, From: d.Today(), Made: d.now()}
	with := append(d.Overrides(athlete), asked)
	err := d.eachDone(athlete, func(a Advice) {
		e.All++
		if tier.Decide(a.Decision.Suggestion, a.Rack, a.Movement.Key, d.Today(), with).Load < a.Decision.Load {
			e.Lighter++
		}
	})
	return e, err
}

// String says it in a sentence.
func (e CapEffect) String() string {
	lighter := fmt.Sprint(e.Lighter)
	switch {
	case e.All == 0:
		return "Nothing was done yet; no first load will be over it."
	case e.Lighter == 0:
		lighter = "none"
	case e.Lighter == e.All:
		lighter = "every one"
	}
	return fmt.Sprintf("Today it makes %s of %s lighter, and none heavier.", lighter, count(e.All, "movement"))
}

// Caution says what speaks against a load decided for a movement: that it is
// heavier than the one suggested, or that the athlete stopped with it or with a
// lighter one and has not held as much since. It is empty when nothing does.
func (d *Desk) Caution(o gym.Override) (string, error) {
	a, err := d.Advise(o.Athlete, o.Movement, 0)
	if err != nil {
		return "", err
	}
	var against []string
	if s := a.Decision.Suggestion; o.Load > s.Load {
		holds, err := d.Holds(o.Athlete, o.Movement, 0, o.Load)
		if err != nil {
			return "", err
		}
		against = append(against, fmt.Sprintf("%s is heavier than the %s suggested and has a chance of %s of being held.",
			o.Load.In(a.Unit), s.Load.In(a.Unit), tier.Percent(holds[0])))
	}
	if b, stopped := stoppedWith(d.BoutsOf(o.Athlete, o.Movement), o.Load); stopped {
		against = append(against, fmt.Sprintf("%s stopped them on %s.", b.Load.In(a.Unit), b.On.Time().Format("2 January")))
	}
	return strings.Join(against, " "), nil
}

// stoppedWith returns the latest bout that was stopped with at most a load, if the
// athlete has not held as much as that bout's since.
func stoppedWith(bouts []gym.Bout, load mass.Mass) (gym.Bout, bool) {
	held := mass.Mass(0)
	for _, b := range slices.Backward(bouts) {
		switch {
		case b.Outcome == gym.Held:
			held = max(held, b.Load)
		case b.Outcome == gym.Stopped && b.Load <= load && b.Load > held:
			return b, true
		}
	}
	return gym.Bout{}, false
}

// Holds returns the chance of each of some loads that an athlete holds it today for
// so many reps of a movement; 0 reps are a usual bout's.
func (d *Desk) Holds(athlete gym.ID, movement gym.MovementKey, reps int, loads ...mass.Mass) ([]float64, error) {
	standing, err := d.standing()
	if err != nil {
		return nil, err
	}
	model, err := standing.Model(athlete, movement, d.Today())
	if err != nil {
		return nil, err
	}
	chances := make([]float64, len(loads))
	for i, load := range loads {
		chances[i] = model.Hold(load, reps)
	}
	return chances, nil
}
