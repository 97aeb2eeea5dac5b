package floor

import (
	"strings"
	"unicode"

	"fyne.io/fyne/v2"

	"windlass/internal/climb"
	"windlass/internal/clock"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// results is the sheet after the climb: a row a lifter, filled in from the path,
// confirmed by Enter.
type results struct {
	floor  *Floor
	rows   []desk.Proposal
	list   *kit.DataList
	second *kit.DataList
	loads  []desk.SecondLoad

	name    *kit.Text
	path    *kit.Prose
	field   *kit.Field
	verdict *kit.Prose
	log     *kit.Button
	nothing *kit.Button
	side    *kit.Card
	all     fyne.CanvasObject
}

func newResults(f *Floor) *results {
	r := &results{floor: f}
	r.list = kit.NewDataList([]kit.ListColumn{
		{Title: "Lifter", Width: 120, Grow: 2},
		{Title: "Lift", Width: 176, Grow: 1},
		{Title: "From the climb", Width: 112},
		{Title: "Logged", Width: 134},
		{Title: "What it means", Width: 198, Grow: 1},
	}, kit.Rows{Len: func() int { return len(r.rows) }, Cell: r.cell})
	r.list.Empty = "Nobody is checked in for a main lift."
	r.list.OnCursor = func(int) { r.detail() }
	r.list.OnOpen = func(int) { r.confirm() }
	r.list.OnRune = r.typed
	r.second = kit.NewDataList([]kit.ListColumn{
		{Title: "Athlete", Width: 80, Grow: 1}, {Title: "Lift", Width: 140}, {Title: "Sets", Width: 66}, {Title: "Load", Width: 78, End: true},
	}, kit.Rows{Len: func() int { return len(r.loads) }, Cell: r.secondCell})
	r.second.Empty = "No track lifts by percentages today."
	onwards := kit.Row(look.Gap2, kit.Fill(), kit.NewButton("Conditioning", f.toConditioning).Key("K"), kit.NewButton("Finish", f.toSummary).Key("Q"))
	right := kit.Column(look.Gap3, r.entry(), kit.Fill(kit.NewCard("By percentages, everybody's load", kit.NewPanel(r.second))), onwards)
	r.all = kit.Row(look.Gap3, kit.Fill(kit.NewPanel(r.list)), kit.Full(kit.Wide(404, right)))
	return r
}

func (r *results) content() fyne.CanvasObject { return r.all }

func (r *results) tick(clock.Moment) {}

func (r *results) show() {
	r.list.Focus()
	r.toOpen(0)
}

func (r *results) refresh() {
	r.rows = r.floor.desk().Proposals(r.floor.class)
	r.loads = r.floor.desk().SecondLoads(r.floor.class)
	r.list.Refresh()
	r.second.Refresh()
	r.detail()
}

func (r *results) cell(row, column int) kit.Cell {
	p := r.rows[row]
	l, _ := r.floor.board.Lifter(p.Lifter.Athlete)
	switch column {
	case 0:
		return kit.Cell{Text: l.Name, Bold: true}
	case 1:
		return kit.Cell{Text: repMax(l.Lift, l.Reps), Tone: look.Muted}
	case 2:
		return kit.Cell{Text: outcomeWords(p, l), Tone: look.Muted}
	case 3:
		return loggedCell(p)
	}
	return verdictCell(p)
}

func (r *results) secondCell(row, column int) kit.Cell {
	s := r.loads[row]
	switch column {
	case 0:
		return kit.Cell{Text: s.Name, Or: s.Short}
	case 1:
		return kit.Cell{Text: s.Lift, Tone: look.Muted}
	case 2:
		return kit.Cell{Text: s.Work, Tone: look.Muted}
	}
	if s.Load == "" {
		return kit.Cell{Text: "none", Tone: look.Warn, Shape: kit.Warning, Mark: look.Warn}
	}
	return kit.Cell{Text: s.Load, Bold: true}
}

// chosen is the row with the cursor.
func (r *results) chosen() (desk.Proposal, bool) {
	row := r.list.Cursor()
	if row < 0 || row >= len(r.rows) {
		return desk.Proposal{}, false
	}
	return r.rows[row], true
}

// confirm logs what the field says and goes on to the next open row.
func (r *results) confirm() {
	p, ok := r.chosen()
	if !ok {
		return
	}
	text := strings.TrimSpace(r.field.Text())
	if text == "" {
		r.field.SetFault("Nothing stands here. Type what was lifted, or press M in the list.")
		return
	}
	if v, err := r.floor.desk().Weigh(r.floor.id, p.Lifter.Athlete, text); err == nil && v.Doubt != "" {
		r.ask(p.Lifter.Athlete, text, v)
		return
	}
	r.keep(p.Lifter.Athlete, text)
}

// ask lets the coach look again at what is hardly what was lifted.
func (r *results) ask(athlete gym.ID, text string, v climb.Verdict) {
	a, _ := r.floor.desk().Athlete(athlete)
	q := kit.Doubted("Log this for "+a.Name+"?", v.Doubt, r.field.Focus, func() { r.keep(athlete, text) })
	q.Cancel = "Leave it open"
	kit.Ask(r.floor.host.Window().Canvas(), q)
}

// keep logs a lifter's result and goes on to the next.
func (r *results) keep(athlete gym.ID, text string) {
	v, err := r.floor.desk().LogResult(r.floor.id, athlete, text)
	if err != nil {
		r.field.SetFault(kit.Sentence(err))
		r.field.Focus()
		return
	}
	a, _ := r.floor.desk().Athlete(athlete)
	r.floor.host.Say(a.Name+": "+v.Why, true)
	r.on()
}

func (r *results) miss() {
	p, ok := r.chosen()
	if !ok {
		return
	}
	a, _ := r.floor.desk().Athlete(p.Lifter.Athlete)
	if r.floor.did(r.floor.desk().LogNothing(r.floor.id, p.Lifter.Athlete), a.Name+": nothing counted today. The record stays.") {
		r.on()
	}
}

// on goes to the next row that is open.
func (r *results) on() {
	r.toOpen(r.list.Cursor() + 1)
	r.list.Focus()
}

func (r *results) toOpen(from int) {
	for i := range r.rows {
		row := (from + i) % len(r.rows)
		if p := r.rows[row]; p.Logged.ID == "" && !p.Lifter.Missed {
			r.list.Select(row)
			break
		}
	}
	r.detail()
}

// typed begins another load with its first digit.
func (r *results) typed(c rune) bool {
	if !unicode.IsDigit(c) {
		return false
	}
	r.field.SetText(string(c))
	r.field.Focus()
	r.field.Keyboard().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEnd})
	r.weigh()
	return true
}

// leave gives the keyboard back to the list.
func (r *results) leave(key *fyne.KeyEvent) bool {
	by := map[fyne.KeyName]int{fyne.KeyDown: 1, fyne.KeyUp: -1}[key.Name]
	switch {
	case key.Name == fyne.KeyEscape:
		r.detail()
		r.list.Focus()
		return true
	case by != 0:
		r.list.Select(r.list.Cursor() + by)
		r.detail()
		r.list.Focus()
		return true
	}
	return false
}

func (r *results) keys() []room.Key {
	return []room.Key{
		{Press: "Enter", Does: "Log the result that stands there", Do: r.confirm},
		{Press: "M", Does: "Log that nothing counted", Do: r.miss},
		{Press: "T", Does: "Type another load", Do: r.field.Focus},
		{Press: "K", Does: "Go on to the conditioning", Do: r.floor.toConditioning},
		{Press: "Q", Does: "Finish the class", Do: r.floor.toSummary},
	}
}

// toConditioning turns the class to its conditioning.
func (f *Floor) toConditioning() {
	if stage := f.class.Stage; stage == gym.SetUp || stage == gym.Climbing {
		f.host.Fail(f.desk().StartConditioning(f.id))
		return
	}
	f.turn(stepConditioning)
}

// toSummary shows what became of the class, before it is finished.
func (f *Floor) toSummary() { f.turn(stepSummary) }
