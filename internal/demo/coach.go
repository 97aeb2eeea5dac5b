package demo

import (
	"slices"

	"windlass/internal/gym"
	"windlass/internal/mass"
)

// coach adds what the coach has decided and noted besides: overrides,
// restrictions, and slips that were put right.
func (w *world) coach() {
	w.override(away, gym.Override{Share: 0.8, From: w.start.Add(29), Until: w.start.Add(49), Reason: "Back from three weeks at sea: a fifth lighter for three weeks"})
	w.override(shoulder, gym.Override{Tier: gym.Light, From: w.start.Add(21), Until: w.start.Add(45), Reason: "Left shoulder: light until the clinic says otherwise"})
	w.override(beginner, gym.Override{
		Movement: "kettlebell-swing", Load: 16 * mass.Kilogram, Unit: mass.KG, From: w.start.Add(14), Reason: "Learns the hinge with 16 kg first",
	})
	w.restrict(shoulder, gym.Restriction{Text: "Left shoulder: no pressing overhead until the clinic has seen it", Region: gym.Upper, From: w.start.Add(21), Until: w.start.Add(45)})
	w.restrict(knee, gym.Restriction{Text: "Right knee: squat to a box", Region: gym.Lower, From: w.start.Add(10)})
	w.restrict(wrists, gym.Restriction{Text: "Wrists: straps on pulls, no long front rack", Region: gym.WholeBody, From: w.start})
	w.slip()
}

func (w *world) named(name string) *person {
	return w.people[slices.IndexFunc(w.people, func(p *person) bool { return p.Name == name })]
}

func (w *world) override(name string, o gym.Override) {
	o.Athlete, o.ID, o.Made = w.named(name).ID, w.id(o.From, evening), instant(o.From, evening)
	w.book.Overrides = append(w.book.Overrides, o)
}

func (w *world) restrict(name string, r gym.Restriction) {
	r.Athlete, r.ID = w.named(name).ID, w.id(r.From, evening)
	w.book.Restrictions = append(w.book.Restrictions, r)
}

// slip is a result that was typed wrong and voided on the same evening.
func (w *world) slip() {
	p := w.named(inPounds)
	on := w.start.Add(-20)
	r := gym.Result{
		ID: w.id(on, evening), Athlete: p.ID, Lift: "bench-press", Reps: 5, Load: 315 * mass.Pound, Unit: mass.LB,
		On: on, Source: gym.Reported, Made: instant(on, evening),
		Void: &gym.Void{At: instant(on, evening+5), Reason: "Typed into the wrong row"},
	}
	at := slices.IndexFunc(w.book.Results, func(b gym.Result) bool { return b.On > on })
	w.book.Results = slices.Insert(w.book.Results, max(at, 0), r)
}
