package cyclegrid

import (
	"fmt"
	"slices"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// mainPart edits the main lift: to a rep max by a climb, or sets at percentages.
type mainPart struct {
	editor *editor
	lift   *kit.Choice
	reps   *kit.Segmented
	counts []int
	climb  *kit.Choice
	scheme *input
	drop   *kit.Button
	more   *fyne.Container
	all    fyne.CanvasObject
}

func newMainPart(e *editor) *mainPart {
	m := &mainPart{editor: e}
	m.lift = kit.NewChoice("", nil, m.takeLift).Hint("Choose the day's main lift").Least(150)
	m.lift.Called("Main lift")
	m.reps = kit.NewSegmented([]string{"–"}, 0, m.takeReps)
	m.climb = kit.NewChoice("Climb", nil, m.takeClimb).Hint("The class's usual climb").Least(150)
	m.scheme = e.newInput("Sets × reps at per cent of the 1RM", m.takeScheme).hint("3 x 3 at 75, 4 x 2 at 80")
	m.drop = dropButton("Take the main lift out", m.remove)
	m.more = kit.Column(look.Gap2, kit.Row(0, m.reps, kit.Fill()), m.climb, m.scheme.field)
	m.all = kit.Column(look.Gap2, kit.NewStrong("Main lift"), kit.Row(look.Gap1, kit.Fill(m.lift), m.drop), m.more)
	return m
}

func dropButton(tip string, do func()) *kit.Button {
	return kit.NewButton("", do).Mark(kit.Cross).Plain().Tip(tip)
}

func (m *mainPart) refresh() {
	d, main := m.editor.room.desk(), m.editor.plan.Main
	m.lift.SetOptions(liftOptions(d))
	m.lift.Set(string(main.Lift))
	m.drop.Hidden = main.Empty()
	m.more.Hidden = main.Empty()
	m.number(main)
	var climbs []kit.Option
	for _, c := range d.Climbs() {
		climbs = append(climbs, kit.Option{Key: c.Name, Text: c.Name})
	}
	m.climb.SetOptions(climbs)
	m.climb.Set(main.Climb)
	byPercent := len(main.Scheme) > 0
	m.climb.Hidden, m.scheme.field.Hidden = byPercent, !byPercent
	m.scheme.show(desk.SchemeText(main.Scheme))
}

// number offers the gym's rep counts, the day's own if it is another, and
// percentages.
func (m *mainPart) number(main gym.MainLift) {
	m.counts = slices.Clone(m.editor.room.desk().Settings().DayReps)
	if main.Reps > 0 && len(main.Scheme) == 0 && !slices.Contains(m.counts, main.Reps) {
		m.counts = append([]int{main.Reps}, m.counts...)
	}
	labels := make([]string, 0, len(m.counts)+1)
	for _, n := range m.counts {
		labels = append(labels, fmt.Sprintf("%dRM", n))
	}
	at := slices.Index(m.counts, main.Reps)
	if len(main.Scheme) > 0 {
		at = len(m.counts)
	}
	m.reps.SetLabels(append(labels, "Percentages"), at)
}

// liftOptions are the lifts with rep maxes.
func liftOptions(d *desk.Desk) []kit.Option {
	var options []kit.Option
	for _, l := range d.Book().Lifts {
		if !l.Hidden && l.Measure == gym.ByLoad {
			options = append(options, kit.Option{Key: string(l.Key), Text: l.Name, Note: string(l.Region)})
		}
	}
	return options
}

func (m *mainPart) takeLift(o kit.Option) {
	p := m.editor.draft()
	p.Main = m.editor.room.desk().WithLift(p.Main, gym.LiftKey(o.Key))
	m.editor.keep(p, o.Text+" is the day's main lift.")
}

func (m *mainPart) takeReps(i int) {
	p := m.editor.draft()
	if i < len(m.counts) {
		p.Main.Reps, p.Main.Scheme = m.counts[i], nil
		m.editor.keep(p, fmt.Sprintf("The day climbs to a %dRM.", m.counts[i]))
		return
	}
	p.Main = desk.ByPercent(p.Main)
	m.editor.keep(p, "The day works by percentages of the 1RM.")
}

func (m *mainPart) takeClimb(o kit.Option) {
	p := m.editor.draft()
	p.Main.Climb = o.Key
	m.editor.keep(p, "The day climbs by "+o.Text+".")
}

func (m *mainPart) takeScheme(text string) error {
	scheme, err := desk.ParseScheme(text)
	if err != nil {
		return err
	}
	p := m.editor.draft()
	p.Main.Scheme = scheme
	m.editor.keep(p, "The day's sets are changed.")
	return nil
}

func (m *mainPart) remove() {
	p := m.editor.draft()
	p.Main = gym.MainLift{}
	m.editor.keep(p, "The day has no main lift now.")
}

// secondPart edits the second lift and tells each athlete's load.
type secondPart struct {
	editor                     *editor
	lift                       *kit.Choice
	sets, reps, percent, ofRep *input
	drop                       *kit.Button
	known                      *kit.Text
	loads                      []desk.SecondLoad
	more                       *fyne.Container
	all                        fyne.CanvasObject
}

func newSecondPart(e *editor) *secondPart {
	s := &secondPart{editor: e, known: kit.NewCaption("").Shrinks(100)}
	s.lift = kit.NewChoice("", nil, s.takeLift).Hint("Choose a second lift").Least(150)
	s.lift.Called("Second lift")
	s.sets = e.newInput("Sets", s.count(20, func(x *gym.SecondLift, n int) { x.Sets = n })).least(60)
	s.reps = e.newInput("Reps", s.count(20, func(x *gym.SecondLift, n int) { x.Reps = n })).least(60)
	s.percent = e.newInput("Per cent", s.takePercent).least(60)
	s.ofRep = e.newInput("of the …RM", s.count(gym.MaxReps, func(x *gym.SecondLift, n int) { x.OfReps = n })).least(60)
	s.drop = dropButton("Take the second lift out", s.remove)
	loads := kit.NewButton("Loads", s.showLoads).Tip("What each athlete would do, from the records of today.")
	s.more = kit.Column(0, kit.Equal(look.Gap2, s.sets.field, s.reps.field, s.percent.field, s.ofRep.field),
		kit.Row(look.Gap2, kit.Fill(kit.Column(0, kit.Fill(), s.known, kit.Fill())), loads))
	s.all = kit.Column(look.Gap2, kit.NewStrong("Second lift"), kit.Row(look.Gap1, kit.Fill(s.lift), s.drop), s.more)
	return s
}

func (s *secondPart) refresh() {
	d, x := s.editor.room.desk(), s.editor.plan.Second
	s.lift.SetOptions(liftOptions(d))
	s.lift.Set(string(x.Lift))
	s.drop.Hidden, s.more.Hidden = x.Empty(), x.Empty()
	if x.Empty() {
		return
	}
	s.sets.show(fmt.Sprint(x.Sets))
	s.reps.show(fmt.Sprint(x.Reps))
	s.percent.show(fmt.Sprintf("%g", x.Percent))
	s.ofRep.show(fmt.Sprint(x.OfReps))
	s.loads = d.SecondLoadsOn(s.editor.at.Track, s.editor.at.Date(s.editor.room.view.Cycle), x)
	text := desk.SecondSummary(s.loads)
	if of, ok := d.Lift(x.OfLift); ok {
		text = "Counted from " + of.Name + ". " + text
	}
	s.known.SetText(text)
}

func (s *secondPart) takeLift(o kit.Option) {
	p := s.editor.draft()
	p.Second = s.editor.room.desk().WithSecond(p.Second, gym.LiftKey(o.Key))
	s.editor.keep(p, o.Text+" is the second lift.")
}

// count returns what takes a whole number into the second lift.
func (s *secondPart) count(most int, set func(*gym.SecondLift, int)) func(string) error {
	return func(text string) error {
		n, err := desk.ParseCount(text, most)
		if err != nil {
			return err
		}
		p := s.editor.draft()
		set(&p.Second, n)
		s.editor.keep(p, "The second lift is changed.")
		return nil
	}
}

func (s *secondPart) takePercent(text string) error {
	percent, ok := desk.ParsePercent(text)
	if !ok {
		return fmt.Errorf("read per cent %q: it is not over 0 and up to 110; write 75", text)
	}
	p := s.editor.draft()
	p.Second.Percent = percent
	s.editor.keep(p, "The second lift is changed.")
	return nil
}

func (s *secondPart) remove() {
	p := s.editor.draft()
	p.Second = gym.SecondLift{}
	s.editor.keep(p, "The day has no second lift now.")
}

// showLoads lists what each athlete would do.
func (s *secondPart) showLoads() {
	rows := s.loads
	list := kit.NewDataList([]kit.ListColumn{
		{Title: "Athlete", Width: 150, Grow: 1}, {Title: "Load", Width: 90, End: true}, {Title: "Counted from", Width: 220, Grow: 2},
	}, kit.Rows{Len: func() int { return len(rows) }, Cell: func(row, column int) kit.Cell {
		switch column {
		case 0:
			return kit.Cell{Text: rows[row].Name}
		case 1:
			return kit.Cell{Text: rows[row].Load, Bold: true}
		}
		return kit.Cell{Text: rows[row].Why, Tone: look.Muted}
	}})
	list.Empty = "Nobody is on this track then."
	title := "Second lift"
	if len(rows) > 0 {
		title = rows[0].Lift + " " + rows[0].Work
	}
	kit.Ask(s.editor.room.host.Window().Canvas(), kit.Question{
		Title: title, Text: "From the records as they stand today. A load is a proposal: a lifter who feels off takes less.",
		Body: kit.Tall(420, kit.NewPanel(list)), Width: 640, Cancel: "Close",
	})
}
