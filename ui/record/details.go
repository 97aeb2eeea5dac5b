package record

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"windlass/internal/day"
	"windlass/internal/gym"
	"windlass/internal/mass"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// details is the section of what the coach knows of an athlete beside numbers.
type details struct {
	of      *Record
	whole   fyne.CanvasObject
	athlete gym.Athlete
	name    *kit.Field
	display *kit.Field
	wall    *kit.Segmented
	unit    *kit.Segmented
	loads   *kit.Segmented
	notes   *kit.Field
	list    *kit.DataList
	rows    []gym.Restriction
	lift    *kit.Button
}

// The choices of the details, in the order of their segments.
var (
	walls = []gym.WallShow{gym.WallName, gym.WallInitials, gym.WallNothing}
	units = []mass.Unit{mass.KG, mass.LB}
	loads = []gym.Standard{gym.StandardM, gym.StandardW}
)

func newDetails(r *Record) *details {
	s := &details{of: r}
	s.name = kit.NewField("Name").OnEnter(func(string) { s.keep() }).OnLeave(s.keep)
	s.display = kit.NewField("Name on the wall").Hint("first name").OnEnter(func(string) { s.keep() }).OnLeave(s.keep)
	s.wall = kit.NewSegmented([]string{"name", "initials", "nothing"}, 0, func(int) { s.keep() })
	s.unit = kit.NewSegmented([]string{"kg", "lb"}, 0, func(int) { s.keep() })
	s.loads = kit.NewSegmented([]string{"M", "W"}, 0, func(int) { s.keep() })
	s.notes = kit.NewField("Notes. They never leave this desk: not the wall, not paper, not an export.").Lines(4).OnLeave(s.keep)
	s.list = s.restrictions()
	s.whole = s.layOut()
	return s
}

func (s *details) layOut() fyne.CanvasObject {
	s.lift = kit.NewButton("Lift it", s.askLift).Key("Del")
	add := kit.NewButton("Note a restriction", s.askRestriction).Key("Ctrl+R")
	labelled := func(words string, o fyne.CanvasObject) fyne.CanvasObject {
		return kit.Column(look.Gap1, kit.NewCaption(words), kit.Row(0, o, kit.Fill()))
	}
	choices := kit.Row(look.Gap6, labelled("The wall shows", s.wall), labelled("Loads in", s.unit), labelled("Load standard", s.loads), kit.Fill())
	return kit.Column(look.Gap3,
		kit.Equal(look.Gap3, s.name, s.display), choices, s.notes,
		kit.Row(look.Gap2, kit.Fill(kit.NewHeading("Restrictions")), s.lift, add),
		kit.Fill(kit.NewPanel(kit.Fill(s.list))),
		kit.NewProse("What an athlete must not do is theirs and a doctor's to say; the desk only remembers it. Restrictions stand beside the name on the floor's desk and nowhere else.", 200).Small().Tone(look.Muted))
}

func (s *details) restrictions() *kit.DataList {
	l := kit.NewDataList([]kit.ListColumn{
		{Title: "What to avoid", Width: 200, Grow: 1}, {Title: "Where", Width: 104}, {Title: "Until", Width: 112},
	}, kit.Rows{Len: func() int { return len(s.rows) }, Cell: s.cell})
	l.OnRune = s.of.typed
	l.Empty = "Nothing is noted. Write down what an athlete told you to mind."
	return l
}

func (s *details) cell(row, column int) kit.Cell {
	r := s.rows[row]
	switch column {
	case 0:
		return kit.Cell{Text: r.Text, Shape: kit.Warning, Mark: look.Warn}
	case 1:
		return kit.Cell{Text: regionWord(r.Region)}
	}
	if r.Until == day.None {
		return kit.Cell{Text: "it is lifted", Tone: look.Muted}
	}
	return kit.Cell{Text: r.Until.Time().Format("2 Jan 2006")}
}

func regionWord(r gym.Region) string {
	words := map[gym.Region]string{gym.Lower: "lower body", gym.Upper: "upper body", gym.Trunk: "trunk", gym.WholeBody: "whole body"}
	if w, ok := words[r]; ok {
		return w
	}
	return "everywhere"
}

func (s *details) content() fyne.CanvasObject { return s.whole }

func (s *details) show(a gym.Athlete) {
	other := a.ID != s.athlete.ID
	d := s.of.host.Desk()
	s.athlete = a
	s.write(s.name, a.Name, other)
	s.write(s.display, a.Display, other)
	s.write(s.notes, a.Notes, other)
	s.wall.Set(at(walls, a.Show))
	s.unit.Set(at(units, a.Unit))
	s.loads.Set(at(loads, a.Standard))
	s.rows = d.Restrictions(a.ID, d.Today())
	s.lift.Able(len(s.rows) > 0)
	s.list.Refresh()
}

// write fills a field, unless somebody is writing in it.
func (s *details) write(f *kit.Field, text string, other bool) {
	if other || s.of.host.Window().Canvas().Focused() != f.Keyboard() {
		f.SetText(text)
	}
}

// at is the place of a choice among all, the first for one that is none of them.
func at[T comparable](all []T, one T) int { return max(0, slices.Index(all, one)) }

// keep keeps what was changed, and nothing when nothing was.
func (s *details) keep() {
	a, ok := s.of.host.Desk().Athlete(s.athlete.ID)
	if !ok {
		return
	}
	before := a
	a.Name, a.Display, a.Notes = strings.TrimSpace(s.name.Text()), strings.TrimSpace(s.display.Text()), s.notes.Text()
	a.Show, a.Unit, a.Standard = walls[s.wall.Chosen()], units[s.unit.Chosen()], loads[s.loads.Chosen()]
	if before.Show == "" && a.Show == gym.WallName {
		a.Show = ""
	}
	if sameDetails(before, a) {
		return
	}
	if err := s.of.host.Desk().KeepAthlete(a); err != nil {
		s.name.SetFault(kit.Sentence(err))
		return
	}
	s.of.host.Say("Changed what is kept of "+a.Name+".", true)
}

func sameDetails(a, b gym.Athlete) bool {
	return a.Name == b.Name && a.Display == b.Display && a.Notes == b.Notes && a.Show == b.Show && a.Unit == b.Unit && a.Standard == b.Standard
}

// askRestriction asks what to avoid, where and until when.
func (s *details) askRestriction() {
	what := kit.NewField("What to avoid").Hint("no pressing over the head")
	where := kit.NewSegmented([]string{"everywhere", "lower", "upper", "trunk"}, 0, nil)
	until := kit.NewField("Last day, or empty until it is lifted").Hint("2026-06-30")
	regions := []gym.Region{"", gym.Lower, gym.Upper, gym.Trunk}
	s.of.ask(kit.Question{
		Title: "A restriction of " + s.athlete.Name,
		Text:  "It stands beside the name on the desk and leaves it nowhere. With pain or after an illness, ask for a doctor's word first.",
		Body:  kit.Column(look.Gap2, what, kit.NewCaption("Where"), kit.Row(0, where, kit.Fill()), until), First: what.Keyboard(),
		Actions: []kit.Action{{Label: "Note it", Do: func() bool {
			d := s.of.host.Desk()
			r := gym.Restriction{ID: d.NewID(), Athlete: s.athlete.ID, Text: strings.TrimSpace(what.Text()), Region: regions[where.Chosen()], From: d.Today()}
			var err error
			if text := strings.TrimSpace(until.Text()); text != "" {
				if r.Until, err = day.Parse(text); err != nil {
					until.SetFault(kit.Sentence(err))
					return false
				}
			}
			if err = d.KeepRestriction(r); err != nil {
				what.SetFault(kit.Sentence(err))
				return false
			}
			s.of.host.Say("Noted: "+r.Text+".", true)
			return true
		}}},
	})
}

// askLift takes the chosen restriction away.
func (s *details) askLift() {
	i := s.list.Cursor()
	if i < 0 {
		s.of.host.Say("There is no restriction to lift.", false)
		return
	}
	r := s.rows[i]
	s.of.done(s.of.host.Desk().LiftRestriction(r.ID), "Lifted: "+r.Text+".")
}

func (s *details) keys() []room.Key {
	return []room.Key{
		{Press: "Ctrl+R", Does: "Note a restriction", Do: s.askRestriction},
		{Press: "Del", Does: "Lift the chosen restriction", Do: s.askLift},
	}
}
