package cyclegrid

import (
	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// breachList lists what breaks a rule, and tells of the chosen one how to mend it.
type breachList struct {
	view   func() desk.CycleView
	lead   func(desk.ViewBreach) // to the day of a breach
	list   *kit.DataList
	why    *kit.Prose
	mend   *kit.Prose
	source *kit.Prose
	detail *fyne.Container
	all    fyne.CanvasObject
}

func newBreachList(view func() desk.CycleView, lead func(desk.ViewBreach)) *breachList {
	b := &breachList{view: view, lead: lead, why: kit.NewProse("", 200), mend: kit.NewProse("", 200).Tone(look.Accent), source: kit.NewProse("", 200).Small().Tone(look.Muted)}
	b.list = kit.NewDataList([]kit.ListColumn{{Title: "Where", Width: 210, Grow: 1}, {Title: "What", Width: 130, Grow: 1}},
		kit.Rows{Len: func() int { return len(view().Breaches) }, Cell: b.cell})
	b.list.Empty = "No rule is broken."
	b.list.OnCursor, b.list.OnOpen = b.choose, b.choose
	b.list.OnFocus = func() { b.choose(b.list.Cursor()) } // a press on the chosen one moves no cursor
	b.detail = kit.Column(look.Gap2, b.why, b.mend, b.source)
	b.all = kit.Column(look.Gap3, kit.Fill(kit.NewPanel(b.list)), kit.NewCard("", b.detail))
	return b
}

func (b *breachList) cell(row, column int) kit.Cell {
	x := b.view().Breaches[row]
	if column == 0 {
		return kit.Cell{Text: x.Where, Shape: kit.Warning, Mark: look.Warn}
	}
	return kit.Cell{Text: desk.RuleText(x.Rule), Tone: look.Muted}
}

func (b *breachList) refresh() {
	b.list.Refresh()
	b.tell(b.list.Cursor())
}

// tell says what is wrong at a row and what would mend it.
func (b *breachList) tell(row int) {
	if row < 0 || row >= len(b.view().Breaches) {
		b.why.SetText("Every rule about spacing, rep counts and percentages is kept.")
		b.mend.SetText("")
		b.source.SetText("")
		return
	}
	x := b.view().Breaches[row]
	b.why.SetText(x.Why)
	b.mend.SetText(x.Mend)
	b.source.SetText("Rule: " + x.Rule.Source() + ".")
	b.detail.Refresh()
}

// choose tells of a breach and leads to its day.
func (b *breachList) choose(row int) {
	b.tell(row)
	if row >= 0 && row < len(b.view().Breaches) {
		b.lead(b.view().Breaches[row])
	}
}
