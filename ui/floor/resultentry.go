package floor

import (
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// entry is the card in which the chosen lifter's result stands.
func (r *results) entry() fyne.CanvasObject {
	r.name, r.path = kit.NewHeading("").Shrinks(120), kit.NewProse("", 200).Tone(look.Muted)
	r.verdict = kit.NewProse("", 200)
	r.field = kit.NewField("What was lifted, as in 142.5").OnChange(func(string) { r.weigh() }).
		OnEnter(func(string) { r.confirm() }).OnKey(r.leave)
	r.log = kit.NewButton("Log it", r.confirm).Primary().Key("Enter")
	r.nothing = kit.NewButton("Nothing counted", r.miss).Key("M")
	buttons := kit.Row(look.Gap2, r.log, r.nothing)
	r.side = kit.NewCard("", kit.Column(look.Gap2, r.name, kit.Tall(pathHeight, r.path), r.field, kit.Tall(56, r.verdict), buttons))
	return r.side
}

// pathHeight has room for two lines, so that the field stays where it is from one
// lifter to the next.
const pathHeight = 42

// detail fills the card with the chosen lifter.
func (r *results) detail() {
	p, ok := r.chosen()
	if !ok {
		r.name.SetText("No results")
		r.path.SetText("Check lifters in at the set-up first.")
		r.able(false)
		return
	}
	l, _ := r.floor.board.Lifter(p.Lifter.Athlete)
	r.name.SetText(l.Name)
	r.path.SetText(pathWords(l))
	r.able(true)
	text := ""
	if p.Text != "" {
		_, text, _ = strings.Cut(p.Text, "x")
	}
	r.field.SetText(text)
	r.weigh()
}

func (r *results) able(yes bool) {
	r.log.Able(yes)
	r.nothing.Able(yes)
	r.field.Able(yes)
}

// pathWords tells a lifter's calls: "From 140 kg: climbs at 126, missed at 133."
func pathWords(l desk.BoardLifter) string {
	if l.Fault != nil {
		return kit.Sentence(l.Fault)
	}
	text := repMax(l.Lift, l.Reps)
	if l.Base > 0 {
		text += ", from " + l.Base.In(l.Unit)
	}
	for i, c := range l.Calls {
		mark := ": "
		if i > 0 {
			mark = ", "
		}
		if c.Rung < len(l.Sets) {
			text += mark + callWords[c.Kind] + " at " + l.Sets[c.Rung].Likely().Digits(l.Unit)
		}
	}
	return text + "."
}

// weigh says what the result in the field would mean.
func (r *results) weigh() {
	p, ok := r.chosen()
	r.field.SetFault("")
	if !ok || strings.TrimSpace(r.field.Text()) == "" {
		r.verdict.SetText("Nothing counts yet. Type what was lifted, or press M in the list.")
		r.verdict.Tone(look.Muted)
		return
	}
	v, err := r.floor.desk().Weigh(r.floor.id, p.Lifter.Athlete, r.field.Text())
	if err != nil {
		r.verdict.SetText("")
		r.field.SetFault(kit.Sentence(err))
		return
	}
	if v.Doubt != "" {
		r.verdict.SetText(v.Doubt)
		r.verdict.Tone(look.Warn)
		return
	}
	r.verdict.SetText(v.Why)
	r.verdict.Tone(toneIf(v.Raises, look.Good, look.Text))
}
