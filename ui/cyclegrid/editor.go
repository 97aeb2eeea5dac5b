package cyclegrid

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/cycle"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// editor shows the five parts of the day under the cursor and changes them. Each
// change is kept at once, as one step.
type editor struct {
	room *Cycle
	at   cycle.At
	plan gym.DayPlan // as it is kept

	heading  *kit.Text
	kind     *kit.Segmented
	title    *input
	warmUp   *lineList
	lift     *mainPart
	second   *secondPart
	workout  *workoutPart
	finisher *lineList
	notes    *input
	turns    *kit.Segmented
	pages    []fyne.CanvasObject
	sheet    *fyne.Container
	parts    fyne.CanvasObject
	told     *kit.Prose // a day that stays as it is, in words
	fixed    fyne.CanvasObject
	stage    *fyne.Container
	all      fyne.CanvasObject
}

var kindsInOrder = []gym.DayKind{gym.MainDay, gym.RecoveryDay, gym.RestDay}

func newEditor(r *Cycle) *editor {
	e := &editor{room: r, heading: kit.NewHeading("").Shrinks(120), told: kit.NewProse("", 200)}
	e.kind = kit.NewSegmented([]string{"Main day", "Recovery", "Rest"}, 0, e.turnKind)
	e.title = e.newInput("Title of the day", e.takeTitle)
	e.notes = e.newInput("Notes for the coach", e.takeNotes)
	e.notes.field.Lines(3)
	e.warmUp = newWarmUp(e)
	e.finisher = newFinisher(e)
	e.lift, e.second, e.workout = newMainPart(e), newSecondPart(e), newWorkoutPart(e)
	e.pages = []fyne.CanvasObject{
		page(e.kind, e.title.field, e.lift.all, kit.NewRule(), e.second.all),
		page(e.workout.all),
		page(e.warmUp.all, kit.NewRule(), e.finisher.all, kit.NewRule(), e.notes.field),
	}
	e.turns = kit.NewSegmented([]string{"Lifts", "Conditioning", "Warm-up, finisher"}, 0, e.turn)
	e.sheet = container.NewStack(e.pages[0])
	e.fixed = page(kit.NewChip("Trained: it stays as it is", kit.Tick, look.Good), e.told,
		kit.NewProse("To change it from now on, copy it with Ctrl+C and paste it into a week that is still to come.", 200).Tone(look.Muted))
	e.parts = kit.Column(look.Gap3, e.turns, kit.Fill(e.sheet))
	e.stage = container.NewStack(e.parts)
	e.all = kit.NewCard("", kit.Column(look.Gap3, e.heading, kit.Fill(e.stage)))
	return e
}

// page is some parts of the day, which scroll where there is too little room; the
// margin keeps rings and the scroll bar off them.
func page(rows ...fyne.CanvasObject) fyne.CanvasObject {
	return kit.Scroll(kit.Pad(look.Gap1, kit.Row(0, kit.Fill(kit.Column(look.Gap3, rows...)), kit.Wide(look.Gap1, kit.Fill()))))
}

// turn brings a page of the day to the front; it stays there from day to day.
func (e *editor) turn(i int) {
	e.turns.Set(i)
	e.sheet.Objects = []fyne.CanvasObject{e.pages[i]}
	e.sheet.Refresh()
}

// next turns to the next page, and from the last to the first.
func (e *editor) next() { e.turn((e.turns.Chosen() + 1) % len(e.pages)) }

// refresh shows the day under the cursor.
func (e *editor) refresh() {
	if e.room.trackID() == "" {
		return
	}
	at := e.room.at()
	if at != e.at {
		e.workout.forget()
	}
	e.at = at
	c := e.room.view.Cycle
	e.plan = cycle.Copy(c, at)
	e.heading.SetText(desk.DayHeading(c, at))
	s := e.room.grid.Cursor()
	if e.room.view.Tracks[e.room.track].Day(s.Week+1, s.Day).Done {
		e.told.SetText(strings.Join(e.room.desk().DayLines(e.plan), "\n"))
		e.front(e.fixed)
		return
	}
	e.front(e.parts)
	e.fill()
}

func (e *editor) front(object fyne.CanvasObject) {
	if e.stage.Objects[0] != object {
		e.stage.Objects[0] = object
		e.stage.Refresh()
	}
}

func (e *editor) fill() {
	for i, kind := range kindsInOrder {
		if kind == e.plan.Kind {
			e.kind.Set(i)
		}
	}
	e.title.show(e.plan.Title)
	e.notes.show(e.plan.Notes)
	e.warmUp.refresh()
	e.lift.refresh()
	e.second.refresh()
	e.workout.refresh()
	e.finisher.refresh()
	e.sheet.Refresh()
}

// focus gives the first field of the page in front the keyboard.
func (e *editor) focus() {
	switch e.turns.Chosen() {
	case 0:
		e.lift.lift.Focus()
	case 1:
		e.workout.format.Focus()
	default:
		e.warmUp.rows[0].choice.Focus()
	}
}

// draft is the day's plan to be changed; it shares nothing with the cycle.
func (e *editor) draft() gym.DayPlan { return cycle.Copy(e.room.view.Cycle, e.at) }

// keep keeps the day as it was changed.
func (e *editor) keep(plan gym.DayPlan, sentence string) {
	if !e.room.did(e.room.desk().KeepDay(e.room.id, e.at, plan), sentence) {
		e.fill()
	}
}

func (e *editor) turnKind(i int) {
	p := e.draft()
	p.Kind = kindsInOrder[i]
	e.keep(p, "The day's kind is changed.")
}

func (e *editor) takeTitle(text string) error {
	p := e.draft()
	p.Title = strings.TrimSpace(text)
	e.keep(p, "The day has another title.")
	return nil
}

func (e *editor) takeNotes(text string) error {
	p := e.draft()
	p.Notes = strings.TrimSpace(text)
	e.keep(p, "Notes kept.")
	return nil
}

// input is a field that hands its text on when the coach presses Return or goes
// elsewhere. Why it was not taken is said in place, where a narrow field has room
// for a part of it, and whole at the foot of the window.
type input struct {
	field *kit.Field
	shown string
	take  func(text string) error
	fail  func(error) bool
}

func (e *editor) newInput(label string, take func(string) error) *input {
	i := &input{field: kit.NewField(label), take: take, fail: e.room.host.Fail}
	i.field.OnEnter(func(string) { i.commit() })
	i.field.OnLeave(i.commit)
	return i
}

// called names an input without a label and returns it.
func (i *input) called(name string) *input {
	i.field.Called(name)
	return i
}

// hint shows an example and returns the input.
func (i *input) hint(text string) *input {
	i.field.Hint(text)
	return i
}

// least sets the least width and returns the input.
func (i *input) least(width float32) *input {
	i.field.Least(width)
	return i
}

func (i *input) commit() {
	text := i.field.Text()
	if text == i.shown {
		return
	}
	before := i.shown
	i.shown = text // what is taken refreshes the field before it returns
	if err := i.take(text); err != nil {
		i.shown = before
		i.field.SetFault(kit.Sentence(err))
		i.fail(err)
	}
}

// show writes what is kept.
func (i *input) show(text string) {
	i.shown = text
	i.field.SetText(text)
	i.field.SetFault("")
}
