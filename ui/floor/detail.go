package floor

import (
	"fyne.io/fyne/v2"

	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// lifterDetail is the chosen athlete: what today is counted from, and what the
// coach may change about it.
type lifterDetail struct {
	setUp   *setUp
	name    *kit.Text
	what    *kit.Text
	number  *kit.Prose
	warning *kit.Prose
	load    *kit.MassField
	track   *kit.Choice
	less    *kit.Button
	offer   *kit.Prose
	attempt *kit.Prose
	edit    *fyne.Container
	all     fyne.CanvasObject
}

func newLifterDetail(s *setUp) *lifterDetail {
	d := &lifterDetail{setUp: s, name: kit.NewHeading("").Shrinks(120), what: kit.NewCaption("")}
	d.number, d.warning = kit.NewProse("", 200), kit.NewProse("", 200).Tone(look.Warn)
	d.offer = kit.NewProse("", 160).Small().Tone(look.Muted)
	d.attempt = kit.NewProse("", 160).Small().Tone(look.Muted)
	d.load = kit.NewMassField("Count from another load", mass.KG).Least(120).OnMass(d.take)
	d.less = kit.NewButton("Lower it", d.lower).Key("F7")
	d.track = kit.NewChoice("Lifts with", nil, d.turn)
	d.edit = kit.Column(look.Gap2, d.attempt, kit.Row(look.Gap2, kit.Fill(d.offer), d.less), kit.Equal(look.Gap2, d.load, d.track))
	d.all = kit.NewCard("", kit.Column(look.Gap1, kit.Row(look.Gap2, kit.Fill(kit.Column(0, kit.Fill(), d.name, kit.Fill())), d.what), d.warning, d.number, d.edit))
	return d
}

func (d *lifterDetail) refresh() {
	f := d.setUp.floor
	st, here := f.desk().Standing(f.class, d.setUp.chosen)
	show(d.edit, here)
	if !here {
		d.absent()
		return
	}
	d.name.SetText(st.Name)
	d.what.SetText("")
	if st.Lift != "" {
		d.what.SetText(repMax(st.Lift, st.Reps))
	}
	d.number.SetText(st.Number + ".")
	d.number.Tone(toneIf(st.Needs, look.Warn, look.Text))
	d.warn(st.Warning)
	d.attempt.SetText(st.Attempt)
	show(d.attempt, st.Attempt != "")
	d.offer.SetText(st.Offer)
	show(d.offer, st.Offer != "")
	show(d.less, st.Offer != "")
	show(d.load, st.Lift != "")
	d.tell(st.Lifter)
}

func (d *lifterDetail) absent() {
	a, ok := d.setUp.floor.desk().Athlete(d.setUp.chosen)
	d.what.SetText("")
	d.warn("")
	if !ok {
		d.name.SetText("Who is here?")
		d.number.SetText("Tick whoever has come, or type a name above. Numbers, restrictions and stations follow.")
		return
	}
	d.name.SetText(a.Name)
	d.number.SetText("Not here yet. Enter checks them in.")
	d.number.Tone(look.Muted)
	for _, r := range d.setUp.here.rows {
		if r.Athlete.ID == a.ID {
			d.warn(r.Note)
		}
	}
}

func (d *lifterDetail) warn(text string) {
	if text != "" {
		text = "Mind: " + text
	}
	d.warning.SetText(text)
	show(d.warning, text != "")
}

// tell shows which track's lift the athlete does, where there is a choice.
func (d *lifterDetail) tell(l gym.Lifter) {
	f := d.setUp.floor
	var tracks []kit.Option
	for _, p := range f.class.Pieces {
		tracks = append(tracks, kit.Option{Key: string(p.Track), Text: f.desk().Track(p.Track).Name})
	}
	show(d.track, len(tracks) > 1)
	d.track.SetOptions(tracks)
	d.track.Set(string(l.Track))
	a, _ := f.desk().Athlete(l.Athlete)
	load := l.Base
	if load == 0 {
		load = l.Start
	}
	if load > 0 {
		d.load.SetMass(load, a.Unit)
	} else {
		d.load.SetText("")
	}
}

// take counts the climb from a typed load, or begins with it where nothing is
// known.
func (d *lifterDetail) take(load mass.Mass, unit mass.Unit) {
	f := d.setUp.floor
	st, ok := f.desk().Standing(f.class, d.setUp.chosen)
	if !ok || load == st.Lifter.Base || load == st.Lifter.Start {
		return
	}
	effort := gym.Effort{Reps: st.Reps, Load: load, Unit: unit}
	if st.Lifter.Base == 0 {
		f.did(f.desk().StartWith(f.id, d.setUp.chosen, effort), st.Name+" begins with "+load.In(unit)+".")
		return
	}
	f.did(f.desk().CountFrom(f.id, d.setUp.chosen, effort), st.Name+"'s climb is counted from "+load.In(unit)+" today.")
}

func (d *lifterDetail) lower() {
	f := d.setUp.floor
	if st, ok := f.desk().Standing(f.class, d.setUp.chosen); ok && st.Offer != "" {
		f.did(f.desk().LowerBase(f.id, d.setUp.chosen), st.Name+"'s climb is counted from less today.")
	}
}

func (d *lifterDetail) turn(o kit.Option) {
	f := d.setUp.floor
	f.did(f.desk().ChangeTrack(f.id, d.setUp.chosen, gym.ID(o.Key)), d.name.Label()+" lifts with "+o.Text+".")
}
