package gymroom

import (
	"slices"

	"fyne.io/fyne/v2"

	"windlass/internal/day"
	"windlass/internal/desk"
	"windlass/internal/gym"
	"windlass/ui/kit"
	"windlass/ui/look"
)

// closures is the part of the timetable about closed days: their list, the form,
// and what they move.
type closures struct {
	of    *timetable
	body  fyne.CanvasObject
	list  *shelf
	rows  []desk.ClosedDays
	moves *kit.DataList
	shown gym.ID
}

// closedHeight is that of the closed days under the week.
const closedHeight float32 = 224

func newClosures(t *timetable) *closures {
	c := &closures{of: t}
	c.moves = c.newMoves()
	c.list = newShelf([]kit.ListColumn{
		{Title: "Closed for", Width: 104, Grow: 1}, {Title: "Days", Width: 116},
	}, kit.Rows{Len: func() int { return len(c.rows) }, Cell: c.cell})
	c.list.list.Empty = "No closed days. Add holidays here, and the plans make room for them."
	c.list.list.OnFocus = func() { t.days = true }
	c.list.other = func() {
		c.shown = c.rows[c.list.at()].Closure.ID
		c.moves.Refresh()
	}
	name := c.line("What for", func(c gym.Closure) string { return c.Name }, func(c *gym.Closure, text string) error {
		c.Name = text
		return nil
	})
	from := c.line("First day", func(c gym.Closure) string { return c.From.String() }, func(c *gym.Closure, text string) (err error) {
		c.From, err = day.Parse(text)
		c.Until = max(c.Until, c.From)
		return err
	})
	until := c.line("Last day", func(c gym.Closure) string { return c.Until.String() }, func(c *gym.Closure, text string) (err error) {
		c.Until, err = day.Parse(text)
		return err
	})
	list := kit.NewCard("Closed days", kit.Fill(c.list.list),
		kit.NewButton("", c.list.list.Focus).Key("D").Plain().Tip("Go to the closed days"))
	c.list.form = kit.Column(look.Gap1, name, kit.Equal(look.Gap3, from, until))
	form := kit.NewCard("", c.list.form)
	c.body = kit.Row(look.Gap4, kit.Full(kit.Wide(292, list)), kit.Fill(kit.NewCard("What they move", kit.Fill(c.moves), level())), kit.Full(kit.Wide(formWidth, form)))
	return c
}

func (c *closures) line(label string, read func(gym.Closure) string, write func(*gym.Closure, string) error) *kept {
	return c.list.line(label, func() string { return read(c.rows[c.list.at()].Closure) }, func(text string) error {
		days := c.rows[c.list.at()].Closure
		if err := write(&days, text); err != nil {
			return err
		}
		_, err := c.of.host.Desk().KeepClosure(days)
		return c.of.saved("The closed days are saved.", err)
	})
}

func (c *closures) cell(row, column int) kit.Cell {
	days := c.rows[row]
	tone := look.Text
	if days.Past {
		tone = look.Muted
	}
	if column == 0 {
		return kit.Cell{Text: days.Closure.Name, Bold: !days.Past, Tone: tone}
	}
	return kit.Cell{Text: days.Span(), Tone: tone}
}

// newMoves is the list of training days that the closed days under the cursor
// move.
func (c *closures) newMoves() *kit.DataList {
	list := kit.NewDataList([]kit.ListColumn{
		{Title: "Training day", Width: 80, Grow: 1}, {Title: "Track", Width: 104}, {Title: "Goes to", Width: 96},
	}, kit.Rows{Len: func() int { return len(c.told()) }, Cell: c.move})
	list.Empty = "No training day."
	return list
}

// told are the moves of the closed days under the cursor.
func (c *closures) told() []desk.DayMove {
	if len(c.rows) == 0 {
		return nil
	}
	return c.rows[c.list.at()].Moves
}

func (c *closures) move(row, column int) kit.Cell {
	m := c.told()[row]
	switch {
	case column == 0:
		return kit.Cell{Text: m.Title}
	case column == 1:
		return kit.Cell{Text: m.Track, Tone: look.Muted}
	case m.To == day.None:
		return kit.Cell{Text: "no place", Tone: look.Warn}
	}
	return kit.Cell{Text: m.To.Weekday().Short() + " " + m.To.Short()}
}

func (c *closures) refresh() {
	c.rows = c.of.host.Desk().Closed()
	if at := slices.IndexFunc(c.rows, func(d desk.ClosedDays) bool { return d.Closure.ID == c.shown }); at >= 0 {
		c.list.list.Select(at)
	}
	c.list.refresh()
	c.moves.Refresh()
}

func (c *closures) add() {
	d := c.of.host.Desk()
	id, err := d.KeepClosure(d.ProposeClosure())
	if c.of.done("Added. Now write which days and what for.", err) {
		c.shown = id
		c.refresh()
		c.list.show()
		c.list.write()
	}
}

func (c *closures) remove() {
	if at := c.list.at(); at >= 0 {
		c.of.done("The gym is open on those days.", c.of.host.Desk().DropClosure(c.rows[at].Closure.ID))
		c.list.show()
	}
}
