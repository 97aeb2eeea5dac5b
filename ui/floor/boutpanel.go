package floor

import (
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// boutPanel is the chosen row of the sheet: the load with its chance and its reason,
// what came of it, and the athlete's score. What is typed is kept when the keyboard
// goes elsewhere; Escape takes it back.
type boutPanel struct {
	sheet *boutSheet
	row   desk.BoutRow
	doubt string // the score that was asked about and not yet pressed again

	name, what *kit.Text
	why        *kit.Prose
	chance     *kit.Prose
	strange    *kit.Prose
	load       *kit.MassField
	says       map[gym.Outcome]*kit.Button
	score      *kit.Field
	told       *kit.Prose // how the score is written, or what is wrong with it
	all        *fyne.Container
}

func newBoutPanel(s *boutSheet) *boutPanel {
	p := &boutPanel{sheet: s, says: map[gym.Outcome]*kit.Button{}}
	p.name, p.what = kit.NewHeading("").Shrinks(120), kit.NewBody("").Shrinks(120)
	p.why = kit.NewProse("", 200).Small().Tone(look.Muted)
	p.chance, p.strange = kit.NewProse("", 200).Small(), kit.NewProse("", 200).Small().Tone(look.Warn)
	p.load = kit.NewMassField("Load used", mass.KG).OnMass(p.takeLoad)
	p.load.OnKey(p.loadKey)
	p.score = kit.NewField("").Called("Score").OnEnter(p.enterScore).OnLeave(p.leaveScore).OnKey(p.scoreKey)
	p.told = kit.NewProse("", 200).Small()
	say := func(label, key string, o gym.Outcome) *kit.Button {
		p.says[o] = kit.NewButton(label, func() { s.log(o) }).Key(key)
		return p.says[o]
	}
	buttons := kit.Row(look.Gap2, say("Held", "H", gym.Held), say("Slowed", "S", gym.Slowed), say("Stopped", "X", gym.Stopped))
	p.all = kit.Column(look.Gap1, p.name, p.what, p.why, p.chance, p.strange, p.load, buttons,
		kit.NewCaption("Score"), p.score, p.told, kit.Fill())
	return p
}

// set shows a row; ok is false where there is none. A score that is being typed
// stays when the same athlete is shown again.
func (p *boutPanel) set(r desk.BoutRow, ok bool) {
	typing := ok && r.Athlete == p.row.Athlete && p.score.Text() != p.row.Score
	p.row = r
	p.words(r, ok)
	p.load.SetMass(p.sheet.loadOf(r), r.Unit)
	p.load.SetFault("")
	for _, o := range []fyne.CanvasObject{p.load, p.chance} {
		show(o, r.What != "")
	}
	p.sayLogged(r)
	p.score.Able(ok)
	if !typing {
		p.doubt = ""
		p.score.SetText(r.Score)
		p.hint()
	}
	p.all.Refresh()
}

func (p *boutPanel) words(r desk.BoutRow, ok bool) {
	d := p.sheet.workout.floor.desk()
	load := p.sheet.loadOf(r)
	switch {
	case !ok:
		p.name.SetText("Nobody")
		p.what.SetText("")
		p.why.SetText("Check athletes in at the set-up.")
	case r.What == "":
		p.name.SetText(r.Name)
		p.what.SetText("No load to log")
		p.why.SetText("None of the movements has a load. The score can be kept.")
	default:
		p.name.SetText(r.Name)
		p.what.SetText(desk.BoutWork(r))
		p.why.SetText(r.Why)
		p.chance.SetText(d.BoutChance(r, load))
		p.strange.SetText(d.StrangeLoad(r, load))
		return
	}
	p.strange.SetText("")
}

// sayLogged marks what was logged; until then no answer looks chosen, and without a
// load there is none to give.
func (p *boutPanel) sayLogged(r desk.BoutRow) {
	for o, b := range p.says {
		if o == r.Logged.Outcome {
			b.Primary()
		} else {
			b.Quiet()
		}
		b.Able(r.What != "")
	}
}

// hint says how a score is written.
func (p *boutPanel) hint() {
	p.score.SetFault("")
	if p.row.Athlete == "" {
		p.tell("", look.Muted)
		return
	}
	p.tell("Write it "+desk.ScoreHint(p.sheet.workoutOf(p.row))+". Enter keeps it and goes on.", look.Muted)
}

// tell says something under the score, which may take more lines than before.
func (p *boutPanel) tell(sentence string, tone look.Meaning) {
	p.told.Tone(tone).SetText(sentence)
	p.all.Refresh()
}

// typeLoad begins another load with its first digit.
func (p *boutPanel) typeLoad(first rune) {
	p.load.SetText(string(first))
	p.load.Focus()
	p.load.Keyboard().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEnd})
}

func (p *boutPanel) takeLoad(load mass.Mass, _ mass.Unit) {
	if err := p.sheet.take(p.row, load); err != nil {
		p.load.SetFault(kit.Sentence(err))
		p.sheet.workout.floor.host.Fail(err)
	}
}

// loadKey leads back to the list: Enter with what was typed, Escape without it, and
// the arrows to the row above or below.
func (p *boutPanel) loadKey(key *fyne.KeyEvent) bool {
	_, _, err := p.load.Mass()
	switch key.Name {
	case fyne.KeyEscape:
		p.load.SetMass(p.sheet.loadOf(p.row), p.row.Unit)
		p.load.SetFault("")
		p.sheet.list.Focus()
	case fyne.KeyReturn, fyne.KeyEnter:
		if err != nil {
			return false // the field says what is wrong
		}
		p.sheet.list.Focus()
	case fyne.KeyUp:
		p.sheet.move(-1)
	case fyne.KeyDown:
		p.sheet.move(1)
	default:
		return false
	}
	return true
}

// scoreKey is [boutPanel.loadKey] for the score; the arrows go from score to score.
func (p *boutPanel) scoreKey(key *fyne.KeyEvent) bool {
	switch key.Name {
	case fyne.KeyEscape:
		p.score.SetText(p.row.Score)
		p.hint()
		p.sheet.list.Focus()
	case fyne.KeyUp, fyne.KeyDown:
		step := map[fyne.KeyName]int{fyne.KeyUp: -1, fyne.KeyDown: 1}[key.Name]
		if p.keepScore(p.score.Text()) {
			p.sheet.nextAthlete(step)
		}
	default:
		return false
	}
	return true
}

// enterScore keeps a score and goes on. One that is hard to believe is asked about
// once: Enter again keeps it.
func (p *boutPanel) enterScore(text string) {
	f := p.sheet.workout.floor
	if doubt := f.desk().DoubtScore(f.id, p.row.Athlete, text); doubt != "" && p.doubt != text && text != p.row.Score {
		p.doubt = text
		p.tell(doubt+" Enter again keeps "+text+".", look.Warn)
		return
	}
	if p.keepScore(text) {
		p.sheet.nextAthlete(1)
	}
}

// leaveScore keeps what stands in the field when the keyboard goes elsewhere.
func (p *boutPanel) leaveScore() { p.keepScore(p.score.Text()) }

// keepScore keeps a score that is another; false for one that cannot be kept, which
// is said.
func (p *boutPanel) keepScore(text string) bool {
	if strings.TrimSpace(text) == p.row.Score {
		return true
	}
	f, name, before := p.sheet.workout.floor, p.row.Name, p.row.Score
	doubt := f.desk().DoubtScore(f.id, p.row.Athlete, text)
	p.row.Score = text // what follows is not typed any more
	if err := f.desk().SetScore(f.id, p.row.Athlete, text); err != nil {
		p.row.Score = before
		p.score.SetFault(kit.Sentence(err))
		p.tell(kit.Sentence(err), look.Bad)
		f.host.Fail(err)
		return false
	}
	if p.doubt != "" {
		doubt = ""
	}
	f.host.Say(strings.TrimSpace(scoreWords(name, text)+" "+doubt), true)
	return true
}

func scoreWords(name, text string) string {
	if text = strings.TrimSpace(text); text == "" {
		return name + ": no score."
	}
	return name + ": score " + text + "."
}
