package floor

import (
	"fmt"
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
// load stands there; one key says how it went. Beside it is the chosen row.
type boutSheet struct {
	workout  *workout
	class    gym.ID // whose sheet it is
	rows     []desk.BoutRow
	loads    map[boutKey]mass.Mass // typed instead of what is suggested, not logged yet
	list     *kit.DataList
	progress *kit.Text
	bout     *boutPanel
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
	s.bout = newBoutPanel(s)
	side := kit.Full(kit.Wide(348, kit.NewCard("", s.bout.all)))
	s.all = kit.Row(look.Gap3, kit.Fill(kit.NewPanel(s.list)), side)
	return s
}

func (s *boutSheet) refresh() {
	f := s.workout.floor
	s.rows = f.desk().BoutSheet(f.class)
	if s.class != f.id { // nothing chosen or typed for the class before holds for it
		s.class = f.id
		clear(s.loads)
		s.list.Select(0)
	}
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
		return s.loadCell(r)
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

// loadCell marks a load that the gym does not own.
func (s *boutSheet) loadCell(r desk.BoutRow) kit.Cell {
	load, logged := s.loadOf(r), r.Logged.ID != ""
	if load == 0 { // the log is still being learnt from
		return kit.Cell{Text: "–", Tone: look.Muted}
	}
	c := kit.Cell{Text: load.In(r.Unit), Bold: logged, Tone: toneIf(logged, look.Text, look.Muted)}
	if s.workout.floor.desk().StrangeLoad(r, load) != "" {
		c.Shape, c.Mark = kit.Warning, look.Warn
	}
	return c
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
	s.bout.set(r, ok)
	s.workout.offerOn(s.workout.floor.desk().Now())
}

// track is that of the chosen athlete in the class.
func (s *boutSheet) track() gym.ID {
	r, _ := s.chosen()
	return s.trackOf(r.Athlete)
}

func (s *boutSheet) trackOf(athlete gym.ID) gym.ID {
	for _, l := range s.workout.floor.class.Lifters {
		if l.Athlete == athlete {
			return l.Track
		}
	}
	return ""
}

func (s *boutSheet) workoutOf(r desk.BoutRow) gym.Workout {
	p, _ := s.workout.floor.class.Piece(s.trackOf(r.Athlete))
	return p.Workout
}

// take notes another load for a row; a bout that is logged is logged anew. The error
// says why no such load can have been.
func (s *boutSheet) take(r desk.BoutRow, load mass.Mass) error {
	if r.What == "" || load == s.loadOf(r) {
		return nil
	}
	if err := s.workout.floor.desk().CheckBoutLoad(r.Movement, load); err != nil {
		return err
	}
	s.loads[boutKey{r.Athlete, r.Movement}] = load
	if r.Logged.ID != "" {
		s.keep(r, r.Logged.Outcome)
	}
	s.list.Refresh()
	s.detail()
	return nil
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
	if load == 0 {
		f.host.Say("The load of "+r.Name+" is not worked out yet. Type it, or wait a moment.", false)
		return false
	}
	delete(s.loads, boutKey{r.Athlete, r.Movement})
	return f.did(f.desk().LogBout(f.id, r.Athlete, r.Movement, load, o), fmt.Sprintf("%s: %s, %s %s.", r.Name, r.What, load.In(r.Unit), o))
}

// nextAthlete goes on to the score of the athlete before or after, with the keyboard
// still in the field, and at the end back to the list.
func (s *boutSheet) nextAthlete(step int) {
	for i := s.firstRow() + step; i >= 0 && i < len(s.rows); i += step {
		if s.rows[i].First {
			s.list.Select(i)
			s.detail()
			s.bout.score.Focus()
			return
		}
	}
	s.list.Focus()
}

// firstRow is the first row of the chosen athlete.
func (s *boutSheet) firstRow() int {
	row := s.list.Cursor()
	for row > 0 && !s.rows[row].First {
		row--
	}
	return row
}

// move moves the cursor by rows, with the keyboard on the list.
func (s *boutSheet) move(step int) {
	s.list.Focus()
	s.list.Select(s.list.Cursor() + step)
	s.detail()
}

// typed begins another load with its first digit.
func (s *boutSheet) typed(c rune) bool {
	r, ok := s.chosen()
	if !unicode.IsDigit(c) || !ok || r.What == "" {
		return false
	}
	s.bout.typeLoad(c)
	return true
}

func (s *boutSheet) keys() []room.Key {
	say := func(o gym.Outcome) func() { return func() { s.log(o) } }
	return []room.Key{
		{Press: "H", Does: "Log: held", Do: say(gym.Held)},
		{Press: "S", Does: "Log: slowed", Do: say(gym.Slowed)},
		{Press: "X", Does: "Log: stopped", Do: say(gym.Stopped)},
		{Press: "P", Does: "Type the score", Do: s.bout.score.Focus},
	}
}
