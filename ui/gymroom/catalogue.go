package gymroom

import (
	"fmt"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"windlass/internal/desk"
	"windlass/ui/kit"
	"windlass/ui/look"
	"windlass/ui/room"
)

// catalogue is the section about lifts, movements, finishers and warm-up drills.
type catalogue struct {
	*Gym
	body   fyne.CanvasObject
	kinds  *kit.Segmented
	find   *kit.Field
	hidden *kit.Toggle
	count  *kit.Text
	list   *kit.DataList
	rows   []desk.CatalogueRow
	forms  []*entryForm
	stack  *fyne.Container
	card   *kit.Card
	hide   *kit.Button
	drop   *kit.Button
	shown  string // the key under the cursor
}

// entryKinds are the lists, and what one entry of each is called.
var entryKinds = []struct{ name, one string }{
	{"Lifts", "lift"}, {"Movements", "movement"}, {"Finishers", "finisher"}, {"Warm-up drills", "warm-up drill"},
}

func newCatalogue(g *Gym) section {
	c := &catalogue{Gym: g, count: kit.NewCaption("").Shrinks(60)}
	var names []string
	for _, k := range entryKinds {
		names = append(names, k.name)
	}
	c.kinds = kit.NewSegmented(names, 0, func(int) { c.turn() })
	c.find = kit.NewSearch("Search with Ctrl+F").OnChange(func(string) { c.turn() })
	c.find.OnEnter(func(string) { c.list.Focus() })
	c.hidden = kit.NewToggle("Show hidden ones", false, func(bool) { c.turn() })
	c.list = kit.NewDataList([]kit.ListColumn{
		{Title: "Name", Width: 160, Grow: 2}, {Title: "Sort", Width: 120, Grow: 1}, {Title: "With", Width: 96, Grow: 1}, {Title: "", Width: 76},
	}, kit.Rows{Len: func() int { return len(c.rows) }, Cell: c.cell})
	c.list.Empty = "Nothing is called that. Take a word out, or add one of your own."
	c.list.OnCursor = func(int) { c.edit() }
	c.list.OnOpen = func(int) { c.form().write() }
	c.forms = []*entryForm{newLiftForm(c), newMovementForm(c), newFinisherForm(c), newDrillForm(c)}
	c.body = page("Catalogue", c.layout(),
		kit.NewButton("Add your own", c.add).Key("Ctrl+N").Primary())
	return c
}

func (c *catalogue) layout() fyne.CanvasObject {
	c.hide, c.drop = kit.NewButton("Hide", c.toggleHidden).Key("H"), kit.NewButton("Delete", c.remove).Key("Del").Danger()
	c.stack = container.NewStack()
	for _, f := range c.forms {
		c.stack.Add(f.body)
	}
	c.card = kit.NewCard("Entry", kit.Column(look.Gap3, kit.Fill(scroll(c.stack)), kit.Row(look.Gap2, kit.Fill(), c.drop, c.hide)))
	top := kit.Row(look.Gap3, c.kinds, kit.Fill(c.find))
	below := kit.Row(look.Gap3, kit.Fill(c.count), c.hidden)
	left := kit.Column(look.Gap2, top, kit.Fill(kit.NewPanel(c.list)), below)
	return kit.Row(look.Gap4, kit.Fill(left), kit.Full(kit.Wide(340, c.card)))
}

func (c *catalogue) content() fyne.CanvasObject { return c.body }

func (c *catalogue) keys() []room.Key {
	keys := []room.Key{
		{Press: "E", Does: "Go to the list", Do: c.list.Focus},
		{Press: "H", Does: "Hide the entry under the cursor, or bring it back", Do: c.toggleHidden},
		{Press: "Del", Does: "Delete an entry of your own", Do: c.remove},
	}
	for i, k := range entryKinds {
		keys = append(keys, room.Key{Press: fmt.Sprint(i + 1), Does: "Show the " + k.name, Do: func() {
			c.kinds.Set(i)
			c.turn()
		}})
	}
	return keys
}

// kind is the list that is shown, and form the form of its entries.
func (c *catalogue) kind() desk.CatalogueKind { return desk.CatalogueKind(c.kinds.Chosen()) }

func (c *catalogue) form() *entryForm { return c.forms[c.kinds.Chosen()] }

func (c *catalogue) search() { c.find.Focus() }

func (c *catalogue) cell(row, column int) kit.Cell {
	e := c.rows[row]
	tone := look.Text
	if e.Hidden {
		tone = look.Muted
	}
	switch column {
	case 0:
		return kit.Cell{Text: e.Name, Bold: !e.Hidden, Tone: tone}
	case 1:
		return kit.Cell{Text: e.Sort, Tone: look.Muted}
	case 2:
		return kit.Cell{Text: e.With, Tone: look.Muted}
	}
	switch {
	case e.Hidden:
		return kit.Cell{Text: "hidden", Shape: kit.Dash, Tone: look.Muted}
	case e.Own:
		return kit.Cell{Text: "own", Shape: kit.Plus, Mark: look.Accent, Tone: look.Muted}
	}
	return kit.Cell{}
}

// turn shows the list anew, from the top.
func (c *catalogue) turn() {
	c.read()
	c.list.Select(0)
	c.edit()
}

func (c *catalogue) read() {
	d := c.host.Desk()
	c.rows = d.CatalogueRows(c.kind(), c.find.Text(), c.hidden.On())
	all := len(d.CatalogueRows(c.kind(), "", true))
	c.count.SetText(fmt.Sprintf("%d of %d %ss", len(c.rows), all, entryKinds[c.kinds.Chosen()].one))
}

func (c *catalogue) refresh() {
	c.read()
	if at := slices.IndexFunc(c.rows, func(r desk.CatalogueRow) bool { return r.Key == c.shown }); at >= 0 {
		c.list.Select(at)
	}
	c.list.Refresh()
	if c.list.Cursor() >= 0 && c.rows[c.list.Cursor()].Key == c.shown {
		c.form().refresh()
		c.actions()
		return
	}
	c.edit()
}

// edit shows the entry under the cursor in the form.
func (c *catalogue) edit() {
	c.shown = ""
	title := "Nothing chosen"
	if at := c.list.Cursor(); at >= 0 {
		c.shown, title = c.rows[at].Key, c.rows[at].Name
	}
	c.card.SetTitle(title)
	for i, f := range c.forms {
		f.body.Hidden = i != c.kinds.Chosen() || c.shown == ""
	}
	if c.shown != "" {
		c.form().show()
	}
	c.stack.Refresh()
	c.actions()
}

// actions offers what can be done with the entry.
func (c *catalogue) actions() {
	at := c.list.Cursor()
	c.hide.Able(at >= 0)
	c.drop.Able(at >= 0 && c.rows[at].Own)
	if at < 0 {
		return
	}
	c.card.SetTitle(c.rows[at].Name)
	c.hide.SetLabel("Hide")
	if c.rows[at].Hidden {
		c.hide.SetLabel("Bring back")
	}
}

func (c *catalogue) toggleHidden() {
	at := c.list.Cursor()
	if at < 0 {
		return
	}
	e := c.rows[at]
	said := e.Name + " is hidden. What names it goes on as it was."
	if e.Hidden {
		said = e.Name + " is back."
	}
	c.done(said, c.host.Desk().HideEntry(c.kind(), e.Key, !e.Hidden))
}

func (c *catalogue) remove() {
	if at := c.list.Cursor(); at >= 0 {
		c.done(c.rows[at].Name+" is deleted.", c.host.Desk().DropEntry(c.kind(), c.rows[at].Key))
	}
}

// add asks for the name of an entry of the gym's own.
func (c *catalogue) add() {
	one := entryKinds[c.kinds.Chosen()].one
	name := kit.NewField("Name")
	c.ask(kit.Question{
		Title: "Your own " + one, Text: "A name that no other " + one + " has. You can write the rest afterwards.",
		Body: name, First: name.Keyboard(),
	}, "Add it", name, func() error {
		key, err := c.host.Desk().AddEntry(c.kind(), name.Text())
		if c.saved("Added. Now write the rest.", err) == nil {
			c.find.SetText("")
			c.shown = key
			c.refresh()
			c.form().show()
			c.list.Focus()
		}
		return err
	})
}
