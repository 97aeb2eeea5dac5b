package desk

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"time"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/tier"
)

// Advice is the load of an athlete for a movement today, with what stands behind
// it.
type Advice struct {
	Movement gym.Movement
	Decision tier.Decision // the suggestion, or what the coach decided instead
	Last     gym.Bout      // the latest that stands, zero for none
	Rack     tier.Rack     // what the gym owns for it
	Hold     float64       // chance that the decided load is held
	Unit     mass.Unit     // in which the gym's implements for it are marked
}

// Decided reports whether the coach decided otherwise than suggested.
func (a Advice) Decided() bool { return len(a.Decision.By) > 0 }

// Advise returns the load of an athlete for so many reps of a movement today; 0
// reps are a usual bout's. The error wraps [tier.ErrUnloaded] for a movement that
// has no load.
func (d *Desk) Advise(athlete gym.ID, movement gym.MovementKey, reps int) (Advice, error) {
	d.tiers.turn(d.Today())
	key := adviceKey{athlete, movement, reps}
	if known, ok := d.tiers.advice[key]; ok {
		return known.Advice, known.err
	}
	a, err := d.advise(athlete, movement, reps)
	d.tiers.advice[key] = keptAdvice{a, err}
	return a, err
}

func (d *Desk) advise(athlete gym.ID, movement gym.MovementKey, reps int) (Advice, error) {
	a, ok := d.Athlete(athlete)
	m, listed := d.Movement(movement)
	if !ok || !listed {
		return Advice{}, fmt.Errorf("suggest load: there is no such athlete, or no movement %q", movement)
	}
	if m.Loads[a.Standard].Full == 0 {
		return Advice{}, fmt.Errorf("suggest load of %q: %w", movement, tier.ErrUnloaded)
	}
	standing, err := d.standing()
	if err != nil {
		return Advice{}, err
	}
	if !d.tiers.knows(a) {
		return Advice{}, ErrLearning
	}
	model, err := standing.Model(athlete, movement, d.Today())
	if err != nil {
		return Advice{}, err
	}
	advice := Advice{Movement: m, Rack: model.Rack(), Unit: markedIn(model.Rack().Owned, a.Unit)}
	s, err := model.Suggest(tier.Ask{Reps: reps, On: d.Today(), Unit: advice.Unit, Work: AskedText(m, reps, model.Bouts())})
	if err != nil {
		return Advice{}, err
	}
	advice.Decision = tier.Decide(s, advice.Rack, movement, d.Today(), d.Overrides(athlete))
	advice.Hold = model.Hold(advice.Decision.Load, reps)
	if bouts := model.Bouts(); len(bouts) > 0 {
		advice.Last = bouts[len(bouts)-1]
	}
	return advice, nil
}

// markedIn returns the unit in which implements are most likely marked: the
// athlete's own if their masses are round in it, else the one in which they are. A
// coach looks for what stands on the dumbbell.
func markedIn(owned []mass.Mass, own mass.Unit) mass.Unit {
	for _, u := range []mass.Unit{own, mass.KG, mass.LB} {
		if !slices.ContainsFunc(owned, func(m mass.Mass) bool { return !inQuarters(m, u) }) {
			return u
		}
	}
	return own
}

// inQuarters reports whether a mass is a whole number of quarters of a unit.
func inQuarters(m mass.Mass, u mass.Unit) bool { return m%(u.One()/4) == 0 }

// tiers is what was worked out about conditioning loads.
type tiers struct {
	lessons
	on     day.Date // that the advice is for
	advice map[adviceKey]keptAdvice
}

type adviceKey struct {
	athlete  gym.ID
	movement gym.MovementKey
	reps     int
}

type keptAdvice struct {
	Advice
	err error
}

// turn forgets the advice of another day.
func (t *tiers) turn(on day.Date) {
	if t.on != on || t.advice == nil {
		t.on, t.advice = on, map[adviceKey]keptAdvice{}
	}
}

// heed takes changes into account: what they say of their own athletes at once, what
// else when it is learnt.
func (t *tiers) heed(changes []gym.Change, now time.Time) {
	if t.lessons.heed(changes, now) {
		t.advice = nil
		return
	}
	for _, change := range changes {
		switch c := change.(type) {
		case gym.AddBout:
			t.forget(c.Bout.Athlete)
		case gym.AddOverride:
			t.forget(c.Override.Athlete)
		case gym.VoidBout, gym.VoidOverride:
			t.advice = nil
		}
	}
}

func (t *tiers) forget(athlete gym.ID) {
	for key := range t.advice {
		if key.athlete == athlete {
			delete(t.advice, key)
		}
	}
}

// Loaded returns the movements that have loads for an athlete: those done before,
// the latest first, then the others by name.
func (d *Desk) Loaded(athlete gym.ID) []gym.MovementKey {
	a, ok := d.Athlete(athlete)
	if !ok {
		return nil
	}
	last := d.lastBouts(athlete)
	var rows []gym.Movement
	for _, m := range d.book.Movements {
		if _, done := last[m.Key]; m.Loads[a.Standard].Full > 0 && (done || !m.Hidden) {
			rows = append(rows, m)
		}
	}
	slices.SortStableFunc(rows, func(x, y gym.Movement) int {
		return cmp.Or(cmp.Compare(last[y.Key], last[x.Key]), cmp.Compare(x.Name, y.Name))
	})
	keys := make([]gym.MovementKey, len(rows))
	for i, m := range rows {
		keys[i] = m.Key
	}
	return keys
}

// lastBouts returns the day of the latest standing bout of each movement.
func (d *Desk) lastBouts(athlete gym.ID) map[gym.MovementKey]day.Date {
	last := map[gym.MovementKey]day.Date{}
	for _, row := range d.index.bouts[athlete] {
		if b := &d.book.Bouts[row]; b.Void == nil {
			last[b.Movement] = max(last[b.Movement], b.On)
		}
	}
	return last
}

// BoutsOf returns the standing bouts of an athlete at a movement, oldest first.
func (d *Desk) BoutsOf(athlete gym.ID, movement gym.MovementKey) []gym.Bout {
	return slices.DeleteFunc(d.Bouts(athlete), func(b gym.Bout) bool { return b.Movement != movement || b.Void != nil })
}

// VoidBout takes a bout out of every computation and keeps it readable.
func (d *Desk) VoidBout(id gym.ID, reason string) error {
	if strings.TrimSpace(reason) == "" {
		return fmt.Errorf("void bout: there is no reason; write a word or two")
	}
	i := slices.IndexFunc(d.book.Bouts, func(b gym.Bout) bool { return b.ID == id })
	if i < 0 {
		return fmt.Errorf("void bout: there is no such bout")
	}
	b := d.book.Bouts[i]
	if b.Void != nil {
		return fmt.Errorf("void bout: it is void already: %s", b.Void.Reason)
	}
	a, _ := d.Athlete(b.Athlete)
	m, _ := d.Movement(b.Movement)
	return d.do(fmt.Sprintf("void %s %s of %s", m.Name, b.Load.In(b.Unit), a.Name), gym.VoidBout{ID: id, Void: gym.Void{At: d.now(), Reason: reason}})
}
