package cyclegrid

import (
	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// breachList lists what breaks a rule, and tells of the chosen one how to mend it.
type breachList struct {
	room   *Cycle
	list   *kit.DataList
	why    *kit.Prose
	mend   *kit.Prose
	source *kit.Prose
	detail *fyne.Container
	all    fyne.CanvasObject
}

func newBreachList(r *Cycle) *breachList {
	b := &breachList{room: r, why: kit.NewProse("", 200), mend: kit.NewProse("", 200).Tone(look.Accent), source: kit.NewProse("", 200).Small().Tone(look.Muted)}
	b.list = kit.NewDataList([]kit.ListColumn{{Title: "Where", Width: 150, Grow: 1}, {Title: "What", Width: 150, Grow: 1}},
		kit.Rows{Len: func() int { return len(r.view.Breaches) }, Cell: b.cell})
	b.list.Empty = "No rule is broken."
	b.list.OnCursor = b.go_
	b.list.OnOpen = func(row int) { b.go_(row); r.side.focus() }
	b.detail = kit.Column(look.Gap2, b.why, b.mend, b.source)
	b.all = kit.Column(look.Gap3, kit.Fill(kit.NewPanel(b.list)), kit.NewCard("", b.detail))
	return b
}

func (b *breachList) cell(row, column int) kit.Cell {
	x := b.room.view.Breaches[row]
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
	if row < 0 || row >= len(b.room.view.Breaches) {
		b.why.SetText("Every rule about spacing, rep counts and percentages is kept.")
		b.mend.SetText("")
		b.source.SetText("")
		return
	}
	x := b.room.view.Breaches[row]
	b.why.SetText(x.Why)
	b.mend.SetText(x.Mend)
	b.source.SetText("Rule: " + x.Rule.Source() + ".")
	b.detail.Refresh()
}

// go_ leads the grid to the day of a breach.
func (b *breachList) go_(row int) {
	b.tell(row)
	if row < 0 || row >= len(b.room.view.Breaches) {
		return
	}
	x := b.room.view.Breaches[row]
	if x.Track != b.room.track {
		b.room.track = x.Track
		b.room.drawGrid()
	}
	b.room.grid.Select(kit.Spot{Week: x.Week - 1, Day: x.Column})
	b.room.side.editor.refresh()
}
