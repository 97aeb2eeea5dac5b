package record

import (
	"strings"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// boutLog is the list of an athlete's bouts at a movement; any can be voided.
type boutLog struct {
	of       *Record
	athlete  gym.Athlete
	movement gym.Movement
	rows     []desk.LoggedBout
	list     *kit.DataList
	about    *kit.Prose
	why      *kit.Field
}

// Columns of the log.
const (
	logDay = iota
	logLoad
	logWork
	logOutcome
	logWorkout
	logScore
	logWhere
)

// openLog opens the log of the chosen movement at its latest bout.
func (b *bouts) openLog() { b.showLog(false) }

// voidOne opens the log with the keyboard where a void wants its reason.
func (b *bouts) voidOne() { b.showLog(true) }

func (b *bouts) showLog(void bool) {
	m, ok := b.of.host.Desk().Movement(b.chosen)
	if !ok {
		return
	}
	l := &boutLog{of: b.of, athlete: b.athlete, movement: m, about: kit.NewProse("", 400)}
	l.why = kit.NewField("Why the chosen one is to be void").Hint("such as another athlete's row")
	l.list = kit.NewDataList([]kit.ListColumn{
		{Title: "Day", Width: 118},
		{Title: "Load", Width: 92},
		{Title: "Amount", Width: 84},
		{Title: "Outcome", Width: 100},
		{Title: "Workout", Width: 190, Grow: 1},
		{Title: "Score", Width: 84},
		{Title: "Logged", Width: 136, Grow: 1},
	}, kit.Rows{Len: func() int { return len(l.rows) }, Cell: l.cell})
	l.list.Empty = "No bout yet. They are logged on the floor, or brought in from a file."
	l.list.OnCursor = func(int) { l.tell() }
	l.list.OnOpen = func(int) { l.why.Focus() }
	l.read()
	q := kit.Question{
		Title: m.Name + ", " + b.athlete.Name, Width: logWidth, Cancel: "Close", First: l.list,
		Body: kit.Column(look.Gap2, kit.Tall(logHeight, kit.NewPanel(kit.Fill(l.list))), kit.Tall(aboutLines, kit.Fill(l.about)), l.why),
	}
	if len(l.rows) > 0 {
		q.Actions = []kit.Action{{Label: "Void it", Danger: true, Do: l.void}}
	}
	if void && len(l.rows) > 0 {
		q.First = l.why.Keyboard()
	}
	b.of.ask(q)
}

func (l *boutLog) read() {
	l.rows = l.of.host.Desk().BoutLog(l.athlete.ID, l.movement.Key)
	l.list.Refresh()
	l.tell()
}

func (l *boutLog) chosen() (desk.LoggedBout, bool) {
	if i := l.list.Cursor(); i >= 0 {
		return l.rows[i], true
	}
	return desk.LoggedBout{}, false
}

func (l *boutLog) cell(row, column int) kit.Cell {
	b := l.rows[row]
	c := kit.Cell{}
	if b.Void != nil {
		c.Tone, c.Void = look.Muted, column != logWhere
	}
	switch column {
	case logDay:
		c.Text = b.On.Time().Format("2 Jan 2006")
	case logLoad:
		c.Text, c.Bold = b.Load.In(b.Unit), b.Void == nil
	case logWork:
		c.Text = b.Work
	case logOutcome:
		c.Text = string(b.Outcome)
		c.Shape, c.Mark = outcomeMark(b.Outcome)
	case logWorkout:
		c.Text = b.Workout
	case logScore:
		c.Text = b.Score
	default:
		c.Text = b.Where
		if b.Void != nil {
			c.Text, c.Shape = "void: "+b.Void.Reason, kit.Cross
		}
	}
	return c
}

// tell says all of the chosen bout: the list cuts what is long.
func (l *boutLog) tell() {
	b, ok := l.chosen()
	if !ok {
		l.about.SetText("")
		return
	}
	l.about.SetText(b.String())
}

// void voids the chosen bout and leaves the log open, with the bout struck out.
func (l *boutLog) void() bool {
	b, ok := l.chosen()
	reason := strings.TrimSpace(l.why.Text())
	switch {
	case !ok:
		return true
	case b.Void != nil:
		l.why.SetFault("That bout is void already. Choose another, or close the log.")
		return false
	case reason == "":
		l.why.SetFault("Write a word or two, for whoever reads it later.")
		return false
	}
	if l.of.done(l.of.host.Desk().VoidBout(b.ID, reason), l.movement.Name+" with "+b.Load.In(b.Unit)+" on "+b.On.Short()+" is void.") {
		l.why.SetText("")
		l.read()
		l.list.Focus()
	}
	return false
}
