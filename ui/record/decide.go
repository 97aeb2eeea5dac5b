package record

import (
	"fmt"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// why are the two fields that every decision has: its reason and its last day.
type why struct{ reason, until *kit.Field }

// newWhy makes them; the hint at the last day is one to come.
func newWhy(today day.Date) why {
	const weeks = 6
	return why{
		reason: kit.NewField("Why").Hint("sore wrist"),
		until:  kit.NewField("Last day, or empty until you take it back").Hint(today.Add(7 * weeks).String()),
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

// decide asks for another load for the chosen movement.
func (b *bouts) decide() {
	a, err := b.advice()
	if !b.of.host.Fail(err) {
		return
	}
	load := kit.NewChoice("Load", tierOptions(a.Rack, a.Unit), nil)
	w := newWhy(b.of.host.Desk().Today())
	b.of.ask(kit.Question{
		Title: a.Movement.Name + " for " + b.athlete.Name,
		Text:  fmt.Sprintf("Suggested is %s, with a chance of %.0f %% of being held. It stays in sight beside what you decide.", a.Decision.Suggestion.Load.In(a.Unit), 100*a.Decision.Suggestion.Hold),
		Body:  kit.Column(look.Gap2, load, w.reason, w.until), First: load.Keyboard(),
		Actions: []kit.Action{{Label: "Decide", Do: func() bool {
			chosen, ok := load.Chosen()
			if !ok {
				load.SetFault("Choose one of the loads that the gym owns.")
				return false
			}
			at, _ := strconv.Atoi(chosen.Key) // a key of our own making
			o := gym.Override{Athlete: b.athlete.ID, Movement: b.chosen, Load: a.Rack.Owned[at-1], Unit: a.Unit, From: b.of.host.Desk().Today()}
			return w.into(&o) && b.of.keepDecision(o, w)
		}}},
	})
}

// keepDecision keeps an override, or shows why not.
func (r *Record) keepDecision(o gym.Override, w why) bool {
	if err := r.host.Desk().KeepOverride(o); err != nil {
		w.until.SetFault(kit.Sentence(err))
		return false
	}
	r.host.Say("Decided: "+desk.OverrideText(o)+".", true)
	return true
}

// decideForAll asks for one tier for every movement.
func (r *Record) decideForAll() {
	a, ok := r.host.Desk().Athlete(r.athlete)
	if !ok {
		r.host.Say("Choose an athlete first.", false)
		return
	}
	tiers := []gym.Tier{gym.Full, gym.Mid, gym.Light}
	which := kit.NewSegmented([]string{"Full", "Mid", "Light"}, 1, nil)
	w := newWhy(r.host.Desk().Today())
	standing, err := r.host.Desk().TierStanding(a.ID)
	if !r.host.Fail(err) {
		return
	}
	r.ask(kit.Question{
		Title: "A tier for every movement of " + a.Name,
		Text:  "Suggested now, by how many movements stand where: " + standing.String() + ". A load decided for one movement goes before this.",
		Body:  kit.Column(look.Gap2, kit.Row(0, which, kit.Fill()), w.reason, w.until), First: w.reason.Keyboard(),
		Actions: []kit.Action{{Label: "Decide", Do: func() bool {
			o := gym.Override{Athlete: a.ID, Tier: tiers[which.Chosen()], From: r.host.Desk().Today()}
			return w.into(&o) && r.keepDecision(o, w)
		}}},
	})
}

// comeback asks for how many weeks an athlete goes lighter.
func (b *bouts) comeback() {
	weeks := kit.NewSegmented([]string{"1 week", "2 weeks", "3 weeks", "4 weeks"}, 1, nil)
	var body fyne.CanvasObject = kit.Column(look.Gap3, kit.Row(0, weeks, kit.Fill()),
		kit.NewProse("After an injury, an illness or a birth, wait for a doctor's word. Dark urine, weakness or swelling beyond usual soreness is for a doctor at once.", 420).Tone(look.Warn))
	b.of.ask(kit.Question{
		Title: b.athlete.Name + " is back from a break", Text: desk.ComebackText(), Width: 560, Body: body,
		Actions: []kit.Action{{Label: "Go lighter", Do: func() bool {
			n := weeks.Chosen() + 1
			return b.of.done(b.of.host.Desk().Comeback(b.athlete.ID, n), b.athlete.Name+" goes lighter for "+plural(n, "week")+".")
		}}},
	})
}
