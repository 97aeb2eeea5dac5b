package record

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/internal/repmax"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// lifts is the section of rep maxes: the card as a grid, the chosen lift in
// large, a line to log a result, and what came before.
type lifts struct {
	of      *Record
	athlete gym.Athlete
	card    desk.Card
	chosen  gym.LiftKey
	counts  []int // that the grid has columns for
	whole   fyne.CanvasObject
	grid    *fyne.Container
	list    *kit.DataList
	figures *figures
	entry   *entry
	raise   *raiseRow
	past    *past
}

func newLifts(r *Record) *lifts {
	l := &lifts{of: r, grid: container.NewStack()}
	l.figures, l.entry, l.raise, l.past = newFigures(kit.NewButton("Another lift", l.anyLift).Key("F4")), newEntry(l), newRaiseRow(l), newPast(l)
	l.makeList(r.host.Desk().Settings().DayReps)
	legend := newLegend([]legendMark{
		{kit.Disc, look.Accent, "tested"},
		{kit.Ring, look.Text, "reported"},
		{kit.Diamond, look.Muted, "estimate"},
		{kit.Square, look.Muted, "guide from a related lift"},
	})
	l.whole = kit.Column(look.Gap3, kit.Fill(l.grid), legend, l.figures.content, l.raise.content, l.entry.content, l.past.content)
	return l
}

// makeList makes the grid for the gym's rep counts.
func (l *lifts) makeList(counts []int) {
	l.counts = counts
	columns := []kit.ListColumn{{Title: "Lift", Width: 140, Grow: 1}}
	for _, n := range counts {
		columns = append(columns, kit.ListColumn{Title: fmt.Sprintf("%dRM", n), Width: 116})
	}
	l.list = kit.NewDataList(columns, kit.Rows{Len: func() int { return len(l.card.Lifts) }, Cell: l.cell})
	l.list.Empty = "No lift yet. Put the athlete on a track, or choose another lift (F4), and log a result."
	l.list.OnRune = l.of.typed
	l.list.OnCursor = func(int) { l.choose() }
	l.list.OnOpen = func(int) { l.entry.focus() }
	l.grid.Objects = []fyne.CanvasObject{kit.NewPanel(kit.Fill(l.list))}
}

func (l *lifts) content() fyne.CanvasObject { return l.whole }

// turned forgets the chosen lift of another athlete.
func (l *lifts) turned() {
	l.chosen = ""
	l.entry.clear()
}

func (l *lifts) show(a gym.Athlete) {
	d := l.of.host.Desk()
	l.athlete, l.card = a, d.RecordCard(a.ID)
	if !sameCounts(l.counts, l.card.Counts) {
		l.makeList(l.card.Counts)
	}
	at := 0
	for i, row := range l.card.Lifts {
		if row.Lift.Key == l.chosen {
			at = i
		}
	}
	if lift, ok := d.Lift(l.chosen); ok && !l.listed(l.chosen) {
		l.drawChosen(desk.CardLift{Lift: lift}) // one that was never done
		l.list.Refresh()
		return
	}
	l.list.Select(at)
	l.choose()
}

func (l *lifts) listed(key gym.LiftKey) bool {
	for _, row := range l.card.Lifts {
		if row.Lift.Key == key {
			return true
		}
	}
	return false
}

// choose draws what belongs to the lift under the cursor.
func (l *lifts) choose() {
	at := l.list.Cursor()
	if at < 0 {
		l.drawChosen(desk.CardLift{})
		return
	}
	l.drawChosen(l.card.Lifts[at])
}

func (l *lifts) drawChosen(row desk.CardLift) {
	l.chosen = row.Lift.Key
	l.figures.show(row, l.card.Counts, l.unit())
	l.raise.show(row.Raises)
	l.entry.show(l.athlete, row.Lift)
	l.past.show(l.athlete, row.Lift)
}

// unit is the gym's, in which guides are shown: nobody entered them in any.
func (l *lifts) unit() mass.Unit { return l.of.host.Desk().Settings().Unit }

func sameCounts(a, b []int) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i] != b[i] {
			return false
		}
	}
	return true
}

func (l *lifts) cell(row, column int) kit.Cell {
	lift := l.card.Lifts[row]
	if column == 0 {
		return nameCell(lift)
	}
	c := lift.Cells[column-1]
	switch {
	case !c.Kept && len(lift.Best) > 0 && column == 1:
		return kit.Cell{Text: desk.ResultText(lift.Best[0], lift.Lift.Measure), Shape: kit.Disc, Mark: look.Accent}
	case !c.Kept:
		return kit.Cell{Shape: kit.Dash}
	case c.Known():
		shape, mark := sourceMark(c.Source)
		return kit.Cell{Text: c.Load.In(c.Unit), Shape: shape, Mark: mark, Bold: c.Source != gym.Estimate, Tone: toneOf(c.Source)}
	case lift.Guide != nil && c.Reps == 1:
		return kit.Cell{Text: guideText(lift.Guide, l.unit()), Shape: kit.Square, Tone: look.Muted}
	}
	return kit.Cell{Text: "–", Tone: look.Muted}
}

func nameCell(l desk.CardLift) kit.Cell {
	c := kit.Cell{Text: l.Lift.Name}
	if !l.Wanted {
		c.Tone = look.Muted
	}
	if len(l.Raises) > 0 {
		c.Shape, c.Mark = kit.Warning, look.Warn
	}
	return c
}

func toneOf(s gym.Source) look.Meaning {
	if s == gym.Estimate {
		return look.Muted
	}
	return look.Text
}

// guideText is the range of a guide, in whole units: more would promise too much.
func guideText(g *repmax.Guide, u mass.Unit) string {
	return fmt.Sprintf("%.0f–%.0f %s", g.Low.Ratio(u.One()), g.High.Ratio(u.One()), u)
}

// anyLift asks for a lift that is not on the card.
func (l *lifts) anyLift() {
	d := l.of.host.Desk()
	var options []kit.Option
	for _, lift := range d.Book().Lifts {
		if !lift.Hidden {
			options = append(options, kit.Option{Key: string(lift.Key), Text: lift.Name, Note: string(lift.Pattern)})
		}
	}
	var sheet *kit.Modal
	choice := kit.NewChoice("Lift", options, func(o kit.Option) {
		sheet.Close()
		l.chosen = gym.LiftKey(o.Key)
		l.show(l.athlete)
		l.entry.focus()
	})
	sheet = l.of.ask(kit.Question{
		Title: "Which lift?", Text: "Any lift of the catalogue can have results, also one that the track does not ask for.",
		Body: kit.Tall(280, kit.Column(0, choice)), First: choice.Keyboard(),
	})
}

func (l *lifts) keys() []room.Key {
	return []room.Key{
		{Press: "F3", Does: "Choose among the athlete's lifts", Do: l.list.Focus},
		{Press: "F4", Does: "Choose any lift of the catalogue", Do: l.anyLift},
		{Press: "F9", Does: "Trend or history of the lift", Do: l.past.flip},
		{Press: "F10", Does: "Raise a record to what another proves", Do: l.raise.take},
		{Press: "Del", Does: "Void the chosen result of the history", Do: l.past.void},
	}
}
