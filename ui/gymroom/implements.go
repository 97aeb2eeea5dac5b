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
		{Title: "Implement", Width: 160}, {Title: "Masses", Width: 200, Grow: 1}, {Title: "Movements", Width: 92, End: true},
	}, kit.Rows{Len: func() int { return len(s.rows) }, Cell: s.cell})
	s.list.list.Empty = "No implement yet. Add the first with Ctrl+N."
	masses := s.list.line("Masses", func() string { return desk.MassesText(s.own().Masses, s.own().Unit) }, s.keepMasses)
	masses.Lines(4)
	masses.SetNote("Commas between them; empty for what is not lifted.")
	s.unit = kit.NewSegmented([]string{"Kilograms", "Pounds"}, 0, s.keepUnit)
	s.list.other = s.rest
	s.list.form = kit.Column(look.Gap2, labelled("Written in", s.unit, ""), masses, s.use)
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
	s.use.SetText(useText(own.Movements))
}

func useText(movements int) string {
	switch movements {
	case 0:
		return "No movement in sight is done with it, so it can be removed."
	case 1:
		return "One movement is done with it. Suggestions are made from the masses that stand here."
	}
	return fmt.Sprintf("%d movements are done with it. Suggestions are made from the masses that stand here.", movements)
}

func (s *implements) keepMasses(text string) error {
	own := s.own()
	masses, err := desk.ReadMasses(text, own.Unit)
	if err != nil {
		return err
	}
	own.Masses = masses
	return s.saved("The masses are saved.", s.host.Desk().KeepImplement(own))
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
