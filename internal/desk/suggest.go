package desk

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"

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
	standing, err := d.standing()
	if err != nil {
		return Advice{}, err
	}
	model, err := standing.Model(athlete, movement, d.Today())
	if err != nil {
		return Advice{}, err
	}
	advice := Advice{Movement: m, Rack: model.Rack(), Unit: markedIn(model.Rack().Owned, a.Unit)}
	s, err := model.Suggest(tier.Ask{Reps: reps, On: d.Today(), Unit: advice.Unit})
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

// standing learns from the whole log when first asked, and heeds single bouts
// after that.
func (d *Desk) standing() (*tier.Standing, error) {
	if d.tiers.standing != nil {
		return d.tiers.standing, nil
	}
	s, err := tier.Learn(context.Background(), &d.book, d.Strength)
	if err != nil {
		return nil, err
	}
	d.tiers.standing = s
	return s, nil
}

// tiers is what was worked out about conditioning loads.
type tiers struct {
	standing *tier.Standing // nil until somebody asks
	on       day.Date       // that the advice is for
	advice   map[adviceKey]keptAdvice
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

// heed takes changes into account. A bout costs no new learning; whatever the
// learning rests on does: people, movements, implements and the confidence. A new
// record is heeded for the strength of people at the next learning, so that a
// class's results do not each cost one.
func (t *tiers) heed(changes []gym.Change) {
	for _, change := range changes {
		switch c := change.(type) {
		case gym.AddBout:
			t.observe(c.Bout)
		case gym.VoidBout:
			if t.standing != nil {
				t.standing.Void(c.ID)
			}
			t.advice = nil
		case gym.AddOverride:
			t.forget(c.Override.Athlete)
		case gym.VoidOverride:
			t.advice = nil
		case gym.PutAthlete, gym.DropAthlete, gym.PutMovement, gym.DropMovement, gym.PutEquipment, gym.PutSettings:
			t.standing, t.advice = nil, nil
		}
	}
}

func (t *tiers) observe(b gym.Bout) {
	if t.standing != nil {
		t.standing.Observe(b)
	}
	t.forget(b.Athlete)
}

func (t *tiers) forget(athlete gym.ID) {
	for key := range t.advice {
		if key.athlete == athlete {
			delete(t.advice, key)
		}
	}
}

// Overrides returns what the coach decided for an athlete and did not take back,
// the oldest first.
func (d *Desk) Overrides(athlete gym.ID) []gym.Override {
	if d.index.overrides[athlete] == 0 {
		return nil
	}
	var kept []gym.Override
	for _, o := range d.book.Overrides {
		if o.Athlete == athlete && o.Void == nil {
			kept = append(kept, o)
		}
	}
	return kept
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

// TierStanding is the tier at which an athlete stands in conditioning: that of
// the loads suggested for the movements done before.
type TierStanding struct {
	Usual gym.Tier // of most movements, the lighter of two as frequent; empty for none
	Count map[gym.Tier]int
}

// tiersDown are the tiers, lightest first.
var tiersDown = []gym.Tier{gym.Below, gym.Light, gym.Mid, gym.Full}

// TierStanding returns where an athlete stands today.
func (d *Desk) TierStanding(athlete gym.ID) (TierStanding, error) {
	s := TierStanding{Count: map[gym.Tier]int{}}
	for movement := range d.lastBouts(athlete) {
		a, err := d.Advise(athlete, movement, 0)
		if errors.Is(err, tier.ErrUnloaded) {
			continue
		}
		if err != nil {
			return TierStanding{}, err
		}
		s.Count[a.Decision.Suggestion.Tier]++
	}
	for _, t := range tiersDown {
		if s.Count[t] > s.Count[s.Usual] {
			s.Usual = t
		}
	}
	return s, nil
}

// String names the tiers and how many movements stand at each: "mid: full 2, mid
// 5, light 1".
func (s TierStanding) String() string {
	if s.Usual == "" {
		return "no bout yet"
	}
	var parts []string
	for i := len(tiersDown) - 1; i >= 0; i-- {
		if n := s.Count[tiersDown[i]]; n > 0 {
			parts = append(parts, fmt.Sprintf("%s %d", tiersDown[i], n))
		}
	}
	return fmt.Sprintf("%s: %s", s.Usual, strings.Join(parts, ", "))
}

// KeepOverride keeps what the coach decided instead of a suggestion, from now on.
func (d *Desk) KeepOverride(o gym.Override) error {
	a, ok := d.Athlete(o.Athlete)
	if !ok {
		return fmt.Errorf("keep override: there is no such athlete")
	}
	if o.ID == "" {
		o.ID = d.NewID()
	}
	o.Made = d.now()
	if err := o.Valid(); err != nil {
		return err
	}
	return d.do("decide a load for "+a.Name, gym.AddOverride{Override: o})
}

// VoidOverride lets the suggestion stand again.
func (d *Desk) VoidOverride(id gym.ID) error {
	return d.do("take an override back", gym.VoidOverride{ID: id, Void: gym.Void{At: d.now(), Reason: "taken back"}})
}

// Comeback makes every conditioning load of an athlete lighter for 1 to 4 weeks
// from today, as [tier.Comeback] says.
func (d *Desk) Comeback(athlete gym.ID, weeks int) error {
	a, ok := d.Athlete(athlete)
	if !ok {
		return fmt.Errorf("plan comeback: there is no such athlete")
	}
	overrides, err := tier.Comeback(athlete, d.Today(), weeks)
	if err != nil {
		return err
	}
	var changes []gym.Change
	for _, o := range overrides {
		o.ID, o.Made = d.NewID(), d.now()
		changes = append(changes, gym.AddOverride{Override: o})
	}
	return d.do(fmt.Sprintf("go lighter with %s for %s", a.Name, count(weeks, "week")), changes...)
}

// ComebackText says what [Desk.Comeback] does and where it comes from.
func ComebackText() string {
	weeks, err := tier.Comeback("", 1, 4)
	if err != nil {
		return ""
	}
	var cuts []string
	for _, o := range weeks {
		cuts = append(cuts, fmt.Sprintf("%.0f", 100*(1-o.Share)))
	}
	last := len(cuts) - 1
	return fmt.Sprintf("Every conditioning load is lighter by %s and %s %% in weeks 1 to %d. The cuts are our reading of the %s, which sets them for the volume.",
		strings.Join(cuts[:last], ", "), cuts[last], len(cuts), tier.ComebackSource)
}

// BoutsOf returns the standing bouts of an athlete at a movement, oldest first.
func (d *Desk) BoutsOf(athlete gym.ID, movement gym.MovementKey) []gym.Bout {
	return slices.DeleteFunc(d.Bouts(athlete), func(b gym.Bout) bool { return b.Movement != movement || b.Void != nil })
}

// OverrideText says what an override decides, for how long, and why: "12 kg until 3
// Jun: sore wrist".
func OverrideText(o gym.Override) string {
	what := fmt.Sprintf("%.0f %% of the load", 100*o.Share)
	switch {
	case o.Load > 0:
		what = o.Load.In(o.Unit)
	case o.Tier != "":
		what = "the " + string(o.Tier) + " tier"
	}
	if o.Movement == "" {
		what += " for every movement"
	}
	if o.Until != day.None {
		what += " until " + o.Until.Short()
	}
	return what + ": " + o.Reason
}

// VoidBout takes a bout out of every computation and keeps it readable.
func (d *Desk) VoidBout(id gym.ID, reason string) error {
	if strings.TrimSpace(reason) == "" {
		return fmt.Errorf("void bout: there is no reason; write a word or two")
	}
	return d.do("void bout", gym.VoidBout{ID: id, Void: gym.Void{At: d.now(), Reason: reason}})
}
