package gymroom

import (
	"fmt"
	"slices"
	"strconv"

	"fyne.io/fyne/v2"

	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// implements is the section about things lifted whole.
type implements struct {
	*Gym
	body  fyne.CanvasObject
	list  *shelf
	rows  []desk.OwnImplement
	unit  *kit.Segmented
	use   *kit.Prose
	card  *kit.Card
	shown string // the kind under the cursor
}

func newImplements(g *Gym) section {
	s := &implements{Gym: g, use: kit.NewProse("", 200).Small().Tone(look.Muted)}
	s.list = newShelf([]kit.ListColumn{
		{Title: "Implement", Width: 160}, {Title: "Masses", Width: 170, Grow: 1}, {Title: "How many", Width: 112, End: true}, {Title: "Movements", Width: 92, End: true},
	}, kit.Rows{Len: func() int { return len(s.rows) }, Cell: s.cell})
	s.list.list.Empty = "No implement yet. Add the first with Ctrl+N."
	masses := s.list.line("Masses", func() string { return s.own().MassesText() }, func(text string) error {
		return s.saved("The masses are saved.", s.host.Desk().KeepMasses(s.own().Kind, text))
	})
	masses.Lines(4)
	masses.Hint("8×2, 12×4, 16×6")
	masses.SetNote("8×2 is two of 8. An x will do. Empty for what is not lifted.")
	total := s.list.line("How many in all", s.totalText, func(text string) error {
		return s.saved("The number is saved.", s.host.Desk().KeepTotal(s.own().Kind, text))
	})
	total.Hint("not counted")
	total.SetNote("Of what is not lifted, or is loaded with plates.")
	s.unit = kit.NewSegmented([]string{"Kilograms", "Pounds"}, 0, s.keepUnit)
	s.list.other = s.rest
	s.list.form = kit.Column(look.Gap2, labelled("Written in", s.unit, ""), masses, total, s.use)
	s.card = kit.NewCard("Implement", s.list.form)
	s.body = page("Implements", kit.Row(look.Gap4, kit.Fill(kit.NewPanel(s.list.list)), kit.Full(kit.Wide(400, s.card))),
		kit.NewButton("Remove", s.remove).Key("Del").Tip("Takes out the kind under the cursor."),
		kit.NewButton("New", s.add).Key("Ctrl+N").Primary())
	return s
}

func (s *implements) content() fyne.CanvasObject { return s.body }

func (s *implements) keys() []room.Key {
	return []room.Key{
		{Press: "I", Does: "Go to the list of implements", Do: s.list.list.Focus},
		{Press: "Del", Does: "Remove the kind under the cursor", Do: s.remove},
	}
}

func (s *implements) cell(row, column int) kit.Cell {
	own := s.rows[row]
	switch column {
	case 0:
		return kit.Cell{Text: plain(own.Kind), Bold: true}
	case 1:
		if len(own.Masses) == 0 {
			return kit.Cell{Text: own.Range(), Tone: look.Muted}
		}
		return kit.Cell{Text: own.Range()}
	case 2:
		if own.Count() == 0 {
			return kit.Cell{Text: own.Counted(), Tone: look.Muted}
		}
		return kit.Cell{Text: own.Counted()}
	}
	return kit.Cell{Text: strconv.Itoa(own.Movements), Tone: look.Muted}
}

// own is the kind under the cursor.
func (s *implements) own() gym.Implement { return s.rows[s.list.at()].Implement }

func (s *implements) rest() {
	own := s.rows[s.list.at()]
	s.shown = own.Kind
	s.card.SetTitle(plain(own.Kind))
	s.unit.Set(indexOf(units, own.Unit))
	s.use.SetText(useText(own))
}

// useText says what the masses and their number are for.
func useText(own desk.OwnImplement) string {
	use := fmt.Sprintf("%d movements are done with it.", own.Movements)
	switch own.Movements {
	case 0:
		return "No movement in sight is done with it, so it can be removed."
	case 1:
		use = "One movement is done with it."
	}
	if len(own.Masses) > 0 {
		use += " Suggestions are made from the masses that stand here."
	}
	switch {
	case own.Bars > 0:
		use += " How many there are is taken from Bars and plates, unless a number stands here."
	case len(own.Each) < len(own.Masses) && own.Total == 0, own.Count() == 0:
		use += " What nobody has counted is taken to be enough for every class."
	}
	return use
}

func (s *implements) totalText() string {
	if n := s.own().Total; n > 0 {
		return strconv.Itoa(n)
	}
	return ""
}

func (s *implements) keepUnit(i int) {
	own := s.own()
	own.Unit = units[i]
	s.done("The unit is saved; the masses are the same.", s.host.Desk().KeepImplement(own))
}

func (s *implements) refresh() {
	s.rows = s.host.Desk().Implements()
	if at := slices.IndexFunc(s.rows, func(i desk.OwnImplement) bool { return i.Kind == s.shown }); at >= 0 {
		s.list.list.Select(at)
	}
	s.list.refresh()
}

// add asks what the new kind is called.
func (s *implements) add() {
	name := kit.NewField("Name").Hint("sandbag")
	s.ask(kit.Question{Title: "New implement", Text: "One name for the kind; its masses come next.", Body: name, First: name.Keyboard()},
		"Add it", name, func() error {
			kind, err := s.host.Desk().AddImplement(name.Text(), s.host.Desk().Settings().Unit)
			if s.saved("Added. Now write its masses.", err) == nil {
				s.shown = kind
				s.refresh()
				s.list.show()
				s.list.write()
			}
			return err
		})
}

func (s *implements) remove() {
	if at := s.list.at(); at >= 0 {
		s.done("Removed.", s.host.Desk().DropImplement(s.rows[at].Kind))
		s.list.show()
	}
}
