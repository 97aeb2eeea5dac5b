package gymroom

import (
	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/mass"
	"windlass/internal/plates"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// reach is the reading of what the bar under the cursor can carry, and a load to
// try on it.
type reach struct {
	of      *equipment
	card    *kit.Card
	lines   [2]*kit.Text
	target  *kit.MassField
	picture *kit.PlatePicture
	said    *kit.Text
	wanted  mass.Mass
}

// usualTrials are the loads that are shown until another is asked for.
var usualTrials = map[mass.Unit]mass.Mass{mass.KG: 100 * mass.Kilogram, mass.LB: 225 * mass.Pound}

func newReach(e *equipment) *reach {
	r := &reach{of: e, picture: kit.NewPlatePicture(220, 96), said: kit.NewStrong("").Shrinks(120)}
	unit := e.host.Desk().Settings().Unit
	r.wanted = usualTrials[unit]
	rows := []fyne.CanvasObject{}
	for i := range r.lines {
		r.lines[i] = kit.NewBody("").Shrinks(120)
		rows = append(rows, r.lines[i])
	}
	r.target = kit.NewMassField("Try a load", unit).OnMass(func(m mass.Mass, _ mass.Unit) {
		r.wanted = m
		r.refresh()
	})
	r.target.SetMass(r.wanted, unit)
	rows = append(rows, kit.Row(look.Gap3, kit.Wide(128, r.target), kit.Fill(r.picture)), r.said)
	r.card = kit.NewCard("What can be loaded", kit.Column(look.Gap2, rows...))
	return r
}

// refresh reads what the bar under the cursor can carry now.
func (r *reach) refresh() {
	at := r.of.bars.at()
	if at < 0 {
		r.say("No bar yet", []string{"Add a bar, and what it can carry stands here."})
		return
	}
	bar := r.of.owned().Bars[at]
	d := r.of.host.Desk()
	can, err := d.ReachOf(bar.Key)
	if err != nil {
		r.say(bar.Name, []string{kit.Sentence(err)})
		return
	}
	r.say("What can be loaded on the "+bar.Name, can.Lines())
	r.try(d, bar)
}

func (r *reach) say(title string, lines []string) {
	r.card.SetTitle(title)
	for i, text := range r.lines {
		said := ""
		if i < len(lines) {
			said = lines[i]
		}
		text.SetText(said)
	}
}

func (r *reach) try(d *desk.Desk, bar plates.Bar) {
	trial, err := d.TryLoad(bar.Key, r.wanted)
	if err != nil {
		r.said.Say(kit.Sentence(err), look.Bad)
		r.picture.Set(bar.Name, nil)
		return
	}
	r.said.Say(trial.Text, look.Text)
	var discs []kit.PlateDisc
	for _, disc := range trial.Loading.PerSide {
		discs = append(discs, kit.DiscOf(disc.Mass, disc.Unit, disc.Full, d.Settings().SportDiscs))
	}
	r.picture.Set(bar.Name, discs)
}
