package gymroom

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// equipment is the section about bars, plates and the stations where they stand.
type equipment struct {
	*Gym
	body     fyne.CanvasObject
	bars     *shelf
	plates   *shelf
	stations *shelf
	worked   *shelf // the one that new things go to
	forms    *fyne.Container
	formCard *kit.Card
	reach    *reach
	collar   *kept
	barKind  *kit.Choice
	full     *kit.Toggle
	small    *kit.Toggle // small plates are for top rungs
	standing *kit.Choice
}

func newEquipment(g *Gym) section {
	e := &equipment{Gym: g}
	e.bars, e.plates, e.stations = e.newBars(), e.newPlates(), e.newStations()
	e.bars.list.Empty = "No bar yet. Add plates first, then a bar."
	e.plates.list.Empty = "No plates yet. Go here with P and add the first with Ctrl+N."
	e.stations.list.Empty = "No station yet. Each has one of the gym's bars."
	e.reach = newReach(e)
	e.forms = container.NewStack(e.bars.form, e.plates.form, e.stations.form)
	e.formCard = kit.NewCard("Bar", kit.Fill(e.forms))
	e.body = page("Bars and plates", e.layout(),
		kit.NewButton("Remove", e.remove).Key("Del").Tip("Takes out what the cursor of the list is on."),
		kit.NewButton("New", e.add).Key("Ctrl+N").Primary().Tip("Adds to the list that you worked in last."))
	e.turnTo(e.bars)
	return e
}

// lowerHeight is that of the form and the reading under the lists.
const lowerHeight float32 = 300

func (e *equipment) layout() fyne.CanvasObject {
	lists := kit.Equal(look.Gap4, e.card("Bars", "B", e.bars), e.card("Plates", "P", e.plates), e.card("Stations", "T", e.stations))
	lower := kit.Equal(look.Gap4, e.formCard, e.reach.card)
	return kit.Column(look.Gap4, kit.Fill(lists), kit.Tall(lowerHeight, lower))
}

func (e *equipment) card(title, key string, s *shelf) fyne.CanvasObject {
	s.list.OnFocus = func() { e.turnTo(s) }
	return kit.NewCard(title, kit.Fill(s.list), kit.NewButton("", s.list.Focus).Key(key).Plain().Tip("Go to the "+title))
}

// turnTo shows the form of a list.
func (e *equipment) turnTo(s *shelf) {
	e.worked = s
	for _, other := range []*shelf{e.bars, e.plates, e.stations} {
		other.away = other != s
		other.rest()
	}
	e.title()
	e.forms.Refresh()
}

// title says what the form is about.
func (e *equipment) title() {
	own, at := e.owned(), e.worked.at()
	switch {
	case at < 0:
		e.formCard.SetTitle("Nothing here yet: make one with Ctrl+N")
	case e.worked == e.bars:
		e.formCard.SetTitle("Bar: " + own.Bars[at].Name)
	case e.worked == e.plates:
		e.formCard.SetTitle("Plates: " + own.Stock.Plates[at].Disc().String())
	default:
		e.formCard.SetTitle("Station: " + own.Stations[at].Name)
	}
}

func (e *equipment) owned() gym.Equipment { return e.host.Desk().Book().Equipment }

func (e *equipment) content() fyne.CanvasObject { return e.body }

func (e *equipment) keys() []room.Key {
	return []room.Key{
		{Press: "B", Does: "Go to the bars", Do: e.bars.list.Focus},
		{Press: "P", Does: "Go to the plates", Do: e.plates.list.Focus},
		{Press: "T", Does: "Go to the stations", Do: e.stations.list.Focus},
		{Press: "Del", Does: "Remove the bar, plates or station under the cursor", Do: e.remove},
	}
}

func (e *equipment) refresh() {
	for _, s := range []*shelf{e.bars, e.plates, e.stations} {
		s.refresh()
	}
	e.collar.refresh()
	e.showSmall()
	e.title()
	e.reach.refresh()
}

// add puts a proposal into the list that was worked in, to be corrected.
func (e *equipment) add() {
	d := e.host.Desk()
	var row int
	var err error
	switch e.worked {
	case e.bars:
		_, err = d.KeepBar(d.ProposeBar())
		row = len(e.owned().Bars) - 1
	case e.plates:
		row, err = d.KeepPlates(-1, d.ProposePlates())
	default:
		row, err = d.KeepStation(-1, d.ProposeStation())
	}
	if e.done("Added. Now write what it really is.", err) {
		e.worked.to(row)
		e.title()
		e.reach.refresh()
		e.worked.write()
	}
}

func (e *equipment) remove() {
	d, at := e.host.Desk(), e.worked.at()
	if at < 0 {
		return
	}
	var err error
	switch e.worked {
	case e.bars:
		err = d.DropBar(e.owned().Bars[at].Key)
	case e.plates:
		err = d.DropPlates(at)
	default:
		err = d.DropStation(at)
	}
	if e.done("Removed.", err) {
		e.worked.show()
		e.title()
	}
}
