package roster

import (
	"fmt"
	"strings"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// setStatus makes the chosen athletes active, paused or archived.
func (r *Roster) setStatus(s gym.Status) {
	ids := r.table.chosen()
	if len(ids) == 0 {
		r.host.Say("Choose an athlete first.", false)
		return
	}
	if r.host.Fail(r.host.Desk().SetStatus(s, ids...)) {
		r.host.Say(r.whom(ids)+statusVerb(s, len(ids)), true)
		r.table.unmark()
	}
}

// whom names one athlete, or counts several.
func (r *Roster) whom(ids []gym.ID) string {
	if len(ids) == 1 {
		a, _ := r.host.Desk().Athlete(ids[0])
		return a.Name
	}
	return fmt.Sprintf("%d athletes", len(ids))
}

func statusVerb(s gym.Status, n int) string {
	is := " is "
	if n > 1 {
		is = " are "
	}
	switch s {
	case gym.Paused:
		return is + "paused."
	case gym.Archived:
		return is + "archived; nothing of the records is lost."
	}
	return is + "back. Numbers from before the break are offered lower on the floor."
}

// moveShown moves the athlete of the record, whoever is marked.
func (r *Roster) moveShown() { r.move([]gym.ID{r.record.Athlete()}) }

func (r *Roster) askMove() {
	if ids := r.table.chosen(); len(ids) > 0 {
		r.move(ids)
		return
	}
	r.host.Say("Choose an athlete first.", false)
}

// move asks for a track and a day, and says what the move does.
func (r *Roster) move(ids []gym.ID) {
	d := r.host.Desk()
	effect := kit.NewProse("", 420).Tone(look.Muted)
	from := kit.NewField("From").Least(160)
	var track *kit.Choice
	tell := func() {
		effect.SetText(r.effect(ids, track, from.Text()))
		effect.Refresh()
	}
	track = kit.NewChoice("To the track", r.trackOptions(), func(kit.Option) { tell() })
	from.SetText(d.Today().String())
	from.OnChange(func(string) { tell() })
	kit.Ask(r.host.Window().Canvas(), kit.Question{
		Title: "Move " + r.whom(ids), Body: kit.Column(look.Gap2, kit.Equal(look.Gap3, track, from), kit.Tall(112, kit.Fill(effect))),
		First: track.Keyboard(),
		Actions: []kit.Action{{Label: "Move", Do: func() bool {
			on, err := day.Parse(strings.TrimSpace(from.Text()))
			if err != nil {
				from.SetFault(kit.Sentence(err))
				return false
			}
			to, ok := track.Chosen()
			if !ok {
				track.SetFault("Choose a track, or None.")
				return false
			}
			if r.host.Fail(d.MoveTrack(trackOf(to), on, ids...)) {
				r.host.Say(fmt.Sprintf("%s: %s from %s.", r.whom(ids), to.Text, on.Short()), true)
				r.table.unmark()
			}
			return true
		}}},
	})
}

// noTrack stands for taking athletes off their track.
const noTrack = "-"

func trackOf(o kit.Option) gym.ID {
	if o.Key == noTrack {
		return ""
	}
	return gym.ID(o.Key)
}

func (r *Roster) trackOptions() []kit.Option {
	var options []kit.Option
	for _, t := range r.host.Desk().Tracks() {
		options = append(options, kit.Option{Key: string(t.ID), Text: t.Name})
	}
	return append(options, kit.Option{Key: noTrack, Text: "None", Note: "off every track"})
}

// effect says what moving one athlete does to the week and the rep maxes.
func (r *Roster) effect(ids []gym.ID, track *kit.Choice, from string) string {
	to, ok := track.Chosen()
	on, err := day.Parse(strings.TrimSpace(from))
	if !ok || err != nil || len(ids) != 1 || to.Key == noTrack {
		return ""
	}
	d := r.host.Desk()
	a, _ := d.Athlete(ids[0])
	e := d.MoveEffect(a, trackOf(to), on)
	if len(e.Lacks) == 0 {
		return e.Why
	}
	return e.Why + " " + d.LacksText(e.Lacks)
}

// askAthlete asks for a new athlete.
func (r *Roster) askAthlete() {
	d := r.host.Desk()
	name := kit.NewField("Name")
	standard := kit.NewSegmented([]string{"M", "W"}, 0, nil)
	unit := kit.NewSegmented([]string{"kg", "lb"}, 0, nil)
	if d.Settings().Unit == mass.LB {
		unit.Set(1)
	}
	track := kit.NewChoice("Track", r.trackOptions(), nil)
	body := kit.Column(look.Gap2, name,
		kit.Row(look.Gap6,
			kit.Column(look.Gap1, kit.NewCaption("Standard conditioning loads"), kit.Row(0, standard, kit.Fill())),
			kit.Column(look.Gap1, kit.NewCaption("Loads in"), kit.Row(0, unit, kit.Fill()))),
		track)
	kit.Ask(r.host.Window().Canvas(), kit.Question{
		Title: "Add an athlete", Text: "Screen people before they start, and ask about minors, pregnancy and illness: they need advice of their own.",
		Body: body, First: name.Keyboard(),
		Actions: []kit.Action{{Label: "Add", Do: func() bool {
			a := d.NewAthlete(name.Text())
			a.Standard = []gym.Standard{gym.StandardM, gym.StandardW}[standard.Chosen()]
			a.Unit = []mass.Unit{mass.KG, mass.LB}[unit.Chosen()]
			to, chosen := track.Chosen()
			if !chosen && track.Text() != "" {
				track.SetFault("Choose a track, or leave it empty.")
				return false
			}
			if err := d.AddAthlete(a, trackOf(to)); err != nil {
				name.SetFault(kit.Sentence(err))
				return false
			}
			r.reveal(a.ID)
			r.showCursor()
			r.host.Say(a.Name+" is on the roster. Log what you know with F2.", true)
			return true
		}}},
	})
}
