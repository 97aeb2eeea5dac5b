package record

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/tier"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// why are the two fields that every decision has: its reason and its last day.
type why struct{ reason, until *kit.Field }

// newWhy makes them; the hint at the last day is one to come.
func newWhy(today day.Date) why {
	const weeks = 6
	return why{
		reason: kit.NewField("Why").Hint("such as a sore wrist"),
		until:  kit.NewField("Last day, or empty until you take it back").Hint("such as " + today.Add(7*weeks).String()),
	}
}

// into writes reason and days into an override, or shows what is wrong with them.
func (w why) into(o *gym.Override) bool {
	o.Reason = strings.TrimSpace(w.reason.Text())
	if o.Reason == "" {
		w.reason.SetFault("Write a word or two, for whoever reads it later.")
		return false
	}
	if text := strings.TrimSpace(w.until.Text()); text != "" {
		var err error
		if o.Until, err = day.Parse(text); err != nil {
			w.until.SetFault(kit.Sentence(err))
			return false
		}
	}
	return true
}

// loadAsked is the question which load the coach decides for a movement.
type loadAsked struct {
	of      *bouts
	advice  desk.Advice
	load    *kit.Choice
	why     why
	caution *kit.Prose
	warned  mass.Mass // the load of which the caution was read
}

// decide asks for another load for the chosen movement.
func (b *bouts) decide() {
	a, err := b.advice()
	if !b.of.host.Fail(err) {
		return
	}
	q := &loadAsked{of: b, advice: a, why: newWhy(b.of.host.Desk().Today()), caution: kit.NewProse("", 400).Tone(look.Warn)}
	q.load = kit.NewChoice("Load", b.loadOptions(a), func(kit.Option) { q.warn() }).PassEscape()
	s := a.Decision.Suggestion
	q.load.Set(keyOf(a.Rack, s.Load))
	b.of.ask(kit.Question{
		Title: a.Movement.Name + " for " + b.athlete.Name, Width: decideWidth,
		Text: fmt.Sprintf("Suggested for %s is %s, with a chance of %s of being held. It stays in sight beside what you decide.",
			desk.WorkText(a.Movement, 0), s.Load.In(a.Unit), tier.Percent(s.Hold)),
		Body:  kit.Column(look.Gap2, q.load, kit.Tall(cautionHeight, kit.Fill(q.caution)), q.why.reason, q.why.until),
		First: q.load.Keyboard(), Actions: []kit.Action{{Label: "Decide", Do: q.keep}},
	})
}

// decideWidth is that of the questions: a fault of a date stands in one line.
const decideWidth = 620

// cautionHeight is that of the lines that a caution may need.
const cautionHeight = 46

// asked is the override as it stands in the question, without its reason.
func (q *loadAsked) asked() (o gym.Override, ok bool) {
	chosen, ok := q.load.Chosen()
	if !ok {
		return o, false
	}
	at, _ := strconv.Atoi(chosen.Key) // a key of our own making
	return gym.Override{
		Athlete: q.of.athlete.ID, Movement: q.advice.Movement.Key, Load: q.advice.Rack.Owned[at-1], Unit: q.advice.Unit,
		From: q.of.of.host.Desk().Today(),
	}, true
}

// warn says what speaks against the chosen load, and returns whether anything
// does.
func (q *loadAsked) warn() bool {
	o, ok := q.asked()
	if !ok {
		return false
	}
	text, err := q.of.of.host.Desk().Caution(o)
	if err != nil {
		text = kit.Sentence(err)
	}
	q.caution.SetText(text)
	return text != ""
}

// keep keeps the decision. A load that something speaks against is kept when it is
// asked for again.
func (q *loadAsked) keep() bool {
	o, ok := q.asked()
	if !ok {
		q.load.SetFault("Choose one of the loads that the gym owns.")
		return false
	}
	if !q.why.into(&o) {
		return false
	}
	if q.warn() && q.warned != o.Load {
		q.warned = o.Load
		q.caution.SetText(q.caution.Label() + " Decide again to keep it all the same.")
		return false
	}
	return q.of.of.keepDecision(o, q.why)
}

// loadOptions are the loads that the gym owns for a movement, each with its tier
// and the chance that it is held.
func (b *bouts) loadOptions(a desk.Advice) []kit.Option {
	chances, err := b.of.host.Desk().Holds(b.athlete.ID, a.Movement.Key, 0, a.Rack.Owned...)
	var options []kit.Option
	for i, load := range a.Rack.Owned {
		note := desk.TierWord(tier.TierOf(load, a.Rack.Tiers))
		if err == nil {
			note += ", " + tier.Percent(chances[i])
		}
		options = append(options, kit.Option{Key: keyOf(a.Rack, load), Text: load.In(a.Unit), Note: note})
	}
	return options
}

// keyOf is the key of a load among those that the gym owns.
func keyOf(r tier.Rack, load mass.Mass) string { return strconv.Itoa(slices.Index(r.Owned, load) + 1) }

// keepDecision keeps an override, or shows why not.
func (r *Record) keepDecision(o gym.Override, w why) bool {
	if err := r.host.Desk().KeepOverride(o); err != nil {
		w.until.SetFault(kit.Sentence(err))
		return false
	}
	r.host.Say("Decided: "+r.host.Desk().OverrideText(o)+".", true)
	return true
}

// decideForAll asks for the heaviest tier of every movement.
func (r *Record) decideForAll() {
	d := r.host.Desk()
	a, ok := d.Athlete(r.athlete)
	if !ok {
		r.host.Say("Choose an athlete first.", false)
		return
	}
	standing, err := d.TierStanding(a.ID)
	if !r.host.Fail(err) {
		return
	}
	tiers := []gym.Tier{gym.Full, gym.Mid, gym.Light}
	effect := kit.NewProse("", 400)
	tell := func(i int) {
		e, err := d.CapEffect(a.ID, tiers[i])
		effect.SetText(e.String())
		if err != nil {
			effect.SetText(kit.Sentence(err))
		}
	}
	which := kit.NewSegmented([]string{"Full", "Mid", "Light"}, 1, tell)
	tell(which.Chosen())
	w := newWhy(d.Today())
	r.ask(kit.Question{
		Title: "The most for every movement of " + a.Name, Width: decideWidth,
		Text: "By tier, today's loads are: " + standing.String() + "; a load between two tiers counts as the lower. A tier for all makes loads lighter where they are over it, and none heavier. A load decided for one movement goes before it.",
		Body: kit.Column(look.Gap2, kit.NewCaption("At most"), kit.Row(0, which, kit.Fill()), effect, w.reason, w.until), First: w.reason.Keyboard(),
		Actions: []kit.Action{{Label: "Decide", Do: func() bool {
			o := gym.Override{Athlete: a.ID, Tier: tiers[which.Chosen()], From: d.Today()}
			return w.into(&o) && r.keepDecision(o, w)
		}}},
	})
}
