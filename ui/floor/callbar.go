package floor

import (
	"fmt"
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// callBar asks for the chosen lifter's call and holds the clock's buttons.
type callBar struct {
	live    *live
	name    *kit.Text
	ask     *kit.Text
	climbs  []*kit.Button // of a climb from a number
	finds   []*kit.Button // of a climb that finds one
	missed  *kit.Button
	run     *kit.Button
	place   fyne.CanvasObject // of run, as wide whatever it says
	next    *kit.Button
	back    *kit.Button
	results *kit.Button
	all     fyne.CanvasObject
}

func newCallBar(l *live) *callBar {
	b := &callBar{live: l, name: kit.NewHeading("").Shrinks(120), ask: kit.NewCaption("").Shrinks(120)}
	call := func(label, key string, kind gym.CallKind) *kit.Button {
		return kit.NewButton(label, func() { l.call(kind) }).Key(key)
	}
	b.climbs = []*kit.Button{call("Climbs", "C", gym.ClimbCall).Primary(), call("Settles", "S", gym.SettleCall)}
	b.finds = []*kit.Button{call("Easy", "E", gym.EasyCall), call("Fair", "F", gym.FairCall).Primary(), call("Hard", "H", gym.HardCall)}
	b.missed = call("Missed", "M", gym.MissedCall)
	b.run, b.next = kit.NewButton("Hold", l.toggle).Key("Space"), kit.NewButton("Next rung", l.next).Key("N")
	b.back = kit.NewButton("Back", l.before).Key("B").Plain().Tip("Go back a rung (B)")
	b.results = kit.NewButton("Results", func() { l.floor.turn(stepResults) }).Key("R")
	objects := []fyne.CanvasObject{kit.Fill(kit.Column(0, kit.Fill(), b.name, b.ask, kit.Fill()))}
	for _, c := range append(append(b.climbs, b.finds...), b.missed) {
		objects = append(objects, c)
	}
	b.place = kit.Wide(runWidth, b.run)
	objects = append(objects, kit.Wide(look.Gap6, kit.Column(0)), b.back, b.next, b.place, b.results)
	b.all = kit.NewPanel(kit.Pad(look.Gap2, kit.Row(look.Gap2, objects...)))
	return b
}

// runWidth has room for the longest of what the clock's button says.
const runWidth = 136

func (b *callBar) set(m clock.Moment) {
	l := b.live
	row, ok := l.floor.board.Lifter(l.chosen)
	queue := l.floor.board.Queue(m)
	owed, owes := l.floor.board.Owes(row, m)
	b.name.SetText(row.Name)
	if !ok {
		b.name.SetText("Nobody is checked in")
	}
	whole, short := b.question(row, owed, owes, m)
	b.ask.Or(short)
	b.ask.Say(whole, toneIf(owes && owed.Late, look.Warn, look.Muted))
	finding := ok && row.Path.Finding
	for _, c := range b.climbs {
		show(c, !finding)
		c.Able(owes)
	}
	for _, c := range b.finds {
		show(c, finding)
		c.Able(owes)
	}
	b.missed.Able(owes)
	l.clock.count(len(queue))
	b.clock(m)
}

func openCalls(n int) string {
	switch n {
	case 0:
		return "no call is open"
	case 1:
		return "1 call is open"
	}
	return fmt.Sprintf("%d calls are open", n)
}

func (b *callBar) clock(m clock.Moment) {
	switch {
	case !m.Started:
		b.run.SetLabel("Start")
	case m.Running:
		b.run.SetLabel("Hold")
	default:
		b.run.SetLabel("Go on")
	}
	show(b.place, !m.Finished)
	show(b.next, !m.Finished)
	b.next.Able(m.Started)
	show(b.results, m.Finished)
	b.back.Able(m.Started)
}

// question says what the call is about, and for where that has no room the same
// without the plates, which stand on the station's card too.
func (b *callBar) question(row desk.BoardLifter, owed desk.Owed, owes bool, m clock.Moment) (whole, short string) {
	mind := ""
	if warning := b.live.warnings[row.Athlete]; warning != "" {
		mind = " Mind: " + warning
	}
	switch {
	case row.Fault != nil:
		return kit.Sentence(row.Fault), ""
	case !owes && mind != "":
		return strings.TrimSpace(mind), ""
	case !owes:
		return b.standing(row, m), ""
	}
	const asks = ": how did it move?"
	set := row.Sets[owed.Asked]
	about := fmt.Sprintf("Rung %d, %s %s", owed.Asked+1, times(set.Reps), set.Likely().In(row.Unit))
	if owed.Late {
		about = "Late call. " + about
	}
	also := brings(row, owed.Rung) + mind
	if short = about + asks; also != "" {
		short = about + "." + also
	}
	return about + aSide(row, set) + asks + also, short
}

// aSide writes the whole stack, for which a row has no room.
func aSide(row desk.BoardLifter, set desk.BoardSet) string {
	if row.Bar == "" {
		return ""
	}
	words := ", " + stackWords(set, row) + " a side"
	if set.Blocks {
		words += " " + blocksWords
	}
	return words
}

// blocksWords say what "on blocks" in a row means.
const blocksWords = "(raise the bar on blocks: no plate of full size is on it)"

// brings says what each call of a finding climb brings.
func brings(row desk.BoardLifter, after int) string {
	if !row.Path.Finding || after+1 >= len(row.Sets) {
		return ""
	}
	var words []string
	for _, o := range row.Sets[after+1].Options {
		words = append(words, string(o.Call)+" "+o.Load.Digits(row.Unit))
	}
	if len(words) == 0 {
		return ""
	}
	return " Next: " + strings.Join(words, ", ") + "."
}

func (b *callBar) standing(row desk.BoardLifter, m clock.Moment) string {
	switch {
	case row.Lift == "":
		return "No main lift today."
	case !m.Started:
		return repMax(row.Lift, row.Reps) + ". Space starts the clock."
	case row.Done(m.Rung):
		return "Done for today."
	}
	return repMax(row.Lift, row.Reps) + ". No call at this rung."
}

func show(o fyne.CanvasObject, yes bool) {
	if o.Visible() == yes {
		return
	}
	if yes {
		o.Show()
	} else {
		o.Hide()
	}
}

func toneIf(yes bool, then, otherwise look.Meaning) look.Meaning {
	if yes {
		return then
	}
	return otherwise
}
