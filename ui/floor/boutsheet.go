package floor

import (
	"fmt"
	"strings"
	"unicode"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// boutSheet is a row for everybody and every movement with a load. The suggested
// load stands there; one key says how it went.
type boutSheet struct {
	workout  *workout
	rows     []desk.BoutRow
	loads    map[boutKey]mass.Mass // typed instead of what is suggested, not logged yet
	list     *kit.DataList
	progress *kit.Text
	name     *kit.Text
	what     *kit.Text
	why      *kit.Prose
	load     *kit.MassField
	score    *kit.Field
	says     map[gym.Outcome]*kit.Button
	all      fyne.CanvasObject
}

type boutKey struct {
	athlete  gym.ID
	movement gym.MovementKey
}

func newBoutSheet(w *workout) *boutSheet {
	s := &boutSheet{workout: w, loads: map[boutKey]mass.Mass{}, progress: kit.NewCaption("")}
	s.list = kit.NewDataList([]kit.ListColumn{
		{Title: "Athlete", Width: 150},
		{Title: "Movement", Width: 220, Grow: 1},
		{Title: "Load", Width: 84, End: true},
		{Title: "Tier", Width: 64},
		{Title: "How it went", Width: 108},
		{Title: "Score", Width: 80},
	}, kit.Rows{Len: func() int { return len(s.rows) }, Cell: s.cell})
	s.list.Empty = "Nobody is checked in for a conditioning part."
	s.list.OnCursor = func(int) { s.detail() }
	s.list.OnRune = s.typed
	side := kit.Full(kit.Wide(348, kit.NewCard("", s.side())))
	s.all = kit.Row(look.Gap3, kit.Fill(kit.NewPanel(s.list)), side)
	return s
}

func (s *boutSheet) side() fyne.CanvasObject {
	s.name, s.what = kit.NewHeading("").Shrinks(120), kit.NewBody("").Shrinks(120)
	s.why = kit.NewProse("", 200).Small().Tone(look.Muted)
	s.load = kit.NewMassField("Load, where it was another", mass.KG).OnMass(s.take)
	s.score = kit.NewField("Score").OnEnter(s.keepScore)
	s.says = map[gym.Outcome]*kit.Button{}
	say := func(label, key string, o gym.Outcome) *kit.Button {
		s.says[o] = kit.NewButton(label, func() { s.log(o) }).Key(key)
		return s.says[o]
	}
	buttons := kit.Row(look.Gap2, say("Held", "H", gym.Held), say("Slowed", "S", gym.Slowed), say("Stopped", "X", gym.Stopped))
	return kit.Column(look.Gap1, s.name, s.what, s.why, s.load, buttons, s.score, kit.Fill())
}

func (s *boutSheet) refresh() {
	f := s.workout.floor
	s.rows = f.desk().BoutSheet(f.class)
	s.list.Refresh()
	s.detail()
	done, of := 0, 0
	for _, r := range s.rows {
		if r.What == "" {
			continue
		}
		of++
		if r.Logged.ID != "" {
			done++
		}
	}
	s.progress.SetText(fmt.Sprintf("%d of %d bouts are logged", done, of))
}

func (s *boutSheet) cell(row, column int) kit.Cell {
	r := s.rows[row]
	switch column {
	case 0:
		if !r.First {
			return kit.Cell{}
		}
		return kit.Cell{Text: r.Name, Bold: true}
	case 1:
		if r.What == "" {
			return kit.Cell{Text: "no load to log", Tone: look.Muted}
		}
		return kit.Cell{Text: desk.BoutWork(r)}
	case 2:
		if r.What == "" {
			return kit.Cell{}
		}
		return kit.Cell{Text: s.loadOf(r).In(r.Unit), Bold: r.Logged.ID != "", Tone: toneIf(r.Logged.ID != "", look.Text, look.Muted)}
	case 3:
		return kit.Cell{Text: string(r.Tier), Tone: look.Muted}
	case 4:
		return outcomeCell(r)
	}
	if r.First {
		return kit.Cell{Text: r.Score}
	}
	return kit.Cell{}
}

func outcomeCell(r desk.BoutRow) kit.Cell {
	switch r.Logged.Outcome {
	case gym.Held:
		return kit.Cell{Text: "held", Shape: kit.Tick, Mark: look.Good}
	case gym.Slowed:
		return kit.Cell{Text: "slowed", Shape: kit.Down, Mark: look.Warn}
	case gym.Stopped:
		return kit.Cell{Text: "stopped", Shape: kit.Cross, Mark: look.Bad}
	}
	return kit.Cell{}
}

// loadOf is what was typed for a row, or what stands there.
func (s *boutSheet) loadOf(r desk.BoutRow) mass.Mass {
	if m, ok := s.loads[boutKey{r.Athlete, r.Movement}]; ok {
		return m
	}
	return r.Load
}

func (s *boutSheet) chosen() (desk.BoutRow, bool) {
	row := s.list.Cursor()
	if row < 0 || row >= len(s.rows) {
		return desk.BoutRow{}, false
	}
	return s.rows[row], true
}

func (s *boutSheet) detail() {
	r, ok := s.chosen()
	if !ok {
		s.name.SetText("Nobody")
		s.what.SetText("")
		s.why.SetText("Check athletes in at the set-up.")
		return
	}
	s.name.SetText(r.Name)
	s.what.SetText(r.What)
	s.why.SetText(r.Why)
	s.load.SetMass(s.loadOf(r), r.Unit)
	show(s.load, r.What != "")
	s.sayLogged(r.Logged.Outcome)
	s.score.SetText(r.Score)
	s.score.SetFault("")
	s.score.SetNote("Write it " + desk.ScoreHint(s.workoutOf(r)) + ". Enter keeps it.")
}

// sayLogged marks what was logged; until then no answer looks chosen.
func (s *boutSheet) sayLogged(logged gym.Outcome) {
	for o, b := range s.says {
		if o == logged {
			b.Primary()
		} else {
			b.Quiet()
		}
	}
}

func (s *boutSheet) workoutOf(r desk.BoutRow) gym.Workout {
	c := s.workout.floor.class
	for _, l := range c.Lifters {
		if l.Athlete == r.Athlete {
			p, _ := c.Piece(l.Track)
			return p.Workout
		}
	}
	return gym.Workout{}
}

// take notes another load for the row; a bout that is logged is logged anew.
func (s *boutSheet) take(load mass.Mass, _ mass.Unit) {
	r, ok := s.chosen()
	if !ok || r.What == "" || load == s.loadOf(r) {
		return
	}
	s.loads[boutKey{r.Athlete, r.Movement}] = load
	if r.Logged.ID != "" {
		s.keep(r, r.Logged.Outcome)
	}
	s.list.Refresh()
	s.list.Focus()
}

// log says how the chosen row went and goes on to the next.
func (s *boutSheet) log(o gym.Outcome) {
	r, ok := s.chosen()
	if !ok || r.What == "" || !s.keep(r, o) {
		return
	}
	if next, more := desk.NextBout(s.rows, s.list.Cursor()); more {
		s.list.Select(next)
	}
	s.detail()
	s.list.Focus()
}

func (s *boutSheet) keep(r desk.BoutRow, o gym.Outcome) bool {
	f, load := s.workout.floor, s.loadOf(r)
	delete(s.loads, boutKey{r.Athlete, r.Movement})
	return f.did(f.desk().LogBout(f.id, r.Athlete, r.Movement, load, o), fmt.Sprintf("%s: %s, %s %s.", r.Name, r.What, load.In(r.Unit), o))
}

func (s *boutSheet) keepScore(text string) {
	r, ok := s.chosen()
	if !ok {
		return
	}
	f := s.workout.floor
	if err := f.desk().SetScore(f.id, r.Athlete, text); err != nil {
		s.score.SetFault(kit.Sentence(err))
		return
	}
	f.host.Say(r.Name+": score "+strings.TrimSpace(text)+".", true)
	s.nextAthlete()
}

// nextAthlete goes on to the next score, with the keyboard still in the field.
func (s *boutSheet) nextAthlete() {
	for i := s.list.Cursor() + 1; i < len(s.rows); i++ {
		if s.rows[i].First {
			s.list.Select(i)
			s.detail()
			s.score.Focus()
			return
		}
	}
	s.list.Focus()
}

// typed begins another load with its first digit.
func (s *boutSheet) typed(c rune) bool {
	r, ok := s.chosen()
	if !unicode.IsDigit(c) || !ok || r.What == "" {
		return false
	}
	s.load.SetText(string(c))
	s.load.Focus()
	s.load.Keyboard().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEnd})
	return true
}

func (s *boutSheet) keys() []room.Key {
	say := func(o gym.Outcome) func() { return func() { s.log(o) } }
	return []room.Key{
		{Press: "H", Does: "Log: held", Do: say(gym.Held)},
		{Press: "S", Does: "Log: slowed", Do: say(gym.Slowed)},
		{Press: "X", Does: "Log: stopped", Do: say(gym.Stopped)},
		{Press: "P", Does: "Type the score", Do: s.score.Focus},
	}
}
