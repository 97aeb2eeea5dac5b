package record

import (
	"slices"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// decisions is the list of everything that was decided for an athlete, from which
// one step can be taken back.
type decisions struct {
	of      *Record
	athlete gym.Athlete
	rows    []desk.DecisionRow
	list    *kit.DataList
	about   *kit.Prose
}

// Columns of the list of decisions.
const (
	colWhat = iota
	colFor
	colDays
	colWhy
	colState
)

// Sizes of the lists that open over the record, in units.
const (
	logWidth   = 940
	logHeight  = 9 * look.RowHeight
	aboutLines = 46
)

// showDecisions opens the list at the decision that speaks for the chosen
// movement.
func (b *bouts) showDecisions() {
	l := &decisions{of: b.of, athlete: b.athlete, rows: b.of.host.Desk().Decisions(b.athlete.ID), about: kit.NewProse("", 400)}
	l.list = kit.NewDataList([]kit.ListColumn{
		{Title: "Decided", Width: 210, Grow: 1},
		{Title: "For", Width: 180, Grow: 1},
		{Title: "Days", Width: 140},
		{Title: "Why", Width: 150, Grow: 1},
		{Title: "Now", Width: 110},
	}, kit.Rows{Len: func() int { return len(l.rows) }, Cell: l.cell})
	l.list.Empty = "Nothing is decided for this athlete; every suggestion stands."
	l.list.OnCursor = func(int) { l.tell() }
	l.list.Select(l.speaking(b.chosen))
	l.tell()
	q := kit.Question{
		Title: "Decided for " + b.athlete.Name, Width: logWidth, Cancel: "Close", First: l.list,
		Body: kit.Column(look.Gap2, kit.Tall(logHeight, kit.NewPanel(kit.Fill(l.list))), kit.Tall(aboutLines, kit.Fill(l.about))),
	}
	if len(l.rows) > 0 {
		q.Actions = []kit.Action{{Label: "Take it back", Do: l.takeBack}}
	}
	asked := b.of.ask(q)
	l.list.OnKey = func(key *fyne.KeyEvent) bool { // a double click only reads
		answers := key.Name == fyne.KeyReturn || key.Name == fyne.KeyEnter
		if answers {
			asked.TypedKey(key)
		}
		return answers
	}
}

// speaking is the row of the decision in force that is closest to a movement: its
// own before one for all, and what is to come before what is past.
func (l *decisions) speaking(movement gym.MovementKey) int {
	for _, is := range []func(desk.DecisionRow) bool{
		func(r desk.DecisionRow) bool { return r.State == desk.InForce && r.Movement == movement },
		func(r desk.DecisionRow) bool { return r.State == desk.InForce && r.Movement == "" },
		func(r desk.DecisionRow) bool { return r.State == desk.StillToCome },
	} {
		if i := slices.IndexFunc(l.rows, is); i >= 0 {
			return i
		}
	}
	return 0
}

func (l *decisions) cell(row, column int) kit.Cell {
	r := l.rows[row]
	c := kit.Cell{Void: r.State == desk.TakenBack && column != colState}
	if r.State != desk.InForce && r.State != desk.StillToCome {
		c.Tone = look.Muted
	}
	switch column {
	case colWhat:
		c.Text, c.Bold = r.What, r.State == desk.InForce
	case colFor:
		c.Text = r.For
	case colDays:
		c.Text = r.Days()
	case colWhy:
		c.Text = r.Why
	case colState:
		c.Text = string(r.State)
		c.Shape, c.Mark = stateMark(r.State)
	}
	return c
}

func stateMark(s desk.DecisionState) (kit.Shape, look.Meaning) {
	switch s {
	case desk.InForce:
		return kit.Square, look.Accent
	case desk.StillToCome:
		return kit.Ring, look.Accent
	case desk.TakenBack:
		return kit.Cross, look.Muted
	}
	return kit.Dash, look.Muted
}

// tell says of the chosen decision all of it, and what taking it back would do.
func (l *decisions) tell() {
	i := l.list.Cursor()
	if i < 0 {
		l.about.SetText("")
		return
	}
	l.about.SetText(l.rows[i].String())
}

// takeBack takes the chosen step back.
func (l *decisions) takeBack() bool {
	i := l.list.Cursor()
	if i < 0 {
		return true
	}
	r := l.rows[i]
	return l.of.done(l.of.host.Desk().VoidOverride(r.ID), "Taken back for "+l.athlete.Name+": "+r.What+" for "+r.For+".")
}
