package cyclegrid

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/cycle"
	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// steps of the way to a new cycle, as the coach reads them.
var steps = []string{"1  Name and dates", "2  Tracks", "3  Waves", "4  Review"}

// step is one step of the way: what it shows, what it does when it comes to the
// front, and what keeps the coach from going on.
type step struct {
	all  fyne.CanvasObject
	show func()
	done func() bool
}

// maker leads to a new cycle in four steps: its name and dates, its tracks, their
// waves, and a look at the whole with what breaks a rule.
type maker struct {
	room  *Cycle
	open  bool
	at    int
	draft desk.Draft

	name, goal, start, weeks *kit.Field
	tracks                   []*trackRow
	trackBox, waveBox        *fyne.Container
	trackNote                *kit.Prose
	review                   *review

	steps []step
	where *kit.Segmented
	stage *fyne.Container
	on    *kit.Button
	all   fyne.CanvasObject
}

func newMaker(r *Cycle) *maker {
	m := &maker{room: r, trackBox: kit.Column(look.Gap3), waveBox: kit.Column(look.Gap4), trackNote: kit.NewProse("", 300).Tone(look.Warn)}
	m.review = newReview(m)
	m.steps = []step{
		{m.dates(), m.nameIt, m.datesDone},
		{form("Which tracks run in it, and what does each begin with?", kit.Column(look.Gap3, m.trackBox, m.trackNote)), m.showTracks, m.tracksDone},
		{form("How do the rep counts of the main lifts run over the weeks?", m.waveBox), m.showWaves, func() bool { return true }},
		{m.review.all, m.review.show, m.make},
	}
	m.where = kit.NewSegmented(steps, 0, m.jump)
	m.stage = container.NewStack()
	m.on = kit.NewButton("Go on", m.goOn).Primary().Key("Enter")
	foot := kit.Row(look.Gap2, kit.NewButton("Back", m.back).Key("Esc"), kit.Fill(), m.on)
	head := kit.Row(look.Gap4, kit.NewTitle("Make a cycle"), kit.Fill(), m.where)
	m.all = kit.Pad(look.Gap4, kit.Column(look.Gap4, head, kit.Fill(m.stage), foot))
	return m
}

// form is a step's question with what answers it.
func form(question string, body fyne.CanvasObject) fyne.CanvasObject {
	return kit.Centre(820, kit.NewCard("", kit.Column(look.Gap4, kit.NewHeading(question), kit.Fill(kit.Scroll(kit.Pad(look.Gap1, body))))))
}

func (m *maker) dates() fyne.CanvasObject {
	m.name = kit.NewField("Name").Hint("Spring strength")
	m.goal = kit.NewField("Goal, in a few words").Hint("A record on test day")
	m.start = kit.NewField("First day").OnChange(func(string) { m.noteDates() })
	m.weeks = kit.NewField("Weeks, the test week counted in").OnChange(func(string) { m.noteDates() })
	return form("What is it called, and when does it run?",
		kit.Column(look.Gap2, m.name, m.goal, kit.Equal(look.Gap4, m.start, m.weeks)))
}

// make opens the way to a new cycle.
func (r *Cycle) make() {
	m := r.maker
	m.open = true
	m.name.SetText("")
	m.goal.SetText("")
	m.start.SetText(r.desk().FreeStart().String())
	m.weeks.SetText("12")
	m.tracks = nil
	for _, t := range r.desk().Tracks() {
		m.tracks = append(m.tracks, newTrackRow(m, t))
	}
	r.front()
	m.turn(0)
}

// nameIt gives the name the keyboard. The step may never have been drawn, so the
// field does not know its window yet.
func (m *maker) nameIt() { m.room.host.Window().Canvas().Focus(m.name.Keyboard()) }

// noteDates says under the fields when the cycle begins and ends.
func (m *maker) noteDates() {
	start, err := m.room.desk().ReadStart(m.start.Text())
	m.start.SetNote("")
	m.weeks.SetNote("")
	if err != nil {
		return
	}
	m.start.SetNote(start.Long())
	if n, err := desk.ReadWeeks(m.weeks.Text()); err == nil {
		m.weeks.SetNote("until " + start.Add(7*n-1).Long())
	}
}

func (m *maker) datesDone() bool {
	ok := true
	if strings.TrimSpace(m.name.Text()) == "" {
		m.name.SetFault("Write a name for it.")
		ok = false
	}
	if _, err := m.room.desk().ReadStart(m.start.Text()); err != nil {
		m.start.SetFault(kit.Sentence(err))
		ok = false
	}
	if _, err := desk.ReadWeeks(m.weeks.Text()); err != nil {
		m.weeks.SetFault(kit.Sentence(err))
		ok = false
	}
	return ok
}

// span is the first day and the length as they were written.
func (m *maker) span() (day.Date, int) {
	start, _ := m.room.desk().ReadStart(m.start.Text())
	weeks, _ := desk.ReadWeeks(m.weeks.Text())
	return start, weeks
}

// spec is the cycle that the steps describe so far.
func (m *maker) spec() cycle.Spec {
	start, weeks := m.span()
	s := cycle.Spec{Name: strings.TrimSpace(m.name.Text()), Goal: strings.TrimSpace(m.goal.Text()), Start: start, Weeks: weeks}
	for _, t := range m.tracks {
		if t.in.On() {
			s.Tracks = append(s.Tracks, t.spec())
		}
	}
	return s
}

func (m *maker) showTracks() {
	start, weeks := m.span()
	m.trackBox.Objects = nil
	for _, t := range m.tracks {
		t.clash(m.room.desk().Clash(t.track.ID, start, weeks))
		m.trackBox.Objects = append(m.trackBox.Objects, t.all)
	}
	m.trackBox.Refresh()
	m.trackNote.SetText("")
}

// tracksDone lays the cycle out, or says what keeps it from being laid out.
func (m *maker) tracksDone() bool {
	err := m.layOut()
	m.trackNote.SetText(kit.Sentence(err))
	return err == nil
}

func (m *maker) layOut() (err error) {
	m.draft, err = m.room.desk().DraftCycle(m.spec())
	return err
}

// showWaves offers a wave for each track of the cycle.
func (m *maker) showWaves() {
	m.waveBox.Objects = nil
	for _, t := range m.tracks {
		if t.in.On() {
			m.waveBox.Objects = append(m.waveBox.Objects, t.waves)
		}
	}
	m.waveBox.Refresh()
	m.drawWaves()
}

// drawWaves lays the cycle out again with the chosen waves.
func (m *maker) drawWaves() {
	if !m.room.host.Fail(m.layOut()) {
		return
	}
	for _, t := range m.tracks {
		for _, w := range m.draft.Waves {
			if w.Track == t.track.ID {
				t.preview.SetText(strings.Join(w.Lines, "\n"))
			}
		}
	}
	m.waveBox.Refresh()
}

// make keeps the cycle and brings it to the front.
func (m *maker) make() bool {
	c, err := m.room.desk().MakeCycle(m.spec())
	if !m.room.host.Fail(err) {
		return false
	}
	m.room.take(c.ID)
	m.room.host.Say(c.Name+" is made: "+strconv.Itoa(len(c.Weeks))+" weeks. Every day of it can be changed.", true)
	return true
}

// turn brings a step to the front.
func (m *maker) turn(at int) {
	m.at = at
	m.where.Set(at)
	m.stage.Objects = []fyne.CanvasObject{m.steps[at].all}
	m.stage.Refresh()
	m.room.host.Window().Canvas().Unfocus()
	m.steps[at].show()
	m.on.SetLabel("Go on")
	if at == len(m.steps)-1 {
		m.on.SetLabel("Make the cycle")
	}
}

// goOn leads to the next step, when this one is answered.
func (m *maker) goOn() {
	if !m.steps[m.at].done() || m.at == len(m.steps)-1 {
		return
	}
	m.turn(m.at + 1)
}

// jump leads to an earlier step, or through the ones between to a later one.
func (m *maker) jump(to int) {
	for m.at < to && m.steps[m.at].done() {
		m.turn(m.at + 1)
	}
	if m.at > to {
		m.turn(to)
	}
	m.where.Set(m.at) // where the coach is kept, what is wrong stays in sight
}

func (m *maker) back() {
	if m.at > 0 {
		m.turn(m.at - 1)
		return
	}
	m.open = false
	m.room.front()
	m.room.grid.Focus()
}

func (m *maker) keys() []room.Key {
	return []room.Key{
		{Press: "Enter", Does: "Go on to the next step", Do: m.goOn},
		{Press: "Esc", Does: "Go back a step", Do: m.back},
	}
}
