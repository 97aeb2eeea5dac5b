package cyclegrid

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/desk"
	"windlass/ui/kit"
)

// side is what stands beside the grid: the chosen day, or what breaks a rule.
type side struct {
	room     *Cycle
	turns    *kit.Segmented
	editor   *editor
	breaches *breachList
	stage    *fyne.Container
}

func newSide(r *Cycle) *side {
	s := &side{room: r}
	s.editor, s.breaches = newEditor(r), newBreachList(func() desk.CycleView { return r.view }, s.lead)
	s.turns = kit.NewSegmented([]string{"The day", "What breaks a rule"}, 0, s.turn)
	s.stage = container.NewStack(s.editor.all)
	return s
}

func (s *side) refresh() {
	label := "No rule is broken"
	if n := len(s.room.view.Breaches); n > 0 {
		label = fmt.Sprintf("Rules broken: %d", n)
	}
	s.turns.SetLabels([]string{"The day", label}, s.turns.Chosen())
	s.editor.refresh()
	s.breaches.refresh()
}

func (s *side) turn(i int) {
	s.turns.Set(i)
	object := s.editor.all
	if i == 1 {
		object = s.breaches.all
		s.breaches.choose(s.breaches.list.Cursor())
	}
	s.stage.Objects = []fyne.CanvasObject{object}
	s.stage.Refresh()
}

// flip changes between the day and the breaches.
func (s *side) flip() {
	s.turn(1 - s.turns.Chosen())
	if s.turns.Chosen() == 1 {
		s.breaches.list.Focus()
		return
	}
	s.room.grid.Focus()
}

// focus goes into the day's parts.
func (s *side) focus() {
	if s.room.ready() {
		s.turn(0)
		s.editor.focus()
	}
}

func (s *side) compose() {
	if s.room.ready() {
		s.turn(0)
		s.editor.turn(1)
		s.editor.workout.compose()
	}
}

// page turns the day's page.
func (s *side) page() {
	s.turn(0)
	s.editor.next()
}

// lead brings the grid to the day of a breach.
func (s *side) lead(x desk.ViewBreach) {
	r := s.room
	if x.Track != r.track {
		r.track = x.Track
		r.drawGrid()
	}
	r.grid.Select(kit.Spot{Week: x.Week - 1, Day: x.Column})
	s.editor.refresh()
}
